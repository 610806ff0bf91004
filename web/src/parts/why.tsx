import { createContext, useContext } from 'react';

/** A number whose origin can be shown. */
export type WhyTarget =
  | { readonly of: 'cell'; readonly subject: string; readonly property: string }
  | {
      readonly of: 'out';
      readonly question: string;
      /** Node the question was asked of. */
      readonly subject: string;
      readonly output: string;
    };

/** Opens the origin of a number. */
export const WhyContext = createContext<(target: WhyTarget) => void>(() => undefined);
export const useWhy = (): ((target: WhyTarget) => void) => useContext(WhyContext);
