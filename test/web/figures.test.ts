import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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

const openFigure = async (question: string, more: Parameters<typeof openPage>[2]) => {
  const { page } = await openPage(browser, server.page(CLEAN, `/questions/${question}`), more);
  const figure = page.locator('.figure').first();
  await figure.locator('svg').waitFor();
  return { page, figure };
};

/** Words that reach over the edge of their figure, as the browser sets them. */
const wordsOutside = (page: Page): Promise<string[]> =>
  page.locator('.figure').evaluateAll((figures) =>
    figures.flatMap((figure) => {
      const paper = figure.getBoundingClientRect();
      return [...figure.querySelectorAll('svg text')]
        .filter((text) => {
          const box = text.getBoundingClientRect();
          return box.left < paper.left - 2 || box.right > paper.right + 2;
        })
        .map((text) => text.textContent ?? '');
    }),
  );

describe.each([1280, 390])('at %d pixels', (width) => {
  it.each(['light', 'dark'] as const)(
    'a balance is drawn, said and listed, %s',
    async (colorScheme) => {
      const { page, figure } = await openFigure('mass-closure', {
        colorScheme,
        viewport: { width, height: 900 },
      });
      const picture = figure.getByRole('img');
      expect(await picture.getAttribute('aria-label')).toMatch(
        /^Balance: .*mass of the parts 1\u202f645\.3 ± 0\.2 kg;.*not distinguishable.*Whiskers of two/,
      );
      expect(await wordsOutside(page)).toEqual([]);
      expect(await figure.locator('svg text').allTextContents()).toContain('1\u202f645.3 ± 0.2 kg');
      await figure.getByText('Numbers of the figure').focus();
      await page.keyboard.press('Enter');
      await figure.getByRole('cell', { name: 'not distinguishable' }).waitFor();
      const { violations } = await new AxeBuilder({ page })
        .include('.figure')
        .options({ rules: { 'color-contrast-enhanced': { enabled: true } } })
        .analyze();
      expect(violations.map((v) => v.id)).toEqual([]);
      await page.context().close();
    },
  );

  it('sums of groups are bars, the largest first', async () => {
    const { page, figure } = await openFigure('mass-roll-up', { viewport: { width, height: 900 } });
    expect(await figure.locator('figcaption').textContent()).toBe('Mass of the parts, by assembly');
    const lengths = await figure
      .locator('svg path[style*="-lines"]')
      .evaluateAll((bars) => bars.map((bar) => bar.getBoundingClientRect().width));
    expect(lengths.length).toBeGreaterThan(8);
    expect(lengths).toEqual([...lengths].sort((a, b) => b - a));
    expect(await wordsOutside(page)).toEqual([]);
    await page.context().close();
  });
});
