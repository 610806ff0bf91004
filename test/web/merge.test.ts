import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type Change, clockText, type Entry, fold, type Id, ulid } from '../../src/study/index.ts';
import { seenText } from './browser.ts';
import { CLEAN, DemoServer } from './demo-server.ts';
import { Tablet } from './tablet.ts';

/** Two tablets that went on apart, and a desk: all in one record, whoever comes first. */

const EACH = 500;
/** Parts that both have given another name. */
const MET = 20;
const MOST_SECONDS = 10;

let server: DemoServer;
let tablets: readonly Tablet[] = [];

beforeAll(async () => {
  server = await DemoServer.start({ lan: true });
  const first = await Tablet.start(server);
  tablets = [first];
  tablets = [first, await Tablet.start(server)];
});
afterAll(async () => {
  for (const tablet of tablets) await tablet.stop();
  await server?.stop();
});

const path = (page = ''): string => `/s/${server.studies[CLEAN]}${page}`;
const state = (page: Page, words: RegExp) =>
  page.getByRole('status').filter({ hasText: words }).first();

/** What a tablet records while it is alone: names of parts, and claims. */
function recorded(device: Id, base: readonly Change[]): Change[] {
  const study = server.studies[CLEAN] ?? '';
  const parts = fold(study, base).nodes('part');
  const saw = Object.fromEntries(base.map((c) => [c.device, c.seq]));
  const start = Date.now();
  return Array.from({ length: EACH }, (_, i): Change => {
    const id = ulid(start + i, Math.random);
    const part = parts[i];
    const entry: Entry =
      i < MET && part
        ? { v: 1, e: 'node.name', id: part.id, name: `${part.name} seen by ${device}` }
        : { v: 1, e: 'claim.put', claim: claimOf(`${device} ${i}`) };
    return {
      ...{ id, study, device, seq: i + 1, by: device, gesture: id, words: `${device} ${i}`, saw },
      clock: clockText({ ms: start + i, count: 0, device }),
      entries: [entry],
    };
  });
}

const claimOf = (words: string) => ({
  ...{ id: ulid(Date.now(), Math.random), words, by: 'test' },
  how: 'guessed' as const,
  ...{ about: [], evidence: [], heard: '2026-01-05T09:00:00' },
});

/** Puts changes where a page has them that were made without a network. */
const putInOutbox = (page: Page, changes: readonly Change[]): Promise<void> =>
  page.evaluate(
    `new Promise((resolve, reject) => {
      const opening = indexedDB.open('hoistside');
      opening.onerror = () => reject(opening.error);
      opening.onsuccess = () => {
        const transaction = opening.result.transaction('outbox', 'readwrite');
        for (const change of ${JSON.stringify(changes)})
          transaction.objectStore('outbox').put(change);
        transaction.oncomplete = () => { opening.result.close(); resolve(); };
        transaction.onabort = () => reject(transaction.error);
      };
    })`,
  );

const revision = (page: Page): Promise<string> =>
  seenText(page.locator('.title-block div', { hasText: 'Revision' }).locator('dd'));

it('who else has a part in hand is told', async () => {
  const pages: Page[] = [];
  for (const [i, tablet] of tablets.entries()) {
    const page = await tablet.pair(await server.freshCode(), `tablet ${i + 1}`);
    await page.goto(`${tablet.origin}${path('/parts')}`);
    await page.getByRole('searchbox').fill('40-004');
    await page.getByRole('button', { name: '40-004', exact: true }).click();
    pages.push(page);
  }
  const [one, two] = pages;
  await one?.getByText('(tablet 2) has this in hand too.').waitFor();
  await two?.getByText('(tablet 1) has this in hand too.').waitFor();
  await two?.getByRole('button', { name: 'put down' }).click();
  await one?.getByText('has this in hand too.').waitFor({ state: 'detached' });
  for (const page of pages) await state(page, /^saved$/).waitFor();
});

it(`two tablets with ${EACH} changes each merge within ${MOST_SECONDS} s, and what met is shown`, async () => {
  await server.post(CLEAN, { device: 'desk', seq: 1, words: 'said at the desk' });
  const base = await server.changes(CLEAN);
  await server.kill();
  const pages: Page[] = [];
  for (const [i, tablet] of tablets.entries()) {
    const page = await tablet.open('/');
    await page.locator('.study-list li').first().waitFor();
    await putInOutbox(page, recorded(`alone-${i + 1}`, base));
    await page.goto(`${tablet.origin}${path('/history')}`);
    await state(page, new RegExp(`^${EACH} kept here`)).waitFor();
    pages.push(page);
  }
  await server.run();
  const start = performance.now();
  // What a browser says to its pages when the network is back.
  for (const page of pages) await page.evaluate("dispatchEvent(new Event('online'))");
  const all = base.length + 2 * EACH;
  const isLevel = async (page: Page) =>
    (await revision(page)).startsWith(`${all}`) && (await state(page, /^saved$/).isVisible());
  await expect
    .poll(() => Promise.all(pages.map(isLevel)), { interval: 50, timeout: 60_000 })
    .toEqual([true, true]);
  const seconds = (performance.now() - start) / 1000;
  console.log(`2 × ${EACH} changes level on two tablets and the desk in ${seconds.toFixed(1)} s`);
  expect(seconds).toBeLessThan(MOST_SECONDS);

  const held = await server.changes(CLEAN);
  expect(held).toHaveLength(all);
  expect(new Set(held.map((c) => c.id)).size).toBe(all);
  const texts: string[] = [];
  for (const page of pages) {
    expect(await revision(page)).toBe(await revision(pages[0] as Page));
    await page.getByRole('heading', { name: 'Found in the record' }).waitFor();
    await page.locator('.findings summary').click();
    texts.push(await seenText(page.locator('.findings')));
  }
  expect(texts[0]).toBe(texts[1]);
  expect(texts[0]?.match(/changed this without having seen the change by/g)).toHaveLength(MET);
});
