import { ENGLISH_ALIASES } from './english-names.ts';
import type { LanguagePack } from './pack.ts';

const list = (words: string): string[] => words.split(' ');
const phrases = (text: string): string[] => text.split(',').map((one) => one.trim());

/** Words of the trade that stand for one another in names. Common practice, no source. */
const SYNONYMS = `
cover = lid
loom = harness
wiring = harness
arm = link arm
rod = link
upright = knuckle
shock = damper
shocker = damper
bushing = bush
rotor = rotor disc
pan = sump
tray = shield
cord = gasket
rope = gasket
seal = seal gasket sealer
sealant = sealer
mastic = sealer
goo = filler sealer
paste = filler
pipe = tube hose line
hose = hose tube
line = line tube
wire = cable
lead = cable
strip = profile
crossbar = beam
bracing = reinforcement
stiffener = reinforcement
rocker = sill
post = pillar
guard = shield
liner = liner lining
light = headlamp lamp
lamp = lamp headlamp
pane = glass
window = glass
plug = connector
socket = inlet connector
circuit = board
dowel = sleeve
spigot = port
nipple = port
stub = port
breather = vent
casing = case
housing = housing case
panelling = lining
bottle = reservoir
tank = reservoir
stopper = bush
isolator = mount
hanger = mount
facia = skin
calliper = caliper
stabiliser = anti
stabilizer = anti
rim = wheel
`
  .trim()
  .split('\n')
  .map((line) => {
    const [said = '', means = ''] = line.split('=').map((part) => part.trim());
    return [said, means.split(' ')] as const;
  });

export const ENGLISH_PARTS: Pick<
  LanguagePack,
  | 'aliases'
  | 'synonyms'
  | 'hollow'
  | 'attaching'
  | 'pointing'
  | 'places'
  | 'modifiers'
  | 'weak'
  | 'sides'
  | 'beside'
  | 'turning'
  | 'belonging'
> = {
  aliases: ENGLISH_ALIASES,
  synonyms: SYNONYMS,
  hollow: list(
    'set weldment half halves member members system assembly modules module sundries kit',
  ),
  attaching: list('screw bolt nut clip stud rivet washer bush bushing mount fastener fixing'),
  pointing: list('the this that these those and then now so well okay right its our your'),
  places: {
    front: 'front',
    rear: 'rear',
    back: 'rear',
    upper: 'upper',
    lower: 'lower',
    inner: 'inner',
    outer: 'outer',
    passenger: 'passenger',
    driver: 'driver',
    "passenger's": 'passenger',
    "driver's": 'driver',
    narrow: 'narrow',
    wide: 'wide',
    fore: 'front',
  },
  modifiers: list(
    'front rear side inner outer upper lower left right lh rh top bottom set small mixed assembly and of with on to in for under off hard mounted welded moulded laminated tempered electric inside outside wide narrow long short main big driver passenger type cab cargo body load loose steel high low cross hand center centre middle new old bagged captive floor-mounted full half door vehicle van end moulded grey gray black white orange pink blue red green yellow flat fat thin skinny hollow round square shiny fiddly tiny huge same actual great',
  ),
  weak: list(
    'screw screws bolt bolts nut nuts clip clips washer washers bracket brackets seal seals pin pins hose hoses tube tubes tools label labels board boards profile plate module modules set tower mount mounts line lines link links member clamp clamps torque box can cans valve valves pads pad caliper calipers calliper callipers ring stud studs rail rails part parts beam beams panel glass trim cover covers cable bar bush bushes shell drive unit power pump hardware skin',
  ),
  sides: {
    left: phrases('left, left hand, driver side, nearside'),
    right: phrases('right hand, right side, right one, right, offside, passenger side'),
  },
  beside: phrases(
    'than, across, along, to, into, onto, against, behind, above, below, under, underneath, over, between, from, through, near, beside, next to, in front of, like, with, without, not, by, around, past, before, after, for, in, because of, instead of, rather than, compared with, compared to, a, an, same as, as the, off, where, until, once, unless, outside, round, at, of',
  ),
  turning: phrases(
    'on to, onto, over to, back to, move to, moving to, moving on to, go to, going to, come to, coming to, get to, look at, looking at, here is, have, got, take, start with, starting with, up to, hand on, and now, for, as for, finger on, down to, round to, along to',
  ),
  belonging: phrases(
    'on, of, in, round, around, along, for, at, under, through, off, into, across, holding, down each side of, all round, all around, on top of, on each, on each side of',
  ),
};
