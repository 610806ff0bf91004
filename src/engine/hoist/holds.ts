import { DESTRUCTIONS, type Destruction } from '../../data/index.ts';
import {
  type CellRef,
  type Id,
  type PlannedRemoval,
  removalSequence,
  type StudyView,
} from '../../study/index.ts';
import type { MeasureNext, NextReading, OpenThing } from '../measure-next/index.ts';

/** A reading that an open question needs and a step would destroy. */
export interface Hold {
  readonly step: Id;
  /** Number and name of what is to be read, and what of it. */
  readonly label: string;
  readonly of: CellRef;
  /** How the step destroys it. */
  readonly words: string;
  /** The open questions and claims that need it. */
  readonly needs: readonly OpenThing[];
  readonly instrument?: string;
  readonly minutes?: number;
}

/** What a step destroys: by the words on it, and the torque of the joints that it opens. */
interface Destroys {
  readonly kinds: readonly Destruction[];
  /** Single readings as "property@number". */
  readonly single: ReadonlySet<string>;
  readonly taken: ReadonlySet<Id>;
  readonly opened: ReadonlySet<Id>;
}

/** Readings to take before each step that is not done: of those that open questions need, what it destroys. */
export function holdsOf(view: StudyView, next: MeasureNext): readonly Hold[] {
  return removalSequence(view)
    .filter(({ id }) => !view.step(id).done)
    .flatMap((step) => {
      const destroys = destroysOf(view, step);
      return next.readings.flatMap((reading) => holdOf(view, step, destroys, reading, next.open));
    });
}

function destroysOf(view: StudyView, { id, nodes, parts }: PlannedRemoval): Destroys {
  const words = textsOf(view, id).flatMap((t) => t.split(';').map((w) => w.trim()));
  const taken = new Set<Id>([...nodes, ...parts]);
  const opened = view.links('joins').filter((l) => l.to !== null && taken.has(l.to));
  return {
    kinds: DESTRUCTIONS.filter((d) => d.word === 'opened' || words.includes(d.word)),
    single: new Set(words.filter((w) => w.includes('@'))),
    taken,
    opened: new Set(opened.map((l) => l.from)),
  };
}

const textsOf = (view: StudyView, step: Id): string[] =>
  view
    .readings(step, 'destroys')
    .filter((r) => !r.withdrawn)
    .flatMap(({ reading: { value } }) => (value.t === 'text' ? [value.text] : []));

function holdOf(
  view: StudyView,
  step: PlannedRemoval,
  destroys: Destroys,
  { of, label, instrument, effects }: NextReading,
  open: readonly OpenThing[],
): Hold[] {
  const words = of && wordsFor(view, destroys, of);
  if (!of || words === undefined) return [];
  const needs = effects.flatMap((e) => open[e.open] ?? []);
  return [
    {
      ...{ step: step.id, label, of, words, needs },
      ...(instrument ? { instrument: instrument.label, minutes: instrument.minutes } : {}),
    },
  ];
}

function wordsFor(view: StudyView, destroys: Destroys, of: CellRef): string | undefined {
  const label = view.node(of.subject)?.label ?? '';
  if (destroys.single.has(`${of.property}@${label}`))
    return 'the step destroys it, as recorded on the step';
  return destroys.kinds.find(
    (kind) => kind.properties.some((p) => of.property.startsWith(p)) && isOf(kind, destroys, of),
  )?.words;
}

const isOf = ({ of }: Destruction, { taken, opened }: Destroys, { subject }: CellRef): boolean =>
  of === 'anything' || (of === 'what it takes' ? taken : opened).has(subject);
