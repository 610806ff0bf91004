import { type IndexedHost, openIndexedStore } from '../../src/store/indexed/index.ts';
import type { Stage, Store } from '../../src/store/port.ts';
import { type Refusal, RefusalError } from '../../src/study/index.ts';

/**
 * Runs in the browser: takes calls of a store as JSON text and answers in the same way, so that
 * the suite of store tests can drive the real one from outside.
 */
export interface StoreCall {
  readonly of: number;
  readonly method: string;
  readonly args: readonly unknown[];
}
/** A call that returns nothing has no value. */
export type StoreReply =
  | { readonly value?: unknown }
  | { readonly refusals: readonly Refusal[] }
  | { readonly broke: string };

/** What stands in a call for what JSON can not say. */
export const MARKS = { none: 'none\u0000', nan: 'NaN\u0000' } as const;

const objects: (Store | Stage)[] = [];

async function call({ of, method, args }: StoreCall): Promise<StoreReply> {
  if (method === 'open') {
    const [name, options] = args as [string, { waitMs: number }];
    const host = globalThis as unknown as IndexedHost;
    return { value: objects.push(await openIndexedStore(host, name, options)) - 1 };
  }
  const store = objects[of] as Store;
  if (method === 'putBlob') return { value: await store.putBlob([bytesOf(args[0] as string)]) };
  if (method === 'getBlob') {
    const chunks: string[] = [];
    for await (const chunk of store.getBlob(args[0] as string)) chunks.push(base64Of(chunk));
    return { value: chunks };
  }
  if (method === 'blobs') {
    const heads: unknown[] = [];
    for await (const head of store.blobs()) heads.push(head);
    return { value: heads };
  }
  const value = await (store as unknown as Record<string, (...a: unknown[]) => unknown>)[method]?.(
    ...args,
  );
  return method === 'stage' ? { value: objects.push(value as Stage) - 1 } : { value };
}

async function answer(text: string): Promise<string> {
  try {
    return JSON.stringify(await call(unmarked(JSON.parse(text)) as StoreCall));
  } catch (error) {
    if (error instanceof RefusalError) return JSON.stringify({ refusals: error.refusals });
    return JSON.stringify({ broke: String(error) });
  }
}

/** By hand: a reviver of JSON.parse would take away what it makes undefined. */
function unmarked(value: unknown): unknown {
  if (value === MARKS.none) return undefined;
  if (value === MARKS.nan) return Number.NaN;
  if (Array.isArray(value)) return value.map(unmarked);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, field]) => [key, unmarked(field)]));
}

const bytesOf = (base64: string): Uint8Array =>
  Uint8Array.from(atob(base64), (sign) => sign.charCodeAt(0));
const base64Of = (bytes: Uint8Array): string =>
  btoa([...bytes].map((byte) => String.fromCharCode(byte)).join(''));

Object.assign(globalThis, { storeCall: answer });
