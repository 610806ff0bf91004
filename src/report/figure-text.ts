import { type KindNumber, kindNumber, shownSpan } from '../drawing/index.ts';
import type { Bars, Graph } from '../engine/index.ts';
import { fromSi } from '../quantity/index.ts';
import { type ReportFigure, sayNumber } from './figures.ts';
import { padEnd, plain, textTable, wrap } from './text-layout.ts';

/** Columns of a scale. */
const SCALE = 34;
const LABEL = 34;

/** A figure for the terminal: bars of blocks, a graph as an indented list, else words and numbers. */
export function figureText({ figure, alt, table }: ReportFigure): string[] {
  const title = wrap(figure.title);
  if (figure.f === 'bars') return [...title, ...barLines(figure)];
  if (figure.f === 'graph') return [...title, ...graphLines(figure)];
  if (figure.f === 'drawing') return wrap(alt);
  return [...wrap(`${figure.title}. ${figure.alt}`), ...textTable(table.columns, table.rows)];
}

function barLines(f: Bars): string[] {
  const spans = f.rows.flatMap((r) => (r.number ? [shownSpan(r.number, f.kind, f.unit)] : []));
  const limits = (f.lines ?? []).map((l) => fromSi(l.x, f.unit, f.kind));
  const ends = [...spans.flatMap((s) => [s.x - s.reach, s.x + s.reach]), ...limits];
  if (f.from === 'zero') ends.push(0);
  const [low, high] = [Math.min(...ends), Math.max(...ends)];
  const at = (x: number): number =>
    high > low ? Math.round(((x - low) / (high - low)) * (SCALE - 1)) : 0;
  const labels = Math.min(LABEL, Math.max(...f.rows.map((r) => [...r.label].length)));
  const bars = f.rows.flatMap((row) => {
    const scale = padEnd(
      row.number && row.start === undefined
        ? barOf(shownSpan(row.number, f.kind, f.unit), f, at)
        : '',
      SCALE,
    );
    const [first = '', ...more] = wrap(row.label, '', '', labels);
    const text = plain([numberOf(row, f), row.word ?? ''].filter((t) => t !== '').join(', '));
    return [
      `  ${padEnd(first, labels)}  ${scale}  ${text}`.trimEnd(),
      ...more.map((l) => `  ${l}`),
    ];
  });
  return [...bars, ...besideBars(f).flatMap((t) => wrap(t, '  '))];
}

/** The difference of two rows, and what is demanded. */
function besideBars(f: Bars): string[] {
  const said = (n: KindNumber, word?: string): string => {
    const { text, lack } = sayNumber(n);
    return [text, word ?? lack].filter((t) => t !== '').join(', ');
  };
  return [
    ...(f.gap ? [`difference ${said(kindNumber(f.gap.number, f), f.gap.word)}`] : []),
    ...(f.lines ?? []).map((l) => `${l.label}: ${said(kindNumber({ x: l.x, u: 0 }, f))}`),
  ];
}

function numberOf({ number, word }: Bars['rows'][number], f: Bars): string {
  if (!number) return word ? '' : 'not known';
  const beside = f.rows.flatMap((r) => (r.number ? [kindNumber(r.number, f)] : []));
  const { text, lack } = sayNumber(kindNumber(number, f), beside);
  return lack === '' || word ? text : `${text}, ${lack}`;
}

/** Blocks from zero, or a mark; a line as far as the whiskers reach. */
function barOf(
  { x, reach }: { readonly x: number; readonly reach: number },
  f: Bars,
  at: (x: number) => number,
): string {
  const [low, here, high] = [at(x - reach), at(x), at(x + reach)];
  const zero = f.from === 'zero' ? at(0) : here;
  return Array.from({ length: SCALE }, (_, i) => {
    if (f.from === 'nearest' && i === here) return '┃';
    if (f.from === 'zero' && i >= Math.min(zero, here) && i <= Math.max(zero, here)) return '█';
    return i >= low && i <= high ? '─' : ' ';
  })
    .join('')
    .trimEnd();
}

/** Each node under the last of what comes before it, with all that does. */
function graphLines(f: Graph): string[] {
  const before = new Map(f.nodes.map((n) => [n.id, f.edges.filter((e) => e.to === n.id)]));
  const labels = new Map(f.nodes.map((n) => [n.id, n.label]));
  const depths = new Map<string, number>();
  const depth = (id: string, way: readonly string[] = []): number => {
    const known = depths.get(id);
    if (known !== undefined || way.includes(id)) return known ?? 0;
    const own = (before.get(id) ?? []).map((e) => 1 + depth(e.from, [...way, id]));
    const deepest = Math.max(0, ...own);
    depths.set(id, deepest);
    return deepest;
  };
  return [...f.nodes]
    .sort((a, b) => depth(a.id) - depth(b.id))
    .flatMap((n) => {
      const indent = '  '.repeat(1 + Math.min(depth(n.id), 12));
      const after = (before.get(n.id) ?? []).map((e) => labels.get(e.from) ?? e.from);
      const number =
        n.number && f.kind && f.unit
          ? sayNumber({ ...n.number, kind: f.kind, unit: f.unit })
          : { text: '', lack: '' };
      const words = [n.label, number.text, number.lack].filter((t) => t !== '').join(', ');
      const behind = after.length === 0 ? '' : `; after ${after.join(', ')}`;
      return wrap(`${words}${behind}`, indent, `${indent}  `);
    });
}
