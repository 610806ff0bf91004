import { SEALED, sealClass } from '../../data/index.ts';
import { formUncertainty } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import type { Drawing, DrawingShape } from '../figure.ts';
import type { BoundLook, Cell, DetailTable, FoundRow, Looked } from '../method.ts';
import { linearised } from '../propagate.ts';

/** A fastener with how far its end is past the far face of the wall that decides. */
interface End {
  readonly row: FoundRow;
  readonly past: number | undefined;
  readonly u: number;
}

/** Standard uncertainties by which an end must be clear of a face. */
const CLEAR = 2;

export function lookAtEnds({ tables }: BoundLook): Looked {
  const ends = (tables.fasteners ?? []).map(endOf).sort(byName);
  return {
    detail: table(ends),
    findings: ends.flatMap((end) => [...leakPath(end), ...notTold(end)]),
    figures: drawing(ends),
  };
}

const cells = ({ cells: of }: FoundRow, ...names: readonly string[]): Cell[] =>
  names.flatMap((name): Cell[] => {
    const cell = of[name];
    return cell && !('missing' in cell) ? [cell] : [];
  });

function endOf(row: FoundRow): End {
  const four = cells(row, 'seat', 'sign', 'reach', 'far');
  if (four.length < 4) return { row, past: undefined, u: 0 };
  const { form } = linearised(
    (seat = 0, sign = 1, reach = 0, far = 0) => reach - sign * (far - seat),
    four.map((c) => c.form),
  );
  return { row, past: form.x, u: formUncertainty(form) };
}

const words = ({ row }: End, name: string): string => row.terms[name]?.text ?? '';
const nameOf = (end: End): string => words(end, 'name') || end.row.label;
const isThrough = ({ past }: End): boolean => past !== undefined && past > 0;
const isTold = ({ past, u }: End): boolean => past === undefined || Math.abs(past) >= CLEAR * u;

/** By name, numbers in it by their size. */
function byName(one: End, other: End): number {
  const key = (end: End) => nameOf(end).replace(/\d+/g, (digits) => digits.padStart(9, '0'));
  const [a, b] = [key(one), key(other)];
  return a < b ? -1 : a > b ? 1 : 0;
}

function leakPath(end: End): Finding[] {
  const seal = words(end, 'seal');
  if (!isThrough(end) || (sealClass(seal)?.rank ?? 0) >= SEALED) return [];
  return [
    {
      code: 'fastener-into-dry',
      level: 'doubt',
      place: { subject: nameOf(end), property: 'crossing.seal' },
      value: seal,
      what: `${words(end, 'of')} goes through ${words(end, 'wall')} into a dry zone without a seal: a leak path (common practice, no source)`.trim(),
      next: 'Look for a closed rivet nut, a ring under the head or sealant in the thread, and write what seals it.',
    },
  ];
}

function notTold(end: End): Finding[] {
  if (isTold(end)) return [];
  return [
    {
      code: 'end-not-told',
      level: 'doubt',
      place: { subject: nameOf(end), property: 'place' },
      what: 'its end lies so near to the face of the wall that it is not told on which side it is',
      next: 'Measure its length, its seat and the wall better.',
    },
  ];
}

function table(ends: readonly End[]): DetailTable {
  return {
    title: 'Fasteners and where they end',
    columns: [
      { name: 'fastener' },
      { name: 'of' },
      { name: 'wall that decides' },
      { name: 'ends in' },
      { name: 'past its far face', kind: 'length', unit: 'mm' },
      { name: 'standard uncertainty', kind: 'length', unit: 'mm' },
      { name: 'through' },
    ],
    rows: ends.map((end) => [
      nameOf(end),
      words(end, 'of'),
      words(end, 'wall'),
      words(end, 'ends'),
      end.past ?? 'no such wall',
      end.u,
      !isTold(end) ? 'not told' : isThrough(end) ? 'through' : 'blind',
    ]),
  };
}

/** More fasteners than these make one black strip. */
const MOST = 60;

/** Each fastener along its own direction, with the wall that decides: seat at zero, end to the right. */
function drawing(ends: readonly End[]): readonly Drawing[] {
  const drawn = ends.filter((e) => e.past !== undefined);
  const [first] = drawn;
  if (!first || drawn.length > MOST) return [];
  const step = rowStep(drawn);
  const shapes = drawn.flatMap((end, i) => shapesOf(end, -i * step, step));
  return [
    {
      f: 'drawing',
      title: 'Fasteners along their length, from the seat',
      alt: 'A line for each fastener from its seat to its end, with the wall to the dry zone cut through; those that go through reach past it.',
      kind: 'length',
      unit: 'mm',
      shapes,
    },
  ];
}

const reachOf = (end: End): number => cells(end.row, 'reach')[0]?.form.x ?? 0;
const rowStep = (ends: readonly End[]): number => Math.max(...ends.map(reachOf)) / 12;

function shapesOf(end: End, y: number, step: number): DrawingShape[] {
  const [seat, sign, reach, near, far] = cells(end.row, 'seat', 'sign', 'reach', 'near', 'far').map(
    (c) => c.form.x,
  );
  if (seat === undefined || sign === undefined || reach === undefined) return [];
  if (near === undefined || far === undefined) return [];
  const [from, to] = [sign * (near - seat), sign * (far - seat)];
  const half = step / 2;
  return [
    {
      s: 'area',
      hatch: 'metal',
      rings: [
        [
          [from, y - half],
          [to, y - half],
          [to, y + half],
          [from, y + half],
        ],
      ],
    },
    {
      s: 'line',
      line: 'continuous',
      points: [
        [0, y],
        [reach, y],
      ],
    },
    { s: 'text', at: [-2.4 * step, y], text: `${nameOf(end)} ${isThrough(end) ? '●' : '○'}` },
  ];
}
