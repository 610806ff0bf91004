import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { openPage } from './browser.ts';
import { CLEAN, DemoServer, FAULTY } from './demo-server.ts';
import { openBrowser } from './open-browser.ts';

const OUT = join(ROOT, 'out/screens');

let server: DemoServer;
let browser: Browser;

beforeAll(async () => {
  mkdirSync(OUT, { recursive: true });
  [server, browser] = await Promise.all([DemoServer.start(), openBrowser()]);
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

interface Screen {
  readonly name: string;
  readonly study: string;
  readonly path: string;
  readonly ready: string;
  readonly act?: (page: Page) => Promise<void>;
}

const takeInHand = async (page: Page): Promise<void> => {
  await page.getByRole('searchbox').fill('crash beam');
  await page.getByRole('button', { name: '40-004', exact: true }).click();
  await page.locator('.in-hand').waitFor();
};

const openOrigin = async (page: Page): Promise<void> => {
  await page.locator('.tile button.number').first().click();
  await page.getByRole('dialog').locator('.contributions').waitFor();
};

const SCREENS: readonly Screen[] = [
  { name: 'overview', study: CLEAN, path: '', ready: '.map svg rect.part' },
  { name: 'overview-faulty', study: FAULTY, path: '', ready: '.map svg rect.part' },
  { name: 'origin', study: CLEAN, path: '', ready: '.map svg rect.part', act: openOrigin },
  { name: 'parts', study: CLEAN, path: '/parts', ready: '.parts-table tbody tr', act: takeInHand },
  { name: 'map', study: CLEAN, path: '/map', ready: '.map svg rect.part' },
  { name: 'hoist', study: CLEAN, path: '/hoist', ready: '.hoist-figures svg' },
  { name: 'scale', study: FAULTY, path: '/scale', ready: '.keypad button' },
  { name: 'mass', study: FAULTY, path: '/mass', ready: '.asked .figure svg' },
  { name: 'joints', study: FAULTY, path: '/joints', ready: '.asked .figure svg' },
  { name: 'dry', study: CLEAN, path: '/dry', ready: '.asked .figure svg' },
  { name: 'cost', study: CLEAN, path: '/cost', ready: '.asked .figure svg' },
  { name: 'questions', study: CLEAN, path: '/questions', ready: '.question-list a' },
  { name: 'question', study: CLEAN, path: '/questions/part-cost', ready: '.answer .outs' },
  { name: 'claims', study: CLEAN, path: '/claims', ready: '.claim' },
  { name: 'history', study: CLEAN, path: '/history', ready: '.history tbody tr' },
];

const SIZES = [
  [1440, 900],
  [1024, 768],
] as const;

describe.each(['light', 'dark'] as const)('%s', (colorScheme) => {
  it.each(SCREENS)('$name fits its window and is photographed', async (screen) => {
    for (const [width, height] of SIZES) {
      const { page, errors } = await openPage(browser, server.page(screen.study, screen.path), {
        colorScheme,
        viewport: { width, height },
      });
      await page.locator(screen.ready).first().waitFor();
      await screen.act?.(page);
      await page.waitForTimeout(300);
      await page.screenshot({ path: join(OUT, `${screen.name}-${width}-${colorScheme}.png`) });
      // The title block is in sight at the foot of the window.
      const block = await page.locator('.title-block').boundingBox();
      expect((block?.y ?? 0) + (block?.height ?? 0)).toBeLessThanOrEqual(height);
      expect(errors).toEqual([]);
      await page.context().close();
    }
  });
});
