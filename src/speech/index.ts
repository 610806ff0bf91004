/**
 * speech: what was said at the vehicle, from timed words to drafts.
 *
 * Reads timed speech (WebVTT, SubRip, text with times) as plain words, never as markup; drafts
 * readings and claims by the rules of a language pack and the names of the parts tree; scores
 * drafts against a hand-marked key.
 * Depends on quantity and study. Stays away from storage, calculation, files and hosts: bytes are
 * handed in, so that the same code runs in a browser and on a server. A draft is no reading and no
 * claim until somebody accepts it; settling gives the entries and writes nothing.
 */
export type { HeardQuantity } from './facts/fact.ts';
export { ENGLISH } from './language/english.ts';
export { DRAFT_KINDS, type DraftKind, type LanguagePack } from './language/pack.ts';
export type { SpokenPart } from './parts/part-index.ts';
export { type Draft, readDrafts, type SpeechReading } from './read-drafts.ts';
export { type KeyRow, readKey } from './score/read-key.ts';
export {
  type FieldScore,
  SCORED,
  type Score,
  type Scored,
  scoreDrafts,
} from './score/score-drafts.ts';
export { heardText } from './settle/draft-words.ts';
export {
  type Accepted,
  acceptDraft,
  rejectDraft,
  splitDraft,
  usualForm,
} from './settle/settle-draft.ts';
export { addSeconds, packWith, speechEntries, spokenParts } from './settle/speech-entries.ts';
export type { Cue, SpeechFormat, TimedSpeech } from './timed/cue.ts';
export { readSpeech } from './timed/read-speech.ts';
