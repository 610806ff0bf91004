import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPage, seenText } from './browser.ts';
import { CLEAN, DemoServer } from './demo-server.ts';
import { openBrowser } from './open-browser.ts';

let server: DemoServer;
let browser: Browser;

beforeAll(async () => {
  [server, browser] = await Promise.all([DemoServer.start(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

const total = async (page: Page, name: string): Promise<string> => {
  const row = page.locator('.totals > div', { has: page.locator('dt', { hasText: name }) });
  await row.locator('dd .digits').waitFor();
  return seenText(row.locator('dd .digits'));
};

const saved = (page: Page) => page.getByRole('status').filter({ hasText: /^saved$/ });

/** Opens the mass of a part in the table. */
async function openMass(page: Page, part: string): Promise<void> {
  await page.getByRole('searchbox').fill(part);
  await page.getByRole('button', { name: `mass, all pieces of ${part}` }).click();
}

it('a corrected mass moves the totals at once, survives kill -9 and keeps both readings', async () => {
  const { page, errors } = await openPage(browser, server.page(CLEAN, '/parts'));
  await openMass(page, '40-004');
  expect(await total(page, 'parts')).toBe('1 645.3');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Correct, or measure again' }).click();
  await dialog.getByLabel('New value').fill('8.23 ± 0.01 kg');
  await dialog.getByText('read as 8.230 ± 0.010 kg').waitFor();

  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();
  await dialog.getByText('a measured value names no instrument').waitFor();
  await dialog.getByLabel('Instrument').fill('scale B');
  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();
  await dialog.getByText('a correction gives no reason').waitFor();
  await dialog.getByLabel('What was wrong with the old value').fill('tare taken off twice');
  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();

  await dialog.getByText('All 2 readings').waitFor();
  await expect.poll(() => total(page, 'parts')).toBe('1 647.3');
  await saved(page).waitFor({ state: 'attached' });
  await server.kill();
  await server.run();

  const again = await openPage(browser, server.page(CLEAN, '/parts'));
  await openMass(again.page, '40-004');
  await expect.poll(() => total(again.page, 'parts')).toBe('1 647.3');
  const text = await seenText(again.page.getByRole('dialog'));
  expect(text).toContain('8.230 ± 0.010 kg');
  expect(text).toContain('6.230 ± 0.010 kg');
  expect(text).toContain('tare taken off twice');
  expect(text).toContain('parts.csv');
  expect(errors).toEqual([]);
  await again.page.context().close();
  await page.context().close();
});

it('measured again: both readings stand, combined where they agree', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/parts'));
  await openMass(page, '40-003');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Correct, or measure again' }).click();
  await dialog.getByLabel('Measured again: both readings stand').check();
  await dialog.getByLabel('New value').fill('6.27 ± 0.01 kg');
  await dialog.getByLabel('Instrument').fill('scale A');
  await dialog.getByRole('button', { name: 'Keep reading' }).click();
  await dialog
    .getByText(/^6\.265\d ± 0\.007\d kg$/)
    .first()
    .waitFor();
  const text = await seenText(dialog);
  expect(text).toContain('Readings of the best way of knowing agree');
  expect(text.match(/carries [45]\d % of the value in force/g)).toHaveLength(2);
  await page.context().close();
});

it('one touch takes the last gesture back, and history does it again', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/parts'));
  await openMass(page, '10-001');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Correct, or measure again' }).click();
  await dialog.getByLabel('New value').fill('9.9 ± 0.01 kg');
  await dialog.getByLabel('Instrument').fill('scale B');
  await dialog.getByLabel('What was wrong with the old value').fill('made for this test');
  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();
  await dialog.getByText('All 2 readings').waitFor();
  await dialog.getByRole('button', { name: 'Close' }).click();
  const moved = await total(page, 'parts');

  await page.getByRole('button', { name: /^Undo ?: correct mass/ }).click();
  await expect.poll(() => total(page, 'parts')).not.toBe(moved);
  await page.getByRole('link', { name: 'History' }).click();
  await page.getByRole('button', { name: 'Redo correct mass, all pieces of 10-001' }).click();
  await page.getByRole('link', { name: 'Parts', exact: true }).click();
  await expect.poll(() => total(page, 'parts')).toBe(moved);
  await page.context().close();
});

it('without a server an edit holds, waits in the browser and is sent later', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/parts'));
  await openMass(page, '10-003');
  const before = await total(page, 'parts');
  await server.kill();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Correct, or measure again' }).click();
  await dialog.getByLabel('New value').fill('2.052 ± 0.002 kg');
  await dialog.getByLabel('Instrument').fill('scale A');
  await dialog.getByLabel('What was wrong with the old value').fill('read in the wrong row');
  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();
  await expect.poll(() => total(page, 'parts')).not.toBe(before);
  await page.getByRole('status').filter({ hasText: '1 kept here' }).waitFor({ state: 'attached' });

  await server.run();
  await page.goto(server.page(CLEAN, '/parts'));
  await saved(page).waitFor({ state: 'attached' });
  const other = await openPage(browser, server.page(CLEAN, '/history'));
  await other.page.getByText('correct mass, all pieces of 10-003').first().waitFor();
  await other.page.context().close();
  await page.context().close();
});

it('two pages of one browser count their changes under names of their own', async () => {
  const first = await openPage(browser, server.page(CLEAN, '/claims'));
  const second = await first.page.context().newPage();
  await second.goto(server.page(CLEAN, '/claims'));
  const pages = [first.page, second];
  for (const page of pages) await page.getByLabel('What was said').waitFor();
  for (const [i, page] of pages.entries()) {
    await page.getByLabel('What was said').fill(`said on page ${i}`);
    await page.getByRole('button', { name: 'Keep the claim' }).click();
  }
  for (const page of pages)
    for (const i of [0, 1])
      await page.getByRole('heading', { name: `said on page ${i}` }).waitFor();
  for (const page of pages) await saved(page).waitFor({ state: 'attached' });
  await first.page.context().close();
});

it('a change that the server refuses is shown with its next step, and can be taken back', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/claims'));
  await page.getByLabel('What was said').waitFor();
  const device = await page.evaluate<string>("localStorage.getItem('hoistside.device')");
  await server.kill();
  for (const words of ['this one is refused', 'this one waits behind it']) {
    await page.getByLabel('What was said').fill(words);
    await page.getByRole('button', { name: 'Keep the claim' }).click();
    await page.getByRole('heading', { name: words }).waitFor();
  }
  await server.run();
  // As a copied browser would: another first change of this device is there already.
  await server.post(CLEAN, { device, seq: 1, words: 'from the copy' });
  await page.goto(server.page(CLEAN, '/claims'));
  await page.getByRole('button', { name: 'change refused' }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('alert').waitFor();
  await dialog.getByRole('button', { name: /^Take this change back/ }).click();
  await page.getByRole('heading', { name: 'this one is refused' }).waitFor({ state: 'detached' });
  await page.getByRole('heading', { name: 'this one waits behind it' }).waitFor();
  await saved(page).waitFor({ state: 'attached' });
  await page.context().close();
});

it('a mass below zero is refused where it is typed', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/parts'));
  await openMass(page, '10-005');
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('button', { name: 'Correct, or measure again' }).click();
  await dialog.getByLabel('New value').fill('−5.3 ± 0.01 kg');
  await dialog.getByLabel('Instrument').fill('scale B');
  await dialog.getByLabel('What was wrong with the old value').fill('sign');
  await dialog.getByRole('button', { name: 'Correct', exact: true }).click();
  await dialog.getByText('mass, all pieces is negative').waitFor();
  await dialog.getByText('Check the sign and the tare.').waitFor();
  await page.context().close();
});

it('what another page records arrives by itself', async () => {
  const one = await openPage(browser, server.page(CLEAN, '/claims'));
  const two = await openPage(browser, server.page(CLEAN, '/claims'));
  await one.page.getByLabel('What was said').fill('The far page hears this');
  await one.page.getByRole('button', { name: 'Keep the claim' }).click();
  await two.page.getByRole('heading', { name: 'The far page hears this' }).waitFor();
  await one.page.context().close();
  await two.page.context().close();
});
