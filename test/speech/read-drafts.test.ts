import { describe, expect, it } from 'vitest';
import { type Cue, ENGLISH, readDrafts, type SpokenPart } from '../../src/speech/index.ts';

const part = (label: string, name: string, parent: string | null = '40'): SpokenPart => ({
  id: label,
  label,
  name,
  kind: parent === null ? 'vehicle' : label.length === 2 ? 'assembly' : 'part',
  parent,
});
const PARTS = [
  part('CART', 'cart', null),
  part('40', 'traction battery', 'CART'),
  part('61', 'rear suspension and cradle', 'CART'),
  part('40-1', 'Lid, moulded'),
  part('40-2', 'Floor, welded plank extrusions'),
  part('61-1', 'Rear cradle, welded tube', '61'),
  part('61-2', 'Camber link LH', '61'),
  part('61-3', 'Camber link RH', '61'),
];
const cue = (text: string, i = 0): Cue => ({
  fromS: 10 * i,
  toS: 10 * i + 8,
  text,
  line: i,
  who: 'lead',
});
const read = (...texts: string[]) => readDrafts(texts.map(cue), PARTS, ENGLISH);
const quantities = (...texts: string[]) =>
  read(...texts).drafts.flatMap(({ quantity: q, how }) =>
    q ? [`${q.low === q.high ? q.low : `${q.low}-${q.high}`} ${q.unit} ${how}`] : [],
  );
const terms = (text: string) =>
  read(text).drafts.flatMap((d) => (d.term === undefined ? [] : [`${d.kind}: ${d.term}`]));
const parts = (...texts: string[]) =>
  read(...texts).drafts.map((d) => d.parts.map((p) => p.label).join());

describe('quantities as spoken', () => {
  it.each([
    ['the lid is nine or ten millimetres', '9-10 mm guessed'],
    ['the lid is between nine and ten millimetres', '9-10 mm guessed'],
    ['the lid is nine ten millimetres', '9-10 mm guessed'],
    ['the lid is about a quarter inch', '0.25 [in_i] guessed'],
    ['the lid is a couple of hundred grams', '200 g guessed'],
    ['the lid is two point six millimetres', '2.6 mm seen'],
    ['the gauge says two point six', '2.6 mm measured'],
    ['the lid is two and a half thick', '2.5 mm seen'],
    ['the lid is twelve point two kilos on the scale', '12.2 kg measured'],
    ['the label says fifty six point three kilowatt hours', '56.3 kW.h supplied'],
    ['the floor is fifteen twenty millimetres long', '1520 mm seen'],
    ['the floor is a hundred and twenty five millimetres', '125 mm seen'],
    ['the lid is 2.6mm', '2.6 mm seen'],
    ['the lid takes nine minutes to take out', '9 min seen'],
    ['sixty two screws round the lid', '62 1 seen'],
    ['it must be three millimetres', '3 mm inferred'],
    ['that works out at forty newton metres', '40 N.m calculated'],
  ])('%s', (text, expected) => {
    expect(quantities(text)).toEqual([expected]);
  });

  it.each([
    'hoist number three',
    'give me five minutes',
    'pass me the thirteen mil socket',
    'it is not three millimetres',
    'photo twelve please',
    'one of the guys said so',
    'at half past nine',
    'M12 by ninety',
  ])('no measurement: %s', (text) => {
    expect(quantities(text)).toEqual([]);
  });

  it.each([
    ['the lid is two millimetres no three millimetres', '3 mm seen'],
    ['the lid is two no three millimetres', '3 mm seen'],
    ['eighteen screws sorry nineteen screws', '19 1 seen'],
    ['three millimetres scratch that', undefined],
  ])('corrected: %s', (text, expected) => {
    expect(quantities(text)).toEqual(expected === undefined ? [] : [expected]);
  });

  it('a second speaker corrects the first', () => {
    const cues: Cue[] = [
      cue('the lid is about two millimetres', 0),
      { ...cue('no two point six on the gauge', 1), fromS: 8.1, who: 'second' },
    ];
    const found = readDrafts(cues, PARTS, ENGLISH);
    expect(found.drafts.map((d) => d.quantity?.low)).toEqual([2.6]);
    expect(found.leftOut).toMatchObject([{ why: 'taken back' }]);
  });
});

describe('parts', () => {
  it('the one named, the one in hand, the one after', () => {
    expect(parts('the lid is two millimetres')).toEqual(['40-1']);
    expect(parts('now the lid', 'it is two millimetres')).toEqual(['40-1']);
    expect(parts('now the floor', 'sixty two screws round the lid')).toEqual(['40-1']);
  });
  it('sides', () => {
    expect(parts('left camber link is two kilos')).toEqual(['61-2']);
    expect(parts('camber link is two kilos')).toEqual(['61-2,61-3']);
  });
  it('names as a recogniser mangles them', () => {
    expect(parts('the rear cradel is two kilos')).toEqual(['61-1']);
    expect(parts('the camper link is two kilos')).toEqual(['61-2,61-3']);
  });
  it('what is only compared with does not come into hand', () => {
    expect(parts('the lid', 'is stiffer than the floor', 'and two millimetres')).toEqual([
      '40-1',
      '40-1',
    ]);
  });
  it('nothing named, nothing drafted as part', () => {
    expect(parts('two millimetres')).toEqual(['']);
  });
});

describe('terms', () => {
  it.each([
    [
      'the lid is moulded glass polyester',
      ['process: moulding', 'material: glass-fibre polyester'],
    ],
    ['the lid is stiffer than the floor', ['comparison: stiffer']],
    ['the lid comes straight up', ['direction: upward']],
    ['the lid is bonded so that it does not leak', ['joint: adhesive joint', 'reason: so that']],
    ['the lid is not bonded it is bolted', ['joint: bolted joint']],
    ['the lid you hardly ever see in steel', ['frequency: rare', 'material: steel']],
  ])('%s', (text, expected) => {
    expect(terms(text)).toEqual(expected);
  });

  it('a spoken mark is kept with its time', () => {
    expect(read('the lid', 'mark that please').marks).toEqual([10]);
  });
});
