import type { LanguagePack } from './pack.ts';

/** Instruments as they are called, and words before them. Common practice, no source. */
const INSTRUMENTS =
  'scale, scales, calliper, caliper, callipers, calipers, gauge, gage, tape, ruler, rule, vernier, micrometer, wrench, jug, protractor, meter, multimeter, stopwatch, thermometer, load cell, balance, probe, dial, level, torque wrench, feeler gauge, tape measure, depth gauge'.split(
    ', ',
  );
const KINDS_OF = [
  '',
  'hoist ',
  'crane ',
  'little ',
  'big ',
  'small ',
  'bench ',
  'kitchen ',
  'hanging ',
  'floor ',
  'digital ',
  'thickness ',
  'ultrasonic ',
  'steel ',
  'paint ',
];
const read = INSTRUMENTS.flatMap((one) =>
  KINDS_OF.flatMap((kind) => [
    ...['on', 'by', 'with', 'off', 'from', 'using', 'per'].flatMap((by) =>
      ['the ', 'a ', ''].map((the) => `${by} ${the}${kind}${one}`),
    ),
    ...['says', 'say', 'reads', 'shows', 'gives', 'said', 'showed', 'was set', 'makes it'].map(
      (says) => `${kind}${one} ${says}`,
    ),
  ]),
);

/** Papers, plates and people that tell a number. */
const PAPERS =
  'label, tag, sticker, sheet, drawing, card, print, stamp, plate, nameplate, manual, spec, datasheet, data sheet, spec sheet, brochure, catalogue, parts list, handbook, booklet, website, supplier, maker, manufacturer, dealer, moulding, casting, side of it, paperwork, papers, job card, placard, leaflet'.split(
    ', ',
  );
const told = PAPERS.flatMap((one) => [
  ...['on', 'off', 'from', 'by', 'per', 'according to', 'says', 'say', 'to'].map(
    (by) => `${by} the ${one}`,
  ),
  ...[
    'says',
    'say',
    'said',
    'gives',
    'shows',
    'reads',
    'told',
    'reckons',
    'claims',
    'quotes',
    'has it',
    'wants',
    'calls',
  ].map((says) => `${one} ${says}`),
]).filter(
  (one) =>
    ![
      'by the side of it',
      'on the casting',
      'from the casting',
      'on the moulding',
      'off the moulding',
      'to the casting',
      'to the plate',
      'on the plate',
      'from the plate',
      'on the sheet metal',
      'to the moulding',
      'to the sheet',
      'off the plate',
      'off the casting',
    ].includes(one),
);

const phrases = (text: string): string[] => text.split(',').map((one) => one.trim());

export const ENGLISH_WAYS: Pick<
  LanguagePack,
  | 'ways'
  | 'asking'
  | 'negations'
  | 'notNegations'
  | 'corrections'
  | 'numbering'
  | 'notMeasured'
  | 'timeVerbs'
> = {
  ways: {
    measured: [
      ...read,
      ...phrases(
        'gauge, the gauge says, gage, calliper, callipers, caliper says, calipers, vernier, verniers, micrometer, tape says, tape measure, on the tape, the tape, ruler, scale says, scales say, on the scale, on the scales, the scale, the scales, scale reads, measured, measures, measuring, reads, reading, torque wrench says, on the wrench, breaks at, broke at, broke loose at, stopwatch, on the watch, weighed, weighs in at, ultrasonic, feeler',
      ),
    ],
    supplied: [
      ...told,
      ...phrases(
        'label says, the label, sticker, stamped on, stamped in, stamped with, it says on, says on, it says here, written on, marked on, embossed, drawing says, drawing, data sheet, datasheet, spec sheet, specification, according to, they told, told us, told me, they say, supplier says, brochure, manual says, the manual, nameplate, type plate, printed on, sheet says, says the sheet, says the manual, says the drawing, says on the label, it says, was told, it was quoted, stamped into, printed into, etched on, cast into, moulded in, on paper',
      ),
    ],
    calculated: phrases(
      'works out, worked out, work out, working out, comes out at, that makes, which makes, makes it, adds up to, add up to, times that is, divided by, in total that is, multiplied, i calculate, calculated, by my sums, do the sum, do the sums, add them up, added up, if you add, added together, add them together, if you multiply, take away, subtract, take one from the other, divide, that gives, doing the sum, sums to, from the numbers, in my head',
    ),
    inferred: phrases(
      "must be, must have, has to be, have to be, has got to be, got to be, so it's, so its, so that's, so they're, that tells, tells you, tells me, which means, that means, meaning, can only be, can't be anything, therefore, going by, judging by, by the look, by the sound, by the feel",
    ),
    guessed: phrases(
      "about, around, roughly, approximately, approx, circa, maybe, perhaps, probably, possibly, i'd say, i would say, i'd guess, i guess, guessing, i think, i reckon, reckon, call it, say, or so, ish, give or take, looks like, look like, looks to be, something like, some, somewhere, in the region, nearly, almost, just under, just over, ball park, ballpark, might be, could be, may be, should be, must be about, seems, not sure, i'm not sure, i believe, i suppose, suppose, feels like, hard to say, if i had to guess, more or less, thereabouts, near enough, sort of, kind of, a good, a bit under, a bit over, bit under, bit over, getting on for",
    ),
  },
  negations: phrases(
    "not, isn't, isnt, aren't, arent, wasn't, wasnt, no, never, don't, dont, doesn't, doesnt, didn't, ain't, without, nor, neither, nothing, cannot, can't, won't, rather than, instead of, never mind",
  ),
  notNegations: phrases(
    "not only, not just, no more than, not more than, no less than, not less than, no doubt, no question, not bad, not sure, not that, not too, not very, not so, why not, is it not, no problem, not even counting, can't be less than, don't know, dont know, don't forget, no wait, not exactly, never seen",
  ),
  corrections: phrases(
    'no, no wait, sorry, i mean, i meant, correction, make that, scratch that, scrap that, strike that, wait, hang on, hold on, actually, or rather, let me correct, i tell a lie, tell a lie, my mistake, excuse me, i stand corrected, forget that, well no',
  ),
  asking: phrases(
    "is it, is that, is this, are they, are those, are these, could they, could you, could it, would you, would they, why not, why wouldn't, why don't, why is, why are, why would, do they, does it, do you, did they, did you, was it, was that, can they, can you, can it, isn't it, isn't that, aren't they, not, so is it, so is that, and is it, and is that, so are they, and are they, how come, is the, are the, what if, shouldn't it, should it, would it, wouldn't it, couldn't they, couldn't it",
  ),
  numbering: phrases(
    'number, numbers, hoist, lift, bay, photo, photograph, picture, take, step, position, positions, item, camera, film, clip, page, channel, row, version, day, van, bag, question, grade, class, series, type, level, part number, joint, zone, post, table, figure, chapter, option, plan, phase, station, size, torx, tx, allen, hex, em, m, section, point number, tag, sheet, shelf, drawer, cart, tray, tote, box, locker, line, gate, build, model, mark, appendix, item number',
  ),
  notMeasured: phrases(
    "o'clock, oclock, ago, socket, sockets, spanner, spanners, wrench, key, bit, bits, drill, ratchet, allen, hex, torx, drive, series, grade, times, sure, certain, agree, of us, of you, people, guys, lads, past, years, year, weeks, week, days, day, left on, left in, left to go, months, month, more minutes, euros, words, am, pm, in the morning, in the afternoon, please, break, mark, marks, side, hand, on the list, questions, things, ways, reasons, kinds, sorts, photos, photographs, pictures, vans, vehicles, cars, shots",
  ),
  timeVerbs: phrases(
    'takes, take, took, taking, comes out in, comes off in, out in, off in, done in, undone in, removed in, cycle, cycle time, to remove, to undo, to unplug, to drop, each, per, a piece, apiece, to get it out, to take it out, to take off, to take out, to fit, weld in, cure, cures',
  ),
};
