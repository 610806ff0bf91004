import type { Change } from './change.ts';
import { canonicalText } from './change.ts';
import {
  ENTRY_KINDS,
  type Entry,
  type EntryKind,
  type NodeSpec,
  type UnknownEntry,
} from './entries.ts';
import { cellKey, doubt, type FoldState, pushTo, touch, touchMore } from './fold-state.ts';
import { lapseGates, markStep, putGate, putOverride } from './gate-state.ts';
import type { Id } from './ids.ts';
import { Line } from './line.ts';
import { isLive, rootId } from './live.ts';
import { StudyViewOf } from './study-view.ts';
import { expandTable } from './table-chunk.ts';

type Apply<E extends EntryKind> = (
  state: FoldState,
  entry: Extract<Entry, { e: E }>,
  change: Change,
) => void;

/** How each kind of entry changes the state. Total: what collides has no effect and is found. */
const APPLY: { readonly [E in EntryKind]: Apply<E> } = {
  'study.put': (s, { set }, change) => {
    for (const field of Object.keys(set)) noteWrite(s, `study ${field}`, {}, change);
    s.header = { ...s.header, ...set };
  },
  'condition.put': (s, { id, words }) => void s.conditions.set(id, words),
  'node.add': addNode,
  'node.move': moveNode,
  'node.name': nameNode,
  'node.retire': (s, { id, why }) => {
    if (known(s, id)) s.retired.set(id, why);
  },
  'link.add': (s, { link }) => {
    if (s.links.has(link.id)) return;
    s.links.set(link.id, link);
    for (const end of new Set([link.from, link.to]))
      if (end !== null) pushTo(s.linksAt, end, link.id);
  },
  'link.retire': (s, { id }) => {
    const link = s.links.get(id);
    s.links.delete(id);
    for (const end of [link?.from, link?.to]) removeFrom(s.linksAt.get(end ?? ''), id);
  },
  'reading.add': addReading,
  'reading.withdraw': (s, { id, subject, why }, change) => {
    touch(s, subject);
    const standing = s.readings.get(id);
    if (standing?.reading.of.subject === subject)
      s.readings.set(id, { ...standing, withdrawn: { why, by: change.by } });
    else missingTarget(s, 'reading', id);
  },
  choose: (s, { of, reading }, change) => {
    touch(s, of.subject);
    noteWrite(s, `choice ${cellKey(of)}`, { subject: of.subject, property: of.property }, change);
    s.chosen.set(cellKey(of), reading);
  },
  'cause.put': (s, { cause }) => void s.causes.set(cause.id, cause),
  // A table that names an instrument says nothing of what is known of it already.
  'instrument.put': (s, { instrument }) =>
    void s.instruments.set(instrument.id, { ...s.instruments.get(instrument.id), ...instrument }),
  'rates.put': putRates,
  'claim.put': (s, { claim }) => void s.claims.set(claim.id, claim),
  'claim.withdraw': (s, { id }) => void s.claims.delete(id),
  'claim.tie': (s, { tie }) => void s.ties.set(tie.id, tie),
  'claim.untie': (s, { id }) => void s.ties.delete(id),
  'photo.add': (s, { photo }) => void s.photos.set(photo.id, photo),
  'speech.add': (s, { speech }) => void s.speeches.set(speech.id, speech),
  'draft.add': (s, { draft }) => {
    if (!s.drafts.has(draft.id)) s.drafts.set(draft.id, { draft });
  },
  'draft.settle': settleDraft,
  'word.put': (s, { rule }) => void s.words.set(rule.id, rule),
  'word.drop': (s, { id }) => void s.words.delete(id),
  'mark.add': (s, { mark }) => void s.marks.set(mark.id, mark),
  'photo.about': (s, { id, subject }) => {
    const photo = s.photos.get(id);
    if (photo) s.photos.set(id, { ...photo, subject });
    else missingTarget(s, 'photograph', id);
  },
  'photo.mark': (s, { mark }) => void s.photoMarks.set(mark.id, mark),
  'gate.record': (s, { record }, change) => {
    if (known(s, record.step)) putGate(s, record, change);
  },
  'gate.override': (s, { override }, change) => {
    if (known(s, override.step)) putOverride(s, override, change);
  },
  'gate.lapse': (s, { lapse }) => lapseGates(s, lapse),
  'step.mark': (s, { mark }, change) => {
    if (known(s, mark.step)) markStep(s, mark, change, asItIs(s));
  },
  'table.add': (s, { table }, change) => {
    for (const entry of expandTable(table)) applyEntry(s, entry, change);
  },
};

const KNOWN: ReadonlySet<string> = new Set(ENTRY_KINDS);

/** Entries that leave tree, links, rates, causes, instruments, conditions and header as they are. */
const TOUCHES_READINGS_OR_NOTHING: ReadonlySet<string> = new Set<EntryKind>([
  'reading.add',
  'reading.withdraw',
  'choose',
  'claim.put',
  'claim.withdraw',
  'claim.tie',
  'claim.untie',
  'photo.add',
  'speech.add',
  'draft.add',
  'draft.settle',
  'word.put',
  'word.drop',
  'mark.add',
  'photo.about',
  'photo.mark',
  'gate.record',
  'gate.override',
  'gate.lapse',
  'step.mark',
]);

/** Applies one entry; an entry of a newer version is kept in the record and found. */
export function applyEntry(state: FoldState, entry: Entry | UnknownEntry, change: Change): void {
  if (!KNOWN.has(entry.e) || entry.v !== 1) {
    doubt(
      state,
      'entry-of-newer-version',
      { study: state.study },
      `an entry "${entry.e}" of version ${entry.v} is not understood by this version and has no effect`,
      'Open the study with the newer version of the program that wrote it.',
    );
    return;
  }
  if (!TOUCHES_READINGS_OR_NOTHING.has(entry.e)) touchMore(state);
  const apply = APPLY[entry.e as EntryKind] as Apply<EntryKind>;
  apply(state, entry as never, change);
}

function addNode(s: FoldState, { node }: Extract<Entry, { e: 'node.add' }>, change: Change): void {
  if (s.nodes.has(node.id)) {
    doubt(
      s,
      'node-added-twice',
      { subject: node.id },
      'a node of this id was there already',
      'Nothing to do: the first one stands.',
    );
    return;
  }
  findSameLabel(s, node.id, node.label);
  const orphan = node.parent !== null && !s.nodes.has(node.parent);
  if (orphan)
    doubt(
      s,
      'parent-unknown',
      { subject: node.id },
      `its parent ${node.parent} is not in the study`,
      'Move it to where it belongs.',
    );
  const placed = orphan ? { ...node, parent: rootId(s) } : node;
  s.nodes.set(node.id, placed);
  pushTo(s.labels, node.label, node.id);
  if (node.parent === null) s.roots.push(node.id);
  if (placed.parent !== null) pushTo(s.childIds, placed.parent, node.id);
  s.written.set(`parent ${node.id}`, { change });
}

function moveNode(
  s: FoldState,
  { id, parent }: Extract<Entry, { e: 'node.move' }>,
  change: Change,
): void {
  const node = known(s, id);
  if (!node || !known(s, parent)) return;
  if (isBelow(s, parent, id)) {
    doubt(
      s,
      'move-makes-cycle',
      { subject: id },
      `moved below itself, by way of ${parent}; the move has no effect`,
      'Move one of the two back to where it belongs.',
    );
    return;
  }
  noteWrite(s, `parent ${id}`, { subject: id }, change);
  if (node.parent !== null) removeFrom(s.childIds.get(node.parent), id);
  s.nodes.set(id, { ...node, parent });
  pushTo(s.childIds, parent, id);
}

function nameNode(s: FoldState, entry: Extract<Entry, { e: 'node.name' }>, change: Change): void {
  const node = known(s, entry.id);
  if (!node) return;
  if (entry.label !== undefined && entry.label !== node.label) {
    noteWrite(s, `label ${entry.id}`, { subject: entry.id }, change);
    findSameLabel(s, entry.id, entry.label);
    removeFrom(s.labels.get(node.label), entry.id);
    pushTo(s.labels, entry.label, entry.id);
  }
  if (entry.name !== undefined) noteWrite(s, `name ${entry.id}`, { subject: entry.id }, change);
  s.nodes.set(entry.id, {
    ...node,
    label: entry.label ?? node.label,
    name: entry.name ?? node.name,
  });
}

function findSameLabel(s: FoldState, id: Id, label: string): void {
  if (!(s.labels.get(label) ?? []).some((other) => isLive(s, other))) return;
  doubt(
    s,
    'label-used-twice',
    { subject: id },
    `the number ${label} is used by another node too`,
    'Give one of them another number.',
  );
}

function addReading(
  s: FoldState,
  { reading }: Extract<Entry, { e: 'reading.add' }>,
  change: Change,
): void {
  if (s.readings.has(reading.id)) return;
  touch(s, reading.of.subject);
  s.readings.set(reading.id, { reading, change: change.id, clock: change.clock });
  const { subject, property } = reading.of;
  const bySubject = s.readingsOf.get(subject) ?? new Map<string, Id[]>();
  s.readingsOf.set(subject, bySubject);
  pushTo(bySubject, property, reading.id);
}

/** The last settling stands; one made without sight of another is found. */
function settleDraft(
  s: FoldState,
  { settling }: Extract<Entry, { e: 'draft.settle' }>,
  change: Change,
): void {
  const standing = s.drafts.get(settling.draft);
  if (!standing) {
    missingTarget(s, 'draft', settling.draft);
    return;
  }
  noteWrite(s, `draft ${settling.draft}`, { subject: settling.draft }, change);
  s.drafts.set(settling.draft, { ...standing, settled: settling });
}

function putRates(s: FoldState, { book }: Extract<Entry, { e: 'rates.put' }>): void {
  const same = s.books.find((b) => b.id === book.id || b.version === book.version);
  if (!same) s.books.push(book);
  else if (canonicalText(same) !== canonicalText(book))
    doubt(
      s,
      'rates-changed',
      { study: s.study },
      `a second rate book ${book.version} with other content has no effect: rate books are not changed`,
      'Give the changed book a version of its own.',
    );
}

/** Notes who wrote a thing, and finds an edit made without sight of the one before. */
function noteWrite(
  s: FoldState,
  key: string,
  place: { subject?: string; property?: string },
  change: Change,
): void {
  const before = s.written.get(key)?.change;
  s.written.set(key, { change });
  if (!before || before.device === change.device) return;
  if ((change.saw[before.device] ?? 0) >= before.seq) return;
  doubt(
    s,
    'edited-at-once',
    place,
    `${change.by} changed this without having seen the change by ${before.by}; the later stands`,
    'Look at both in the history and keep the right one.',
  );
}

/** The state under way as a view that keeps nothing. */
const asItIs = (s: FoldState): StudyViewOf => new StudyViewOf(s, new Line(), '', 0, () => []);

function known(s: FoldState, id: Id): NodeSpec | undefined {
  const node = s.nodes.get(id);
  if (!node) missingTarget(s, 'node', id);
  return node;
}

function missingTarget(s: FoldState, what: string, id: Id): void {
  doubt(
    s,
    'target-unknown',
    { subject: id },
    `a change names a ${what} that is not in the study`,
    'Bring in the changes of the device that made it.',
  );
}

/** True when `id` is `above` or somewhere below it. */
function isBelow(s: FoldState, id: Id, above: Id): boolean {
  for (let at: Id | null = id; at !== null; at = s.nodes.get(at)?.parent ?? null)
    if (at === above) return true;
  return false;
}

function removeFrom(list: Id[] | undefined, id: Id): void {
  const at = list?.indexOf(id) ?? -1;
  if (at >= 0) list?.splice(at, 1);
}
