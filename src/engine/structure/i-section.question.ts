import { type PlainInputs, question } from '../method.ts';
import { PROFILES } from '../sections.ts';
import { radius, scalarsOf, size } from './inputs.ts';
import { DENSITY_OR_STEEL } from './material-inputs.ts';
import { output, refused } from './outputs.ts';
import { type ISizes, iShape } from './profiles.ts';
import { sectionFigures, YZ } from './section-figure.ts';
import { PROFILE_OUTPUTS, profileNumbers, shapeForms } from './section-outputs.ts';
import { rolledITorsion, stripTorsion } from './torsion-forms.ts';

const FORM = 'rolled I with root fillets: strips, their ends and the circles of the junctions';

export default question({
  id: 'i-section',
  version: 1,
  title: 'I-section with root fillets',
  wording: 'How stiff is a rolled I-section in bending and in torsion?',
  subject: 'part',
  onRequest: true,
  section: PROFILES,
  inputs: [
    size('h', 'h', 'depth of the section', [20, 1200], 'envelope.height'),
    size('b', 'b', 'width of the flanges', [10, 500], 'envelope.width'),
    size('tw', 'tw', 'thickness of the web', [0.5, 60]),
    size('tf', 'tf', 'thickness of the flanges', [0.5, 80]),
    radius('r', 'r', 'radius of the root fillets'),
    DENSITY_OR_STEEL,
  ],
  body: {
    body: 'solve',
    outputs: [
      ...PROFILE_OUTPUTS,
      output(
        'It',
        'It',
        'secondMoment',
        'cm4',
        'torsion constant with root fillets',
        'It = ⅔(b − 0.63 tf) tf³ + ⅓(h − 2 tf) tw³ + 2 (tw/tf)(0.145 + 0.1 r/tf) D⁴, D = ((r + tw/2)² + (r + tf)² − r²)/(2 r + tf)',
      ),
      {
        ...output(
          'ItStrips',
          'It,s',
          'secondMoment',
          'cm4',
          'torsion constant by thin strips alone, for comparison: fillets left out',
          'It,s = Σ b t³ / 3',
        ),
        step: true,
      },
      output('Iw', 'Iw', 'warpingConstant', 'cm6', 'warping constant', 'Iw = tf b³ (h − tf)² / 24'),
    ],
    solve,
  },
  figures: (x, outs) =>
    outs.area ? sectionFigures(iShape(scalarsOf(x, 'h', 'b', 'tw', 'tf', 'r')), YZ) : [],
  modelError: { It: { relative: 0.01, sharedFraction: 1 } },
  sources: [
    {
      title: 'EN 10365:2017, Hot rolled steel channels, I and H sections',
      at: 'shape and nominal sizes; it gives no section properties beyond mass',
      status: 'published',
    },
    {
      title: 'El Darwish and Johnston, Torsion of structural shapes, J. Struct. Div. ASCE 91, 1965',
      at: 'torsion constant with fillets, as producers’ tables use it',
      status: 'from memory',
    },
  ],
  assumptions: [
    'Doubly symmetric, flanges of even thickness; y is the strong axis (along the flanges), z the weak one.',
    'Fillets are drawn as 48 chords a quarter: area and moments are off by 1e-4 of themselves at most.',
    'The torsion constant is the form with fillets; thin strips alone stand beside it for comparison.',
  ],
  cautions: [],
  checks: [
    {
      what: 'IPE 80 and IPE 200: all properties',
      source: 'producers’ tables of sections to EN 10365:2017',
      status: 'seen',
      test: 'test/published/en-10365-sections.test.ts',
    },
  ],
  example: {
    h: '200 ± 0.5 mm',
    b: '100 ± 0.5 mm',
    tw: '5.6 ± 0.1 mm',
    tf: '8.5 ± 0.1 mm',
    r: '12 ± 0.5 mm',
    density: '7850 ± 40 kg/m3',
  },
});

function solve(x: PlainInputs) {
  const { density, ...sizes } = scalarsOf(x, 'h', 'b', 'tw', 'tf', 'r', 'density');
  const fault = faultOf(sizes);
  if (fault) return refused('no-such-section', fault[0], fault[1], 'Measure again.');
  const shape = iShape(sizes);
  const { h, b, tw, tf } = sizes;
  return {
    outputs: {
      ...profileNumbers(shape, density),
      It: rolledITorsion(sizes),
      ItStrips: stripTorsion([
        { length: b, thickness: tf },
        { length: b, thickness: tf },
        { length: h - tf, thickness: tw },
      ]),
      Iw: (tf * b ** 3 * (h - tf) ** 2) / 24,
    },
    detail: shapeForms(FORM, (factor) => {
      const walls = { ...sizes, tw: factor * tw, tf: factor * tf };
      return { shape: iShape(walls), torsion: rolledITorsion(walls) };
    }),
  };
}

/** Input at fault and what is wrong; sizes that are missing are no fault. */
function faultOf({ h, b, tw, tf, r }: ISizes): readonly [string, string] | undefined {
  if (h - 2 * tf - 2 * r < 0) return ['h', 'the flanges and fillets are deeper than the section'];
  if (b - tw - 2 * r < 0) return ['b', 'the web and fillets are wider than the flanges'];
  return undefined;
}
