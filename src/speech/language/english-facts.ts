import type { ComparisonTerm, LanguagePack, Term } from './pack.ts';

/** `term: said, said` a line; the term itself is said too. */
const terms = (text: string): Term[] =>
  text
    .trim()
    .split('\n')
    .map((line) => {
      const [term = '', said = ''] = line.split(':').map((part) => part.trim());
      return { term, said: [term, ...said.split(',').map((one) => one.trim())].filter(Boolean) };
    });

const MATERIALS = terms(`
glass-fibre polyester: glass polyester, glass reinforced polyester, sheet moulding compound, smc, s m c, fibreglass, fiberglass, glass fibre, glass fiber, grp
aluminium: aluminum, ally, alloy, aluminium alloy
aluminium casting alloy: cast aluminium, cast aluminum, cast ally
die cast aluminium: die cast aluminum, diecast aluminium, die cast ally
extruded aluminium: aluminium extrusion, aluminum extrusion
steel: mild steel, plain steel, sheet steel, steel sheet
high-strength steel: high strength steel, dual phase steel, dual phase, dp steel, martensitic steel, martensitic, boron steel, press hardened steel, hot stamped steel
stainless steel: stainless
spring steel
cast iron: grey iron, gray iron, ductile iron, iron
copper
brass
magnesium
glass: laminated glass, tempered glass, toughened glass
rubber: natural rubber, epdm
silicone: silicone foam, silicon foam
foam: polyurethane foam, pu foam
polypropylene: pp, polyprop, talc filled polypropylene, long glass polypropylene
polyamide: nylon, glass filled nylon, pa66
polyethylene: hdpe
plastic
felt: needle felt
plywood: birch ply, ply
mica
wax
leather
paper honeycomb: honeycomb
`);

const PROCESSES = terms(`
stamping: stamped, pressed, pressing, deep drawn, drawn
hot stamping: hot stamped, hot formed, press hardened
roll forming: roll formed, rolled formed, roll form, role formed
extrusion: extruded, extrusions
die casting: die cast, diecast, pressure cast
casting: cast, gravity cast, sand cast
forging: forged, forging
moulding: moulded, molded, injection moulded, injection molded, compression moulded, compression molded
blow moulding: blow moulded, blow molded
machining: machined, milled, turned on a lathe
bending: bent, bent tube
brazing: brazed
laser cutting: laser cut
thermoforming: thermoformed
anodising: anodised, anodized
painting: painted, powder coated, e coated, e coat
hydroforming: hydroformed
heat treatment: heat treated, case hardened
`);

const JOINTS = terms(`
friction stir weld: friction stir welded, friction stir welds, friction stir welding, friction stirred, stir welded, friction stair welded, friction stir, stir weld
spot weld: spot welded, spot welds, resistance welded
laser weld: laser welded, laser welds
MIG weld: mig welded, mig welds, mig, arc welded
welded joint: welded, welded up
adhesive joint: bonded, glued, glue, structural adhesive, stuck on, bond line
screwed joint: screwed, screwed down, screwed on, screws into
bolted joint: bolted, bolted up, bolted straight, hard bolted, bolts into, bolts onto, bolts to
riveted joint: riveted, rivetted, rivets, self piercing rivets
rivet nut: rivet nuts, rivnuts
clipped joint: clipped, clipped in, clips in, snapped in, snaps in, snap fit, push pins
press fit: pressed in, press fitted, interference fit
quick connector: quick connectors, quick connect
hem: hemmed
sealed joint: sealed, gasketed
hard mount: hard mounted, mounted solid
rubber mount: rubber mounted, on rubber bushes, on bushes, soft mounted
`);

const DIRECTIONS = terms(`
downward: down, downwards, straight down, out the bottom, out of the bottom, from below, from underneath
upward: up, upwards, straight up, from above, out the top, from the top
rearward: rearwards, backwards, towards the back, to the back, to the rear, from the rear, from behind
forward: forwards, towards the front, to the front, from the front
outward: outwards, outboard, from outside, from the outside, to the outside
inward: inwards, inboard, from inside, from the inside
sideways: from the side, to the side, out the side
across the vehicle: across the van, across the car, crosswise, side to side, across the width
along the vehicle: lengthwise, lengthways, front to back, fore and aft, along the van
`);

const comparison = (claim: string, text: string): ComparisonTerm[] =>
  terms(text).map((term) => ({ ...term, claim }));

const COMPARISONS: ComparisonTerm[] = [
  ...comparison('thickness', 'thicker: beefier, chunkier\nthinner'),
  ...comparison(
    'stiffness',
    'stiffer: more stiff, more rigid\nsofter: less stiff, floppier, more flexible',
  ),
  ...comparison('strength', 'stronger\nweaker'),
  ...comparison('mass', 'heavier: weighs more\nlighter: weighs less'),
  ...comparison(
    'cost',
    'dearer: costs more, cost more, more expensive, pricier, costlier\ncheaper: costs less, cost less, less expensive',
  ),
  ...comparison(
    'service',
    'easier to service: easier to remove, easier to take out, easier to get at, easier to take off, more serviceable, easier to change, quicker to remove, quicker to change, quicker to take out, easier to get out\nharder to service: harder to remove, harder to take out, harder to get at, less serviceable, harder to change, slower to remove',
  ),
  ...comparison(
    'size',
    'bigger: larger, longer, wider, taller, deeper\nsmaller: shorter, narrower, lower than',
  ),
  ...comparison('leaks', 'leaks: leaking, lets water in, lets in water, weeps'),
  ...comparison('isolation', 'isolated: better isolated, quieter, noisier, isolates better'),
];

const FREQUENCIES = terms(`
always: every time, every one of them, every single one, all of them do, without exception
usual: usually, normally, most of them, most vans, most of the vans, most people, nearly everybody, nearly everyone, nearly all, nearly always, almost always, everybody does, everyone does, more often than not
common: very common, quite common, pretty common, seen a lot, see it a lot, see that a lot, see this a lot, see a lot of
sometimes: some of them, now and then, now and again, half of them, about half of them, half the time
rare: rarely, seldom, hardly ever, hardly anyone, hardly anybody, not many, very few, unusual, uncommon, hardly see
never seen before: never seen, never seen that, never seen this, nobody does, nobody else does, first time i've seen, first time i see, haven't seen
`);

const REASONS = terms(`
so that: so you can, so they can, so it can, so it doesn't, so it does not, so they don't
because: because of, cause of, due to
for the test: for the crash, for the pole, for the side impact, for the regulation
purpose: there for, there to, in order to, that's to, it's to, which is to, is there to, are there to, is there for, are there for, to stop, to keep, to prevent, to avoid, to protect
reason: the reason is, the reason being, that's why, which is why, that is why
`);

/** What can be counted on a part, by singular and plural. */
const COUNTABLE =
  'screw bolt clip nut rivet stud pin hole slot bush/bushes mount seam weld plank cell module rib layer bead vent port connector plug hose pipe link arm spring bracket tab lug beam plate sheet seal washer spacer insert grommet fastener fixing bearing foot board sensor wire cable busbar/bus-bars rivnut hinge latch ring locator peg dowel pad piece';

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
    'comes came goes pulls pull drops drop lifts lift slides slide runs run points point faces face swings lowers lower unscrews fits loaded loads fitted sits driven leans slopes'.split(
      ' ',
    ),
  comparisons: COMPARISONS,
  frequencies: FREQUENCIES,
  reasons: REASONS,
};
