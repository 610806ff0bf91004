import { type Facts, type GraphInput, RemovalGraph } from '../../../src/engine/index.ts';
import { sameNumbers } from '../../study/made-study.ts';

/** A graph told in short: parts under a vehicle, joints "A-B", blockers "A>B" or "A>B|group". */
export interface Short {
  readonly parts: string;
  readonly joints?: readonly string[];
  readonly steps?: string;
  readonly blocks?: readonly string[];
  readonly stays?: string;
  /** Parents that are not the vehicle: "child<assembly". */
  readonly below?: string;
}

const words = (text = ''): string[] => text.split(' ').filter((w) => w !== '');

export function inputOf(short: Short): GraphInput {
  const parents = new Map(words(short.below).map((w) => w.split('<') as [string, string]));
  const nodes = [
    { id: 'V', kind: 'vehicle' as const, parent: null, label: 'V' },
    ...words(short.parts).map((id) => ({
      id,
      kind: 'part' as const,
      parent: parents.get(id) ?? 'V',
      label: id,
    })),
    ...words(short.steps).map((id) => ({ id, kind: 'step' as const, parent: 'V', label: id })),
  ];
  const ends = (text: string): string[] => text.split('+');
  return {
    nodes,
    joints: (short.joints ?? []).map((text) => {
      const [id = '', pair = ''] = text.split(':');
      const [from = '', to = ''] = pair.split('-');
      return { id, label: id, from: ends(from), to: ends(to) };
    }),
    blocks: (short.blocks ?? []).map((text) => {
      const [pair = '', group = ''] = text.split('|');
      const [first = '', after = ''] = pair.split('>');
      return { first, after, group };
    }),
    stays: words(short.stays),
  };
}

export const graphFrom = (short: Short): RemovalGraph => new RemovalGraph(inputOf(short));

/** Facts for a graph: seconds by id (one for a joint or step, none for a part), locked and cut joints. */
export function facts(
  more: {
    readonly seconds?: Readonly<Record<string, number>>;
    readonly locked?: string;
    readonly cut?: string;
    readonly tools?: Readonly<Record<string, string>>;
  } = {},
): Facts {
  const [locked, cut] = [new Set(words(more.locked)), new Set(words(more.cut))];
  return {
    seconds: (id) => more.seconds?.[id] ?? (/^[JS]/.test(id) ? 1 : 0),
    isLocked: (id) => locked.has(id),
    isDestroyed: (id) => cut.has(id),
    tool: (id) => more.tools?.[id] ?? '',
  };
}

/** A random graph of parts, joints, steps and blockers, none of them with alternatives. */
export function randomGraph(seed: number, size: number): GraphInput {
  const random = sameNumbers(seed);
  const pick = (list: readonly string[]): string => list[Math.floor(random() * list.length)] ?? '';
  const parts = Array.from({ length: size }, (_, i) => `P${i}`);
  const steps = Array.from({ length: Math.ceil(size / 4) }, (_, i) => `S${i}`);
  const joints = Array.from({ length: 2 * size }, (_, i) => `J${i}:${pick(parts)}-${pick(parts)}`);
  const things = [...parts, ...steps, ...joints.map((j) => j.split(':')[0] ?? '')];
  const blocks = Array.from({ length: size }, () => `${pick(things)}>${pick(things)}`).filter(
    (b) => b.split('>')[0] !== b.split('>')[1],
  );
  return inputOf({ parts: parts.join(' '), steps: steps.join(' '), joints, blocks });
}
