/**
 * drawing: figures laid out on paper, the same for every door.
 *
 * From what a question draws (lengths, numbers, boxes and arrows as plain data) to lines, areas
 * and words at their places: scales, hatchings, dimensions, lines of equal value, layers of a
 * graph, and the table and words behind each figure.
 * Depends on quantity and the engine's types of figures. Stays away from how numbers are worded,
 * which each door hands in, from SVG and the typesetter, and from hosts (no Node, no DOM).
 */
export * from './alt-text.ts';
export { kindNumber } from './bars.ts';
export { type FigureTable, figureTable, fullText } from './figure-table.ts';
export * from './lay-out.ts';
export type { KindNumber, Layout, NumberWords } from './layout.ts';
export * from './nominal-text.ts';
export type { Fill, Ink, Pen, Picture, Spot, Words } from './picture.ts';
export { pieces } from './pieces.ts';
export { shownSpan } from './scale.ts';
export { SIZES } from './text-width.ts';
