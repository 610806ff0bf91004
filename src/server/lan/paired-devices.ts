import { createHash, randomUUID } from 'node:crypto';
import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import { LOCAL } from '../door.ts';
import { freshToken } from '../guard.ts';
import { readPrivate, writePrivate } from './private-files.ts';

const pairedDevice = z.strictObject({
  id: z.string(),
  name: z.string(),
  /** SHA-256 of its token, which nobody but the device keeps. */
  hash: z.string(),
  /** ISO 8601, UTC. */
  paired: z.string(),
});
type Kept = z.infer<typeof pairedDevice>;

/** A device that may sign in. */
export type PairedDevice = Omit<Kept, 'hash'>;

/** The devices that were paired with a library's server, kept in a file beside its keys. */
export class PairedDevices {
  readonly #file: string;
  #read: { readonly mtimeMs: number; readonly devices: readonly Kept[] } | undefined;

  constructor(folder: string) {
    this.#file = join(folder, 'devices.json');
  }

  async list(): Promise<readonly PairedDevice[]> {
    return (await this.#all()).map(({ hash: _, ...device }) => device);
  }

  /**
   * Adds a device; its token is given out here and never again. It gets a number behind its name
   * where another device, or the desk itself, has that name: the name is the author of what it sends.
   */
  async add(wanted: string): Promise<{ readonly device: PairedDevice; readonly token: string }> {
    const token = freshToken();
    const all = await this.#all();
    const name = freeName(wanted, [LOCAL, ...all.map((device) => device.name)]);
    const device = { id: randomUUID(), name, paired: new Date().toISOString() };
    await this.#write([...all, { ...device, hash: hashOf(token) }]);
    return { device, token };
  }

  /** The name of the device that holds a token. A digest is looked up: no timing tells of tokens. */
  async holder(token: string): Promise<string | undefined> {
    const hash = hashOf(token);
    return (await this.#all()).find((device) => device.hash === hash)?.name;
  }

  /** False when there is no such device. */
  async forget(id: string): Promise<boolean> {
    const all = await this.#all();
    const left = all.filter((device) => device.id !== id);
    if (left.length < all.length) await this.#write(left);
    return left.length < all.length;
  }

  /** Read again when another program has written it. */
  async #all(): Promise<readonly Kept[]> {
    const { mtimeMs } = await stat(this.#file).catch(() => ({ mtimeMs: 0 }));
    if (this.#read?.mtimeMs === mtimeMs) return this.#read.devices;
    const text = await readPrivate(this.#file);
    const devices = text === undefined ? [] : z.array(pairedDevice).parse(JSON.parse(text));
    this.#read = { mtimeMs, devices };
    return devices;
  }

  async #write(devices: readonly Kept[]): Promise<void> {
    await writePrivate(this.#file, `${JSON.stringify(devices, undefined, 1)}\n`);
    this.#read = undefined;
  }
}

function freeName(wanted: string, taken: readonly string[]): string {
  const names = new Set(taken.map((name) => name.toLowerCase()));
  for (let i = 1; ; i++) {
    const name = i === 1 ? wanted : `${wanted} ${i}`;
    if (!names.has(name.toLowerCase())) return name;
  }
}

const hashOf = (token: string): string => createHash('sha256').update(token).digest('hex');
