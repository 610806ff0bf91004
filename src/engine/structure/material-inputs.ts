import { type MaterialProperty, materialOf } from '../../data/index.ts';
import type { Finder, Found, ScalarInput } from '../method.ts';

/**
 * A constant of the subject's material: its own reading when the record has one, else the row of
 * the table of materials that its material is called by; missing when neither knows it.
 */
export function materialConstant(at: Finder, property: MaterialProperty, words: string): Found {
  const own = at.number(at.subject, property);
  if (!('missing' in own)) return own;
  const text = at.text(at.subject, 'material').text;
  if (text === '')
    return at.missing(words, 'neither its reading nor the material is in the record');
  const material = materialOf(text);
  const value = material?.[property];
  if (!material || !value)
    return at.missing(words, `the table of materials has no ${words} for "${text}"`);
  const { x, spread, how, source } = value;
  return at.tabled({
    id: `material/${material.id}/${property}`,
    words: `${words} of ${material.words}`,
    x,
    spread,
    how,
    source,
  });
}

const constant = (
  property: MaterialProperty,
  input: Pick<ScalarInput, 'name' | 'symbol' | 'kind' | 'unit' | 'meaning' | 'range'> &
    Partial<Pick<ScalarInput, 'bounds'>>,
): ScalarInput => ({
  in: 'scalar',
  bounds: { above: 0 },
  ...input,
  where: `${property} of the part, else by its material from the table of materials`,
  find: (at) => materialConstant(at, property, input.meaning),
});

export const DENSITY = constant('density', {
  name: 'density',
  symbol: 'ρ',
  kind: 'density',
  unit: 'kg/m3',
  meaning: 'density',
  range: [500, 12000],
});

/** For sections: taken as steel unless said otherwise. */
export const DENSITY_OR_STEEL: ScalarInput = { ...DENSITY, assumed: '7850 ± 40 kg/m3' };

export const MODULUS = constant('modulus', {
  name: 'modulus',
  symbol: 'E',
  kind: 'stress',
  unit: 'GPa',
  meaning: 'Young’s modulus',
  range: [0.5, 450],
});

export const POISSON = constant('poisson', {
  name: 'poisson',
  symbol: 'ν',
  kind: 'ratio',
  unit: '1',
  meaning: 'Poisson ratio of an isotropic material',
  range: [0.1, 0.49],
  bounds: { above: -1, below: 0.5 },
});
