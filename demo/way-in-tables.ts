import { formatTable, type TextRow } from './csv.ts';
import { ALTERNATIVES } from './source/alternatives.ts';
import { BLOCKERS, SERVICED, STAYS, STEP_RELATIVE_U, STEPS, WORK } from './source/way-in.ts';
import { VEHICLE_HEADINGS } from './vehicle-table.ts';

const PRECEDENCE_HEADINGS = [
  'first',
  'kind',
  'name',
  'before',
  'instead',
  'time_s',
  'time_u_s',
  'tool',
  'people',
  'fluid',
  'why',
] as const;

/** precedence.csv: what comes before what; a step is told of where it is named first. */
export function precedenceTable(): string {
  const told = new Set<string>();
  const rows = BLOCKERS.map(({ first, before, instead = '', why }): TextRow => {
    const step = told.has(first) ? undefined : STEPS.find((s) => s.number === first);
    told.add(first);
    return {
      first,
      kind: step ? 'step' : '',
      name: step?.name ?? '',
      before,
      instead,
      time_s: step ? String(step.seconds) : '',
      time_u_s: step ? rounded(STEP_RELATIVE_U * step.seconds) : '',
      tool: step?.tool ?? '',
      people: step ? '1' : '',
      fluid: step?.fluid ?? '',
      why,
    };
  });
  return formatTable(PRECEDENCE_HEADINGS, rows);
}

interface Taken {
  readonly subject: string;
  readonly property: string;
  readonly value: string;
  readonly unit?: string;
  readonly u?: string;
  readonly instrument?: string;
  readonly how?: string;
  readonly made?: Readonly<Record<'kind' | 'parent' | 'name', string>>;
}

export const reading = ({ made, ...t }: Taken): TextRow => ({
  subject: t.subject,
  kind: made?.kind ?? '',
  parent: made?.parent ?? '',
  name: made?.name ?? '',
  property: t.property,
  value: t.value,
  unit: t.unit ?? '',
  u: t.u ?? '',
  u_unit: t.u === undefined ? '' : (t.unit ?? ''),
  how: t.how ?? (t.instrument ? 'measured' : 'supplied'),
  instrument: t.instrument ?? '',
  condition: 'kerb',
  note: '',
});

const rounded = (x: number): string => String(Number(x.toPrecision(3)));

/** work.csv: how the work is timed, what stays on the hoist, what is reached in service. */
export function workTable(): string {
  const of = (property: string, value: number | string, unit = '', u?: number): TextRow =>
    reading({
      subject: 'VAN-27',
      property,
      value: String(value),
      unit,
      ...(u === undefined ? {} : { u: rounded(u) }),
    });
  const rows = [
    of('toolChange.time', WORK.toolChangeS.value, 's', WORK.toolChangeS.u),
    of('work.rating', WORK.ratingPercent.value, '%', WORK.ratingPercent.u),
    of('work.allowance', WORK.allowancePercent, '%', 0),
    of('work.allowanceBase', WORK.allowanceBase),
    of('work.takt', WORK.taktS, 's', 0),
    ...Object.entries(WORK.stopwatchS).map(([subject, { value, u }]) =>
      reading({
        subject,
        property: 'time.stopwatch',
        value: String(value),
        unit: 's',
        u: String(u),
        instrument: 'stopwatch',
      }),
    ),
    ...Object.entries(WORK.elements).flatMap(([subject, { codes, engagedMm, turnsAMinute }]) => [
      reading({ subject, property: 'elements.install', value: codes, how: 'seen' }),
      reading({
        subject,
        property: 'thread.engaged',
        value: String(engagedMm),
        unit: 'mm',
        u: '0.5',
        instrument: 'calliper',
      }),
      reading({
        subject,
        property: 'tool.speed',
        value: String(turnsAMinute),
        unit: '/min',
        u: '25',
      }),
    ]),
    ...STAYS.map((subject) =>
      reading({ subject, property: 'stays', value: 'body shell on the hoist', how: 'seen' }),
    ),
    ...Object.entries(SERVICED).map(([subject, value]) =>
      reading({ subject, property: 'service', value, how: 'inferred' }),
    ),
  ];
  return formatTable(VEHICLE_HEADINGS, rows);
}

/** Half-width of a rectangular spread as a standard uncertainty (JCGM 100:2008, 4.3.7). */
export const fromHalfWidth = (half: number): string => rounded(half / Math.sqrt(3));

/**
 * fastenings.csv: ways to fasten the lid, as far as they are known. Capital, removal, renewal
 * and parting of the cord are open: the comparison is to say so.
 */
export function fasteningsTable(): string {
  const { designs, halfWidthPercent } = ALTERNATIVES.lidJoint;
  const set = { kind: 'alternative', parent: '40', name: 'fastening of the pack lid' };
  const known = (subject: string, name: string, property: string, x: number, unit: string) =>
    reading({
      subject,
      property,
      value: String(x),
      unit,
      u: unit === '1' ? '0' : fromHalfWidth((halfWidthPercent / 100) * x),
      made: { kind: 'alternative', parent: 'LID', name },
    });
  const rows = designs.flatMap((design, i) => {
    const subject = `LID-${i + 1}`;
    const of = (property: string, x: number, unit: string) =>
      known(subject, design.words, property, x, unit);
    return [
      of('fastening.count', design.count, '1'),
      of('fastening.price', design.fastener.priceU, '{u}'),
      of('fastening.assembly', design.fastener.timeS, 's'),
      ...('rivetNut' in design
        ? [
            of('fastening.nutPrice', design.rivetNut.priceU, '{u}'),
            of('fastening.nutTime', design.rivetNut.timeS, 's'),
          ]
        : []),
    ];
  });
  const head = reading({
    subject: 'LID',
    property: 'fastening.question',
    value: 'which way to hold the lid',
    how: 'seen',
    made: set,
  });
  return formatTable(VEHICLE_HEADINGS, [head, ...rows]);
}
