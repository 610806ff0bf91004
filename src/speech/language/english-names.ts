/** What a record calls it, and how people call it. Common practice, no source. */
const ALIASES = `
traction battery: pack, battery pack, battery, traction pack, traction battery, high voltage battery, hv battery
floor welded plank: pack floor, battery floor, planks, plank floor, battery tray, bottom of the pack, underside of the pack, belly, bottom plate
lid: battery lid, pack lid, top cover, battery cover, pack cover
lid cord gasket: lid seal, cord, gasket cord, lid gasket, lid rope
side crash beam: crash beam, crash beams, side beam
cradle: subframe, sub frame
rear cradle: rear subframe, rear axle carrier, back cradle, rear frame, rear carrier
front cradle: front subframe, front axle carrier, engine cradle, front frame
bonnet: hood
windscreen: windshield, front screen, front glass
tyre: tire, tires, tyres, rubber on the wheels
disc: brake disc, brake disk, brake rotor
caliper and pads: brake caliper, brake calliper, brake pad
lower control arm: wishbone, control arm, lower arm, control arms, a arm, lca, l c a, track control arm
anti-roll bar: sway bar, roll bar, stabiliser, stabilizer, stabiliser bar, stabilizer bar, arb
anti-roll link: drop link, stabiliser link, drop links
damper: shock absorber, shock, shocker
knuckle: upright, wheel carrier, steering knuckle, hub carrier, uprights, stub axle
electric rack: steering rack, rack, steering box, steering gear
half shaft: half shaft, driveshaft, drive shaft, axle shaft, cv shaft, drive shafts
12 V battery: twelve volt battery, 12 volt battery, aux battery
bumper cover: bumper, bumper skin, bumper skins
headlamp: headlight, head light, head lamp
rear lamp: tail lamp, tail light, back light, rear light
underbody shield: undertray, under tray, undershield, belly pan, underbody panel, under shield, floor shield, stone guard
dash panel: dash
instrument panel skin: dashboard, dash skin, dash top, facia, fascia
instrument panel carrier beam: dash beam, cross car beam, dash frame, dashboard beam, dash carrier, cross beam behind the dash
bulkhead cab to cargo: bulkhead, partition, dividing wall
cargo floor board: cargo floor, ply floor, plywood floor, wooden floor, floor board, floorboard, cargo board, plywood on the floor
load floor panel: load floor, floor panel, load bay floor
inverter on top of drive unit: inverter
stator and housing: motor, e motor, electric motor, motor housing
on-board charger: charger, onboard charger
electric compressor: compressor, ac compressor, a c compressor, air con compressor, aircon compressor
cooling module: radiator, cooling pack, rad, rad pack, fan pack, cooling stack, condenser
coolant heater: heater, water heater, ptc, p t c heater
climate box: climate unit, heater box, hvac, hvac box, air box, heating box, heating unit, blower box
junction and contactor box: junction box, contactor box, contactors, contactor, disconnect unit
cell: cells
cold plate: cold plate, cooling plate, battery cooler, chill plate, water plate
rear header cross member: rear header, rear wall of the pack, header plate
front cross extrusion: front cross, front wall, front cross piece, front cross member of the pack, cross piece
side wall profile: side frame, side profile, side wall, cell box, cell frame, cell wall, side rail of the pack
drive unit, power electronics: drive unit, e axle, e drive, electric axle, drive axle, power unit
seat: seats
harness: loom
body harness: body loom, main loom, main harness, wiring loom, body wiring
crush can: crush can, crush cans, crash can, crash box, crash boxes, crush box
door shell: door skin
sliding side door shell: sliding door, side door, slider
rear barn door: barn door, back doors, rear door, back door, rear doors
wheel: wheels, rim
*vehicle: whole van, whole vehicle, the van, this van
lid screw: lid bolt
pack to body bolt: pack bolt, battery bolt
inner cross member: cross piece, cross wall, inner cross, dividers, divider
cell compression foam pads: swelling pads, compression pad, cell pad, foam pad, foam between the cells
gap filler: thermal paste, thermal putty, thermal goo, goo, goop, gunk, gap pad
busbar set: busbars, bus bar, bus bars
battery control unit: battery management, battery computer, b m s, bms
cell monitoring board: cell boards, monitoring boards, slave boards, sense boards
hv connector header: hv connector, high voltage connector, high voltage plug, orange plug
lv connector and harness: low voltage connector
coolant port: coolant nipple, water port, water connection, coolant stub, coolant connection, coolant spigot
vent valve: burst valve, breather, vent plug, pressure vent, relief valve
mica sheets and barriers: mica
hv cable set: high voltage cables, high voltage cable, hv cables, orange cable, orange lead, orange wire, orange ones, high voltage lead
hv cable set front: high voltage front set
hv cable set rear: high voltage rear set
reduction gear set: gearbox, gear box, reduction, diff
gear case halves: gear case, gearbox case, gearbox housing, casing, case half, cases
oil sump: oil pan, sump pan, the pan
drive unit mounts: motor mount, drive unit mount, engine mount
drive unit oil: gear oil, oil
charge inlet and cable: charge port, charging socket, charge socket, charging inlet, charging port
cradle bush: cradle bushing, subframe bush
cradle bolts: subframe bolt
lca bush and ball joint set: ball joint, swivel
hub bearing: wheel bearing, hub
strut damper: macpherson, mcpherson, front strut
damper rear: rear shock, rear shocker
top mount: strut top, strut mount, up top
anti-roll bar front: front sway bar, front roll bar
anti-roll bar rear: rear sway bar, rear roll bar
spring link: spring arm, spring carrier, lower rear arm
trailing link: trailing arm
toe link: toe arm, toe control, track rod
camber link: camber arm, upper link, upper rear link
rear suspension and cradle: rear suspension
front suspension and cradle: front suspension
outer tie rod end: tie rod, track rod end
intermediate shaft: steering shaft
wheel bolt: lug bolt, wheel nut, wheel stud
repair kit: puncture kit, tyre kit
disc front: front disc, front rotor
disc rear: rear disc, rear rotor
caliper: caliper, calliper bracket
caliper and pads front: front caliper, front calliper
caliper rear: rear caliper, rear calliper
caliper rear with electric park brake: handbrake, park brake
electro-hydraulic brake unit: brake booster, booster, master cylinder, brake servo
brake tubes and hoses: brake line, brake pipe, brake tube, brake hose
splash shields: dust shield, backing plate, brake shield, splash plate
coolant pumps and valves: water pump, coolant pump
coolant hoses and tubes: water hose, coolant pipe, coolant line, coolant tube, water pipe, heater hose
refrigerant lines: gas line, aircon line, aircon pipe, refrigerant pipe, freon line
12 v battery: small battery, starter battery, lead acid, twelve volt
front harness: front loom, front wiring
fuse boxes and brackets: fuse box, fusebox
horns, motors: horn
display, radio: radio, screen in the dash, touch screen
domain controllers and gateways: control units, controllers, ecu
sensors, radars: radar, camera on the glass
longitudinal rail front: front rail, chassis leg, chassis rail, front longitudinal, long member
bumper beam: bumper bar, bumper reinforcement, crash bar
strut tower: shock tower, suspension tower, strut turret
dash panel lower: firewall, fire wall
cowl and plenum: scuttle
upper load path shotgun: shotgun
sill inner: sill inside, inner sill
sill outer: outer sill, rocker, rocker panel
sill reinforcement extrusion: sill extrusion, sill insert
rear rail: rear longitudinal, rear chassis leg
rear wheelhouse inner: wheel house, wheelhouse
rear end panel and sill: rear panel, back panel
a-pillar inner and reinforcement: a pillar, a post
b-pillar reinforcement: b pillar, b post
d-pillar inner: d pillar, d post
bodyside outer: body side, side panel
bodyside outer rear quarter: rear quarter, quarter panel
roof panel: roof skin, roof sheet, the roof
roof bow: roof bows, roof stick, roof hoop, roof rib
cant rail: roof rail
front fender: wing, front wing, fender
front end carrier: slam panel, front carrier, lock carrier
floor tunnel-less panel front: front floor, cab floor
load floor crossmember: floor crossmember
front door shell: front door, driver's door, driver door, passenger door, cab door
front door trim: door card, door trim, door panel
front door hardware: window winder, window regulator, door latch, door lock
sliding door rails and rollers: door rail, door track, door rollers
rear barn door wide: wide door, big door
rear barn door narrow: narrow door, small door
rear door hinges and latches: rear hinge, door hinge
closure seals: door seal, door rubber, weatherstrip
front door glass: door window, side window, side glass
mirror glass and housing: door mirror, wing mirror, side mirror
front bumper cover: front bumper, nose, nose cone
rear bumper cover: rear bumper
sill cladding: sill trim, side cladding, sill cover
wheelarch liner: arch liner, wheel arch liner, wheel liner, inner arch, splash guard
underbody shield front: front undertray
underbody shield rear: rear undertray
washer reservoir: washer bottle, washer tank, wash bottle
washer fluid: screenwash, screen wash
wiper system: wipers, wiper, wiper arm
seat driver: driver's seat, driver seat
seat passenger: passenger seat, passenger's seat
steering column, wheel: steering wheel
airbags: airbag, air bag
belts and pretensioners: seat belt, seatbelt, belt
pedal box: pedals, pedal
cargo side lining: wall lining, side lining, cargo lining, lining panel, wall panel
lashing eyes: tie down, lashing eye, lashing ring
headliner cab: roof lining, roof liner, headlining, head liner
carpet and insulation cab: carpet, mats, underlay
paint and e-coat: e coat, paint
body sealer: seam sealer
push pins and plastic clips: push pin
hose clamps and p-clips: hose clip, hose clamp, p clip
`;

/** What is said, and the words of the name that the record has for it. */
export const ENGLISH_ALIASES: readonly (readonly [said: string, means: string])[] = ALIASES.trim()
  .split('\n')
  .flatMap((line) => {
    const [means = '', said = ''] = line.split(':').map((part) => part.trim());
    return said.split(', ').map((one) => [one, means] as const);
  });
