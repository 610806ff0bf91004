import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeFaults } from './axe-faults.ts';
import { openPage } from './browser.ts';
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

const PAGES: readonly (readonly [name: string, path: string, ready: string])[] = [
  ['overview', '', '.map svg rect.part'],
  ['parts', '/parts', '.parts-table tbody tr'],
  ['map', '/map', '.map svg rect.part'],
  ['walkaround', '/walkaround', 'input[type=file]'],
  ['on the hoist', '/hoist', '.hoist-mark'],
  ['at the scale', '/scale', '.keypad button'],
  ['mass', '/mass', '.asked .figure svg'],
  ['floors', '/floors', '.question-form'],
  ['joints', '/joints', '.asked .figure svg'],
  ['keeping dry', '/dry', '.asked .figure svg'],
  ['cost', '/cost', '.asked .figure svg'],
  ['questions', '/questions', '.question-list a'],
  ['question', '/questions/mass-closure', '.answer .outs'],
  ['claims', '/claims', '.claim'],
  ['history', '/history', '.history tbody tr'],
  ['import', '/import', 'input[type=file]'],
];

describe.each(['light', 'dark'] as const)('%s', (colorScheme) => {
  it.each(PAGES)('%s: axe finds nothing', async (_name, path, ready) => {
    const { page } = await openPage(browser, server.page(FAULTY, path), { colorScheme });
    await page.locator(ready).first().waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.context().close();
  });

  it('studies: axe finds nothing', async () => {
    const { page } = await openPage(browser, server.address, { colorScheme });
    await page.locator('.study-list a').first().waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.context().close();
  });

  it('where a number comes from, and the form to correct it: axe finds nothing', async () => {
    const { page } = await openPage(browser, server.page(CLEAN), { colorScheme });
    await page.locator('.tile button.number').first().click();
    await page.getByRole('dialog').locator('.contributions').waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('dialog').getByRole('button', { name: '40-001 Cell' }).click();
    await page.getByRole('button', { name: 'Correct, or measure again' }).click();
    await page.getByLabel('New value').waitFor();
    expect(await axeFaults(page)).toEqual([]);
    await page.context().close();
  });
});
