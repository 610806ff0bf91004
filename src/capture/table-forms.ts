import type { Kind } from '../quantity/index.ts';
import type { PropertyId } from '../study/index.ts';
import { propertyDef } from '../study/index.ts';

/** Forms of tables that can be imported. */
export const TABLE_FORMS = [
  'parts',
  'joints',
  'bags',
  'precedence',
  'assemblies',
  'modules',
  'removals',
  'readings',
  'claims',
  'element-times',
  'zones',
  'barriers',
  'crossings',
  'lines',
] as const;
export type TableForm = (typeof TABLE_FORMS)[number];
export const isTableForm = (word: string): word is TableForm =>
  (TABLE_FORMS as readonly string[]).includes(word);

/** Forms whose headings are known; a list of photographs goes with its pictures, not by itself. */
export type MappedForm = TableForm | 'photographs';

/** What a column of a table may hold. */
export interface FieldDef {
  /** Name by which people map a column to it: `mass`, `mass.u`. */
  readonly field: string;
  readonly words: string;
  /** Headings known to mean it, as `plainHeading` gives them. */
  readonly known: readonly string[];
  readonly holds: 'word' | 'property' | 'u' | 'instrument';
  readonly property?: PropertyId;
  readonly component?: 0 | 1 | 2;
  readonly kind?: Kind;
  /** Fields whose values a spread or an instrument belongs to. */
  readonly of?: readonly string[];
  readonly required?: true;
}

const word = (field: string, words: string, known: string, required?: 'required'): FieldDef => ({
  field,
  words,
  known: known.split(', '),
  holds: 'word',
  ...(required ? { required: true } : {}),
});

const text = (property: PropertyId, known: string): FieldDef => ({
  field: property,
  words: propertyDef(property)?.words ?? property,
  known: known.split(', '),
  holds: 'property',
  property,
});

/** A quantity with the columns of its spread and of its instrument. */
function quantity(property: PropertyId, known: string, instrument = ''): FieldDef[] {
  const def = propertyDef(property);
  const names = known.split(', ');
  return [
    {
      field: property,
      words: def?.words ?? property,
      known: names,
      holds: 'property',
      property,
      ...(def?.kind ? { kind: def.kind } : {}),
    },
    ...beside(property, names, def?.kind ?? 'ratio', [property], instrument),
  ];
}

function beside(
  field: string,
  names: readonly string[],
  kind: Kind,
  of: readonly string[],
  instrument: string,
): FieldDef[] {
  const spreads = names.flatMap((n) => [
    `${n} u`,
    `u ${n}`,
    `${n} uncertainty`,
    `${n} standard uncertainty`,
  ]);
  const instruments = names.flatMap((n) => [`${n} instrument`, `instrument ${n}`]);
  return [
    {
      field: `${field}.u`,
      words: `standard uncertainty of ${field}`,
      known: spreads,
      holds: 'u',
      kind,
      of,
    },
    {
      field: `${field}.instrument`,
      words: `instrument of ${field}`,
      known: instrument === '' ? instruments : [...instrument.split(', '), ...instruments],
      holds: 'instrument',
      of,
    },
  ];
}

/** A point in three columns, with one spread for all three. */
function point(property: 'position' | 'place', words: string): FieldDef[] {
  const axes = ['x', 'y', 'z'] as const;
  const fields = axes.map(
    (axis, i): FieldDef => ({
      field: `${property}.${axis}`,
      words: `${words}, ${axis.toUpperCase()}`,
      known: [axis, `cg ${axis}`, `position ${axis}`, `pos ${axis}`],
      holds: 'property',
      property,
      component: i as 0 | 1 | 2,
      kind: 'length',
    }),
  );
  return [
    ...fields,
    ...beside(
      property,
      ['position', 'cg', 'xyz'],
      'length',
      fields.map((f) => f.field),
      '',
    ),
  ];
}

const NUMBER = 'number, no, nr, num, id, label, part, part number, part no, position number, item';
const NAME = 'name, description, part name, designation, title, words';
const PARENT = 'assembly, parent, module, belongs to, part of, group, system';

/** What it takes to undo or take off something, and what that costs. */
const WORK: readonly FieldDef[] = [
  text('tool', 'tool, tools'),
  ...quantity('people', 'people, persons, hands'),
  text('onRemoval', 'on removal, removal, after removal'),
  ...quantity('renewal.price', 'renewal, renewal price, price of renewal'),
  text('fluid', 'fluid, fluids'),
  text('state', 'state, state found'),
];
/** Coordinates between which a zone or wall lies. */
const BOX: readonly FieldDef[] = (['x', 'y', 'z'] as const).flatMap((axis) => [
  ...quantity(`box.${axis}0`, `${axis}0, ${axis} min, ${axis} from, smallest ${axis}`),
  ...quantity(`box.${axis}1`, `${axis}1, ${axis} max, ${axis} to, largest ${axis}`),
]);
const REMOVAL_TIMES = 'removal time, time removal, undo';
const REFIT_TIMES = 'refit time, time refit, refit';

/** The columns that each form knows, by the words that people write over them. */
export const FIELDS: Readonly<Record<MappedForm, readonly FieldDef[]>> = {
  parts: [
    word('number', 'number of the part', NUMBER, 'required'),
    word('parent', 'number of what it belongs to', PARENT),
    word('name', 'name', NAME),
    ...quantity('count', 'pieces, qty, quantity, count, pcs, number of pieces, amount'),
    text('material', 'material, mat'),
    text('process', 'process, made by, manufacturing process, production'),
    ...quantity('thickness', 'thickness, gauge, wall, wall thickness, sheet thickness'),
    ...quantity(
      'mass',
      'mass, weight, weighed, mass all pieces',
      'instrument, scale, scales, weighed with, weighed on',
    ),
    ...point('position', 'centre of gravity'),
    ...quantity('envelope.length', 'length, envelope length'),
    ...quantity('envelope.width', 'width, envelope width'),
    ...quantity('envelope.height', 'height, envelope height'),
    ...quantity('coated.area', 'coated area, coating area'),
    ...quantity('edge.cut', 'cut edge, cut fibre edge'),
    ...quantity('drains', 'drains, drain holes'),
    text('service', 'service, serviced, reached for'),
    text('stays', 'stays, stays on the hoist'),
  ],
  joints: [
    word('number', 'number of the joint', `${NUMBER}, joint, joint number, group`, 'required'),
    word('name', 'name', NAME),
    word('from', 'what it holds, several parted by ;', 'from, holds, part a, end a', 'required'),
    word('to', 'onto what, several parted by ;', 'to, onto, part b, end b', 'required'),
    text('words.from', 'from words, from as spoken, holds as spoken'),
    text('words.to', 'to words, to as spoken, onto as spoken'),
    text('type', 'type, kind, joint type, kind of joint'),
    text('spec', 'spec, specification, fastener, size'),
    ...quantity('count.holes', 'count holes, holes, count by holes, count, pieces, qty, quantity'),
    ...quantity('count.bag', 'count bag, bag, count by bag, bagged'),
    ...quantity(
      'torque.specified',
      'torque, torque specified, specified torque, tightening torque',
      'instrument, wrench',
    ),
    ...quantity('torque.breakaway', 'breakaway torque, torque breakaway, breakaway', 'wrench'),
    ...quantity('torque.residual', 'residual torque, torque residual, residual', 'wrench'),
    text('axis', 'axis, direction'),
    text('side', 'side, tool side'),
    text('nutSide', 'nut side, other side, into'),
    ...WORK,
    ...quantity('time.removal', REMOVAL_TIMES),
    ...quantity('time.refit', REFIT_TIMES),
    ...quantity('thread.engaged', 'engaged, engaged length, engaged thread'),
    ...quantity('thread.pitch', 'pitch, thread pitch'),
    ...quantity('tool.speed', 'tool speed, speed'),
    ...quantity('seam.length', 'seam, seam length, weld length, bead length'),
    ...quantity('adhesive.mass', 'adhesive, adhesive mass'),
    ...quantity('time.access', 'access, time access, access time, time to reach'),
    ...quantity('time.drive', 'drive, time drive, drive time, time to drive'),
    ...quantity('time.stopwatch', 'stopwatch, time stopwatch, stopwatch time', 'watch'),
    ...quantity('time.hold', 'hold, cure, time hold, hold time, cure time'),
    text('elements.install', 'elements, motion elements, install elements'),
  ],
  bags: [
    word('number', 'number of the bag', 'bag, bag number, number, no, nr, id, label', 'required'),
    word('joint', 'joint written on the bag', 'joint, joint number, of, from', 'required'),
    word('name', 'name', NAME),
    text('spec', 'spec, specification, fastener, size'),
    ...quantity('count.bag', 'count, count bag, pieces, qty, quantity, counted'),
  ],
  precedence: [
    word('first', 'what must be undone or taken off first', 'first, blocker, what', 'required'),
    word('kind', 'step, where the row makes one', 'kind'),
    word('name', 'name of a new step', NAME),
    word('then', 'what it is in the way of', 'then, before, blocks, in the way of', 'required'),
    word('instead', 'word shared by alternatives', 'instead, alternative, either, group'),
    word('words', 'why', 'why, note, remark, comment'),
    ...WORK,
    ...quantity('time.removal', `time, ${REMOVAL_TIMES}`),
    ...quantity('time.refit', REFIT_TIMES),
  ],
  assemblies: [
    word('number', 'number of the assembly', `${NUMBER}, assembly, module`, 'required'),
    word('name', 'name', NAME, 'required'),
    word('parent', 'number of what it belongs to', 'parent, belongs to, part of, system'),
  ],
  modules: [
    word('module', 'what was weighed in one piece', 'module, weighed, number, name', 'required'),
    word(
      'holds',
      'parts and assemblies in it, parted by ;',
      'holds, parts, with, in it',
      'required',
    ),
    word('without', 'what of it was not in it, parted by ;', 'without, less, not in it'),
  ],
  removals: [
    word('number', 'number of the step', 'step, number, no, nr, id, label', 'required'),
    word('name', 'what is done', NAME, 'required'),
    word(
      'takes',
      'parts and assemblies that come off, parted by ;',
      'takes, takes off, parts, off',
    ),
    word('without', 'what of them stays on, parted by ;', 'without, less, not off'),
    word('after', 'steps that must come first, parted by ;', 'after, waits for, first'),
    text('gates', 'gates, gate'),
    text('destroys', 'destroys'),
    ...quantity('removal.order', 'order, place, place in the plan, sequence'),
  ],
  readings: [
    word('subject', 'what was measured', 'subject, of, number, part', 'required'),
    word('kind', 'kind of the subject, when it is new', 'kind, subject kind, kind of subject'),
    word('parent', 'what a new subject belongs to', 'parent, belongs to, part of'),
    word('name', 'name of a new subject', 'name, description'),
    word('property', 'property', 'property, quantity, measurand, what', 'required'),
    word('value', 'value', 'value, reading, result', 'required'),
    word('unit', 'unit of the value', 'unit, units, value unit'),
    word('u', 'standard uncertainty', 'u, uncertainty, standard uncertainty, value u'),
    word('u.unit', 'unit of the standard uncertainty', 'u unit, uncertainty unit, unit u'),
    word('how', 'how it is known', 'how, way, how known'),
    word('instrument', 'instrument', 'instrument, measured with, scale, gauge'),
    word('condition', 'condition', 'condition, state'),
    word('note', 'note', 'note, notes, remark, remarks, comment'),
  ],
  claims: [
    word('id', 'number of the claim', 'id, number, no, nr, claim', 'required'),
    word('words', 'what was said', 'words, claim words, statement, said', 'required'),
    word('subject', 'what it is about', 'subject, about, of', 'required'),
    word('question', 'question that answers it', 'question'),
    word('output', 'output of the question', 'output, answer'),
    word('is', 'at least or at most', 'is, test, bound'),
    word('value', 'value it is held against', 'value, limit'),
    word('unit', 'unit of the value', 'unit, units'),
    word('how', 'how it was known', 'how, way, how known', 'required'),
    word('by', 'who said it', 'by, who', 'required'),
    word('at', 'when it was said', 'at, heard, when, time', 'required'),
  ],
  'element-times': [
    word('element', 'code of the element', 'element, code, motion', 'required'),
    word('units', 'time units', 'units, tmu, time units', 'required'),
    word('source', 'where the value comes from', 'source, reference, from', 'required'),
  ],
  zones: [
    word('number', 'number of the zone', `${NUMBER}, zone`, 'required'),
    word('parent', 'number of what it belongs to', PARENT),
    word('name', 'name', NAME),
    text('zone.medium', 'medium, holds, state'),
    ...quantity('zone.volume', 'volume, free volume'),
    ...quantity('zone.compliance', 'compliance, volume by pressure'),
    ...quantity('zone.vent', 'vent, vents open, opening pressure'),
    ...quantity('leak.drop', 'drop, fall, pressure drop'),
    ...quantity('leak.time', 'test time, time'),
    ...quantity('leak.pressure', 'test pressure, pressure'),
    ...quantity('leak.temperature', 'temperature, gas temperature'),
    ...quantity('leak.warming', 'warming, temperature rise'),
    ...quantity('leak.growth', 'growth, volume growth'),
    ...quantity('leak.limit', 'limit, leak limit'),
    ...BOX,
  ],
  barriers: [
    word('number', 'number of the barrier', `${NUMBER}, barrier`, 'required'),
    word('parent', 'number of what it belongs to', PARENT),
    word('name', 'name', NAME),
    word('a', 'zone on the side of the smaller coordinate', 'a, zone a, side a, between'),
    word('b', 'zone on the other side', 'b, zone b, side b, and'),
    word('by', 'part that it is', 'by, made by, wall of'),
    text('wall.axis', 'axis, across, lies across'),
    ...BOX,
  ],
  crossings: [
    word('number', 'number of the crossing', `${NUMBER}, crossing`, 'required'),
    word('parent', 'number of what it belongs to', PARENT),
    word('name', 'name', NAME),
    word('crosses', 'barriers that it goes through, parted by ;', 'crosses, through, barrier'),
    word('by', 'joint or part that goes through', 'by, made by, joint'),
    text('crossing.kind', 'kind, type'),
    text('crossing.seal', 'seal, sealed by'),
    ...quantity('crossing.count', 'count, pieces, qty, quantity'),
    ...quantity('crossing.sealLength', 'seal length, length of seal'),
    ...quantity('crossing.leak', 'leak, leak each'),
    text('crossing.direction', 'direction'),
    ...quantity('crossing.reach', 'reach, length, fastener length'),
    ...point('place', 'seat'),
  ],
  lines: [
    word('number', 'number of the line', `${NUMBER}, line`, 'required'),
    word('parent', 'number of what it belongs to', PARENT),
    word('name', 'name', NAME),
    word('by', 'part that it is', 'by, made by, of'),
    word('through', 'zones that it runs through, in order, parted by ;', 'through, zones, runs'),
    word('from', 'what it starts at, several parted by ;', 'from, start, end a'),
    word('to', 'what it leads to, several parted by ;', 'to, onto, end b'),
    text('line.kind', 'kind, type, line kind'),
    text('line.circuit', 'circuit'),
    text('line.route', 'route mm, route, points mm, points'),
    text('line.replaced', 'replaced, how replaced, replacement'),
    ...quantity('line.length', 'length'),
    ...quantity('line.bore', 'bore, inner diameter'),
    ...quantity('line.outer', 'outer diameter, diameter'),
    ...quantity('line.clips', 'clips'),
    ...quantity('line.connectors', 'connectors'),
    ...quantity('line.bend', 'bend, bend radius, smallest bend'),
    ...quantity('line.bendLimit', 'bend limit, least bend'),
    ...quantity('line.flow', 'flow'),
    ...quantity('line.density', 'density'),
    ...quantity('line.viscosity', 'viscosity'),
    ...quantity('line.losses', 'losses, loss coefficients'),
    ...quantity('line.current', 'current'),
    ...quantity('line.conductor', 'conductor, conductor area'),
    ...quantity('line.voltage', 'voltage, nominal voltage'),
  ],
  photographs: [
    word('file', 'file of the picture', 'file, photo, picture, photograph', 'required'),
    word('subject', 'what it shows', 'subject, of, number, part'),
    word('caption', 'caption', 'caption, words, title, note', 'required'),
    word('at', 'when it was taken', 'taken at, at, when, time', 'required'),
  ],
};

/** A heading in small letters with single blanks: `Count_Holes ` and `count-holes` are one. */
export const plainHeading = (heading: string): string =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[\s_.\-:]+/g, ' ')
    .trim();

export const isQuantity = (field: FieldDef): boolean =>
  field.kind !== undefined && (field.holds === 'property' || field.holds === 'u');
