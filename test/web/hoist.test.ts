import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { openPage, seenText } from './browser.ts';
import { CLEAN, DemoServer, FAULTY } from './demo-server.ts';
import { openBrowser } from './open-browser.ts';

let server: DemoServer;
let browser: Browser;
const OUT = join(ROOT, 'out/screens');
beforeAll(async () => {
  mkdirSync(OUT, { recursive: true });
  [server, browser] = await Promise.all([DemoServer.start(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

/** A tablet: touch, no pointer that hovers. */
const TABLET = { hasTouch: true, isMobile: true, viewport: { width: 1024, height: 768 } } as const;
/** Contrast of 7:1 too (WCAG 2.2, 1.4.6). */
const CONTRAST = { 'color-contrast-enhanced': { enabled: true }, 'target-size': { enabled: true } };
/** 16 mm at 96 CSS pixels an inch. */
const SIXTEEN_MM = (16 / 25.4) * 96;

const standing = (page: Page) => seenText(page.locator('.hoist-head .standing'));
const heading = (page: Page) => seenText(page.getByRole('heading', { level: 1 }));
const tap = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().tap();

it('goes through removal steps by touch alone, and takes the last one back in one touch', async () => {
  const { page, errors } = await openPage(browser, server.page(CLEAN, '/hoist'), TABLET);
  await page.getByText('Step 1 of 8').waitFor();
  expect(await seenText(page.locator('[aria-label="Measure first"]'))).toMatch(
    /kerb posture is gone; needed by “/,
  );
  await tap(page, 'R00 is done');
  await expect.poll(() => heading(page)).toContain('Step 2 of 8 · Wheels off');
  // A part in hand stays in hand.
  await page.getByText('parts come off').tap();
  await tap(page, /^62-001/);
  await tap(page, 'R01 is done');
  await expect.poll(() => heading(page)).toContain('Step 3 of 8 · Lower the pack');
  expect(await seenText(page.locator('.hoist-hand'))).toContain('62-001');
  await tap(page, 'Before');
  await expect.poll(() => standing(page)).toBe('done');
  await tap(page, /^Undo/);
  await expect.poll(() => standing(page)).toBe('to be done');
  await tap(page, 'R01 is done');
  await expect.poll(() => standing(page)).toBe('done');
  expect(errors).toEqual([]);
  await page.context().close();
});

it('a high-voltage step is refused without its record, and none of its gates has an override', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/hoist'), TABLET);
  await page.locator('.hoist-head').waitFor();
  while (!(await heading(page)).includes('Lower the pack')) await tap(page, 'After');
  await tap(page, 'R02 is done');
  await page.getByRole('alert').getByText('tester proven on a known source after').waitFor();
  expect(await standing(page)).toBe('to be done');
  await tap(page, /^Absence of voltage/);
  await page.getByText('A pack is never dead').waitFor();
  await tap(page, /^tester proven on a known source before/);
  await page.getByLabel('vehicle end: plus to minus, in V').tap();
  const keys = page.getByRole('group', { name: 'Keys for: vehicle end: plus to minus' });
  for (const key of ['6', '0']) await keys.getByRole('button', { name: key, exact: true }).tap();
  await tap(page, 'Keep the record');
  await expect
    .poll(() => seenText(page.getByRole('button', { name: /^Absence of voltage/ })))
    .toMatch(/not complete, \d+ lacking/);
  expect(await page.getByText('Take it on without the record').count()).toBe(0);
  await page.context().close();
});

it('under a coarse pointer, what is touched is 16 mm high or more', async () => {
  const { page } = await openPage(browser, server.page(FAULTY, '/hoist'), TABLET);
  await page.locator('.hoist-mark').waitFor();
  const targets = page.locator('main button, main input, main summary, main a');
  for (const target of await targets.all()) {
    const box = await target.boundingBox();
    if (box && box.height > 1)
      expect(box.height, (await target.textContent()) ?? '').toBeGreaterThanOrEqual(
        SIXTEEN_MM - 0.5,
      );
  }
  expect(await page.evaluate<number>('document.documentElement.scrollWidth')).toBeLessThanOrEqual(
    1024,
  );
  await page.context().close();
});

describe.each(['light', 'dark'] as const)('%s', (colorScheme) => {
  it('axe finds nothing, with a gate open too', async () => {
    for (const [width, height] of [
      [1440, 900],
      [1024, 768],
    ] as const) {
      const { page, errors } = await openPage(browser, server.page(FAULTY, '/hoist'), {
        colorScheme,
        viewport: { width, height },
      });
      await page.locator('.hoist-figures svg').first().waitFor();
      await page.screenshot({ path: join(OUT, `hoist-${width}-${colorScheme}.png`) });
      await openGate(page);
      await page.screenshot({ path: join(OUT, `hoist-gate-${width}-${colorScheme}.png`) });
      const { violations } = await new AxeBuilder({ page }).options({ rules: CONTRAST }).analyze();
      expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.html}`)).toEqual([]);
      expect(errors).toEqual([]);
      await page.context().close();
    }
  });
});

/** To the pack, with a gate open. */
async function openGate(page: Page): Promise<void> {
  for (let i = 0; i < 2; i++)
    await page.getByRole('button', { name: 'After', exact: true }).click();
  await page.getByRole('button', { name: /^High voltage, people and gear/ }).click();
  await page.locator('.gate-form').waitFor();
}
