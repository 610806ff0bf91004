import { differenceOf, formUncertainty, fromSi, type LinearForm } from '../../../quantity/index.ts';
import { decideDifference } from '../../decide.ts';
import type { BoundLook, DetailTable, Looked, PlainInputs } from '../../method.ts';
import { costBars, volumePlot } from './alternative-figures.ts';
import { breakEvenEach } from './break-even.ts';
import { type DesignFigures, figuresOf, type LineFigures, platesTable } from './design-lines.ts';
import { LookForms } from './look-forms.ts';
import { cheaper, dominatedBy, firsts, weighed } from './rank.ts';
import { type VolumeCrossing, volumeCrossings, volumeCurves } from './volume-curves.ts';

/** Costs of the designs with their spreads, and all that follows from them. */
export interface Designs {
  readonly forms: LookForms;
  readonly all: readonly DesignFigures[];
  readonly costs: readonly LinearForm[];
}

/** Tables and figures of designs side by side. */
export function lookAtAlternatives(bound: BoundLook): Looked {
  const forms = new LookForms(bound, 'lines');
  const all = figuresOf(forms.plain);
  if (all.length < 2 || !all.every((d) => Number.isFinite(d.cost))) return {};
  const costs = forms.of((x) => figuresOf(x).map((d) => d.cost));
  const designs: Designs = { forms, all, costs };
  const plates = platesTable(forms.plain);
  const curves = volumeCurves(forms);
  const found = volumeCrossings(curves);
  // Without tools nothing moves with the pieces a year.
  const hasTools = all.some((d) => d.tool > 0);
  return {
    detail: sideBySide(designs),
    further: [
      pairs(designs),
      ranks(designs),
      breakEvenLines(designs),
      ...(hasTools ? [breakEvenVolumes(found)] : []),
      linesTable(designs),
      ...(plates.rows.length > 0 ? [plates] : []),
    ],
    figures: [costBars(designs), ...(hasTools ? [volumePlot(curves, found)] : [])],
  };
}

const MONEY = { kind: 'money', unit: '{u}' } as const;

function sideBySide({ all, costs, forms }: Designs): DetailTable {
  const before = forms.of((x) => figuresOf(x).map((d) => d.before));
  return {
    title: 'Designs side by side, as built first',
    columns: [
      { name: 'design' },
      { name: 'own lines, before overhead', ...MONEY },
      { name: 'with lines of every design', ...MONEY },
      { name: 'u of that', ...MONEY },
      { name: 'cost with overhead', ...MONEY },
      { name: 'u', ...MONEY },
      { name: 'mass', kind: 'mass', unit: 'kg' },
      { name: 'time', kind: 'time', unit: 's' },
      { name: 'tools', ...MONEY },
      { name: 'leak crossings' },
      { name: 'time in service', kind: 'time', unit: 's' },
    ],
    rows: all.map((d, i) => [
      ...[d.name, d.own, d.before, spread(before[i]), d.cost, spread(costs[i])],
      ...[d.mass, d.time, d.tool, d.crossings, d.service],
    ]),
  };
}

const spread = (form: LinearForm | undefined): number =>
  form ? formUncertainty(form) : Number.NaN;

function pairs({ all, costs, forms }: Designs): DetailTable {
  const rows = all.flatMap((a, i) =>
    all.slice(i + 1).map((b, k) => {
      const [one, other] = [costs[i], costs[i + 1 + k]];
      if (!one || !other) return [];
      const d = differenceOf(one, other);
      const u = formUncertainty(d);
      const { word } = decideDifference(d.x, u, null);
      const way = word === 'not distinguishable' ? '' : d.x > 0 ? 'second' : 'first';
      return [
        a.name,
        b.name,
        d.x,
        u,
        word,
        word === 'different' ? `${way} is cheaper` : '',
        percent(cheaper(forms, other, one)),
      ];
    }),
  );
  return {
    title: 'Differences of cost, first less second, correlation by shared rates in them',
    columns: [
      ...[{ name: 'first' }, { name: 'second' }],
      ...[{ name: 'd', ...MONEY }, { name: 'u', ...MONEY }, { name: 'word' }, { name: 'proven' }],
      { name: 'probability that the second is cheaper', kind: 'ratio', unit: '%' },
    ],
    rows,
  };
}

/** A probability to a tenth of a percent: more digits would claim more than a normal law can. */
const percent = (p: number): number => Number(p.toFixed(3));

function ranks({ all, costs, forms }: Designs): DetailTable {
  const first = firsts(forms, costs);
  const weights = weighed(all);
  return {
    title: 'Rank: by cost as rates and facts move, and by all criteria as weights move',
    columns: [
      { name: 'design' },
      { name: 'probability that it is the cheapest', kind: 'ratio', unit: '%' },
      { name: 'first in this share of all weightings', kind: 'ratio', unit: '%' },
      { name: 'no better in anything than' },
    ],
    rows: all.map((d, i) => [
      ...[d.name, percent(first[i] ?? 0), percent(weights[i] ?? 0)],
      dominatedBy(d, all).join('; ') || 'none',
    ]),
  };
}

/** For each line of its own: what one piece may cost for the design to be no dearer than a cheaper one. */
function breakEvenLines({ all, costs, forms }: Designs): DetailTable {
  const { overhead = 1 } = forms.plain.scalars;
  const rows = all.flatMap((design, i) =>
    design.lines
      .filter((line) => !line.isCommon)
      .flatMap((line) => {
        const own = forms.of((x) => [costOfLine(x, design.name, line)])[0];
        return all.flatMap((other, k) => {
          const [mine, theirs] = [costs[i], costs[k]];
          if (k === i || !own || !mine || !theirs || mine.x <= theirs.x) return [];
          const each = breakEvenEach(theirs, mine, own, line.pieces * overhead);
          // Where the rest of the design is dearer already no price of this line helps.
          if (each.x <= 0) return [];
          const u = formUncertainty(each);
          return [
            [
              design.name,
              line.name,
              line.cost / line.pieces,
              other.name,
              each.x,
              u,
              each.x - 2 * u,
              each.x + 2 * u,
            ],
          ];
        });
      }),
  );
  return {
    title:
      'Break-even cost of one piece of a line, before overhead: below it its design is the cheaper',
    columns: [
      ...[{ name: 'design' }, { name: 'line' }, { name: 'costs now, each', ...MONEY }],
      ...[{ name: 'against' }, { name: 'break-even, each', ...MONEY }, { name: 'u', ...MONEY }],
      ...[
        { name: 'from', ...MONEY },
        { name: 'to', ...MONEY },
      ],
    ],
    rows,
  };
}

/** Cost of a line with overhead. */
function costOfLine(x: PlainInputs, design: string, { name }: LineFigures): number {
  const found = figuresOf(x).find((d) => d.name === design);
  const line = found?.lines.find((l) => l.name === name && !l.isCommon);
  return (x.scalars.overhead ?? 1) * (line?.cost ?? Number.NaN);
}

function breakEvenVolumes(found: readonly VolumeCrossing[]): DetailTable {
  const pieces = (x: number | undefined, beyond: string): string =>
    x === undefined ? beyond : String(Number(fromSi(x, '1', 'count').toPrecision(3)));
  return {
    title: 'Break-even volumes, pieces a year from 1,000 to 1,000,000, by root search',
    columns: [
      ...[{ name: 'first' }, { name: 'second' }, { name: 'pieces a year' }],
      ...[{ name: 'not proven from' }, { name: 'not proven to' }],
    ],
    rows: found.map(({ first, second, crossing: { at, low, high } }) => [
      ...[first, second, Number(at.toPrecision(6))],
      ...[pieces(low, 'below 1,000'), pieces(high, 'above 1,000,000')],
    ]),
  };
}

function linesTable({ all }: Designs): DetailTable {
  return {
    title: 'Lines of the designs, before overhead',
    columns: [
      ...[{ name: 'design' }, { name: 'line' }, { name: 'pieces' }, { name: 'cost', ...MONEY }],
      { name: 'of it tools', ...MONEY },
    ],
    rows: all.flatMap((d) => d.lines.map((l) => [d.name, l.name, l.pieces, l.cost, l.tooling])),
  };
}
