/** By which way a request comes, and who may come that way. */
export interface Door {
  /** `http` for this machine alone, `https` for the network. */
  readonly scheme: 'http' | 'https';
  /** Names and addresses under which the server may be called, without the port. */
  readonly names: readonly string[];
  /** Who holds a token: the author of what comes with it; undefined when nobody does. */
  holder(token: string): Promise<string | undefined>;
  /** What to do for whom is not signed in. */
  readonly signIn: string;
}

/** Author of what comes from this machine itself. */
export const LOCAL = 'local';

/**
 * Who the store notes as the hand that brought something: at this machine whoever is said to be
 * there, from elsewhere the device, whatever it says.
 */
export const handOf = (author: string, by = author): string => (author === LOCAL ? by : author);
