import type {
  Bars,
  Drawing,
  DrawingShape,
  Figure,
  FigurePoint,
  Graph,
  Isolines,
  LinePlot,
} from '../engine/index.ts';
import { type Kind, unitSymbol } from '../quantity/index.ts';
import { kindNumber } from './bars.ts';
import type { Layout, NumberWords } from './layout.ts';
import { pointsOf } from './plane.ts';

/** The numbers of a figure in rows, for who reads rather than looks. */
export interface FigureTable {
  readonly columns: readonly { readonly head: string; readonly numbers: boolean }[];
  readonly rows: readonly (readonly string[])[];
}

type Say = Layout['say'];

/** A number in words, with what it lacks. */
export const fullText = ({ text: said, lack }: NumberWords): string =>
  [said, lack].filter((t) => t !== '').join(', ');

/** Rows or columns of a field or a curve beyond these are passed over evenly. */
const MOST = 12;

export function figureTable(f: Figure, say: Say): FigureTable {
  switch (f.f) {
    case 'drawing':
      return shapeTable(f.shapes, f, f.axes, say, f.vectors);
    case 'bars':
      return barTable(f, say);
    case 'graph':
      return graphTable(f, say);
    case 'isolines':
      return fieldTable(f, say);
    case 'line':
      return lineTable(f, say);
  }
}

const text = (head: string) => ({ head, numbers: false });
const numbers = (head: string) => ({ head, numbers: true });

function barTable(f: Bars, say: Say): FigureTable {
  const beside = f.rows.flatMap((r) => (r.number ? [kindNumber(r.number, f)] : []));
  const rows = f.rows.map((r) => [
    r.label,
    r.number ? fullText(say(kindNumber(r.number, f), beside)) : '–',
    r.word ?? '',
  ]);
  const lines = (f.lines ?? []).map((l) => [
    l.label,
    fullText(say({ x: l.x, u: 0, ...unitOf(f) })),
    '',
  ]);
  const gap = f.gap
    ? [['difference', fullText(say(kindNumber(f.gap.number, f))), f.gap.word ?? '']]
    : [];
  const hasWords = [...f.rows, ...(f.gap ? [f.gap] : [])].some((r) => r.word !== undefined);
  const all = [...rows, ...gap, ...lines];
  return {
    columns: [text(''), numbers('value'), ...(hasWords ? [text('')] : [])],
    rows: hasWords ? all : all.map((row) => row.slice(0, 2)),
  };
}

const unitOf = ({ kind, unit }: { readonly kind: Kind; readonly unit: string }) => ({ kind, unit });

function shapeTable(
  shapes: readonly DrawingShape[],
  unit: { readonly kind: Kind; readonly unit: string },
  axes: Drawing['axes'],
  say: Say,
  vectors?: Drawing['vectors'],
): FigureTable {
  const sizes = shapes.flatMap(pointsOf).flat();
  const beside = sizes.map((x) => ({ x, ...unitOf(unit) }));
  const one = (x: number, of = unit): string =>
    fullText(say({ x, ...unitOf(of) }, of === unit ? beside : []));
  const both = ([x, y]: FigurePoint, of = unit): string[] => [one(x, of), one(y, of)];
  const rows = shapes.flatMap((s): string[][] => {
    if (s.s === 'mark') return [[s.label || s.sign, ...both(s.at)]];
    if (s.s === 'text') return [[s.text, ...both(s.at)]];
    if (s.s === 'axis') return [[`axis ${s.label}, through`, ...both(s.at)]];
    if (s.s === 'vector')
      return [
        [`${s.label ?? 'arrow'}, from`, ...both(s.at)],
        ['along', ...both(s.by, vectors)],
      ];
    if (s.s !== 'dimension') return [];
    const size = one(Math.abs(s.along === 'x' ? s.to[0] - s.from[0] : s.to[1] - s.from[1]));
    return [s.along === 'x' ? ['dimension', size, ''] : ['dimension', '', size]];
  });
  return { columns: [text(''), numbers(axes?.x ?? 'x'), numbers(axes?.y ?? 'y')], rows };
}

function graphTable(f: Graph, say: Say): FigureTable {
  const labels = new Map(f.nodes.map((n) => [n.id, n.label]));
  const { kind, unit } = f;
  const isNumbered = kind !== undefined && unit !== undefined && f.nodes.some((n) => n.number);
  return {
    columns: [text('what'), ...(isNumbered ? [numbers('value')] : []), text('after')],
    rows: f.nodes.map((n) => [
      n.label,
      ...(isNumbered ? [n.number ? fullText(say({ ...n.number, kind, unit })) : '–'] : []),
      f.edges
        .filter((e) => e.to === n.id)
        .map((e) => `${labels.get(e.from) ?? e.from}${e.label ? ` (${e.label})` : ''}`)
        .join('; '),
    ]),
  };
}

/** At most so many of a list, the first and the last among them. */
function picked<T>(list: readonly T[], most = MOST): readonly T[] {
  if (list.length <= most) return list;
  return Array.from({ length: most }, (_, i) => {
    return list[Math.round((i * (list.length - 1)) / (most - 1))] as T;
  });
}

function fieldTable(f: Isolines, say: Say): FigureTable {
  const beside = f.values.flat().map((x) => ({ x, ...unitOf(f) }));
  const length = (x: number): string => fullText(say({ x, kind: 'length', unit: f.lengthUnit }));
  const columns = picked(
    f.x.map((x, i) => ({ x, i })),
    7,
  );
  const rows = picked(
    f.y.map((y, j) => ({ y, j })),
    7,
  );
  const [x, y] = [f.axes?.x ?? 'x', f.axes?.y ?? 'y'];
  return {
    columns: [text(`${y}, ${x}`), ...columns.map((c) => numbers(length(c.x)))],
    rows: rows.map((r) => [
      length(r.y),
      ...columns.map((c) => fullText(say({ x: f.values[r.j]?.[c.i] ?? 0, ...unitOf(f) }, beside))),
    ]),
  };
}

function lineTable(f: LinePlot, say: Say): FigureTable {
  const ats = f.series.flatMap((s) => s.points.map((p) => ({ x: p.at, ...unitOf(f.x) })));
  const nominal = f.series.flatMap((s) => s.points.map(({ x }) => ({ x, ...unitOf(f.y) })));
  const rows = f.series.flatMap((s) =>
    picked(s.points).map((p) => [
      s.label,
      fullText(say({ x: p.at, ...unitOf(f.x) }, ats)),
      fullText(say({ ...p, ...unitOf(f.y) }, p.u === undefined ? nominal : [])),
    ]),
  );
  const demands = (f.demands ?? []).map((d) => [
    d.label,
    '',
    fullText(say({ x: d.y, u: 0, ...unitOf(f.y) })),
  ]);
  const marks = (f.marks ?? []).map((m) => [
    m.label,
    fullText(say({ ...m.number, ...unitOf(f.x) })),
    '',
  ]);
  return {
    columns: [text(''), numbers(named(f.x)), numbers(named(f.y))],
    rows: [...marks, ...demands, ...rows],
  };
}

const named = ({ label, unit }: LinePlot['x']): string =>
  unitSymbol(unit) === '' ? label : `${label}, ${unitSymbol(unit)}`;
