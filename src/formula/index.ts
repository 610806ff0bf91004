/**
 * formula: formulas as questions print them, set in mathematics.
 *
 * From one line of text to a tree by a small grammar of its own, and from the tree to MathML for
 * pages, to the typesetter's mathematics and to text; numbers put in the places of symbols.
 * Depends on nothing. Stays away from calculation (a printed formula is not what is worked out),
 * from how numbers are worded, and from hosts (no Node, no DOM).
 */
export * from './formula.ts';
export * from './parse-formula.ts';
export * from './to-mathml.ts';
export * from './to-text.ts';
export * from './to-typst.ts';
export * from './with-numbers.ts';
export * from './worked-lines.ts';
