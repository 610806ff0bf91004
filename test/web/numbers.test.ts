import { AxeBuilder } from '@axe-core/playwright';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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

const section = '.overview-aside section';

describe('what to measure next', () => {
  it('stands on the overview with what the reading would do, and leads to where it is recorded', async () => {
    const { page, errors } = await openPage(browser, server.page(CLEAN));
    const next = page.locator(section, {
      has: page.getByRole('heading', { name: 'Measure next' }),
    });
    await next.locator('.entry').first().waitFor();
    const text = await seenText(next);
    expect(text).toMatch(/\d+ numbers open/);
    expect(text).toMatch(/% a min .*about [\d.]+ min .*: ± .* to ± /);
    await next.locator('.entry em:not(.open)').first().waitFor();
    await next.locator('.entry', { hasText: '% a min' }).locator('button.link').first().click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Correct, or measure again' }).waitFor();
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await page.context().close();
    expect(errors).toEqual([]);
  });

  it('stands at the part in hand', async () => {
    const { page, errors } = await openPage(browser, server.page(CLEAN));
    const next = page.locator(section, {
      has: page.getByRole('heading', { name: 'Measure next' }),
    });
    const reading = next.locator('.entry', { hasText: '% a min' }).locator('button.link').first();
    await reading.click();
    await page.getByRole('dialog').getByRole('button', { name: 'Close' }).first().click();
    const hand = page.locator('.in-hand', { hasText: 'Measure next on it' });
    await hand.waitFor();
    expect(await seenText(hand)).toMatch(/% a min|missing/);
    await page.context().close();
    expect(errors).toEqual([]);
  });
});

describe('an answer card', () => {
  it('sets its working in mathematics, with the numbers put in, and prints each rule', async () => {
    const address = server.page(CLEAN, '/questions/cg-from-corners');
    const { page, errors } = await openPage(browser, address);
    const working = page.locator('details', { hasText: 'Working' }).locator('table');
    await working.locator('mfrac').first().waitFor();
    const text = await seenText(working);
    expect(text).toContain('462.50 kg');
    const fraction = working.locator('.put-in mfrac').first();
    expect(await fraction.locator('mtext').allTextContents()).toContain('353.50 kg');
    await page.goto(server.page(CLEAN, '/questions/mass-closure'));
    const rule = page.locator('.outs .decision p').first();
    await rule.waitFor();
    expect(await rule.isVisible()).toBe(true);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await page.context().close();
    expect(errors).toEqual([]);
  });

  it('leads from a number to the photograph behind it', async () => {
    const { page, errors } = await openPage(
      browser,
      server.page(CLEAN, '/questions/cg-from-corners'),
    );
    await page.locator('.contributions button.link', { hasText: 'corner load' }).first().click();
    const photo = page.getByRole('dialog').locator('.photo img').first();
    await photo.waitFor();
    await expect
      .poll(() =>
        photo.evaluate((img) => (img as unknown as { naturalWidth: number }).naturalWidth),
      )
      .toBeGreaterThan(0);
    await page.context().close();
    expect(errors).toEqual([]);
  });
});

describe('Monte Carlo on an answer card', () => {
  const card = async (path: string) => {
    const opened = await openPage(browser, server.page(CLEAN, path));
    const sampling = opened.page.locator('.sampling');
    await sampling.waitFor();
    return { ...opened, sampling };
  };

  it('draws how the samples lie, and says whether they confirm the linear result', async () => {
    const { page, errors, sampling } = await card('/questions/cg-from-corners');
    await sampling.getByRole('button', { name: 'Sample it' }).click();
    await sampling.locator('.sampled').first().waitFor();
    expect(await seenText(sampling)).toMatch(/samples, seed 1, .*linear result confirmed/);
    expect(await sampling.locator('svg.histogram').count()).toBeGreaterThan(3);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
    await page.context().close();
    expect(errors).toEqual([]);
  });

  it('tells how far it is, and a stop leaves nothing of it and the worker free', async () => {
    const { page, errors, sampling } = await card('/questions/mass-balance');
    await sampling.getByRole('button', { name: 'With what causes do together' }).click();
    await sampling.getByRole('button', { name: 'Stop' }).click();
    await sampling.getByText('Stopped: nothing of it is kept.').waitFor();
    expect(await sampling.locator('.sampled').count()).toBe(0);
    // Another answer comes at once.
    await page.getByRole('link', { name: 'Claims' }).click();
    await page.locator('.claim').first().waitFor({ timeout: 2000 });
    await page.context().close();
    expect(errors).toEqual([]);
  });
});
