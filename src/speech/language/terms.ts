import type { Term } from './pack.ts';

/** `term: said, said` a line; the term itself is said too. */
export const terms = (text: string): Term[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [term = '', said = ''] = line.split(':').map((part) => part.trim());
      return { term, said: [term, ...said.split(',').map((one) => one.trim())].filter(Boolean) };
    });
