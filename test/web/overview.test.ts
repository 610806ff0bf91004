import { readFile } from 'node:fs/promises';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { SHEETS } from '../../web/src/app/sheets.ts';
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

const tile = async (study: string, title: string): Promise<string> => {
  const { page, errors } = await openPage(browser, server.page(study));
  const section = page.locator('.tile', { has: page.getByRole('heading', { name: title }) });
  await section.locator('button.number').first().waitFor();
  const text = await seenText(section);
  await page.context().close();
  expect(errors).toEqual([]);
  return text;
};

describe('overview of the demo', () => {
  // Figures of the demo scenario: weighed column 1,645.291 (u 0.20), scales 1,645.5 (u 1.0).
  it('says that parts and scales close, each with its spread', async () => {
    const text = await tile(CLEAN, 'Parts as weighed');
    expect(text).toContain('1 645.3 ± 0.2 kg');
    expect(text).toContain('1 645.5 ± 1.0 kg');
    expect(text).toContain('−0.2 ± 1.0 kg');
    expect(text).toContain('closes');
  });

  it('tells the centre of gravity by scales and from parts apart', async () => {
    expect(await tile(CLEAN, 'Centre of gravity X, parts')).toMatch(
      /1 288\.4 ± .*corner scales .*1 288\.3 ±/,
    );
    expect(await tile(CLEAN, 'Centre of gravity Z, parts')).toMatch(
      /521\.8 ± .*axle lift .*522\.1 ±/,
    );
  });

  it('says what share of the cost is assumed, and what is not costed', async () => {
    expect(await tile(CLEAN, 'Should-cost')).toMatch(
      /% of it on assumed rates.*not costed \d+ parts/,
    );
  });

  it('leaves the faulty record open, with its gap and its two missing readings', async () => {
    const text = await tile(FAULTY, 'Parts as weighed');
    expect(text).toContain('−26.9 kg not complete: 2 values missing, known part ± 1.0');
    expect(text).toContain('open: 2 readings missing');
    expect(text).not.toContain('closes');
  });

  it('leads from a missing reading to the part and to where it is filled in', async () => {
    const { page } = await openPage(browser, server.page(FAULTY));
    await page.getByRole('button', { name: '80-002 Body harness' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText('missing: no reading').waitFor();
    await dialog.getByRole('button', { name: 'Record a reading' }).waitFor();
    await dialog.getByRole('button', { name: 'Close' }).click();
    await page.locator('.in-hand h3', { hasText: '80-002 Body harness' }).first().waitFor();
    expect(await page.getByText('the gross error may be larger').count()).toBeGreaterThan(0);
    await page.context().close();
  });

  it('saves the report as a PDF', async () => {
    const { page } = await openPage(browser, server.page(CLEAN));
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Report as PDF' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('VAN-27.pdf');
    expect((await readFile(await file.path())).subarray(0, 5).toString()).toBe('%PDF-');
    await page.context().close();
  });

  it('has its title block on every sheet, marked as invented', async () => {
    const { page } = await openPage(browser, server.page(CLEAN));
    for (const [i, { title: name }] of SHEETS.entries()) {
      await page.getByRole('navigation').getByRole('link', { name, exact: true }).click();
      const block = page.getByRole('contentinfo');
      await block.getByText(`${i + 1} / ${SHEETS.length}`).waitFor();
      const text = await seenText(block);
      for (const field of [
        'Study VAN-27, invented',
        'Condition kerb, as received',
        'Rates R2',
        'Units mm · kg · N',
      ])
        expect(text).toContain(field);
      expect(text).toMatch(/Revision \d+ Date /);
    }
    await page.context().close();
  });
});
