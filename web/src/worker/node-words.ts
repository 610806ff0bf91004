import type { NodeSpec } from '../../../src/study/index.ts';

/** Number and name of a node; once where the name begins with it. */
export const nodeWords = ({ label, name }: Pick<NodeSpec, 'label' | 'name'>): string =>
  name === label || name.startsWith(`${label} `) ? name : `${label} ${name}`.trim();

/** The same for words that come put together: "VAN-27 VAN-27" is VAN-27. */
export const onceNamed = (words: string): string => words.replace(/\b(\S.*) \1$/, '$1');
