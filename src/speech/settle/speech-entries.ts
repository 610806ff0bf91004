import { toSi } from '../../quantity/index.ts';
import type { Entry, Id, Speech, SpeechDraft, StudyView, WordRule } from '../../study/index.ts';
import type { LanguagePack } from '../language/pack.ts';
import type { SpokenPart } from '../parts/part-index.ts';
import { type Draft, readDrafts } from '../read-drafts.ts';

/** The parts tree of a study as the reader takes it. */
export function spokenParts(view: StudyView): SpokenPart[] {
  const root = view.root();
  const kinds = ['assembly', 'part'] as const;
  return [
    ...(root ? [{ ...root, kind: 'vehicle' as const, parent: null }] : []),
    ...kinds.flatMap((kind) => view.nodes(kind).map((node) => ({ ...node, kind }))),
  ];
}

/** A language pack with the rules that people gave in a study. */
export function packWith(pack: LanguagePack, rules: readonly WordRule[]): LanguagePack {
  const parts = rules.filter((rule) => rule.use === 'part');
  const units = rules.filter((rule) => rule.use === 'unit');
  return {
    ...pack,
    aliases: [...pack.aliases, ...parts.map(({ said, means }) => [said, means] as const)],
    units: pack.units.map((unit) => ({
      ...unit,
      said: [...unit.said, ...units.filter((u) => u.means === unit.code).map((u) => u.said)],
    })),
  };
}

/** Speech to be kept, with the drafts that the rules make of it now; ids are handed in. */
export function speechEntries(
  view: StudyView,
  speech: Speech,
  pack: LanguagePack,
  ids: () => Id,
): Entry[] {
  const { drafts, marks } = readDrafts(
    speech.cues,
    spokenParts(view),
    packWith(pack, view.wordRules()),
  );
  return [
    { v: 1, e: 'speech.add', speech },
    ...drafts.map(
      (draft): Entry => ({ v: 1, e: 'draft.add', draft: kept(draft, speech.id, ids()) }),
    ),
    ...marks.map((atS): Entry => spokenMark(speech, atS, drafts, ids())),
  ];
}

function kept(draft: Draft, speech: Id, id: Id): SpeechDraft {
  const { kind, fromS, toS, who, words, around, parts, quantity: q, term, claim, how } = draft;
  return {
    id,
    speech,
    kind,
    fromS,
    toS,
    ...(who === undefined ? {} : { who }),
    words,
    around,
    about: parts.map((part) => part.id),
    ...(q
      ? {
          quantity: {
            low: toSi(q.low, q.unit, q.kind),
            high: toSi(q.high, q.unit, q.kind),
            kind: q.kind,
            unit: q.unit,
            loose: q.loose,
            ...(q.property === undefined ? {} : { property: q.property }),
          },
        }
      : {}),
    ...(term === undefined ? {} : { term }),
    ...(claim === undefined ? {} : { claim }),
    how,
  };
}

/** A mark spoken: at its time, about what was last spoken of. */
function spokenMark(speech: Speech, atS: number, drafts: readonly Draft[], id: Id): Entry {
  const before = drafts.filter((draft) => draft.fromS <= atS).at(-1);
  return {
    v: 1,
    e: 'mark.add',
    mark: {
      id,
      at: { ...speech.startedAt, local: addSeconds(speech.startedAt.local, atS) },
      by: speech.by,
      how: 'word',
      about: before?.parts[0]?.id ?? null,
      speech: speech.id,
      atS,
    },
  };
}

/** Local time so many seconds later, ISO 8601 to the second. */
export function addSeconds(local: string, seconds: number): string {
  const start = Date.parse(`${local.replace(' ', 'T').padEnd(16, ':00').slice(0, 19)}Z`);
  return Number.isNaN(start) ? local : new Date(start + 1000 * seconds).toISOString().slice(0, 19);
}
