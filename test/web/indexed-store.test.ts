import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { build, type Rolldown } from 'vite';
import { afterAll, beforeAll, describe } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import type { BlobHead, Stage, Store } from '../../src/store/index.ts';
import { RefusalError } from '../../src/study/index.ts';
import { foundParts } from '../store/found-parts.ts';
import { type StoreUnderTest, storeContract } from '../store/store-contract.ts';
import { openBrowser } from './open-browser.ts';
import { MARKS, type StoreCall, type StoreReply } from './store-page.ts';

/** The suite of store tests over IndexedDB as the real browser has it, one database a test. */

const ORIGIN = 'https://store.test/';
let browser: Browser;
let page: Page;
let opened = 0;

beforeAll(async () => {
  const [script, started] = await Promise.all([pageScript(), openBrowser()]);
  browser = started;
  page = await browser.newPage();
  // A page of a secure origin, without a server: hashing needs one.
  await page.route(`${ORIGIN}**`, (route) =>
    route.fulfill({ contentType: 'text/html', body: '<title>store</title>' }),
  );
  await page.goto(ORIGIN);
  await page.addScriptTag({ content: script, type: 'module' });
  await page.waitForFunction('globalThis.storeCall !== undefined');
});
afterAll(() => browser?.close());

async function pageScript(): Promise<string> {
  const built = (await build({
    ...{ root: ROOT, configFile: false, logLevel: 'error' },
    build: {
      ...{ write: false, minify: false, target: 'es2022' },
      rolldownOptions: { input: join(ROOT, 'test/web/store-page.ts') },
    },
  })) as Rolldown.RolldownOutput;
  return built.output[0].code;
}

/** What JSON can not say goes as a mark, so that the store in the page meets it as it was. */
const marked = (_: string, value: unknown): unknown =>
  value === undefined ? MARKS.none : Number.isNaN(value) ? MARKS.nan : value;

async function ask(of: number, method: string, ...args: readonly unknown[]): Promise<unknown> {
  const call: StoreCall = { of, method, args };
  const said = await page.evaluate<string, string>(
    (text) =>
      (globalThis as unknown as { storeCall: (t: string) => Promise<string> }).storeCall(text),
    JSON.stringify(call, marked),
  );
  const reply = JSON.parse(said) as StoreReply;
  if ('value' in reply) return reply.value;
  if ('broke' in reply) throw new Error(reply.broke);
  if (!('refusals' in reply)) return undefined;
  const [first, ...more] = reply.refusals;
  throw first ? new RefusalError(first, ...more) : new Error('refused without a reason');
}

/** A store in the page, called from here. */
function storeAt(of: number): Store {
  const to =
    (method: string) =>
    (...args: readonly unknown[]): Promise<never> =>
      ask(of, method, ...args) as Promise<never>;
  return {
    append: to('append'),
    stage: async (...args) => stageAt((await ask(of, 'stage', ...args)) as number),
    since: to('since'),
    studies: to('studies'),
    lastSeq: to('lastSeq'),
    find: to('find'),
    purge: to('purge'),
    check: to('check'),
    rebuild: to('rebuild'),
    version: to('version'),
    backup: to('backup'),
    close: to('close'),
    hasBlob: to('hasBlob'),
    putBlob: async (chunks) => {
      const all: Uint8Array[] = [];
      for await (const chunk of chunks) all.push(chunk);
      return (await ask(of, 'putBlob', Buffer.concat(all).toString('base64'))) as string;
    },
    getBlob: async function* (hash) {
      for (const chunk of (await ask(of, 'getBlob', hash)) as string[])
        yield Buffer.from(chunk, 'base64');
    },
    blobs: async function* () {
      yield* (await ask(of, 'blobs')) as BlobHead[];
    },
  };
}

const stageAt = (of: number): Stage => ({
  add: async (...args) => void (await ask(of, 'add', ...args)),
  commit: async () => (await ask(of, 'commit')) as Awaited<ReturnType<Stage['commit']>>,
  drop: async () => void (await ask(of, 'drop')),
});

/** Writers wait longer than over the other stores: a browser takes its time to reach the disk. */
const WAIT_MS = 2000;

const inBrowser: StoreUnderTest = {
  open: async () =>
    storeAt((await ask(0, 'open', `store ${++opened}`, { waitMs: WAIT_MS })) as number),
  cleanUp: async () => {},
};

describe('IndexedDB in a real browser', () => {
  describe('contract', () => storeContract(inBrowser));
  describe('parts and heads', () => foundParts(inBrowser));
});
