import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPage } from './browser.ts';
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

/** 16 mm at 96 CSS pixels an inch. */
const SIXTEEN_MM = (16 / 25.4) * 96;

/** What can be touched; of a choice its whole line. */
const TARGETS =
  'button, select, summary, a, label:has(input[type=radio], input[type=checkbox]), input:not([type=radio], [type=checkbox])';

/** Heights of what can be touched and is in sight, below a least one. */
async function small(page: Page, least: number): Promise<string[]> {
  const found: string[] = [];
  for (const target of await page.locator(TARGETS).all()) {
    const box = await target.boundingBox();
    if (box && box.height > 1 && box.height < least - 0.5)
      found.push(`${box.height}: ${await target.textContent()}`);
  }
  return found;
}

it('under a coarse pointer, what is touched is 16 mm high or more', async () => {
  const { page } = await openPage(browser, server.page(CLEAN), {
    hasTouch: true,
    isMobile: true,
    viewport: { width: 1180, height: 820 },
  });
  await page.locator('.map svg rect.part').first().waitFor();
  expect(await small(page, SIXTEEN_MM)).toEqual([]);
  await page.goto(server.page(CLEAN, '/parts'));
  await page.locator('.parts-table tbody tr').first().waitFor();
  expect(await small(page, SIXTEEN_MM)).toEqual([]);
  await page.goto(server.page(CLEAN, '/scale'));
  await page.locator('.keypad button').first().waitFor();
  expect(await small(page, SIXTEEN_MM)).toEqual([]);
  await page.context().close();
});

it('at a desk, what is touched is 32 px high or more, but for numbers in dense text', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/questions/mass-closure'));
  await page.locator('.answer .outs').waitFor();
  expect(await small(page, 32)).toEqual([]);
  await page.context().close();
});

it.each([
  ['a narrow tablet', 768, 1024],
  ['1440 × 900 at 200 %', 720, 450],
])('%s scrolls one way only and hides nothing', async (_name, width, height) => {
  const { page } = await openPage(browser, server.page(CLEAN), { viewport: { width, height } });
  for (const path of [
    ...['', '/hoist', '/scale', '/parts', '/map', '/mass', '/joints', '/floors', '/dry', '/cost'],
    ...['/questions/mass-closure', '/claims', '/history'],
  ]) {
    await page.goto(server.page(CLEAN, path));
    await page.getByRole('contentinfo').waitFor();
    await page.waitForTimeout(400);
    expect(
      await page.evaluate<number>('document.documentElement.scrollWidth'),
      path,
    ).toBeLessThanOrEqual(width);
    await page.getByRole('contentinfo').scrollIntoViewIfNeeded();
  }
  await page.context().close();
});
