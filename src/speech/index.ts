/**
 * speech: what was said at the vehicle, from timed words to drafts.
 *
 * Reads timed speech (WebVTT, SubRip, text with times) as plain words, never as markup.
 * Depends on quantity and study. Stays away from storage, calculation, files and hosts: bytes are
 * handed in, so that the same code runs in a browser and on a server.
 */
export type { Cue, SpeechFormat, TimedSpeech } from './timed/cue.ts';
export { readSpeech } from './timed/read-speech.ts';
