/** Names parted by semicolons, blanks taken off. */
export const listIn = (text: string): string[] =>
  text
    .split(';')
    .map((name) => name.trim())
    .filter((name) => name !== '');
