import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPage, seenText } from './browser.ts';
import { CLEAN, DemoServer, FAULTY } from './demo-server.ts';
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

it('a record that closes has its balances, arrows and no suspects', async () => {
  const { page, errors } = await openPage(browser, server.page(CLEAN, '/mass'));
  await page.getByText('the record closes within its spread', { exact: false }).waitFor();
  await page.locator('figcaption', { hasText: 'Balance of 40 traction battery' }).waitFor();
  const key = await seenText(page.locator('.arrow-key'));
  for (const words of ['whole vehicle', '40 traction battery', 'front module as lowered'])
    expect(key).toContain(words);
  expect(await page.locator('.residual-map svg .leader').count()).toBe(0);
  expect(errors).toEqual([]);
  await page.context().close();
});

it('one with slips has its suspects with their checks, labels of them on the map, and what would not show', async () => {
  const { page, errors } = await openPage(browser, server.page(FAULTY, '/mass'));
  await page.getByText('Weigh 10-021 once more and read the unit on the display').first().waitFor();
  await page.locator('.residual-map svg .arrow').first().waitFor();
  const labels = await page.locator('.residual-map svg .leader text').allTextContents();
  for (const suspect of ['10-021', '40-001', '61-004', '60-001']) expect(labels).toContain(suspect);
  await page.getByText('Slips that these scales, modules and positions would show').waitFor();
  await page.getByText('from kg', { exact: false }).first().waitFor();
  expect(errors).toEqual([]);
  await page.context().close();
});
