import { question, type ScalarInput } from '../method.ts';
import { BOLTS } from '../sections.ts';
import { chosen } from '../structure/inputs.ts';
import { worked } from '../structure/outputs.ts';
import { DIAMETER, friction, HEAD_HOLE, HEAD_OUTER, PITCH, ratio, YIELD } from './bolt-inputs.ts';
import { pitchDiameter, stressArea, threadArm, twistFactor } from './thread-geometry.ts';

const TORQUE: ScalarInput = {
  in: 'scalar',
  name: 'T',
  symbol: 'T',
  kind: 'torque',
  unit: 'N.m',
  meaning: 'tightening torque',
  range: [0.1, 3000],
  bounds: { above: 0 },
  where: 'specified torque of the joint',
  find: (at) => at.number(at.subject, 'torque.specified'),
};

const headArm = (mu: number, dw: number, dh: number): number => (mu * (dw + dh)) / 4;
type Args = [T: number, d: number, P: number, g: number, k: number, dw: number, dh: number];
const preload = (...[T, d, P, g, k, dw, dh]: Args): number =>
  T / (threadArm(d, P, g) + headArm(k, dw, dh));
/** Share of the yield stress up to which a bolt is tightened in the tables of VDI 2230. */
const USE = 0.9;
const atUse = (d: number, P: number, g: number, Rp: number): number =>
  (USE * Rp * stressArea(d, P)) / twistFactor(d, P, g);

export default question({
  id: 'bolt-preload',
  version: 1,
  title: 'Preload of a bolt from its torque',
  wording: 'How hard does a bolt pull at its tightening torque?',
  subject: 'joint',
  onRequest: true,
  section: BOLTS,
  inputs: [
    TORQUE,
    DIAMETER,
    PITCH,
    friction('muThread', 'μ_G', 'thread'),
    friction('muHead', 'μ_K', 'head'),
    HEAD_OUTER,
    HEAD_HOLE,
    YIELD,
    chosen(
      ratio('scatter', 's', 'half-width of the scatter of preload from bolt to bolt', [0, 0.6]),
      { written: 'exactly 0.25', x: 0.25 },
      'torque wrench: 0.25 oiled, 0.35 dry; by elongation 0.10 (common practice)',
    ),
  ],
  body: {
    body: 'row',
    outputs: [
      worked(
        ...(['F', 'F', 'force', 'kN'] as const),
        'preload',
        'F = T / (P / (2 π) + 0.577 d₂ μ_G + μ_K (d_w + d_h) / 4)',
        (T, d, P, g, k, dw, dh) => preload(T, d, P, g, k, dw, dh),
      ),
      worked(
        ...(['least', 'F₁', 'force', 'kN'] as const),
        'least preload within the scatter',
        'F₁ = F (1 − s)',
        (T, d, P, g, k, dw, dh, _r, s) => preload(T, d, P, g, k, dw, dh) * (1 - s),
      ),
      worked(
        ...(['most', 'F₂', 'force', 'kN'] as const),
        'largest preload within the scatter',
        'F₂ = F (1 + s)',
        (T, d, P, g, k, dw, dh, _r, s) => preload(T, d, P, g, k, dw, dh) * (1 + s),
      ),
      worked(
        ...(['use', 'ν', 'ratio', '%'] as const),
        'largest stress while it is turned, over the yield stress',
        'ν = F σ / (A_s R_p)',
        (T, d, P, g, k, dw, dh, Rp) =>
          (preload(T, d, P, g, k, dw, dh) * twistFactor(d, P, g)) / (stressArea(d, P) * Rp),
      ),
      worked(
        ...(['nut', 'K', 'ratio', '1'] as const),
        'torque over preload and diameter',
        'K = T / (F d)',
        (_T, d, P, g, k, dw, dh) => (threadArm(d, P, g) + headArm(k, dw, dh)) / d,
      ),
      worked(
        ...(['threadTorque', 'T_G', 'torque', 'N.m'] as const),
        'of the torque, in the thread with its pitch',
        'T_G = F (P / (2 π) + 0.577 d₂ μ_G)',
        (T, d, P, g, k, dw, dh) => preload(T, d, P, g, k, dw, dh) * threadArm(d, P, g),
      ),
      worked(
        ...(['pitchTorque', 'T_P', 'torque', 'N.m'] as const),
        'of this, what the pitch turns into preload',
        'T_P = F P / (2 π)',
        (T, d, P, g, k, dw, dh) => (preload(T, d, P, g, k, dw, dh) * P) / (2 * Math.PI),
      ),
      worked(
        ...(['headTorque', 'T_K', 'torque', 'N.m'] as const),
        'of the torque, friction under the head',
        'T_K = F μ_K (d_w + d_h) / 4',
        (T, d, P, g, k, dw, dh) => preload(T, d, P, g, k, dw, dh) * headArm(k, dw, dh),
      ),
      worked(
        ...(['tableForce', 'F_M', 'force', 'kN'] as const),
        'preload at 90 % of the yield stress',
        'F_M = 0.9 R_p A_s / σ',
        (_T, d, P, g, _k, _w, _h, Rp) => atUse(d, P, g, Rp),
      ),
      worked(
        ...(['tableTorque', 'T_M', 'torque', 'N.m'] as const),
        'torque at which it is reached',
        'T_M = F_M (P / (2 π) + 0.577 d₂ μ_G + μ_K (d_w + d_h) / 4)',
        (_T, d, P, g, k, dw, dh, Rp) =>
          atUse(d, P, g, Rp) * (threadArm(d, P, g) + headArm(k, dw, dh)),
      ),
      {
        ...worked(
          ...(['sigma', 'σ', 'ratio', '1'] as const),
          'largest stress over mean tension while it is turned',
          'σ = √(1 + 3 (1.5 d₂ (P / (π d₂) + 1.155 μ_G) / d_s)²)',
          (_T, d, P, g) => twistFactor(d, P, g),
        ),
        step: true,
      },
      {
        ...worked(
          ...(['d2', 'd₂', 'length', 'mm'] as const),
          'pitch diameter',
          'd₂ = d − 0.6495 P',
          (_T, d, P) => pitchDiameter(d, P),
        ),
        step: true,
      },
    ],
  },
  modelError: {},
  sources: [
    { title: 'VDI 2230 part 1', at: 'assembly preload and torque', status: 'from memory' },
    { title: 'ISO 16047', at: 'torque, thread and head friction', status: 'from memory' },
    { title: 'ISO 898-1', at: 'property classes', status: 'published' },
    {
      title: 'Scatter of preload by way of tightening',
      status: 'common practice, no source',
    },
  ],
  assumptions: [
    'Friction is that of the joint as assembled; a used or oiled bolt pulls otherwise at the same torque. Published lists of torque differ by 15 %.',
    'Prevailing torque of locking nuts is not in it; settling takes some of the preload away afterwards.',
  ],
  cautions: ['bolt-tightening'],
  checks: [
    {
      what: 'preload and torque of fine and coarse threads at friction 0.10 to 0.14; split of the torque of M10 at 30 kN',
      source: 'VDI 2230 tables; ISO 16047 formulas',
      status: 'seen',
      test: 'test/published/vdi-2230-bolts.test.ts',
    },
  ],
  example: {
    T: '95 ± 3 N.m',
    d: 'exactly 12 mm',
    P: 'exactly 1.75 mm',
    muThread: '0.12 ± 0.02',
    muHead: '0.12 ± 0.02',
    dw: '16.6 ± 0.1 mm',
    dh: '13.5 ± 0.1 mm',
    Rp: '940 ± 10 MPa',
    scatter: 'exactly 0.25',
  },
});
