import { ENGLISH_FACTS } from './english-facts.ts';
import { ENGLISH_NUMBERS, ENGLISH_SIZES, ENGLISH_UNITS } from './english-numbers.ts';
import { ENGLISH_PARTS } from './english-parts.ts';
import { ENGLISH_WAYS } from './english-ways.ts';
import { COMMON_WORDS } from './english-words.ts';
import type { LanguagePack } from './pack.ts';

/** English as spoken at the hoist. Words of the trade and of everyday speech: common practice, no source. */
export const ENGLISH: LanguagePack = {
  code: 'en',
  numbers: ENGLISH_NUMBERS,
  units: ENGLISH_UNITS,
  sizes: ENGLISH_SIZES,
  ...ENGLISH_FACTS,
  ...ENGLISH_WAYS,
  ...ENGLISH_PARTS,
  articles: ['a', 'an', 'the', 'this', 'that', 'these', 'those', 'its', 'our', 'your', 'my'],
  common: COMMON_WORDS,
  mark: ['mark it', 'mark that', 'mark this', 'marker here', 'pin that', 'pin this'],
};
