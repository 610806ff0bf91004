import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Library } from '../../src/app/index.ts';
import { type RunningServer, refusalsAnswer, startServer } from '../../src/server/index.ts';
import { openMemoryStore, type Store } from '../../src/store/index.ts';
import type { Refusal } from '../../src/study/index.ts';
import { type Answered, type Call, call } from './http.ts';

/** A server on a store in memory, with what it logs, for the time of a test file. */
export class Served {
  readonly #server: RunningServer;
  readonly logged: readonly string[];
  readonly library: Library;
  readonly #dir: string;

  private constructor(
    server: RunningServer,
    logged: readonly string[],
    library: Library,
    dir: string,
  ) {
    this.#server = server;
    this.logged = logged;
    this.library = library;
    this.#dir = dir;
  }

  /** `webDir` holds no pages unless the test names a folder that does. */
  static async start(
    options: { readonly webDir?: string; readonly store?: Store } = {},
  ): Promise<Served> {
    const dir = await mkdtemp(join(tmpdir(), 'hoistside-contract-'));
    const library = new Library(options.store ?? openMemoryStore(), dir, 'desk-test');
    const logged: string[] = [];
    const webDir = options.webDir ?? join(dir, 'no-pages');
    const server = await startServer({ library, webDir, log: (line) => logged.push(line) });
    return new Served(server, logged, library, dir);
  }

  get port(): number {
    return this.#server.port;
  }
  get token(): string {
    return this.#server.token;
  }
  get address(): string {
    return this.#server.address;
  }

  async close(): Promise<void> {
    await this.#server.close();
    await this.library.close();
    await rm(this.#dir, { recursive: true });
  }

  /** With the token, unless `headers` say otherwise. */
  call(path: string, { method = 'GET', body, headers = {} }: Call = {}): Promise<Answered> {
    return call(this.port, path, {
      method,
      ...(body === undefined ? {} : { body }),
      headers: { authorization: `Bearer ${this.token}`, ...headers },
    });
  }

  post(path: string, body: unknown): Promise<Answered> {
    return this.call(path, { method: 'POST', body });
  }
}

/** The refusals of an answer, held to their schema. */
export const refusalsOf = ({ json }: Answered): readonly Refusal[] =>
  refusalsAnswer.parse(json).refusals;
