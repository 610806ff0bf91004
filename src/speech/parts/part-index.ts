import type { LanguagePack } from '../language/pack.ts';
import { phraseWords } from '../words/tokens.ts';

/** A node of the parts tree, as far as the reader needs it. */
export interface SpokenPart {
  readonly id: string;
  readonly label: string;
  readonly name: string;
  readonly kind: 'vehicle' | 'assembly' | 'part';
  /** Assembly above it; null for the vehicle. */
  readonly parent: string | null;
}

/** Parts of one name, left and right together. */
export interface PartName {
  readonly parts: readonly SpokenPart[];
  /** Words of the name proper, by stem. */
  readonly main: readonly string[];
  /** Words behind a comma or in brackets. */
  readonly extra: readonly string[];
  readonly parent: string | null;
}

const UNITS = new Set(['and', 'ah', 'v', 'l', 'kw', 'p']);
const SIDE = /\b(LH|RH)\b/;

/** A word without its plural. */
export const stem = (word: string): string =>
  /(?:ss|us|is)$/.test(word) || word.length < 4
    ? word
    : word
        .replace(/(ch|sh|x|ss)es$/, '$1')
        .replace(/ies$/, 'y')
        .replace(/([^s])s$/, '$1');

/** Left or right by the name: 'L', 'R', or neither. */
export const sideOf = (part: SpokenPart): 'L' | 'R' | undefined => {
  const side = SIDE.exec(part.name)?.[1];
  return side === undefined ? undefined : side === 'LH' ? 'L' : 'R';
};

/** In a small tree a word tells as much as in one of so many names. */
const LEAST_NAMES = 100;

/** The names of a parts tree, and how telling each word of them is. */
export class PartIndex {
  readonly names: readonly PartName[];
  readonly #byWord = new Map<string, PartName[]>();
  readonly #modifiers: ReadonlySet<string>;
  readonly #weak: ReadonlySet<string>;
  readonly #hollow: ReadonlySet<string>;

  constructor(parts: readonly SpokenPart[], pack: LanguagePack) {
    this.#modifiers = new Set(pack.modifiers.map(stem));
    this.#hollow = new Set(pack.hollow.map(stem));
    const told = [...pack.materials, ...pack.processes].flatMap((term) => term.said);
    const elsewhere = [...Object.keys(pack.sizes), ...told.flatMap(phraseWords)];
    this.#weak = new Set([...pack.weak, ...elsewhere].map(stem));
    const groups = new Map<string, SpokenPart[]>();
    for (const part of parts) {
      if (part.kind === 'vehicle') continue;
      const key = `${part.parent} ${part.name
        .replace(/\s*\((?:LH|RH)\)/, '')
        .replace(SIDE, '')
        .trim()}`;
      groups.set(key, [...(groups.get(key) ?? []), part]);
    }
    this.names = [...groups.values()].map(nameOf);
    for (const name of this.names)
      for (const word of new Set([...name.main, ...name.extra])) {
        const list = this.#byWord.get(word) ?? [];
        list.push(name);
        this.#byWord.set(word, list);
      }
  }

  get words(): Iterable<string> {
    return this.#byWord.keys();
  }

  having(word: string): readonly PartName[] {
    return this.#byWord.get(word) ?? [];
  }

  /** ln(1 + names / names with the word), less for words that tell little by themselves. */
  weight(word: string): number {
    const telling = Math.log(
      1 + Math.max(LEAST_NAMES, this.names.length) / Math.max(1, this.having(word).length),
    );
    return telling * (this.#modifiers.has(word) ? 0.45 : this.#weak.has(word) ? 0.6 : 1);
  }

  isModifier(word: string): boolean {
    return this.#modifiers.has(word);
  }

  /** Front, rear and so on by its name or by that of its assembly. */
  isPlaced(name: PartName, place: string): boolean {
    const above = this.names.find((one) => one.parts.some((part) => part.id === name.parent));
    return [name, above].some((one) => one?.main.includes(place) ?? false);
  }

  /** The nouns that close a name: "bar" of "anti-roll bar front", "case" too of "gear case halves". */
  heads(name: PartName): readonly string[] {
    const words = name.main.filter((word) => !this.#modifiers.has(word));
    const last = words.findLastIndex((word) => !this.#hollow.has(word));
    return words.slice(Math.max(0, last));
  }

  /** The names that a fastener, bush or mount of a part in hand goes by. */
  attachedTo(noun: string, hand: readonly SpokenPart[]): readonly PartName[] {
    const own = this.having(noun).filter((name) => this.heads(name).includes(noun));
    const held = this.names.filter((name) => hand.some((part) => name.parts.includes(part)));
    return own.filter((name) =>
      held.some((one) =>
        one.parts.some((part) => part.kind === 'assembly')
          ? name.parent === one.parts[0]?.id &&
            own.filter((o) => o.parent === name.parent).length === 1
          : name.parent === one.parent &&
            name !== one &&
            this.telling(one).length > 0 &&
            this.telling(one).every((word) => name.main.includes(word)),
      ),
    );
  }

  /** Words of a name that could stand for it. */
  telling(name: PartName): readonly string[] {
    return name.main.filter((word) => !this.isWeak(word) && word.length > 2);
  }

  /** True for a word that can not stand for a part alone. */
  isWeak(word: string): boolean {
    return this.#weak.has(word) || this.#modifiers.has(word);
  }
}

/** The words of a name or of what people call it, without plurals, sizes and units. */
export const nameWords = (text: string): string[] =>
  phraseWords(text.replace(/[/()]/g, ' '))
    .map(stem)
    .filter((word) => !/^[a-z]?\d/.test(word) && !UNITS.has(word));

function nameOf(parts: readonly SpokenPart[]): PartName {
  const [first] = parts;
  const text = (first?.name ?? '').replace(SIDE, ' ').replace(/\((?:LH|RH)\)/, ' ');
  const brackets = text.match(/\(([^)]*)\)/g) ?? [];
  const [head = '', ...rest] = text.replace(/\([^)]*\)/g, ' ').split(',');
  return {
    parts,
    main: nameWords(head),
    extra: [...rest, ...brackets].flatMap(nameWords),
    parent: first?.parent ?? null,
  };
}
