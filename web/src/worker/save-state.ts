import type { HereAnswer } from '../../../src/server/contract.ts';
import type { Id, Refusal } from '../../../src/study/index.ts';

/** How far this browser's changes have come. */
export interface SaveState {
  /** Changes kept by this browser that wait for the server's acknowledgement. */
  readonly waiting: number;
  /** Photographs and other files that wait with them. */
  readonly files: number;
  /** All that is known of the study is on this device's disk: it opens without a server. */
  readonly isCopied: boolean;
  /** Why the server can not be reached at the moment. */
  readonly unreachable?: string;
  /** The change that the server refused, and why; those behind it wait. */
  readonly refused?: {
    readonly change: Id;
    readonly words: string;
    readonly refusals: readonly Refusal[];
  };
  /** Other open pages of the study, as the server told last. */
  readonly others: HereAnswer['others'];
  /** Why something is held by the open page only, and would be lost with it. */
  readonly unkept?: string;
}

export const NOTHING_WAITS: SaveState = { waiting: 0, files: 0, isCopied: false, others: [] };
