import { terms } from './terms.ts';

/** Materials as spoken, with what recognisers make of them. Words of the trade; common practice, no source. */
export const MATERIALS = terms(`
glass-fibre polyester: glass polyester, glass filled polyester, glass reinforced polyester, sheet moulding compound, smc, s m c, bmc, b m c, fibreglass, fiberglass, glass fibre, glass fiber, grp, g r p, polyester
carbon fibre: carbon fiber, carbon, cfrp, c f r p
aluminium: aluminum, ally, alley, ali, alloy, aluminium alloy, alu, al six thousand, aluminium six thousand, six thousand series, five thousand series
aluminium casting alloy: cast aluminium, cast aluminum, cast ally, cast alley, cast alloy
die cast aluminium: die cast aluminum, diecast aluminium, die cast ally, die cast alley
extruded aluminium: aluminium extrusion, aluminum extrusion, extruded ally, extruded aluminum
steel: mild steel, plain steel, sheet steel, steel sheet, steel tube, round steel tube, tin, sheet metal, carbon steel, tool steel, bainitic steel
galvanised steel: galvanized steel, galvanised, galvanized, galvanised sheet, zinc coated steel
high-strength steel: high strength steel, high tensile steel, high tensile, dual phase steel, dual phase, dp steel, d p steel, martensitic steel, martensitic, martin sitic steel, boron steel, boron, press hardened steel, hot stamped steel, complex phase steel, trip steel, dp six hundred, dual phase six hundred
stainless steel: stainless
spring steel
cast iron: grey iron, gray iron, ductile iron, nodular iron, spheroidal iron, iron
copper
copper-nickel: copper nickel, cupro nickel, cupronickel
brass
bronze
lead
zinc
tin plate
titanium
magnesium: mag alloy
glass: laminated glass, tempered glass, toughened glass
rubber: natural rubber, nitrile, nbr, n b r, neoprene, butyl
epdm: e p d m, epdm rubber
silicone: silicone foam, silicon foam, silicon, silicone rubber
foam: polyurethane foam, pu foam, foamed plastic
polyurethane: p u, pu, p u r
polypropylene: pp, p p, polyprop, talc filled polypropylene, long glass polypropylene, glass filled polypropylene, p p with talc, pp with talc, p p talc, pp talc, expanded polypropylene, epp, e p p
polypropylene honeycomb: polyprop honeycomb, pp honeycomb, p p honeycomb
polyamide: nylon, glass filled nylon, pa66, pa6, pa12, p a, p a six, p a sixty six, p a six six, p a twelve, p a 12, p a 6, p a 66, pa six, pa twelve
polyethylene: hdpe, h d p e, pe, p e, polythene
polycarbonate: p c
abs: a b s, abs plastic
acetal: pom, p o m
pbt: p b t, polybutylene
pvc: p v c, vinyl
polystyrene
plastic: thermoplastic, plastics
felt: needle felt, fleece
plywood: birch ply, ply, birch plywood
hardboard: masonite
chipboard: m d f, mdf
cardboard
cork
mica
ceramic
wax
bitumen: tar
epoxy: epoxy resin, resin
leather: leatherette
fabric: cloth, textile
paper honeycomb: honeycomb
`);

export const PROCESSES = terms(`
stamping: stamped, pressed, pressing, deep drawn, drawn, punched, stampings, pressings, stamped out
hot stamping: hot stamped, hot formed, press hardened, hot pressed
roll forming: roll formed, rolled formed, roll form, role formed, rollformed, rolled section
extrusion: extruded, extrusions
die casting: die cast, diecast, pressure cast, high pressure cast, pressure die cast
casting: cast, gravity cast, sand cast, castings, squeeze cast, low pressure cast, lost foam
forging: forged, forging, forgings, drop forged
moulding: moulded, molded, injection moulded, injection molded, compression moulded, compression molded, compression moulding, compression molding, injection moulding, injection molding, mouldings
blow moulding: blow moulded, blow molded, blow mould
rotational moulding: rotomoulded, rotationally moulded
machining: machined, milled, turned on a lathe, lathe turned, machined flat, bored, reamed, drilled, tapped, ground flat
bending: bent, bent tube, tube bent, cnc bent, folded
brazing: brazed, vacuum brazed, soldered
laser cutting: laser cut
water-jet cutting: water jet cut, waterjet cut
die cutting: die cut
routing: routed, cnc routed, router cut
thermoforming: thermoformed, vacuum formed
anodising: anodised, anodized
painting: painted, powder coated, e coated, e coat, e coating
galvanising: hot dip galvanised, zinc plated, plated, galvanised after
hydroforming: hydroformed
heat treatment: heat treated, case hardened, hardened, quenched, shot peened, nitrided
vulcanising: vulcanised, vulcanized
welded assembly: mag welded, mag weld
laminating: laminated together
sewing: sewn, stitched
winding: wound
overmoulding: overmoulded, overmolded, over moulded
foaming: foamed in
pultrusion: pultruded
sintering: sintered
3D printing: three d printed, printed in three d
`);

export const JOINTS = terms(`
friction stir weld: friction stir welded, friction stir welds, friction stir welding, friction stirred, stir welded, friction stair welded, friction stir, stir weld
spot weld: spot welded, spot welds, resistance welded, spot welding
laser weld: laser welded, laser welds
MIG weld: mig welded, mig welds, mig, arc welded, mig welding, tig welded, tig weld, seam welded
ultrasonic weld: ultrasonically welded, sonic welded, heat staked, hot plate welded
welded joint: welded, welded up, welded on, tack welded, stitch welded
adhesive joint: bonded, glued, structural adhesive, stuck on, stuck down, bond line, double sided tape, glued in, bonded in
screwed joint: screwed, screwed down, screwed on, screws into, screw into, screw in, self tappers, self tapping screws, flow drill screws
bolted joint: bolted, bolted up, bolted straight, hard bolted, bolts into, bolts onto, bolts to, bolted hard, through bolted, bolted on
pinch bolt: pinch bolts, clamp bolt
eccentric bolt: eccentric bolts, cam bolt, eccentric screw
riveted joint: riveted, rivetted, rivets, self piercing rivets, pop rivets, blind rivets, clinched, clinch joint
rivet nut: rivet nuts, rivnuts, rivnut, nutserts, nutsert, threaded inserts
clipped joint: clipped, clipped in, clips in, clip in, snapped in, snaps in, snap fit, snap fits, push pins, clips onto, clips on, clip onto, clips into, push fit, fir tree clips, christmas tree clips
press fit: pressed in, press fitted, interference fit, press fit bush, shrunk on, shrink fit
push-and-turn joint: push and turn, bayonet, quarter turn, twist lock, twist and pull
quick connector: quick connectors, quick connect, quick release, quick coupling, quick fit
hose clamp joint: jubilee clip, worm drive clip, spring clip, constant tension clamp
hem: hemmed, crimped, rolled over edge
sealed joint: gasketed, liquid seal, liquid gasket, sealed with, sealed in, rtv, o ring sealed
splined joint: splined, on splines
taper joint: on a taper, tapered pin
loose seat: sat in its seat, sits in its seat, sitting in its seat, loose in its seat, just sits in
hard mount: hard mounted, mounted solid, solid mounted, rigidly mounted
rubber mount: rubber mounted, on rubber bushes, on bushes, soft mounted, on rubber, hangs on rubber, sits on rubber
hook-and-loop: hook and loop, velcro type
cable ties: cable tied, zip tied, zip ties
`);
