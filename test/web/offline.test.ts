import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { ChangesAnswer } from '../../src/server/index.ts';
import { seenText } from './browser.ts';
import { CLEAN, DemoServer } from './demo-server.ts';
import { Tablet } from './tablet.ts';

/** Over https, under the name of the machine, as a tablet in the workshop does it. */

const MARKS = 50;
let server: DemoServer;
let tablet: Tablet;

beforeAll(async () => {
  server = await DemoServer.start({ lan: true });
  tablet = await Tablet.start(server);
});
afterAll(async () => {
  await tablet?.stop();
  await server?.stop();
});

const path = (page = ''): string => `/s/${server.studies[CLEAN]}${page}`;

const state = (page: Page, words: RegExp) =>
  page.getByRole('status').filter({ hasText: words }).first();

/** Opens what is said of the device, and waits until it says so. */
async function deviceSays(page: Page, words: string): Promise<void> {
  await page.getByRole('status').getByRole('button').click();
  const dialog = page.getByRole('dialog', { name: 'What is saved, and where' });
  await dialog.getByText(words).waitFor();
  await dialog.getByRole('button', { name: 'Close' }).click();
}

async function mark(page: Page, words: string): Promise<void> {
  await page.getByLabel('What was said').fill(words);
  await page.getByRole('button', { name: 'Keep the claim' }).click();
  await page.getByRole('article', { name: words, exact: true }).waitFor();
}

/** Words of every change that the desk holds of the study. */
async function atDesk(): Promise<string[]> {
  const [origin = '', token = ''] = server.address.split('/#token=');
  const answer = await fetch(
    `${origin}/api${path().replace('/s/', '/studies/')}/changes?limit=5000`,
    {
      headers: { authorization: `Bearer ${token}` },
    },
  );
  const { changes } = (await answer.json()) as ChangesAnswer;
  return changes.map((c) => c.change.words);
}

it('can be installed, is copied to the device, and keeps no answer of the server in a cache', async () => {
  const page = await tablet.pair(server.lan.code, 'tablet at hoist 2');
  await page.goto(`${tablet.origin}${path('/claims')}`);
  await state(page, /^saved$/).waitFor();
  await deviceSays(page, 'This device has a copy of the whole study.');
  await deviceSays(page, 'The pages are kept');
  const devtools = await tablet.context.newCDPSession(page);
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  expect(installabilityErrors).toEqual([]);
  const kept = await page.evaluate<string[]>(CACHED);
  expect(kept).toContain('/index.html');
  expect(kept.filter((at) => /^\/(api|pair|trust)/.test(at))).toEqual([]);
  await page.close();
});

/** Paths of all that the browser's caches hold. */
const CACHED = `(async () => {
  const paths = [];
  for (const name of await caches.keys())
    for (const { url } of await (await caches.open(name)).keys()) paths.push(new URL(url).pathname);
  return paths;
})()`;

it(`${MARKS} marks made while the server is down outlive a killed tablet, and arrive once`, async () => {
  await server.kill();
  const before = await tablet.open(path('/claims'));
  for (let i = 1; i <= MARKS / 2; i++) await mark(before, `mark ${i}`);
  await state(before, new RegExp(`^${MARKS / 2} kept here`)).waitFor();
  await tablet.kill();
  await tablet.switchOn();

  const page = await tablet.open(path('/claims'));
  for (let i = MARKS / 2 + 1; i <= MARKS; i++) await mark(page, `mark ${i}`);
  await state(page, new RegExp(`^${MARKS} kept here`)).waitFor();
  expect(await page.getByRole('article', { name: /^mark \d+$/ }).count()).toBe(MARKS);
  await tablet.kill();
  await server.run();
  expect((await atDesk()).filter((words) => words.includes('mark '))).toEqual([]);

  await tablet.switchOn();
  const back = await tablet.open(path('/claims'));
  await state(back, /^saved$/).waitFor();
  const arrived = (await atDesk()).flatMap((words) => /mark \d+/.exec(words)?.[0] ?? []);
  expect(arrived).toEqual(Array.from({ length: MARKS }, (_, i) => `mark ${i + 1}`));
  await back.close();
});

it('without a server the list shows the copies of this device, and one can be taken off it', async () => {
  await server.kill();
  const page = await tablet.open('/');
  const list = page.locator('.study-list li');
  await list.first().waitFor();
  expect(await seenText(list)).toContain(`${CLEAN} invented`);
  expect(await list.count()).toBe(1);
  await page.getByRole('button', { name: /^Take off this device/ }).click();
  await page.getByRole('button', { name: 'Delete the copy' }).click();
  await expect.poll(() => list.count()).toBe(0);
  await page.goto(`${tablet.origin}${path()}`);
  await page.getByText('this device has no copy of the study').waitFor();
  await server.run();
  await page.reload();
  await state(page, /^saved$/).waitFor();
  await page.close();
});

it('warns before the room that the browser gives is used up', async () => {
  const page = await tablet.context.newPage();
  // What a browser says on a full device; this one has room and says so.
  await page.addInitScript('navigator.storage.estimate = async () => ({ usage: 9e8, quota: 1e9 })');
  await page.goto(`${tablet.origin}${path()}`);
  await state(page, /device nearly full/).waitFor();
  await deviceSays(page, '900 MB of 1.0 GB that the browser gives are used.');
  await page.close();
});
