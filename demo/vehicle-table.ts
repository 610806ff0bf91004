import { formatTable, type TextRow } from './csv.ts';
import { ASSEMBLIES } from './source/assemblies.ts';
import { VAN_27 } from './source/van-27.ts';

export const VEHICLE_HEADINGS = [
  'subject',
  'kind',
  'parent',
  'name',
  'property',
  'value',
  'unit',
  'u',
  'u_unit',
  'how',
  'instrument',
  'condition',
  'note',
] as const;

type Subject = Readonly<Record<'subject' | 'kind' | 'parent' | 'name', string>>;

/** One reading about a subject; `u` is a standard uncertainty in the value's unit, none when not known. */
interface Taken {
  readonly property: string;
  readonly value: number;
  readonly unit: string;
  readonly u?: number;
  readonly how: 'measured' | 'supplied' | 'calculated';
  readonly instrument?: string;
  readonly note?: string;
}

const VEHICLE: Subject = { subject: 'VAN-27', kind: 'vehicle', parent: '', name: VAN_27.name };
const PACK: Subject = {
  subject: '40',
  kind: 'assembly',
  parent: 'VAN-27',
  name: ASSEMBLIES['40'],
};
const trial = (subject: string, name: string): Subject => ({
  subject,
  kind: 'trial',
  parent: 'VAN-27',
  name,
});

const row = (of: Subject, t: Taken): TextRow => ({
  ...of,
  property: t.property,
  value: String(t.value),
  unit: t.unit,
  u: t.u === undefined ? '' : String(t.u),
  u_unit: t.u === undefined ? '' : t.unit,
  how: t.how,
  instrument: t.instrument ?? '',
  condition: 'kerb',
  note: t.note ?? '',
});

const onScales = (property: string, kg: number): Taken => ({
  property,
  value: kg,
  unit: 'kg',
  u: VAN_27.cornerScales.uKg,
  how: 'measured',
  instrument: 'corner scales',
  note: `read to ${VAN_27.cornerScales.resolutionKg} kg`,
});

const byTape = (property: string, mm: number, u: number): Taken => ({
  property,
  value: mm,
  unit: 'mm',
  u,
  how: 'measured',
  instrument: 'tape',
});

const supplied = (property: string, value: number, unit: string): Taken => ({
  property,
  value,
  unit,
  how: 'supplied',
  note: 'from the data sheet (invented)',
});

function vehicleRows(): TextRow[] {
  const v = VAN_27;
  return [
    onScales('cornerLoad.FL', v.cornerScales.kg.FL),
    onScales('cornerLoad.FR', v.cornerScales.kg.FR),
    onScales('cornerLoad.RL', v.cornerScales.kg.RL),
    onScales('cornerLoad.RR', v.cornerScales.kg.RR),
    byTape('wheelbase', v.wheelbaseMm, v.wheelbaseUMm),
    byTape('track.front', v.trackFrontMm, v.trackUMm),
    byTape('track.rear', v.trackRearMm, v.trackUMm),
    { ...byTape('tyreRadius', v.tyreRadiusMm, v.tyreRadiusUMm), note: 'loaded, at kerb load' },
    supplied('payload', v.payloadKg, 'kg'),
    {
      ...supplied('envelope.length', v.overhangFrontMm + v.wheelbaseMm + v.overhangRearMm, 'mm'),
      how: 'calculated',
      note: `front overhang ${v.overhangFrontMm} + wheelbase + rear overhang ${v.overhangRearMm} mm`,
    } as const,
    supplied('envelope.width', v.widthMm, 'mm'),
    supplied('envelope.height', v.heightMm, 'mm'),
  ].map((taken) => row(VEHICLE, taken));
}

/** Two readings an angle: the angle itself, and what the front axle gained over the level reading. */
function axleLiftRows(): TextRow[] {
  const lift = VAN_27.axleLift;
  const level = `front axle ${lift.levelFrontKg.toFixed(1)} kg when level`;
  return lift.raised.flatMap(({ angleDeg, frontKg }) => {
    const of = trial(`axle lift ${angleDeg}°`, `rear raised ${angleDeg}°, suspension blocked`);
    const angle: Taken = {
      property: 'liftAngle',
      value: angleDeg,
      unit: 'deg',
      u: lift.angleUDeg,
      how: 'measured',
      instrument: 'inclinometer',
    };
    const gain: Taken = {
      property: 'frontLoadGain',
      value: Number((frontKg - lift.levelFrontKg).toFixed(1)),
      unit: 'kg',
      u: lift.gainUKg,
      how: 'measured',
      instrument: 'corner scales',
      note: `front axle ${frontKg.toFixed(1)} kg raised, ${level}`,
    };
    return [row(of, angle), row(of, gain)];
  });
}

const CHOSEN = 'spread chosen for the demo';

function moduleMass(module: { kg: number; uKg: number; words: string }): Taken {
  return {
    property: 'moduleMass',
    value: module.kg,
    unit: 'kg',
    u: module.uKg,
    how: 'measured',
    instrument: 'floor scale',
    note: module.words,
  };
}

function moduleRows(): TextRow[] {
  const { pack, modules } = VAN_27;
  const { count, chargeAh, voltageV } = pack.cells;
  const cells = `${count} cells x ${chargeAh} Ah x ${voltageV} V = ${((count * chargeAh * voltageV) / 1000).toFixed(2)} kWh`;
  const envelope = (property: string, mm: number): Taken => ({
    ...byTape(property, mm, 1),
    note: `u 1 mm: ${CHOSEN}`,
  });
  return [
    row(PACK, {
      property: 'packEnergy',
      value: pack.energyKWh,
      unit: 'kW.h',
      u: 0.3,
      how: 'supplied',
      note: `${cells}; u 0.3 kWh: ${CHOSEN}`,
    }),
    row(PACK, envelope('envelope.length', pack.envelopeMm.x)),
    row(PACK, envelope('envelope.width', pack.envelopeMm.y)),
    row(PACK, envelope('envelope.height', pack.envelopeMm.z)),
    row(PACK, moduleMass(modules.pack)),
    row(trial(modules.front.subject, 'front module as lowered'), moduleMass(modules.front)),
  ];
}

/** What an empty tote weighs, to be taken off what it holds. */
const toteRows = (): TextRow[] =>
  VAN_27.totes.map(({ label, name, kg }) =>
    row(trial(label, name), {
      property: 'tareMass',
      value: kg,
      unit: 'kg',
      u: 0.002,
      how: 'measured',
      instrument: 'scale A',
      note: `empty; u 0.002 kg: ${CHOSEN}`,
    }),
  );

/** vehicle.csv: the readings as received, one a row, in both records the same. */
export const vehicleTable = (): string =>
  formatTable(VEHICLE_HEADINGS, [
    ...vehicleRows(),
    ...axleLiftRows(),
    ...moduleRows(),
    ...toteRows(),
  ]);
