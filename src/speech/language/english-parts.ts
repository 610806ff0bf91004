import type { LanguagePack } from './pack.ts';

const list = (words: string): string[] => words.split(' ');
const phrases = (text: string): string[] => text.split(',').map((one) => one.trim());

/** How people call what a record lists under another name. Common practice, no source. */
const ALIASES = `
pack = traction battery
battery pack = traction battery
battery = traction battery
traction pack = traction battery
pack floor = floor welded plank
battery floor = floor welded plank
planks = floor welded plank
plank floor = floor welded plank
battery lid = lid
pack lid = lid
top cover = lid
lid seal = lid cord gasket
cord = lid cord gasket
gasket cord = lid cord gasket
crash beam = side crash beam
crash beams = side crash beam
side beam = side crash beam
subframe = cradle
sub frame = cradle
rear subframe = rear cradle
front subframe = front cradle
hood = bonnet
windshield = windscreen
front screen = windscreen
tire = tyre
tires = tyre
tyres = tyre
brake disc = disc
brake disk = disc
brake rotor = disc
brake caliper = caliper and pads
brake calliper = caliper and pads
wishbone = lower control arm
control arm = lower control arm
sway bar = anti-roll bar
roll bar = anti-roll bar
drop link = anti-roll link
shock absorber = damper
shock = damper
upright = knuckle
wheel carrier = knuckle
steering rack = electric rack
rack = electric rack
half shaft = half shaft
driveshaft = half shaft
drive shaft = half shaft
twelve volt battery = 12 V battery
12 volt battery = 12 V battery
aux battery = 12 V battery
bumper = bumper cover
bumper skin = bumper cover
headlight = headlamp
tail lamp = rear lamp
tail light = rear lamp
undertray = underbody shield
under tray = underbody shield
undershield = underbody shield
belly pan = underbody shield
dash = dash panel
dashboard = instrument panel skin
dash beam = instrument panel carrier beam
cross car beam = instrument panel carrier beam
bulkhead = bulkhead cab to cargo
partition = bulkhead cab to cargo
cargo floor = cargo floor board
load floor = load floor panel
ply floor = cargo floor board
inverter = inverter on top of drive unit
motor = stator and housing
charger = on-board charger
onboard charger = on-board charger
compressor = electric compressor
radiator = cooling module
cooling pack = cooling module
heater = coolant heater
climate unit = climate box
junction box = junction and contactor box
contactor box = junction and contactor box
cells = cell
cold plate = cold plate
cooling plate = cold plate
rear header = rear header cross member
front cross = front cross extrusion
side frame = side wall profile
side profile = side wall profile
side wall = side wall profile
drive unit = drive unit, power electronics
e axle = drive unit, power electronics
seats = seat
loom = harness
body loom = body harness
crush can = crush can
crush cans = crush can
crash can = crush can
door skin = door shell
sliding door = sliding side door shell
barn door = rear barn door
back doors = rear barn door
wheels = wheel
whole van = *vehicle
whole vehicle = *vehicle
the van = *vehicle
this van = *vehicle
`;

export const ENGLISH_PARTS: Pick<
  LanguagePack,
  'aliases' | 'modifiers' | 'weak' | 'sides' | 'beside' | 'turning' | 'belonging'
> = {
  aliases: ALIASES.trim()
    .split('\n')
    .map((line) => {
      const [said = '', means = ''] = line.split('=').map((part) => part.trim());
      return [said, means] as const;
    }),
  modifiers: list(
    'front rear side inner outer upper lower left right lh rh top bottom set small mixed assembly and of with on to in for under off hard mounted welded moulded laminated tempered electric inside outside wide narrow long short main big driver passenger type cab cargo body load loose steel high low cross hand center centre middle new old bagged captive floor-mounted full half door vehicle van',
  ),
  weak: list(
    'screw screws bolt bolts nut nuts clip clips washer washers bracket brackets seal seals pin pins hose hoses tube tubes tools label labels board boards profile plate module modules set tower mount mounts line lines link links member clamp clamps torque box can cans valve valves pads pad caliper calipers calliper callipers ring stud studs rail rails part parts beam beams panel glass trim cover covers cable bar bush bushes shell drive unit power pump hardware skin',
  ),
  sides: {
    left: phrases('left, left hand, driver side, nearside'),
    right: phrases('right hand, right side, right one, right, offside, passenger side'),
  },
  beside: phrases(
    'than, across, along, to, into, onto, against, behind, above, below, under, underneath, over, between, from, through, near, beside, next to, in front of, like, with, without, not, by, around, past, before, after, for, in',
  ),
  turning: phrases(
    'on to, onto, over to, back to, move to, moving to, moving on to, go to, going to, come to, coming to, get to, look at, looking at, here is, have, got, take, start with, starting with, up to, hand on, and now, for, as for, finger on, down to, round to, along to',
  ),
  belonging: phrases(
    'on, of, in, round, around, along, for, at, under, through, off, into, across, holding, down each side of, all round, all around, on top of, on each, on each side of',
  ),
};
