import { hasRequired } from '../../../src/capture/index.ts';
import type { FileStep } from './table-files.ts';

/** Where messages and readings say that they come from. */
const PASTED = 'pasted cells';

/** A line with a tab in it is a row of cells; other text is meant for elsewhere. */
export const areCells = (text: string): boolean => text.includes('\t');

/**
 * Cells copied from a spreadsheet, on their way into a study as a table in a file would be: a row
 * of headings, tabs between the cells. Rows that give a property and its value are readings of
 * what is there; others are parts.
 */
export const stepOfCells = (text: string): FileStep => {
  const [headings = ''] = text.split(/\r\n|\n|\r/, 1);
  return {
    file: new File([text], PASTED, { type: 'text/tab-separated-values' }),
    form: hasRequired('readings', headings.split('\t')) ? 'readings' : 'parts',
    overrides: {},
  };
};
