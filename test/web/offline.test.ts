import { createHash } from 'node:crypto';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Change } from '../../src/study/index.ts';
import { seenText } from './browser.ts';
import { CLEAN, DemoServer } from './demo-server.ts';
import { Tablet } from './tablet.ts';

/** Over https, under the name of the machine, as a tablet in the workshop does it. */

const MARKS = 50;
const PHOTOS = 20;
const PART = '40-004';
/** One dot. */
const PNG = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNkYPhfDwAChwGA60e6kgAAAABJRU5ErkJggg==',
  'base64',
);
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

async function askDesk(at: string): Promise<Response> {
  const [origin = '', token = ''] = server.address.split('/#token=');
  return fetch(`${origin}/api${at}`, { headers: { authorization: `Bearer ${token}` } });
}

const atDesk = (): Promise<Change[]> => server.changes(CLEAN);

const marksIn = (changes: readonly Change[]): string[] =>
  changes.flatMap(({ words }) => /mark \d+$/.exec(words)?.[0] ?? []);
/** Photographs of the part that these tests take in hand; the demo has others. */
const photosIn = (changes: readonly Change[]) =>
  changes
    .filter(({ words }) => words === `photograph of ${PART}`)
    .flatMap((c) => c.entries.flatMap((e) => (e.e === 'photo.add' ? [e.photo] : [])));

const digestOf = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/** Pictures that differ, each of 300 kB: what follows the end of a PNG is not looked at. */
const pictures = Array.from({ length: PHOTOS }, (_, i) => ({
  name: `photograph ${i + 1}.png`,
  mimeType: 'image/png',
  buffer: Buffer.concat([PNG, Buffer.alloc(300_000, `photograph ${i + 1};`)]),
}));

async function takeInHand(page: Page, part: string): Promise<void> {
  await page.getByRole('searchbox').fill(part);
  await page.getByRole('button', { name: part, exact: true }).click();
  await page.locator('.in-hand').waitFor();
}

/** How many pictures of the part in hand are drawn. */
const drawn = (page: Page) =>
  page
    .locator('.photos img')
    .evaluateAll(
      (all) => all.filter((img) => (img as { naturalWidth?: number }).naturalWidth).length,
    );

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

it(`${MARKS} marks and ${PHOTOS} photographs made while the server is down outlive a killed tablet, and arrive once`, async () => {
  await server.kill();
  const before = await tablet.open(path('/claims'));
  for (let i = 1; i <= MARKS / 2; i++) await mark(before, `mark ${i}`);
  await before.getByRole('link', { name: 'Parts', exact: true }).click();
  await takeInHand(before, PART);
  await before.getByLabel('Add files').setInputFiles(pictures);
  await state(before, new RegExp(`^${MARKS / 2 + PHOTOS} kept here`)).waitFor();
  await tablet.kill();
  await tablet.switchOn();

  const page = await tablet.open(path('/parts'));
  await takeInHand(page, PART);
  await expect.poll(() => drawn(page), { timeout: 60_000 }).toBe(PHOTOS);
  await page.getByRole('link', { name: 'Claims' }).click();
  for (let i = MARKS / 2 + 1; i <= MARKS; i++) await mark(page, `mark ${i}`);
  await state(page, new RegExp(`^${MARKS + PHOTOS} kept here`)).waitFor();
  await deviceSays(page, `with ${PHOTOS} files`);
  await tablet.kill();
  await server.run();
  expect(marksIn(await atDesk())).toEqual([]);

  const start = performance.now();
  await tablet.switchOn();
  const back = await tablet.open(path('/claims'));
  await state(back, /^saved$/).waitFor();
  const seconds = (performance.now() - start) / 1000;
  console.log(`browser started and ${MARKS + PHOTOS} changes sent in ${seconds.toFixed(1)} s`);
  const arrived = await atDesk();
  expect(marksIn(arrived)).toEqual(Array.from({ length: MARKS }, (_, i) => `mark ${i + 1}`));
  const hashes = photosIn(arrived).map((photo) => photo.blob);
  expect(hashes).toEqual(pictures.map(({ buffer }) => digestOf(buffer)));
  for (const hash of hashes) {
    const bytes = await (await askDesk(`/blobs/${hash}`)).arrayBuffer();
    expect(digestOf(new Uint8Array(bytes))).toBe(hash);
  }
  await back.close();
});

it('another device sees the photographs, and what is no picture is never shown or run', async () => {
  const page = await tablet.open(path('/parts'));
  await takeInHand(page, PART);
  await expect.poll(() => drawn(page), { timeout: 60_000 }).toBe(PHOTOS);
  const script = '<script>document.title="run"</script>';
  for (const [name, body] of [
    ['drawing.svg', `<svg xmlns="http://www.w3.org/2000/svg">${script}</svg>`],
    ['page.html', `<!doctype html>${script}`],
    ['drawing named.png', `<svg xmlns="http://www.w3.org/2000/svg">${script}</svg>`],
  ] as const) {
    const file = { name, mimeType: 'image/png', buffer: Buffer.from(body) };
    await page.getByLabel('Add files').setInputFiles(file);
    await page.getByText(name, { exact: false }).waitFor();
    await page.getByText('Save the photograph as JPEG or PNG').waitFor();
  }
  // A record from elsewhere may say "image/png" of anything: its bytes decide.
  const html = Buffer.from(`<!doctype html>${script}`);
  const hash = await server.postPhoto(CLEAN, PART, html);
  await page.locator('.photo-missing', { hasText: 'no picture' }).waitFor();
  const answer = await askDesk(`/blobs/${hash}`);
  expect(answer.headers.get('content-type')).toBe('application/octet-stream');
  expect(answer.headers.get('content-disposition')).toContain('attachment');
  expect(answer.headers.get('content-security-policy')).toContain('sandbox');
  expect(await page.title()).not.toBe('run');
  expect(photosIn(await atDesk())).toHaveLength(PHOTOS);
  await page.close();
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
