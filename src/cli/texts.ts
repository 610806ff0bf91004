import type { BundleImport } from '../app/index.ts';
import type { Preview } from '../capture/index.ts';
import type { ClaimState, InputSpec, Question } from '../engine/index.ts';
import { type Kind, unitSymbol } from '../quantity/index.ts';
import { numberText, plain, shownNumber, textTable, tieWords, wrap } from '../report/index.ts';
import type { PartRow, StudyHead } from '../store/index.ts';
import { type Gesture, readClock, refusalText } from '../study/index.ts';

const column = (head: string, numbers = false) => ({ head, numbers });
const text = (lines: readonly string[]): string => `${lines.join('\n')}\n`;

/** Studies of a library, a line each. */
export function studiesText(studies: readonly StudyHead[]): string {
  if (studies.length === 0)
    return 'No study yet. Make one: hoistside import <folder> --study <name> --new\n';
  const rows = studies.map((s) => [
    s.title,
    s.vehicle,
    String(s.parts),
    String(s.changes),
    s.invented ? 'invented' : '',
    s.study,
  ]);
  return text(
    textTable(
      [
        column('study'),
        column('vehicle'),
        column('parts', true),
        column('changes', true),
        column(''),
        column('id'),
      ],
      rows,
      '',
    ),
  );
}

/** Parts with their values in force; empty where there is none. */
export function partsText(parts: readonly PartRow[]): string {
  const number = (x: number | null, u: number | null, kind: Kind, unit: string): string =>
    x === null ? '' : plain(numberText(shownNumber({ x, u: u ?? 0, kind, unit, how: 'measured' })));
  const rows = parts.map((p) => [
    p.label,
    p.name,
    p.count === null ? '' : String(p.count),
    number(p.mass, p.massU, 'mass', 'kg'),
    number(p.thickness, null, 'length', 'mm'),
    p.material ?? '',
    p.process ?? '',
  ]);
  const columns = [
    column('number'),
    column('name'),
    column('pieces', true),
    column('mass', true),
    column('thickness', true),
    column('material'),
    column('process'),
  ];
  return text([...textTable(columns, rows, ''), `${parts.length} parts`]);
}

/** Claims with their state, number and word. */
export function claimsText(claims: readonly ClaimState[]): string {
  if (claims.length === 0) return 'No claims.\n';
  return text(claims.flatMap(claimLines));
}

function claimLines({ claim, tie, state, out, decision, lacks }: ClaimState): string[] {
  const number = out ? plain(numberText(shownNumber({ ...out, how: 'calculated' }))) : '';
  const test = tie ? tieWords(tie, undefined, out) : 'not tied to a question';
  return [
    ...wrap(
      `“${claim.words}” (${claim.how}, ${claim.by}, ${claim.heard}): ${decision?.word ?? state}`,
    ),
    ...wrap([test, number, decision?.rule].filter(Boolean).join(' · '), '    '),
    ...lacks.flatMap((lack) => wrap(lack, '    lacks ', '          ')),
  ];
}

/** Gestures of a study, oldest first. */
export function historyText(gestures: readonly Gesture[]): string {
  const rows = gestures.map((g) => [
    new Date(readClock(g.clock)?.ms ?? 0).toISOString().slice(0, 19),
    g.by,
    g.device,
    g.undone ? `${g.words} (undone)` : g.words,
    g.gesture,
  ]);
  return text(
    textTable(
      [column('when, UTC'), column('who'), column('device'), column('what'), column('gesture')],
      rows,
      '',
    ),
  );
}

/** What an import would read, with every guess and problem. */
export function previewText(p: Preview): string {
  const guesses = [
    `encoding ${p.encoding.value} (${p.encoding.why})`,
    `columns parted by ${JSON.stringify(p.delimiter.value)} (${p.delimiter.why})`,
    `decimal sign ${JSON.stringify(p.decimal.value)} (${p.decimal.why})`,
    ...p.assumed.map((a) => `${a.what}: ${a.value} (${a.why})`),
  ];
  const rows = p.columns.map((c) => [
    c.column,
    c.field?.field ?? 'left out',
    c.unit ? unitSymbol(c.unit) : '',
    c.why,
  ]);
  return text([
    `${p.file} as ${p.form}`,
    ...guesses.flatMap((g) => wrap(g, '  - ', '    ')),
    ...textTable([column('column'), column('read as'), column('unit'), column('because')], rows),
    ...Object.entries(p.counts).map(([what, n]) => `  ${what}: ${n}`),
    ...p.problems.flatMap((r) => wrap(refusalText(r), '  problem: ', '    ')),
    p.problems.length > 0
      ? 'Nothing would be imported until these are mended.'
      : 'Nothing was written: this is a preview.',
  ]);
}

/** What a bundle brought in. */
export function bundleText(b: BundleImport): string {
  const missing = b.missing.map((hash) => `not in the bundle, still on a device: blob ${hash}`);
  return text([
    `${b.title}: ${b.added} of ${b.changes} changes and ${b.addedBlobs} of ${b.blobs} blobs were new here.`,
    ...missing,
  ]);
}

/** What a question needs and gives, and its example. */
export function questionText(q: Question): string {
  return text([
    ...wrap(`${q.id}: ${q.wording}`),
    '',
    `Asked of: ${q.subject === 'study' ? 'the study, or a part of it with --subject' : `a${/^[aeiou]/.test(q.subject) ? 'n' : ''} ${q.subject}`}`,
    'Inputs:',
    ...q.inputs.flatMap(inputLines),
    'Outputs:',
    ...textTable(
      [column(''), column(''), column('')],
      q.body.outputs.map((o) => [o.name, unitSymbol(o.unit), o.meaning]),
    ).slice(1),
    '',
    `Try its example: hoistside ask ${q.id} --example`,
  ]);
}

function inputLines(input: InputSpec): string[] {
  if (input.in === 'scalar')
    return wrap(
      `${input.name}: ${input.meaning}${unitOf(input.unit)}; in a study: ${input.where}`,
      '  - ',
      '    ',
    );
  if (input.in === 'term')
    return wrap(
      `${input.name}: ${input.meaning}${input.options ? ` (${input.options.join(', ')})` : ''}; in a study: ${input.where}`,
      '  - ',
      '    ',
    );
  const columns = input.columns
    .map((c) => (c.in === 'scalar' ? `${c.name}${unitOf(c.unit)}` : c.name))
    .join(', ');
  return wrap(
    `${input.name}: a list, one row for ${input.meaning}; columns ${columns}; in a study: ${input.where}`,
    '  - ',
    '    ',
  );
}

const unitOf = (unit: string): string => (unit === '1' ? '' : ` [${unitSymbol(unit)}]`);
