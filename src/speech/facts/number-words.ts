import type { Kind } from '../../quantity/index.ts';

export interface Unit {
  readonly code: string;
  readonly kind: Kind;
}

/** Words that may stand between a number and its unit. */
export const FILLERS = new Set(['odd', 'plus', 'whole', 'good', 'full', 'and']);
/** Words that part a number from a noun further on. */
export const PARTING = new Set(
  "and or is are was it it's its at in on from with to that than then you i we for no not but if when so because about into a an the this these as they there this here what which where per each all".split(
    ' ',
  ),
);
export const LINKING = new Set(
  "is of about at around roughly maybe it's its be like just only the was are say call it a about that's probably".split(
    ' ',
  ),
);
/** A thread as it is called: M6, m12x1.5. */
export const SPEC = /^m\d/;
export const GIVEN = [
  'give me',
  'give us',
  'need',
  'only need',
  'in',
  'wait',
  'another',
  'last',
  'next',
  'back in',
  'just',
];
/** Before a number: an instrument or a sheet gives it. */
export const READS = new Set(['says', 'reads', 'shows', 'at', 'gives', 'say', 'read', 'is', 'it']);
export const BEHIND = new Set(['on', 'by', 'off', 'with', 'from']);
export const COUNTED_ALONE = [
  'of them',
  'of these',
  'of those',
  'of em',
  'a side',
  'per side',
  'each side',
  'in total',
  'altogether',
  'all told',
  'either side',
  'on each side',
  'in all',
  'of those',
  'i counted',
  'i counted them',
  'we counted',
  'counting them',
  'all round',
  'of each',
  'in a row',
];
export const COUNTING = ['counted', 'i count', 'count', "i've counted", 'i make it'];
export const DEMONSTRATIVES = new Set(
  'this that the next last other any no which every another each first second'.split(' '),
);
export const IMPLIED: readonly (readonly [readonly string[], Unit])[] = [
  [
    [
      'gauge',
      'gage',
      'calliper',
      'callipers',
      'caliper',
      'calipers',
      'vernier',
      'verniers',
      'micrometer',
      'feeler',
      'tape',
      'ruler',
      'ultrasonic',
    ],
    { code: 'mm', kind: 'length' },
  ],
  [['scale', 'scales', 'weighed', 'weighs'], { code: 'kg', kind: 'mass' }],
  [['wrench', 'torque'], { code: 'N.m', kind: 'torque' }],
];
