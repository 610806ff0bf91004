import { JOINTS, MATERIALS, PROCESSES } from './english-making.ts';
import type { ComparisonTerm, LanguagePack } from './pack.ts';
import { terms } from './terms.ts';

const DIRECTIONS = terms(`
downward: down, downwards, straight down, out the bottom, out of the bottom, from below, from underneath, out from underneath, out underneath, from beneath, out downwards
upward: up, upwards, straight up, from above, out the top, from the top, out of the top, from on top, straight up through
rearward: rearwards, backwards, towards the back, to the back, to the rear, from the rear, from behind, out the back, towards the rear, straight back, facing back
forward: forwards, towards the front, to the front, from the front, out the front, straight forward, facing forward
outward: outwards, outboard, from outside, from the outside, to the outside, in from the outside
inward: inwards, inboard, from inside, from the inside, to the inside
sideways: from the side, to the side, out the side, off to the right, off to the left, out sideways, over to the left, over to the right, to one side, to the left, to the right
across the vehicle: across the van, across the car, crosswise, crossways, side to side, across the width, straight across, straight across the car, transverse, transversely
along the vehicle: lengthwise, lengthways, front to back, fore and aft, along the van, along the car, longitudinally
diagonal: diagonally, at an angle
`);

const comparison = (claim: string, text: string): ComparisonTerm[] =>
  terms(text).map((term) => ({ ...term, claim }));

/** Words before a way of working on a part: "quicker to get off", "easier to swap". */
const WORKING =
  'remove, take out, get at, take off, change, get out, get off, swap, replace, fit, undo, set, reach, repair, fix, service, strip, dismantle, take apart, clean, assemble, put back, drop, unbolt, work on, pull, weld'.split(
    ', ',
  );
const working = (words: string): string =>
  words
    .split(' ')
    .flatMap((word) => WORKING.map((verb) => `${word} to ${verb}`))
    .join(', ');

const COMPARISONS: ComparisonTerm[] = [
  ...comparison(
    'thickness',
    'thicker: beefier, chunkier, fatter, stouter, meatier, heftier\nthinner: skinnier, slimmer, flimsier',
  ),
  ...comparison(
    'stiffness',
    'stiffer: more stiff, more rigid, as stiff as, not as soft\nsofter: less stiff, floppier, more flexible, bendier, less rigid, not as stiff, nowhere near as stiff',
  ),
  ...comparison('strength', 'stronger: tougher, harder than, as strong as\nweaker: not as strong'),
  ...comparison(
    'mass',
    'heavier: weighs more, weigh more, as heavy as, twice the weight, twice as heavy, half as heavy again\nlighter: weighs less, weigh less, not as heavy, half the weight',
  ),
  ...comparison(
    'cost',
    'dearer: costs more, cost more, more expensive, pricier, costlier, twice the price, twice as dear\ncheaper: costs less, cost less, less expensive, half the price, saves money',
  ),
  ...comparison(
    'service',
    `easier to service: more serviceable, ${working('easier quicker faster simpler')}\nharder to service: less serviceable, ${working('harder slower trickier fiddlier')}`,
  ),
  ...comparison(
    'size',
    'bigger: larger, longer, wider, taller, deeper, broader\nsmaller: shorter, narrower, lower than, shallower',
  ),
  ...comparison('leaks', 'leaks: leaking, lets water in, lets in water, weeps'),
  ...comparison(
    'isolation',
    'isolated: better isolated, quieter, noisier, louder, isolates better, not as noisy, not as loud',
  ),
  ...comparison(
    'quality',
    'better: nicer than, better than, neater than\nworse: worse than, rougher than, simpler than',
  ),
];

const FREQUENCIES = terms(`
always: every time, every one of them, every single one, all of them do, without exception, they all do, they all have, all of them have
usual: usually, normally, typically, generally, most of them, most vans, most of the vans, most people, most of these, most makers, nearly everybody, nearly everyone, nearly all, nearly always, almost always, almost all, everybody does, everyone does, everybody does it, more often than not, nine times out of ten, nine out of ten, mostly you see, the usual
common: very common, quite common, pretty common, seen a lot, see it a lot, see that a lot, see this a lot, see a lot of, see plenty of, often, quite often, all the time, standard these days, everywhere these days, bog standard
sometimes: some of them, now and then, now and again, half of them, about half of them, half the time, once in a while, every now and then, occasionally, some vans
rare: rarely, seldom, hardly ever, hardly anyone, hardly anybody, hardly any, not many, very few, unusual, uncommon, hardly see, almost never, nearly never, don't often see, don't often see that, don't see many, don't see that often, don't see that much, don't see it often, not often, once in a blue moon, not very often, few people, one in ten
never seen before: never seen, never seen that, never seen this, nobody does, nobody else does, first time i've seen, first time i see, haven't seen, first one i've seen, never see, never come across, not seen that before, never saw, have not seen
`);

/** Things that a design does on purpose: "to save weight", "to clear the column". */
const PURPOSES =
  'stop, keep, prevent, avoid, protect, save, clear, get weight, get the weight, make room, make it, take the load, take the, carry the, allow, allow for, let it, let the, let you, hold the, reduce, cut, spread, meet, pass the, stiffen, leave room, give it, give the, help with, help the, catch, absorb, seal, damp, guide, lower the, raise the, balance, cool, drain, shield'.split(
    ', ',
  );

const REASONS = terms(`
so that: so you can, so they can, so it can, so it doesn't, so it does not, so they don't, so you don't, so it won't, so it stays, so they stay
because: because of, cause of, due to, cause it's, cause they, cause the, cause it, cause you, thanks to, owing to, on account of
for the test: for the crash, for the pole, for the side impact, for the regulation, for the pole test, for crash, for noise, for cooling, for stiffness, for service
purpose: there for, there to, in order to, that's to, it's to, which is to, is there to, are there to, is there for, are there for, meant to, supposed to, designed to, ${PURPOSES.map((verb) => `to ${verb}`).join(', ')}
reason: the reason is, the reason being, that's why, which is why, that is why, the idea is, the idea being, the point is
`);

/** What can be counted on a part, by singular and plural. */
const COUNTABLE =
  'screw bolt clip nut rivet stud pin hole slot bush/bushes mount seam weld plank cell module rib layer bead vent port connector plug hose pipe link arm spring bracket tab lug beam plate sheet seal washer spacer insert grommet fastener fixing bearing foot board sensor wire cable busbar/bus-bars rivnut hinge latch ring locator peg dowel pad piece row sheet shell strip bar tube stud stack turn lobe blade fin foil can winding tooth/teeth magnet roller wheel shim panel half/halves section loop bolt gusset bow stage shield sleeve corner clamp ply layer fan lens bulb tie wrap lead eye hook anchor pipe spigot';

const countable = Object.fromEntries(
  COUNTABLE.split(' ').flatMap((entry) => {
    const [one = '', many = `${one}s`] = entry.split('/');
    return [
      [one, one],
      [many || `${one}s`, one],
    ];
  }),
);

export const ENGLISH_FACTS: Pick<
  LanguagePack,
  | 'materials'
  | 'processes'
  | 'joints'
  | 'directions'
  | 'motions'
  | 'comparisons'
  | 'frequencies'
  | 'reasons'
  | 'countable'
> = {
  countable,
  materials: MATERIALS,
  processes: PROCESSES,
  joints: JOINTS,
  directions: DIRECTIONS,
  motions:
    'comes came goes pulls pull drops drop lifts lift slides slide runs run points point faces face swings lowers lower unscrews fits loaded loads fitted sits driven leans slopes go hangs screw screws bolts plugs clips push pull swings hinges opens unbolts undo undone routed loops drawn'.split(
      ' ',
    ),
  comparisons: COMPARISONS,
  frequencies: FREQUENCIES,
  reasons: REASONS,
};
