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

const inHand = (page: Page) => page.locator('.in-hand h3').first();
const map = (page: Page) => page.getByRole('listbox', { name: /^Drawn map/ });

it('a part taken in the table is in hand on the map, on the overview and in the address', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/parts'));
  await page.getByRole('searchbox').fill('40-004');
  await page.getByRole('button', { name: '40-004', exact: true }).click();
  await inHand(page).getByText('40-004 Side crash beam RH').waitFor();
  for (const sheet of ['Map', 'Overview']) {
    await page.getByRole('link', { name: sheet, exact: true }).click();
    await inHand(page).getByText('40-004 Side crash beam RH').waitFor();
    const views = sheet === 'Map' ? 4 : 2;
    await expect.poll(() => page.locator('.in-hand-box').count()).toBe(views);
    await expect.poll(() => map(page).getByRole('option').textContent()).toContain('40-004');
  }
  expect(page.url()).toContain('part=');
  await page.context().close();
});

it('a touch on the map takes a part in hand, in the table too', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/map'));
  const box = map(page).locator('svg rect.part').first();
  await box.waitFor();
  await box.click({ force: true });
  await inHand(page).waitFor();
  const words = await seenText(inHand(page));
  const label = /^\d\d-\d\d\d/.exec(words)?.[0] ?? 'none';
  await page.getByRole('link', { name: 'Parts', exact: true }).click();
  await page.locator('tr.in-hand-row', { hasText: label }).waitFor();
  await page.context().close();
});

it('the map goes from part to part by arrow keys, and Enter tells where the mass comes from', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/map'));
  await map(page).focus();
  await page.keyboard.press('ArrowRight');
  await inHand(page).waitFor();
  const first = await seenText(inHand(page));
  await page.keyboard.press('ArrowRight');
  await expect.poll(() => seenText(inHand(page))).not.toBe(first);
  await page.keyboard.press('Enter');
  await page
    .getByRole('dialog')
    .getByRole('heading', { name: /: mass, all pieces$/ })
    .waitFor();
  await page.context().close();
});

it('the table goes from row to row by arrow keys, sorts and filters', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/parts'));
  await page.locator('.parts-table tbody tr').first().waitFor();
  await page.getByRole('region', { name: /^Table of parts/ }).focus();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await inHand(page).getByText('10-002').waitFor();

  const heading = page.getByRole('columnheader', { name: 'mass, all pieces' });
  await heading.getByRole('button').click();
  await heading.getByRole('button').click();
  expect(await heading.getAttribute('aria-sort')).toBe('descending');
  const rows = page.locator('.parts-table tbody tr');
  await expect.poll(() => seenText(rows.first())).toMatch(/^40-001 Cell/);

  await page.getByRole('searchbox').fill('spring link');
  await page.getByText(/^\d+ of 248 rows$/).waitFor();
  for (const row of await rows.all())
    expect((await seenText(row)).toLowerCase()).toContain('spring link');
  await page.context().close();
});

it('every number opens its origin in one touch, down to file, row and column', async () => {
  const { page } = await openPage(browser, server.page(CLEAN));
  await page.locator('.tile button.number').first().click();
  const dialog = page.getByRole('dialog');
  await dialog.locator('math').first().waitFor();
  await dialog.getByRole('button', { name: '40-001 Cell' }).click();
  const text = await seenText(dialog);
  for (const part of [
    'measured',
    'parts.csv, row',
    'column mass_kg',
    'came in by',
    'It is the only reading',
  ])
    expect(text).toContain(part);
  await dialog.getByRole('button', { name: 'Back' }).click();
  await dialog.locator('math').first().waitFor();
  await page.keyboard.press('Escape');
  await dialog.waitFor({ state: 'hidden' });
  await page.context().close();
});
