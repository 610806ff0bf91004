import { type PartIndex, type PartName, type SpokenPart, sideOf } from './part-index.ts';

/** Words after which an assembly no longer counts as the one at hand. */
const FADES = 160;
const IN_HAND = 0.9;
const BELOW_HAND = 0.7;

/** What has been spoken of so far: the part in hand, and the assemblies about it, fading. */
export class Context {
  readonly #index: PartIndex;
  readonly #zones = new Map<string, number>();
  hand: readonly SpokenPart[];
  /** Place and side of the vehicle that the talk has gone to: "start at the front left". */
  place: string | undefined;
  side: 'L' | 'R' | undefined;

  constructor(index: PartIndex, hand: readonly SpokenPart[]) {
    this.#index = index;
    this.hand = hand;
  }

  take(parts: readonly SpokenPart[], at: number): void {
    this.hand = parts;
    for (const part of parts) {
      const zone = part.kind === 'assembly' ? part.id : part.parent;
      if (zone !== null) this.#zones.set(zone, at);
    }
  }

  /** How near a name is to what is spoken of: 0 far to 0.9 in hand. */
  nearness(name: PartName, at: number): number {
    if (this.isInHand(name)) return IN_HAND;
    const zone = this.zoneOf(name, at);
    const isPlace = this.place !== undefined && this.#index.isPlaced(name, this.place);
    return BELOW_HAND * zone + (isPlace ? 0.2 : 0);
  }

  isInHand(name: PartName): boolean {
    return this.hand.some((part) => name.parts.some((own) => own.id === part.id));
  }

  /** 1 in the assembly just spoken of, fading to 0. */
  zoneOf(name: PartName, at: number): number {
    const last = Math.max(
      this.#zones.get(name.parent ?? '') ?? Number.NEGATIVE_INFINITY,
      ...name.parts.map((part) => this.#zones.get(part.id) ?? Number.NEGATIVE_INFINITY),
    );
    return Math.max(0, 1 - (at - last) / FADES);
  }

  /** The side of the talk where the parts are of both and none was said. */
  sided(parts: readonly SpokenPart[]): readonly SpokenPart[] {
    const own = parts.filter((part) => this.side !== undefined && sideOf(part) === this.side);
    return own.length > 0 ? own : parts;
  }
}
