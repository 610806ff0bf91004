const ENTITIES: Readonly<Record<string, string>> = {
  amp: '&',
  lt: '<',
  gt: '>',
  nbsp: '\u00a0',
  quot: '"',
  apos: "'",
  lrm: '\u200e',
  rlm: '\u200f',
};

/** Tags of WebVTT cue text and the plain ones of SubRip; all other text in brackets is markup too. */
const TAG = /<[^<>]*>/g;
const KNOWN_TAG = /^<\/?(?:c|i|b|u|v|ruby|rt|lang|font)(?:[.\s>/]|$)|^<[\d:.]+>$/i;
const VOICE = /<v(?:\.[^\s>]*)*[ \t]+([^>]*)>/i;

/** The words of a cue without markup, and what was taken off that is no tag of the format. */
export interface PlainWords {
  readonly text: string;
  readonly who?: string;
  readonly foreign: readonly string[];
}

/**
 * Takes tags off and puts characters for entities. The result is text and is shown as text:
 * what an entity spells, `<script>` included, is words and nothing else.
 */
export function plainWords(raw: string): PlainWords {
  const who = VOICE.exec(raw)?.[1]?.trim();
  const foreign = (raw.match(TAG) ?? []).filter((tag) => !KNOWN_TAG.test(tag));
  const bare = raw.replace(TAG, ' ').replace(/<[^<>]*$/, ' ');
  const text = bare
    .replace(/&(?:#(\d{1,7})|#x([\da-f]{1,6})|(\w{2,6}));/gi, characterOf)
    .replace(/\s+/g, ' ')
    .trim();
  return { text, ...(who ? { who: entityFree(who) } : {}), foreign };
}

const entityFree = (text: string): string =>
  text.replace(/&(\w+);/g, (all, name: string) => ENTITIES[name] ?? all);

function characterOf(all: string, decimal?: string, hex?: string, name?: string): string {
  if (name !== undefined) return ENTITIES[name.toLowerCase()] ?? all;
  const code = decimal === undefined ? Number.parseInt(hex ?? '', 16) : Number(decimal);
  return code > 31 && code <= 0x10ffff && !(code >= 0xd800 && code < 0xe000)
    ? String.fromCodePoint(code)
    : '\ufffd';
}

/** "lead: the lid": the one who speaks, where a recogniser writes the name before the words. */
export function namedSpeaker(text: string): { readonly who?: string; readonly text: string } {
  const [all, who] = /^([\p{L}][\p{L}\d .'-]{0,23}):\s+/u.exec(text) ?? [];
  return all === undefined || who === undefined
    ? { text }
    : { who: who.trim(), text: text.slice(all.length) };
}
