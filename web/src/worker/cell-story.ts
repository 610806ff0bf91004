import {
  type CellRef,
  type Finding,
  type Gesture,
  type InForce,
  isMissing,
  type Photo,
  propertyDef,
  propertyWords,
  type Reading,
  type StandingReading,
  type StudyView,
} from '../../../src/study/index.ts';
import { nodeWords } from './node-words.ts';
import {
  type ShownCell,
  type ShownValue,
  shownCell,
  shownValue,
  withDigits,
} from './shown-cell.ts';

/** A photograph, or another blob with what is said of it. */
export interface StoryPhoto {
  readonly blob: string;
  readonly caption: string;
  readonly isPicture: boolean;
}

/** One reading of a cell, with its part in the value in force. */
export interface ReadingStory {
  readonly reading: Reading;
  readonly value: ShownValue;
  /** Share in the value in force; 0 when it carries nothing of it. */
  readonly weight: number;
  readonly instrument?: string;
  readonly withdrawn?: { readonly why: string; readonly by: string };
  /** Photographs, film or speech that it is seen or heard on. */
  readonly seenOn: readonly StoryPhoto[];
  /** What was done when it came in. */
  readonly gesture?: Gesture;
  readonly causes: readonly string[];
  /** Words of a condition that is not the one asked for. */
  readonly otherCondition?: string;
}

/** Where a value comes from: the value in force, the rule, and every reading there ever was. */
export interface CellStory {
  readonly of: CellRef;
  readonly subject: string;
  readonly property: string;
  readonly condition: string;
  readonly holds: 'scalar' | 'vector' | 'text';
  readonly cell: ShownCell;
  readonly rule?: InForce['rule'];
  readonly findings: readonly Finding[];
  /** Photographs of what it is a value of. */
  readonly photos: readonly StoryPhoto[];
  /** Newest first. */
  readonly readings: readonly ReadingStory[];
}

export function cellStory(
  view: StudyView,
  subject: string,
  property: string,
  gestureOf: (change: string) => Gesture | undefined,
): CellStory {
  const cell = view.cell(subject, property);
  const node = view.node(subject);
  const there = isMissing(cell) ? undefined : cell;
  return {
    of: cell.of,
    subject: node ? nodeWords(node) : subject,
    property: propertyWords(property),
    condition: view.condition(cell.of.condition),
    holds: propertyDef(property)?.holds ?? holdsOf(there),
    cell: shownCell(cell),
    ...(there ? { rule: there.rule } : {}),
    findings: there?.findings ?? [],
    photos: view.photos(subject).map(photoOf),
    readings: view
      .readings(subject, property)
      .map((s) => readingStory(s, view, there, cell.of.condition, gestureOf(s.change)))
      .reverse(),
  };
}

function holdsOf(cell: InForce | undefined): CellStory['holds'] {
  const t = cell?.value.t;
  return t === 'vector' ? 'vector' : t === 'text' || t === 'term' ? 'text' : 'scalar';
}

function readingStory(
  standing: StandingReading,
  view: StudyView,
  there: InForce | undefined,
  condition: string,
  gesture: Gesture | undefined,
): ReadingStory {
  const { reading, withdrawn } = standing;
  const instrument = reading.instrument;
  const elsewhere = reading.of.condition !== condition;
  return {
    reading,
    value: withDigits(shownValue(reading.value, reading.of.property), reading.asWritten),
    weight: there?.from.find((f) => f.reading.id === reading.id)?.weight ?? 0,
    causes: reading.causes.map((share) => view.cause(share.cause)?.label ?? share.cause),
    seenOn: seenOn(reading, view),
    ...(instrument ? { instrument: view.instrument(instrument)?.label ?? instrument } : {}),
    ...(withdrawn ? { withdrawn } : {}),
    ...(gesture ? { gesture } : {}),
    ...(elsewhere ? { otherCondition: view.condition(reading.of.condition) } : {}),
  };
}

export const photoOf = ({ blob, caption, mediaType }: Photo): StoryPhoto => ({
  blob,
  caption,
  isPicture: mediaType.startsWith('image/'),
});

function seenOn({ evidence }: Reading, view: StudyView): StoryPhoto[] {
  const photos = new Map(view.photos().map((p) => [p.blob, photoOf(p)]));
  return evidence.flatMap(({ blob, words = 'film or sound' }) =>
    blob === undefined ? [] : (photos.get(blob) ?? { blob, caption: words, isPicture: false }),
  );
}
