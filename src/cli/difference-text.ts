import type { Out, OutDifference } from '../engine/index.ts';
import { standardUncertainty, type Value } from '../quantity/index.ts';
import { numberText, plain, shownNumber, wrap } from '../report/index.ts';
import {
  type CellDifference,
  type Id,
  type InForce,
  isMissing,
  type Missing,
  type NodeSpec,
  propertyDef,
  propertyWords,
  type StandingReading,
  type StudyDifference,
} from '../study/index.ts';

/** How a node is called, at whichever of the two moments it is there. */
type NameOf = (id: Id) => string;

const ARROW = ' → ';
const nodeText = (n: NodeSpec): string => `${n.label} ${n.name} (${n.kind})`;

/** What two moments differ in, a line each; `outs` where the answers were compared too. */
export function differenceText(
  { revisions, header, nodes, readings, values }: StudyDifference,
  outs: readonly OutDifference[] | undefined,
  nameOf: NameOf,
): string {
  const lines = [
    ...header.map((h) => `study ${h.field}: ${h.before ?? '–'}${ARROW}${h.after ?? '–'}`),
    ...nodes.added.map((n) => `added: ${nodeText(n)}`),
    ...nodes.back.map((n) => `back: ${nodeText(n)}`),
    ...nodes.gone.map(({ node, why }) => `${why}: ${nodeText(node)}`),
    ...nodes.moved.map(
      ({ before, after }) =>
        `moved: ${nodeText(after)}, ${parentOf(before, nameOf)}${ARROW}${parentOf(after, nameOf)}`,
    ),
    ...nodes.renamed.map((p) => `renamed: ${nodeText(p.before)}${ARROW}${nodeText(p.after)}`),
    ...readings.added.map((s) => `reading added: ${readingText(s, nameOf)}`),
    ...readings.back.map((s) => `reading back: ${readingText(s, nameOf)}`),
    ...readings.withdrawn.map(
      (s) => `reading withdrawn: ${readingText(s, nameOf)}: ${s.withdrawn?.why ?? ''}`,
    ),
    ...readings.undone.map((s) => `reading undone: ${readingText(s, nameOf)}`),
    ...values.map((v) => valueText(v, nameOf)),
    ...(outs ?? []).map(outText),
  ];
  const counts = `${revisions.before}${ARROW}${revisions.after}: ${lines.length || 'no'} differences`;
  return `${[counts, ...lines.flatMap((line) => wrap(line, '  ', '      '))].join('\n')}\n`;
}

const parentOf = ({ parent }: NodeSpec, nameOf: NameOf): string =>
  parent === null ? 'the top' : nameOf(parent);

const readingText = ({ reading }: StandingReading, nameOf: NameOf): string =>
  `${nameOf(reading.of.subject)}, ${propertyWords(reading.of.property)}: ${reading.asWritten} (${reading.how}, ${reading.by})`;

function valueText({ of, before, after }: CellDifference, nameOf: NameOf): string {
  const where = [nameOf(of.subject), propertyWords(of.property), of.condition, of.posture];
  return `in force: ${where.filter(Boolean).join(', ')}: ${cellText(before)}${ARROW}${cellText(after)}`;
}

/** A single reading as it was written; what was combined as it is printed. */
function cellText(cell: InForce | Missing): string {
  if (isMissing(cell)) return cell.why;
  const [only, more] = cell.from;
  const words = only && !more ? only.reading.asWritten : combinedText(cell.value, cell);
  return `${words} (${cell.how})`;
}

function combinedText(value: Value, { of, how }: InForce): string {
  if (value.t !== 'scalar') return '';
  const unit = propertyDef(of.property)?.unit ?? '1';
  const u = standardUncertainty(value.spread, value.x) ?? 'incomplete';
  return plain(numberText(shownNumber({ x: value.x, u, kind: value.kind, unit, how })));
}

function outText({ title, subject, output, before, after }: OutDifference): string {
  const about = subject === undefined ? title : `${title}, ${subject}`;
  return `answer: ${about}: ${output} ${numberOf(before)}${ARROW}${numberOf(after)}`;
}

const numberOf = (out: Out | undefined): string =>
  out ? plain(numberText(shownNumber({ ...out, how: 'calculated' }))) : 'none';
