import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { openPage, seenText } from './browser.ts';
import { CLEAN, DemoServer, FAULTY } from './demo-server.ts';
import { openBrowser } from './open-browser.ts';

const OUT = join(ROOT, 'out/screens');
const TALK = join(ROOT, 'demo/walkaround/first.vtt');

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

async function handIn(page: Page, file = TALK): Promise<void> {
  await page.getByLabel('File with the words').setInputFiles(file);
  await page.getByLabel('Recording started').fill('2026-10-05T09:05');
  await page.getByRole('button', { name: 'Read the words' }).click();
  await page.locator('.walk-draft').first().waitFor();
}

const draftOf = (page: Page, words: string) =>
  page.getByRole('article', { name: `Draft: ${words}`, exact: true }).first();

/** A claim of the walkaround, and what is typed to have it answered. */
interface Spoken {
  readonly words: string;
  readonly asClaim: boolean;
  readonly value: string;
  readonly unit: RegExp;
}
const FIVE: readonly Spoken[] = [
  {
    words: 'a hundred and twenty one watt hours per kilo',
    asClaim: false,
    value: '',
    unit: /W·h\/kg/,
  },
  {
    words: 'something like four hundred and sixty kilos',
    asClaim: true,
    value: '450 kg',
    unit: /kg/,
  },
  { words: 'heavier than the twist beam on', asClaim: false, value: '20 kg', unit: /kg/ },
  { words: 'costs more than a stamping', asClaim: false, value: '50', unit: /u/ },
  { words: 'lighter than you would expect', asClaim: false, value: '9 kg', unit: /at most 9 kg/ },
];

describe('the walkaround of the demo in the browser', () => {
  it('five claims go from words to an answered card, each timed', async () => {
    const { page, errors } = await openPage(browser, server.page(CLEAN, '/walkaround'));
    await page.getByText('Hand in what was said').waitFor();
    await handIn(page);
    const log: string[] = [];
    for (const { words, asClaim, value, unit } of FIVE) {
      const start = performance.now();
      const draft = page
        .locator('.walk-draft', { hasText: words.split(' ').slice(-4).join(' ') })
        .first();
      const line = page.locator('.walk-line', { has: draft });
      const at = (await line.locator('.walk-clock').textContent()) ?? '';
      await draft
        .getByRole('button', { name: asClaim ? 'As a claim' : 'Accept', exact: true })
        .click();
      const row = page.locator('.walk-line', {
        has: page.getByRole('button', { name: `Play from ${at}` }),
      });
      const card = row
        .getByRole('article')
        .filter({ hasText: 'not tied to a question yet' })
        .last();
      await card.getByRole('button', { name: 'Say what would make it true' }).click();
      const form = row.locator('form.tie-form');
      await expect
        .poll(() => form.getByLabel('Question that answers it').inputValue(), { message: words })
        .not.toBe('');
      if (value !== '') await form.getByLabel(/^Value/).fill(value);
      await form.getByRole('button', { name: 'Tie', exact: true }).click();
      await form.waitFor({ state: 'detached' });
      const answered = row.locator('.claim', { hasText: 'Holds if' }).last();
      await answered.locator('.number').first().waitFor();
      const text = await seenText(answered);
      expect(text).toMatch(unit);
      expect(text).toMatch(/holds|not proven|fails/);
      log.push(`${words}: ${Math.round(performance.now() - start)} ms: ${text.slice(0, 400)}`);
    }
    writeFileSync(join(OUT, 'walkaround-times.txt'), `${log.join('\n')}\n`);
    expect(log).toHaveLength(5);
    expect(errors).toEqual([]);
    await page.screenshot({ path: join(OUT, 'walkaround-answered.png') });
    await page.context().close();
  });

  it('drafts are settled by keys; a measured value is held until its instrument is named', async () => {
    const { page } = await openPage(browser, server.page(FAULTY, '/walkaround'));
    await page.getByText('Hand in what was said').waitFor();
    await handIn(page);
    const open = async () =>
      Number(/(\d+) drafts wait/.exec(await seenText(page.locator('.walk-head')))?.[1]);
    const before = await open();
    const measured = draftOf(page, 'two point six millimetres');
    await measured.focus();
    await page.keyboard.press('a');
    await measured.getByRole('button', { name: 'Accept so' }).click();
    await measured.getByText('a measured value names no instrument').waitFor();
    expect(await open()).toBe(before);
    await measured.getByLabel(/^Instrument/).fill('gauge 3');
    await measured.getByRole('button', { name: 'Accept so' }).click();
    await measured.waitFor({ state: 'detached' });
    expect(await open()).toBe(before - 1);

    const next = draftOf(page, 'sixty two screws');
    await next.focus();
    await page.keyboard.press('r');
    await next.waitFor({ state: 'detached' });
    expect(await open()).toBe(before - 2);
    const side = page
      .locator('.walk-draft', { has: page.getByRole('button', { name: 'Split' }) })
      .first();
    await side.focus();
    await page.keyboard.press('s');
    await page
      .getByText(/^split: /)
      .first()
      .waitFor();
    expect(await open()).toBe(before - 1);
    await page.locator('h1').click();
    await page.keyboard.press('m');
    await page.getByText(/marked at \d\d:\d\d:\d\d/).waitFor();
    await page.context().close();
  });

  it('nothing in a file is run as markup', async () => {
    const { page, errors } = await openPage(browser, server.page(FAULTY, '/walkaround'));
    const file = join(OUT, 'markup.vtt');
    const evil =
      '<img src=x onerror="window.wasRun=1"><script>window.wasRun=1</script>&lt;img src=x onerror=alert(1)&gt;';
    writeFileSync(
      file,
      `WEBVTT\n\n00:00.000 --> 00:05.000\n<v lead>the lid is two millimetres ${evil}\n`,
    );
    await page.getByLabel('File with the words').setInputFiles(file);
    await page.getByLabel('Recording started').fill('2026-10-06T09:05');
    await page.getByRole('button', { name: 'Read the words' }).click();
    await page.getByText('markup was taken off').waitFor();
    await page.getByText('<img src=x onerror=alert(1)>').first().waitFor();
    expect(await page.evaluate(() => 'wasRun' in globalThis)).toBe(false);
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it.each(['light', 'dark'] as const)(
    '%s: axe finds nothing; pictures at desk and tablet size',
    async (colorScheme) => {
      for (const [name, viewport] of [
        ['desk', { width: 1440, height: 900 }],
        ['tablet', { width: 1024, height: 768 }],
      ] as const) {
        const { page } = await openPage(browser, server.page(CLEAN, '/walkaround'), {
          colorScheme,
          viewport,
        });
        await page.locator('.walk-line').first().waitFor();
        const { violations } = await new AxeBuilder({ page })
          .options({
            rules: {
              'color-contrast-enhanced': { enabled: true },
              'target-size': { enabled: true },
            },
          })
          .analyze();
        expect(violations.map((v) => `${v.id}: ${v.nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
        await page.screenshot({ path: join(OUT, `walkaround-${name}-${colorScheme}.png`) });
        await page.context().close();
      }
    },
  );

  it('its log tells the time of each claim', () => {
    expect(
      readFileSync(join(OUT, 'walkaround-times.txt'), 'utf8').match(/: \d+ ms: /g),
    ).toHaveLength(5);
  });
});
