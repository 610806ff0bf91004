import { question, type ScalarInput } from '../method.ts';
import { LAMINATES } from '../sections.ts';
import { halpinTsai, isotropicShear, parallel, series } from './fibre-mixture.ts';
import { chosen, stated } from './inputs.ts';
import { output } from './outputs.ts';

const WHERE = 'not in the record: from data sheets, or by burning off the resin';
const modulus = (name: string, symbol: string, meaning: string, most: number): ScalarInput =>
  stated(
    {
      name,
      symbol,
      meaning,
      kind: 'stress',
      unit: 'GPa',
      range: [0.1, most],
      bounds: { above: 0 },
    },
    WHERE,
  );
const poisson = (name: string, symbol: string, meaning: string): ScalarInput =>
  stated(
    {
      name,
      symbol,
      meaning,
      kind: 'ratio',
      unit: '1',
      range: [0.1, 0.45],
      bounds: { above: -1, below: 0.5 },
    },
    WHERE,
  );
const density = (name: string, symbol: string, meaning: string): ScalarInput =>
  stated(
    {
      name,
      symbol,
      meaning,
      kind: 'density',
      unit: 'kg/m3',
      range: [800, 3000],
      bounds: { above: 0 },
    },
    WHERE,
  );
const shape = (name: string, symbol: string, meaning: string, usual: number): ScalarInput =>
  chosen(
    { name, symbol, meaning, kind: 'ratio', unit: '1', range: [0.1, 50], bounds: { atLeast: 0 } },
    { written: `exactly ${usual}`, x: usual },
    'a choice of the method, not a reading',
  );

export default question({
  id: 'fibre-mixture',
  version: 1,
  title: 'Ply constants from fibre and resin',
  wording: 'How stiff and heavy is a ply, by its fibre, its resin and the share of fibre?',
  subject: 'part',
  onRequest: true,
  section: LAMINATES,
  inputs: [
    stated(
      {
        ...{
          name: 'share',
          symbol: 'V',
          kind: 'ratio',
          unit: '%',
          meaning: 'share of fibre by volume',
        },
        ...{ range: [5, 75], bounds: { atLeast: 0, below: 90.7 } },
      },
      WHERE,
    ),
    modulus('e1f', 'E₁f', 'modulus of the fibre along it', 700),
    modulus('e2f', 'E₂f', 'modulus of the fibre across it', 200),
    modulus('g12f', 'Gf', 'shear modulus of the fibre', 120),
    poisson('nuf', 'νf', 'Poisson ratio of the fibre'),
    modulus('em', 'Em', 'modulus of the resin', 20),
    poisson('num', 'νm', 'Poisson ratio of the resin; below 0.5 for an isotropic material'),
    density('rhof', 'ρf', 'density of the fibre'),
    density('rhom', 'ρm', 'density of the resin'),
    shape('xiE', 'ξE', 'Halpin–Tsai factor across the fibre; 2 for round fibres', 2),
    shape('xiG', 'ξG', 'Halpin–Tsai factor in shear; 1 for round fibres', 1),
  ],
  body: {
    body: 'row',
    outputs: [
      {
        ...output(
          'e1',
          'E₁',
          'stress',
          'GPa',
          'modulus along the fibre, rule of mixtures',
          'E₁ = V E₁f + (1 − V) Em',
        ),
        of: (v, e1f, _e2f, _gf, _nuf, em) => parallel(e1f, em, v),
      },
      {
        ...output(
          'nu12',
          'ν₁₂',
          'ratio',
          '1',
          'major Poisson ratio, rule of mixtures',
          'ν₁₂ = V νf + (1 − V) νm',
        ),
        of: (v, _e1f, _e2f, _gf, nuf, _em, num) => parallel(nuf, num, v),
      },
      {
        ...output(
          'e2series',
          'E₂,s',
          'stress',
          'GPa',
          'modulus across the fibre, inverse rule of mixtures: a lower bound',
          '1/E₂ = V/E₂f + (1 − V)/Em',
        ),
        of: (v, _e1f, e2f, _gf, _nuf, em) => series(e2f, em, v),
      },
      {
        ...output(
          'e2',
          'E₂',
          'stress',
          'GPa',
          'modulus across the fibre, Halpin–Tsai',
          'E₂ = Em (1 + ξ η V)/(1 − η V), η = (E₂f/Em − 1)/(E₂f/Em + ξ)',
        ),
        of: (v, _e1f, e2f, _gf, _nuf, em, _num, _rhof, _rhom, xi) => halpinTsai(e2f, em, v, xi),
      },
      {
        ...output(
          'g12series',
          'G₁₂,s',
          'stress',
          'GPa',
          'shear modulus, inverse rule of mixtures: a lower bound',
          '1/G₁₂ = V/Gf + (1 − V)/Gm, Gm = Em/(2(1 + νm))',
        ),
        of: (v, _e1f, _e2f, gf, _nuf, em, num) => series(gf, isotropicShear(em, num), v),
      },
      {
        ...output(
          'g12',
          'G₁₂',
          'stress',
          'GPa',
          'shear modulus, Halpin–Tsai',
          'as E₂, with Gf, Gm and ξG',
        ),
        of: (v, _e1f, _e2f, gf, _nuf, em, num, _rhof, _rhom, _xiE, xi) =>
          halpinTsai(gf, isotropicShear(em, num), v, xi),
      },
      {
        ...output(
          'density',
          'ρ',
          'density',
          'kg/m3',
          'density, without voids',
          'ρ = V ρf + (1 − V) ρm',
        ),
        of: (v, _e1f, _e2f, _gf, _nuf, _em, _num, rhof, rhom) => parallel(rhof, rhom, v),
      },
    ],
  },
  modelError: {
    e1: { relative: 0.03, sharedFraction: 0.5 },
    e2: { relative: 0.12, sharedFraction: 0.5 },
    g12: { relative: 0.12, sharedFraction: 0.5 },
  },
  sources: [
    {
      title: 'Kaw, Mechanics of Composite Materials, 2nd edition 2006',
      at: 'examples 3.3 to 3.9',
      status: 'from memory',
    },
    {
      title: 'Halpin and Kardos, The Halpin–Tsai equations: a review, Polym. Eng. Sci. 16, 1976',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Long straight fibres, all one way, bonded; no voids.',
    'Along the fibre both strain alike; across it the truth lies between the two forms given.',
  ],
  cautions: [],
  checks: [
    {
      what: 'glass and epoxy, 70 % fibre: E₁ 60.52, E₂ 10.37 and 20.20, ν₁₂ 0.230, G₁₂ 4.014 GPa',
      source: 'Kaw, Mechanics of Composite Materials, 2nd edition, examples 3.3 to 3.8',
      status: 'from memory, recomputed',
      test: 'test/published/fibre-mixtures.test.ts',
    },
  ],
  example: {
    share: '50 ± 2 %',
    e1f: '72 ± 2 GPa',
    e2f: '72 ± 2 GPa',
    g12f: '29.5 ± 1 GPa',
    nuf: '0.22 ± 0.01',
    em: '3.3 ± 0.2 GPa',
    num: '0.36 ± 0.02',
    rhof: '2560 ± 20 kg/m3',
    rhom: '1180 ± 20 kg/m3',
    xiE: 'exactly 2',
    xiG: 'exactly 1',
  },
});
