import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtemp, rm } from 'node:fs/promises';
import { type AddressInfo, createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { ROOT } from '../../scripts/root.ts';
import { createStudy, deviceOf, importRecord, Library } from '../../src/app/index.ts';
import type { BlobAnswer, ChangesAnswer } from '../../src/server/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';
import {
  type Change,
  clockText,
  type Entry,
  fold,
  type Id,
  type Sha256,
  ulid,
} from '../../src/study/index.ts';
import { builtPages } from './built-pages.ts';

export const CLEAN = 'VAN-27';
export const FAULTY = 'VAN-27 with planted faults';

/** A change as `post` takes it. */
export interface Posted {
  readonly device: Id;
  readonly seq: number;
  readonly words: string;
}

const freshId = (): Id => ulid(Date.now(), Math.random);

/** The real server in a process of its own, on a library into which the demo was imported. */
export class DemoServer {
  #child: ChildProcess | undefined;
  address = '';
  /** On the network: `https://<name>.local:<port>`, and the code for the next device. */
  lan = { origin: '', code: '' };

  private constructor(
    readonly dir: string,
    private readonly ports: { readonly desk: number; readonly lan?: number },
    readonly studies: Readonly<Record<string, Id>>,
  ) {}

  static async start(options: { readonly lan?: boolean } = {}): Promise<DemoServer> {
    await builtPages();
    const dir = await mkdtemp(join(tmpdir(), 'hoistside-web-'));
    const desk = await freePort();
    const ports = options.lan ? { desk, lan: await freePort() } : { desk };
    const server = new DemoServer(dir, ports, await importDemo(dir));
    await server.run();
    return server;
  }

  /** Starts it, or starts it again on the same ports; the token is a new one each time. */
  async run(): Promise<void> {
    const { desk, lan } = this.ports;
    const onLan = lan === undefined ? [] : ['--lan', '--lan-port', `${lan}`];
    const command = ['bin/hoistside.js', '--library', this.dir, 'serve', '--port', `${desk}`];
    const child = spawn(process.execPath, [...command, ...onLan], {
      cwd: ROOT,
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    this.#child = child;
    const last = lan === undefined ? /Open / : /with the code/;
    for await (const line of createInterface({ input: child.stdout })) {
      this.address = /Open (\S+)/.exec(line)?.[1] ?? this.address;
      const origin = /^ {2}(https:\S+\.local:\d+)$/.exec(line)?.[1] ?? this.lan.origin;
      this.lan = { origin, code: /with the code (\d+ \d+)/.exec(line)?.[1] ?? '' };
      if (last.test(line)) return;
    }
    throw new Error('the server ended before it listened');
  }

  /** A fresh code for the next device, as the desk makes it. */
  async freshCode(): Promise<string> {
    const [origin = '', token = ''] = this.address.split('/#token=');
    const answer = await fetch(`${origin}/api/pairing`, {
      method: 'POST',
      headers: { authorization: `Bearer ${token}` },
    });
    return ((await answer.json()) as { code: string }).code;
  }

  /** Address of a page of one of its studies, token included. */
  page(study: string, path = ''): string {
    const [origin = '', hash = ''] = this.address.split('/#');
    return `${origin}/s/${this.studies[study]}${path}#${hash}`;
  }

  /** Posts a change with one claim, past any page. @throws Error when it is not acknowledged. */
  post(study: string, posted: Posted): Promise<void> {
    const about = {
      how: 'guessed',
      about: [],
      evidence: [],
      heard: '2026-01-05T09:00:00',
    } as const;
    const claim = { id: freshId(), words: posted.words, by: 'test', ...about };
    return this.#post(study, posted, { v: 1, e: 'claim.put', claim } as const);
  }

  /** Every change that it holds of a study. */
  async changes(study: string): Promise<Change[]> {
    const answer = await this.#ask(`/api/studies/${this.studies[study]}/changes?limit=5000`);
    return ((await answer.json()) as ChangesAnswer).changes.map((c) => c.change);
  }

  /** Posts bytes that are called a picture, whatever they are; returns their hash. */
  async postPhoto(study: string, label: string, bytes: Uint8Array<ArrayBuffer>): Promise<Sha256> {
    const type = 'application/octet-stream';
    const put = await this.#ask('/api/blobs', 'PUT', type, new Blob([bytes]));
    const { hash } = (await put.json()) as BlobAnswer;
    const view = fold(this.studies[study] ?? '', await this.changes(study));
    const subject = view.find(label)?.id ?? null;
    const photo = {
      ...{ id: freshId(), blob: hash, mediaType: 'image/png', subject, caption: 'posted' },
      takenAt: { local: '2026-01-05T09:00:00' },
    };
    const posted = { device: 'elsewhere', seq: 1, words: 'photograph from elsewhere' };
    await this.#post(study, posted, { v: 1, e: 'photo.add', photo });
    return hash;
  }

  async #post(study: string, { device, seq, words }: Posted, entry: Entry): Promise<void> {
    const id = freshId();
    const change: Change = {
      ...{ id, study: this.studies[study] ?? '', device, seq, by: 'test', gesture: id, words },
      clock: clockText({ ms: Date.now(), count: 0, device }),
      ...{ saw: {}, entries: [entry] },
    };
    const at = `/api/studies/${change.study}/changes`;
    const body = JSON.stringify({ changes: [change] });
    const answer = await this.#ask(at, 'POST', 'application/json', body);
    if (!answer.ok) throw new Error(`not acknowledged: ${await answer.text()}`);
  }

  #ask(path: string, method = 'GET', type?: string, body?: string | Blob): Promise<Response> {
    const [origin = '', token = ''] = this.address.split('/#token=');
    const headers = {
      authorization: `Bearer ${token}`,
      ...(type === undefined ? {} : { 'content-type': type }),
    };
    return fetch(`${origin}${path}`, { method, headers, ...(body === undefined ? {} : { body }) });
  }

  /** Ends it at once, whatever it is doing. */
  async kill(): Promise<void> {
    const child = this.#child;
    if (!child || child.exitCode !== null || child.signalCode !== null) return;
    const ended = once(child, 'exit');
    child.kill('SIGKILL');
    await ended;
  }

  async stop(): Promise<void> {
    await this.kill();
    await rm(this.dir, { recursive: true, force: true });
  }
}

async function importDemo(dir: string): Promise<Record<string, Id>> {
  const store = await openSqliteStore(dir);
  const library = new Library(store, dir, await deviceOf(dir));
  const studies: Record<string, Id> = {};
  for (const [title, folder] of [
    [CLEAN, 'van-27-clean'],
    [FAULTY, 'van-27-faulty'],
  ] as const) {
    const study = await createStudy(library, {
      title,
      vehicle: 'VAN-27',
      by: 'demo',
      invented: true,
    });
    await importRecord(library, study, {
      dir: join(ROOT, 'demo/tables', folder),
      by: 'demo',
      spreads: { 'time.access,time.drive': '15 %' },
    });
    studies[title] = study;
  }
  await library.close();
  return studies;
}

/** A port that nobody listens on just now. */
async function freePort(): Promise<number> {
  const probe = createServer().listen(0, '127.0.0.1');
  await once(probe, 'listening');
  const { port } = probe.address() as AddressInfo;
  probe.close();
  await once(probe, 'close');
  return port;
}
