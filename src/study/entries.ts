import type { Kind, Spread, Way } from '../quantity/index.ts';
import type { Claim, Tie } from './claim.ts';
import type { GateLapse, GateOverride, GateRecord, StepMark } from './gate.ts';
import type { Id, Sha256, Ulid } from './ids.ts';
import type { Instrument } from './instrument.ts';
import type { RateBook } from './rate-book.ts';
import type { Cause, CellRef, PropertyId, Reading } from './reading.ts';
import type { DraftSettling, Mark, PhotoMark, Speech, SpeechDraft, WordRule } from './spoken.ts';

/** What a node of the study's tree stands for. */
export const NODE_KINDS = [
  'vehicle',
  'assembly',
  'part',
  'joint',
  /** Fasteners kept together; it keeps those of one joint, where somebody wrote that on it. */
  'bag',
  /** Something to do on the way in or out that is no joint of the record: unplug, drain, switch off. */
  'step',
  /** One step of the removal plan: what is taken off the hoist together, and what must be recorded for it. */
  'removal',
  /** One set-up of a bench or scale measurement whose readings belong together. */
  'trial',
  /** A volume with a medium in it, or the outside. */
  'zone',
  /** What separates two zones: a wall, a lid. */
  'barrier',
  /** What goes through barriers, and what seals it there. */
  'crossing',
  /** A pipe, hose or cable, with the zones that it runs through. */
  'line',
  'chain',
  'alternative',
] as const;
export type NodeKind = (typeof NODE_KINDS)[number];

export interface NodeSpec {
  readonly id: Id;
  readonly kind: NodeKind;
  /** Null for the root of the tree. */
  readonly parent: Id | null;
  /** Number or code people call it by; unique among the live nodes of a study. */
  readonly label: string;
  readonly name: string;
}

export const LINK_KINDS = [
  'joins',
  'blocks',
  'keeps',
  'mirror',
  'weighed-with',
  'takes',
  'separates',
  'crosses',
  'made-by',
  'runs-through',
  'ends-at',
] as const;

/**
 * `joins`: from a joint to what it holds. `blocks`: from what must be undone or taken off first,
 * to what it stands in the way of. `keeps`: from a bag to the joint whose fasteners are in it.
 * `weighed-with`: from an assembly or trial that was weighed in one piece to what was in it, an
 * assembly standing for all below it. `takes`: from a removal to the parts and assemblies that
 * come off with it. `separates`: from a barrier to its two zones. `crosses`:
 * from a crossing to what it goes through. `made-by`: from a barrier, crossing or line to the
 * part or joint that it is. `runs-through` and `ends-at`: from a line to zones in their order,
 * and to what it joins. Ends that name no node keep the words as spoken.
 */
export interface LinkSpec {
  readonly id: Id;
  readonly kind: (typeof LINK_KINDS)[number];
  readonly from: Id;
  readonly to: Id | null;
  /**
   * 'from' or 'to' for a joint's two sides. Blockers of one thing with the same role are
   * alternatives: one of them is enough. 'without' takes out of a module or a removal what is
   * below an assembly that is in it. 'a' is the zone on the side of the smaller coordinate, 'b' the other
   * one, of a barrier that lies across an axis. A line's zones have their place, from 1.
   */
  readonly role?: string;
  readonly words?: string;
}

export interface StudyHeader {
  readonly title: string;
  readonly vehicle: string;
  /** Id of the condition in which a reading stands when none is named, e.g. `kerb`. */
  readonly condition: Id;
  /** True for made-up studies; printed on every output. */
  readonly invented: boolean;
  readonly note?: string;
}

/** How one column of an imported table is to be read. */
export type ColumnUse =
  | { readonly use: 'label' | 'name' | 'parent' | 'from' | 'to' | 'skip' }
  | {
      readonly use: 'property';
      readonly property: PropertyId;
      /** Absent for words. */
      readonly kind?: Kind;
      /** UCUM code; absent for counts and words. */
      readonly unit?: string;
      /** Component of a vector property: 0 for X, 1 for Y, 2 for Z. */
      readonly component?: 0 | 1 | 2;
      /** Column whose number is this one's standard uncertainty, in `uUnit` or the same unit. */
      readonly uColumn?: number;
      readonly uUnit?: string;
      /** Column that names the instrument of this value. */
      readonly instrumentColumn?: number;
      /** Instrument of every value of this column for which no column names one. */
      readonly instrument?: Id;
      /** Causes that every reading of this column shares: `relative` is the value itself times the cause. */
      readonly causes?: readonly { readonly cause: Id; readonly effect: number | 'relative' }[];
      /** Spread of a value that comes with none; unknown when absent. */
      readonly spreadIfNone?: Spread;
    };

/**
 * A chunk of an imported table, kept as written. The fold expands it into nodes, links and
 * readings with ids made of the entry's id, the row and the column, so that a table of millions
 * of rows costs little more than its file.
 */
export interface TableChunk {
  /** Base of the ids of what the rows become. */
  readonly id: Ulid;
  /** Version of the reading of cells, so that a later reader gives the same digits. */
  readonly parse: 1;
  readonly nodeKind: 'part' | 'joint';
  readonly file: string;
  readonly headings: readonly string[];
  readonly columns: readonly ColumnUse[];
  /** 1-based row in the file of the first row here. */
  readonly firstRow: number;
  readonly rows: readonly (readonly string[])[];
  readonly decimal: '.' | ',';
  /** Nodes that rows name as parent or as end of a joint, by label, as found at the import. */
  readonly resolved: Readonly<Record<string, Id>>;
  /** Node to which rows belong that name no parent of their own. */
  readonly root: Id;
  readonly condition: Id;
  readonly frame: string;
  /** How values with an instrument, and those without, are known. */
  readonly howWithInstrument: Way;
  readonly howWithout: Way;
  readonly by: string;
  readonly takenAt: Reading['takenAt'];
}

export interface Photo {
  readonly id: Id;
  readonly blob: Sha256;
  readonly mediaType: string;
  readonly subject: Id | null;
  readonly caption: string;
  readonly takenAt: Reading['takenAt'];
}

/**
 * One thing a change does. Each kind has a version `v`; stored entries are never rewritten, a
 * reader upgrades older ones.
 */
export type Entry =
  | { readonly v: 1; readonly e: 'study.put'; readonly set: Partial<StudyHeader> }
  | { readonly v: 1; readonly e: 'condition.put'; readonly id: Id; readonly words: string }
  | { readonly v: 1; readonly e: 'node.add'; readonly node: NodeSpec }
  | { readonly v: 1; readonly e: 'node.move'; readonly id: Id; readonly parent: Id }
  | {
      readonly v: 1;
      readonly e: 'node.name';
      readonly id: Id;
      readonly label?: string;
      readonly name?: string;
    }
  | { readonly v: 1; readonly e: 'node.retire'; readonly id: Id; readonly why: string }
  | { readonly v: 1; readonly e: 'link.add'; readonly link: LinkSpec }
  | { readonly v: 1; readonly e: 'link.retire'; readonly id: Id }
  | { readonly v: 1; readonly e: 'reading.add'; readonly reading: Reading }
  | {
      readonly v: 1;
      readonly e: 'reading.withdraw';
      readonly id: Id;
      readonly subject: Id;
      readonly why: string;
    }
  | { readonly v: 1; readonly e: 'choose'; readonly of: CellRef; readonly reading: Id }
  | { readonly v: 1; readonly e: 'cause.put'; readonly cause: Cause }
  | { readonly v: 1; readonly e: 'instrument.put'; readonly instrument: Instrument }
  | { readonly v: 1; readonly e: 'rates.put'; readonly book: RateBook }
  | { readonly v: 1; readonly e: 'claim.put'; readonly claim: Claim }
  | { readonly v: 1; readonly e: 'claim.withdraw'; readonly id: Id; readonly why: string }
  | { readonly v: 1; readonly e: 'claim.tie'; readonly tie: Tie }
  | { readonly v: 1; readonly e: 'claim.untie'; readonly id: Id }
  | { readonly v: 1; readonly e: 'photo.add'; readonly photo: Photo }
  | { readonly v: 1; readonly e: 'speech.add'; readonly speech: Speech }
  | { readonly v: 1; readonly e: 'draft.add'; readonly draft: SpeechDraft }
  | { readonly v: 1; readonly e: 'draft.settle'; readonly settling: DraftSettling }
  | { readonly v: 1; readonly e: 'word.put'; readonly rule: WordRule }
  | { readonly v: 1; readonly e: 'word.drop'; readonly id: Id }
  | { readonly v: 1; readonly e: 'mark.add'; readonly mark: Mark }
  | { readonly v: 1; readonly e: 'photo.about'; readonly id: Id; readonly subject: Id | null }
  | { readonly v: 1; readonly e: 'photo.mark'; readonly mark: PhotoMark }
  | { readonly v: 1; readonly e: 'gate.record'; readonly record: GateRecord }
  | { readonly v: 1; readonly e: 'gate.override'; readonly override: GateOverride }
  | { readonly v: 1; readonly e: 'gate.lapse'; readonly lapse: GateLapse }
  | { readonly v: 1; readonly e: 'step.mark'; readonly mark: StepMark }
  | { readonly v: 1; readonly e: 'table.add'; readonly table: TableChunk };

export type EntryKind = Entry['e'];

/** What a newer version stored: kept as it is, and folded to a finding by an older reader. */
export interface UnknownEntry {
  readonly v: number;
  readonly e: string;
}

/** Entries that this version knows how to fold. */
export const ENTRY_KINDS = [
  'study.put',
  'condition.put',
  'node.add',
  'node.move',
  'node.name',
  'node.retire',
  'link.add',
  'link.retire',
  'reading.add',
  'reading.withdraw',
  'choose',
  'cause.put',
  'instrument.put',
  'rates.put',
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
  'table.add',
] as const satisfies readonly EntryKind[];
