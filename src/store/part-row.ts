import { standardUncertainty, type Value } from '../quantity/index.ts';
import { type Id, isMissing, type NodeSpec, type StudyView } from '../study/index.ts';
import type { PartQuery, PartRow } from './port.ts';

/** What a row says of a part beside its place in the tree. */
export type PartValues = Omit<PartRow, 'study' | 'id' | 'label' | 'name' | 'parent'>;

/** A part as its view shows it, in the study's own condition. */
export function partRow(view: StudyView, { id, label, name, parent }: NodeSpec): PartRow {
  return { study: view.study, id, label, name, parent, ...valuesInForce(view, id) };
}

export const valuesInForce = (view: StudyView, part: Id): PartValues =>
  partValues((property) => {
    const cell = view.cell(part, property);
    return isMissing(cell) ? undefined : cell.value;
  });

/** The columns that are values in force; `inForce` gives the value of one property, SI. */
export function partValues(inForce: (property: string) => Value | undefined): PartValues {
  const mass = inForce('mass');
  const position = inForce('position');
  const at = position?.t === 'vector' ? position.x : [];
  return {
    count: numberOf(inForce('count')),
    mass: numberOf(mass),
    massU: spreadOf(mass),
    thickness: numberOf(inForce('thickness')),
    x: at[0] ?? null,
    y: at[1] ?? null,
    z: at[2] ?? null,
    material: wordsOf(inForce('material')),
    process: wordsOf(inForce('process')),
  };
}

function numberOf(value: Value | undefined): number | null {
  if (value?.t === 'scalar') return value.x;
  return value?.t === 'count' ? value.n : null;
}

function spreadOf(value: Value | undefined): number | null {
  return value?.t === 'scalar' ? (standardUncertainty(value.spread, value.x) ?? null) : null;
}

function wordsOf(value: Value | undefined): string | null {
  if (value?.t === 'text') return value.text;
  return value?.t === 'term' ? value.code : null;
}

/**
 * The words by which a part is found or asked for: lower case, without accents, letters and
 * digits only. Every store splits text with this, so that all find the same.
 */
export const searchWords = (text: string): string[] =>
  text
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '');

/** What free text searches in. */
export const searchedText = (
  row: Pick<PartRow, 'label' | 'name' | 'material' | 'process'>,
): string =>
  [row.label, row.name, row.material, row.process].filter((text) => text !== null).join(' ');

/** Whether a row answers a query: every word asked for begins a word of the row. */
export function matches(row: PartRow, query: PartQuery): boolean {
  if (query.study !== undefined && row.study !== query.study) return false;
  if (query.material !== undefined && row.material !== query.material) return false;
  if (query.process !== undefined && row.process !== query.process) return false;
  return isThick(row, query.thickness) && hasWords(row, query.text);
}

function isThick(row: PartRow, range: PartQuery['thickness']): boolean {
  if (range === undefined) return true;
  return row.thickness !== null && row.thickness >= range[0] && row.thickness <= range[1];
}

function hasWords(row: PartRow, text: string | undefined): boolean {
  if (text === undefined) return true;
  const held = searchWords(searchedText(row));
  return searchWords(text).every((word) => held.some((h) => h.startsWith(word)));
}
