import { FormBuilder, formUncertainty, type LinearForm } from '../../quantity/index.ts';
import type { Finding } from '../../study/index.ts';
import {
  type BoundLook,
  type Found,
  type OutputSpec,
  question,
  type ScalarInput,
} from '../method.ts';
import { BALANCE } from '../sections.ts';
import {
  densityOf,
  largestFace,
  moduleAround,
  OTHER_SIDE,
  otherSideOf,
  piecesOf,
  SHEET_SHAPE,
  volumeOf,
} from './expected-mass.ts';
import { productOf } from './product.ts';

/** A mass further than this many u from what was to be expected is warned of. */
const WARN_FROM_U = 4;

const kg = (
  name: string,
  symbol: string,
  meaning: string,
  where: string,
  find: ScalarInput['find'],
): ScalarInput => ({
  ...{ in: 'scalar', name, symbol, kind: 'mass', unit: 'kg', meaning, where, find },
  range: [0.0001, 2000],
  bounds: { atLeast: 0 },
});

const expected = (name: string, symbol: string, meaning: string, shown: string): OutputSpec => ({
  ...{ name, symbol, kind: 'mass', unit: 'kg', meaning, shown: `${symbol} = ${shown}` },
});
const off = (name: string, from: string, meaning: string): OutputSpec => ({
  ...{ name, symbol: `Δ${from}`, kind: 'mass', unit: 'kg', meaning, shown: `m − ${from}` },
  decides: 'difference',
});

/** In the order of the inputs. */
type X = readonly number[];
const at = (x: X, i: number): number => x[i] ?? Number.NaN;
const solid = (...x: number[]) => at(x, 1) * at(x, 2) * at(x, 3);
const sheet = (...x: number[]) => at(x, 1) * at(x, 4) * at(x, 5) * at(x, 3) * at(x, 6);
const side = (...x: number[]) => at(x, 7) * at(x, 8);
const remainder = (...x: number[]) => at(x, 9) - at(x, 10);
const less =
  (of: (...x: number[]) => number) =>
  (...x: number[]) =>
    at(x, 0) - of(...x);

export default question({
  id: 'expected-mass',
  version: 1,
  title: 'Mass to be expected at the scale',
  wording: 'What should this part weigh, before the number is written down?',
  subject: 'part',
  section: BALANCE,
  onRequest: true,
  inputs: [
    kg('mass', 'm', 'mass as read or typed, all pieces', 'mass of the part, or as typed', (f) =>
      f.number(f.subject, 'mass'),
    ),
    {
      in: 'scalar',
      name: 'pieces',
      symbol: 'n',
      kind: 'count',
      unit: '1',
      meaning: 'pieces weighed together',
      range: [1, 5000],
      bounds: { above: 0 },
      where: 'pieces of the part; one where nobody counted',
      find: (f) => piecesOf(f, f.subject),
    },
    {
      in: 'scalar',
      name: 'volume',
      symbol: 'V',
      kind: 'volume',
      unit: 'cm3',
      meaning: 'volume of the material, each piece',
      range: [0.01, 200_000],
      bounds: { above: 0 },
      where: 'volume of the part, from a scan or a drawing; of a fluid, what the book fills in',
      find: (f) => volumeOf(f, f.subject),
    },
    {
      in: 'scalar',
      name: 'density',
      symbol: 'ρ',
      kind: 'density',
      unit: 'kg/m3',
      meaning: 'density of the material',
      range: [20, 20_000],
      bounds: { above: 0 },
      where: 'density of the part, else that of its material',
      find: (f) => densityOf(f, f.subject),
    },
    {
      in: 'scalar',
      name: 'face',
      symbol: 'A',
      kind: 'area',
      unit: 'cm2',
      meaning: 'largest face of the envelope',
      range: [0.1, 60_000],
      bounds: { above: 0 },
      where: 'the two longer sides of the part’s envelope',
      find: (f) => largestFace(f, f.subject),
    },
    {
      in: 'scalar',
      name: 'thickness',
      symbol: 't',
      kind: 'length',
      unit: 'mm',
      meaning: 'thickness of the sheet',
      range: [0.05, 50],
      bounds: { above: 0 },
      where: 'thickness of the part',
      find: (f) => f.number(f.subject, 'thickness'),
    },
    {
      in: 'scalar',
      name: 'shape',
      symbol: 'k',
      kind: 'ratio',
      unit: '1',
      meaning: 'developed area of the sheet over the largest face',
      range: [0.2, 3],
      bounds: { above: 0 },
      where: 'usual value for formed sheet, common practice',
      find: (f) => f.tabled(SHEET_SHAPE),
      assumed: '1 ± 0.3',
    },
    kg('otherSide', 'm₂', 'mass of the other side', 'mass of the mirrored part', (f) => {
      const other = otherSideOf(f, f.subject);
      return other ? f.number(other, 'mass') : f.missing('other side', 'it has no mirror image');
    }),
    {
      in: 'scalar',
      name: 'alike',
      symbol: 'q',
      kind: 'ratio',
      unit: '1',
      meaning: 'mass of one side over that of the other',
      range: [0.5, 2],
      bounds: { above: 0 },
      where: 'scatter of single units of one design',
      find: (f) => f.tabled(OTHER_SIDE),
      assumed: '1 ± 0.014',
    },
    kg(
      'module',
      'mₘ',
      'mass of the module that it was weighed in',
      'first module that lists it',
      (f) => moduleAround(f, f.subject).module,
    ),
    kg(
      'others',
      'Σm',
      'mass of all others in that module',
      'parts of the module, this one left out',
      (f) => moduleAround(f, f.subject).others,
    ),
  ],
  body: {
    body: 'row',
    outputs: [
      { ...expected('bySolid', 'm_V', 'expected by volume and density', 'n V ρ'), of: solid },
      { ...expected('bySheet', 'm_t', 'expected as a formed sheet', 'n A t ρ k'), of: sheet },
      { ...expected('bySide', 'm_s', 'expected by the other side', 'm₂ q'), of: side },
      {
        ...expected('byRemainder', 'm_r', 'left by the module for it', 'mₘ − Σm'),
        of: remainder,
      },
      { ...off('offSolid', 'm_V', 'off what volume and density give'), of: less(solid) },
      { ...off('offSheet', 'm_t', 'off what a formed sheet gives'), of: less(sheet) },
      { ...off('offSide', 'm_s', 'off the other side'), of: less(side) },
      { ...off('offRemainder', 'm_r', 'off what the module leaves'), of: less(remainder) },
    ],
  },
  look: (bound) => ({ findings: farOff(bound) }),
  modelError: {},
  sources: [
    { title: 'Mass as volume times density', status: 'from memory' },
    {
      title: 'Developed area of formed sheet; scatter of two sides of one design',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Each way stands for itself: what a way lacks is left out, and nothing is averaged.',
    'A sheet of one thickness covers the largest face of its envelope within half as much again.',
    'What a module leaves holds the errors of all others in it.',
  ],
  cautions: [],
  checks: [
    {
      what: 'mass of a cube and of a steel plate from handbook densities',
      source: 'EN 1993-1-1:2005, 3.2.6 (density of structural steel 7850 kg/m³, from memory)',
      status: 'from memory, recomputed',
      test: 'test/published/masses-at-the-scale.test.ts',
    },
  ],
  example: {
    mass: '4.12 ± 0.01 kg',
    pieces: '1',
    volume: '522 ± 5 cm3',
    density: '7850 ± 40 kg/m3',
    face: '2100 ± 20 cm2',
    thickness: '2.8 ± 0.05 mm',
    otherSide: '4.10 ± 0.01 kg',
    module: '462.1 ± 0.3 kg',
    others: '458.0 ± 0.2 kg',
  },
});

/** Ways whose expectation is further off than the warning allows. */
function farOff({ scalars }: BoundLook): Finding[] {
  const form = (name: string) => formOf(scalars[name]);
  const times = (...names: string[]) =>
    names.map(form).reduce((a, b) => (a && b ? productOf(a, b) : undefined));
  const [module, others] = [form('module'), form('others')];
  const ways: readonly (readonly [string, LinearForm | undefined])[] = [
    ['volume and density', times('pieces', 'volume', 'density')],
    ['a formed sheet', times('pieces', 'face', 'thickness', 'density', 'shape')],
    ['the other side', times('otherSide', 'alike')],
    ['what the module leaves', module && others && difference(module, others)],
  ];
  const mass = form('mass');
  return ways.flatMap(([by, expected]) => (mass && expected ? warned(mass, expected, by) : []));
}

const formOf = (found: Found | undefined): LinearForm | undefined =>
  found === undefined || 'missing' in found || found.unknownSpread ? undefined : found.form;
const difference = (a: LinearForm, b: LinearForm): LinearForm =>
  new FormBuilder().add(a).add(b, -1).done();

function warned(mass: LinearForm, expected: LinearForm, by: string): Finding[] {
  const d = difference(mass, expected);
  const u = formUncertainty(d);
  if (!(Math.abs(d.x) > WARN_FROM_U * u)) return [];
  const times = u > 0 ? `${Number((Math.abs(d.x) / u).toPrecision(2))} u` : 'exactly known';
  return [
    {
      code: 'mass-not-expected',
      level: 'doubt',
      place: { column: 'mass' },
      value: `${Number(mass.x.toPrecision(4))} kg, expected ${Number(expected.x.toPrecision(3))} kg`,
      what: `the mass is off what ${by} lets expect (${times}, warned from ${WARN_FROM_U} u)`,
      next: 'Look at unit, decimal sign, number of pieces and tote before it is written down.',
    },
  ];
}
