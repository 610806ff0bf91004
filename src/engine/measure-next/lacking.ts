import type { CellRef, Place, StudyView } from '../../study/index.ts';
import { propertyDef, propertyWords } from '../../study/index.ts';
import { placeKey } from '../gaps.ts';
import { nodeLabel } from '../node-label.ts';
import { instrumentsFor, uWith } from './at-hand.ts';
import type { AtHand, NextReading } from './measure-next-types.ts';
import type { OpenAnswer } from './open-things.ts';

/** Readings without which open things stay incomplete: missing ones, and ones of unknown spread. */
export function lackingReadings(
  open: readonly OpenAnswer[],
  view: StudyView,
  instruments: readonly AtHand[],
): NextReading[] {
  const found = new Map<string, Lacking>();
  for (const [i, one] of open.entries())
    for (const { place, why } of lackedBy(one)) {
      const key = placeKey(place);
      const held = found.get(key) ?? { place, why, of: cellOf(one, place, view), blocks: [] };
      if (!held.blocks.includes(i)) held.blocks.push(i);
      found.set(key, held);
    }
  return [...found.values()]
    .map((lacking) => nextOf(lacking, view, instruments))
    .sort(
      (a, b) =>
        b.effects.length - a.effects.length ||
        minutesOf(a) - minutesOf(b) ||
        (a.label < b.label ? -1 : 1),
    );
}

interface Lacking {
  readonly place: Place;
  readonly why: 'missing' | 'spread not known';
  readonly of: CellRef | undefined;
  readonly blocks: number[];
}

const minutesOf = (reading: NextReading): number =>
  reading.instrument?.minutes ?? Number.POSITIVE_INFINITY;

function lackedBy({ out, answer }: OpenAnswer): Pick<Lacking, 'place' | 'why'>[] {
  const missing = out
    ? out.missing
    : answer.findings.filter((f) => f.code === 'missing').map((f) => f.place);
  return [
    ...missing.map((place) => ({ place, why: 'missing' as const })),
    ...(out?.unknownSpread ?? []).map((place) => ({ place, why: 'spread not known' as const })),
  ];
}

/** The cell of a place, among those that the answer looked at. */
function cellOf({ answer }: OpenAnswer, place: Place, view: StudyView): CellRef | undefined {
  return answer.reads.find(
    ({ of }) => of.property === place.property && nodeLabel(view, of.subject) === place.subject,
  )?.of;
}

function nextOf(
  { place, why, of, blocks }: Lacking,
  view: StudyView,
  instruments: readonly AtHand[],
): NextReading {
  const property = place.property ?? '';
  const kind = propertyDef(property)?.kind;
  const cell = of && view.cell(of.subject, of.property, of.condition, of.posture);
  const x = cell && 'value' in cell && cell.value.t === 'scalar' ? cell.value.x : undefined;
  // What is not known at all may be large: the instrument that reads furthest will do.
  const [furthest] =
    kind === undefined
      ? []
      : [...instrumentsFor(instruments, 'reading', kind, property, x)].sort(
          (a, b) => b.range[1] - a.range[1] || a.minutes - b.minutes,
        );
  const words = [place.subject, propertyWords(property) || place.column].filter(Boolean);
  return {
    ...{ why, place, what: 'reading', label: words.join(', '), fall: 0, perMinute: 0 },
    ...(of ? { of } : {}),
    ...(furthest && kind
      ? {
          instrument: {
            ...{ label: furthest.label, kind, minutes: furthest.minutes },
            u: uWith(furthest, x ?? 0),
          },
        }
      : {}),
    effects: blocks.map((open) => ({ open })),
  };
}
