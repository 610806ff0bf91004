import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { scalesOf, weighed } from '../../web/src/worker/weighing.ts';
import { mass, node, read, studyOf } from '../study/made-study.ts';
import { openPage, seenText } from './browser.ts';
import { CLEAN, DemoServer, FAULTY } from './demo-server.ts';
import { openBrowser } from './open-browser.ts';

describe('what is typed at the scale', () => {
  const view = studyOf(
    node('p1', 'van'),
    node('p2', 'van'),
    read('p1', 'mass', mass(5, 0.01)),
    read('p2', 'mass', mass(0.2, 0.001)),
  );
  const typed = (text: string, unit: 'kg' | 'g' | 'lb' = 'kg', scale = 'scale A') =>
    weighed(view, { text, unit, scale });

  it('takes the spread of the nearest mass that was read on this scale', () => {
    expect(typed('6.24')).toMatchObject({
      written: '6.24 ± 0.010 kg',
      spreadFrom: 'as scale A read P1',
    });
    expect(typed('230', 'g').written).toBe('230 ± 1.0 g');
    expect(typed('11', 'lb').written).toBe('11 ± 0.022 lb');
  });

  it('keeps a spread that was typed, and makes none up for a scale that was never used', () => {
    expect(typed('6.24 ± 0.05')).toMatchObject({ written: '6.24 ± 0.05 kg', spreadFrom: '' });
    expect(typed('6.24', 'kg', 'scale Z').written).toBe('6.24 kg');
  });

  it('says what it can not read', () => {
    expect(typed('6.2.4').why).toContain('not read');
    expect(typed('0').why).toBe('a mass at the scale is above zero');
    expect(typed('')).toEqual({ written: '', spreadFrom: '', why: '' });
  });

  it('offers the scales of the record', () => {
    expect(scalesOf(view)).toEqual(['scale A']);
  });
});

describe('the page', () => {
  let server: DemoServer;
  let browser: Browser;
  beforeAll(async () => {
    [server, browser] = await Promise.all([DemoServer.start(), openBrowser()]);
  });
  afterAll(async () => {
    await browser?.close();
    await server?.stop();
  });

  async function onTheScale(
    study: string,
    part: string,
  ): Promise<{ page: Page; errors: string[] }> {
    const opened = await openPage(browser, server.page(study, '/scale'));
    const { page } = opened;
    const option = page.getByLabel('On the scale').locator('option', { hasText: part });
    const id = await option.getAttribute('value');
    await page.getByLabel('On the scale').selectOption(id ?? '');
    await page.getByLabel('Scale', { exact: true }).fill('scale B');
    await page.locator('.expected-bands li').first().waitFor();
    return opened;
  }
  const key = (page: Page, name: string) =>
    page
      .getByRole('group', { name: 'Keys for the mass' })
      .getByRole('button', { name, exact: true });

  it('shows what the other side lets expect while it is typed, warns beyond 4 u, keeps and takes back', async () => {
    const { page, errors } = await onTheScale(CLEAN, '61-004');
    expect(await seenText(page.locator('.expected-bands'))).toContain('4.120 ± 0.059 kg');
    for (const name of ['5', 'decimal point', '0', '2']) await key(page, name).click();
    await page.getByText('look again').waitFor();
    expect(await seenText(page.getByRole('alert').first())).toContain(
      'the mass is off what the other side lets expect',
    );
    await page.getByRole('button', { name: 'Keep all the same' }).waitFor();

    await key(page, 'Clear').click();
    await page.getByLabel('Mass in kg').fill('4.11');
    await page.getByText('within').waitFor();
    await page.getByText('to be kept: 4.11 ± 0.010 kg').waitFor();
    await page.getByLabel('Mass in kg').press('Enter');
    // Both readings stand; their mean is in force.
    await expect.poll(() => seenText(page.locator('.scale-part'))).toContain('4.105');
    await page.getByRole('button', { name: /^Undo/ }).click();
    await expect.poll(() => seenText(page.locator('.scale-part'))).toContain('4.100 ± 0.010');
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it('shows what its module leaves for a part, and goes on to the next without a mass', async () => {
    const { page } = await onTheScale(FAULTY, '40-004');
    expect(await seenText(page.locator('.expected-bands'))).toContain('left by its module');
    await page.getByText('2 parts without a mass').waitFor();
    await page.getByRole('button', { name: /^Next: 80-002/ }).click();
    await page.getByRole('heading', { name: 'Body harness' }).waitFor();
    await page.context().close();
  });

  it('counts fasteners by weight, and says when the weight does not tell one number from the next', async () => {
    const { page } = await openPage(browser, server.page(CLEAN, '/scale'));
    await page.getByLabel('mass of all, with bag or tote').fill('640 ± 2 g');
    await page.getByLabel('bag or tote in it').fill('5 ± 0.5 g');
    await page.getByLabel('pieces of the sample').fill('20');
    await page.getByLabel('mass of the sample').fill('206 ± 1 g');
    const section = page.locator('section', { hasText: 'Fasteners by weight' });
    await section.locator('.result-lines').waitFor();
    expect(await seenText(section.locator('.result-lines'))).toMatch(/61\.\d+ ± 0\.\d+/);
    await section.getByText('the weight does not tell one number from the next').first().waitFor();
    await page.context().close();
  });
});
