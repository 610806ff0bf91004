import type { Answer, Out } from '../engine/index.ts';
import type { CellRef, InForce, Reading, StudyView } from '../study/index.ts';
import type { ReportSaid } from './model.ts';
import { howWords, placeWords } from './wording.ts';

/** What tells who said a value: where readings, nodes, instruments and photographs are looked up. */
export type Voucher = Pick<StudyView, 'cell' | 'node' | 'instrument' | 'photos'>;

/** Readings that vouch for one answer beyond these are left to the record. */
const LISTED = 12;
/** Of each result so many of the largest contributions are traced. */
const TRACED = 5;

/**
 * Who says so: for the readings that an answer's spread hangs on most (all of them, where they
 * are few) how, by whom, with what, when, from which line of which file, and its photographs.
 */
export function saidBy(
  answer: Answer,
  view: Voucher | undefined,
): { readonly said: readonly ReportSaid[]; readonly saidLeftOut: number } {
  if (!view) return { said: [], saidLeftOut: 0 };
  const cells = distinct([...leading(answer), ...answer.reads.filter((r) => r.there)]);
  const shown = cells.slice(0, LISTED).flatMap(({ of }) => saidOf(of, view));
  return { said: shown, saidLeftOut: Math.max(cells.length - LISTED, 0) };
}

/** Cells of the largest contributions, result by result. */
const leading = ({ outs, variables }: Answer): { of: CellRef }[] =>
  Object.values(outs).flatMap((out: Out) =>
    out.linear.slice(0, TRACED).flatMap(([id]) => {
      const of = variables[id]?.of;
      return of ? [{ of }] : [];
    }),
  );

const distinct = <C extends { readonly of: CellRef }>(cells: readonly C[]): C[] => [
  ...new Map(
    cells.map((c) => [`${c.of.subject}\n${c.of.property}\n${c.of.condition}`, c]),
  ).values(),
];

function saidOf(of: CellRef, view: Voucher): ReportSaid[] {
  const cell = view.cell(of.subject, of.property, of.condition, of.posture);
  if ('missing' in cell) return [];
  const node = view.node(of.subject);
  const subject = node ? `${node.label} ${node.name}`.trim() : of.subject;
  return [
    {
      label: placeWords({ subject, property: of.property }),
      asWritten: cell.from.map((f) => f.reading.asWritten).join('; '),
      by: cell.from.map((f) => readingWords(f.reading, view)).join('; '),
      photos: photoWords(cell, view),
    },
  ];
}

/** "measured by R. Example with scale B, 2026-09-14 10:20, parts.csv row 7, column mass_kg". */
function readingWords({ how, by, instrument, takenAt, source }: Reading, view: Voucher): string {
  const with_ = instrument === undefined ? '' : view.instrument(instrument)?.label || instrument;
  return [
    `${howWords(how)} by ${by}${with_ === '' ? '' : ` with ${with_}`}`,
    `${takenAt.local.replace('T', ' ')} ${takenAt.zone ?? ''}`.trim(),
    source ? `${source.file} row ${source.row}, column ${source.column}` : '',
  ]
    .filter((t) => t !== '')
    .join(', ');
}

/** Captions of what the readings are seen on, and of the photographs of their subject. */
function photoWords({ from, of }: InForce, view: Voucher): string {
  const captions = new Map(view.photos().map((p) => [p.blob, p.caption]));
  const seen = from.flatMap((f) =>
    f.reading.evidence.map((e) => captions.get(e.blob ?? '') ?? e.words ?? 'film or sound'),
  );
  return [...new Set([...seen, ...view.photos(of.subject).map((p) => p.caption)])].join('; ');
}
