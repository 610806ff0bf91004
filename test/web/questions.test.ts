import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { QUESTION_INDEX } from '../../src/engine/index.ts';
import { openPage, seenText } from './browser.ts';
import { CLEAN, DemoServer, FAULTY } from './demo-server.ts';
import { openBrowser } from './open-browser.ts';

let server: DemoServer;
let browser: Browser;
let shared: Awaited<ReturnType<typeof openPage>>;

beforeAll(async () => {
  [server, browser] = await Promise.all([DemoServer.start(), openBrowser()]);
  shared = await openPage(browser, server.page(CLEAN));
});
afterAll(async () => {
  await browser?.close();
  await server?.stop();
});

describe('questions', () => {
  it('all of the registry are listed, each with its wording', async () => {
    const { page } = await openPage(browser, server.page(CLEAN, '/questions'));
    await page.getByRole('heading', { name: 'Questions' }).waitFor();
    for (const { wording } of QUESTION_INDEX)
      expect(await page.getByRole('link', { name: wording }).count()).toBeGreaterThan(0);
    await page.context().close();
  });

  it.each(QUESTION_INDEX)(
    '$title: its form takes its example, and answers',
    async ({ wording }) => {
      const { page } = shared;
      await page.getByRole('link', { name: 'Questions', exact: true }).click();
      await page.getByRole('link', { name: wording }).click();
      await page.getByLabel('values written here').check();
      await page.getByRole('button', { name: 'Fill the example' }).click();
      await page.getByRole('button', { name: 'Ask', exact: true }).click();
      const card = page.getByRole('article', { name: /^Answer: / });
      await card.getByText(/^condition as given/).waitFor();
      expect(await card.locator('.outs tbody tr').count()).toBeGreaterThan(0);
      expect(await page.getByRole('alert').count()).toBe(0);
      expect(shared.errors).toEqual([]);
    },
  );
});

it('from values: corner loads give the centre of gravity, worked by hand', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/questions/cg-from-corners'));
  await page.getByLabel('values written here').check();
  await page.getByRole('button', { name: 'Fill the example' }).click();
  await page.getByRole('button', { name: 'Ask', exact: true }).click();
  // Moments about the front axle: X = L (mRL + mRR) / m = 2700 · 750 / 1640 = 1234.756 mm.
  await page
    .getByRole('row', { name: /rearward of the front axle/ })
    .first()
    .getByText('1 234.8')
    .waitFor();
  await page.getByLabel(/^corner load, front left/).fill('452 ± 0.5');
  await page.getByLabel(/^wheelbase/).fill('two point seven');
  await page.getByRole('button', { name: 'Ask', exact: true }).click();
  const alert = page.getByRole('alert');
  await alert.getByText('two point seven').first().waitFor();
  expect(await seenText(alert)).toMatch(/wheelbase.*found “two point seven”.*Write a number/);
  await page.context().close();
});

it('of the study: written values go over what it has, and the answer names what is missing', async () => {
  const { page } = await openPage(browser, server.page(FAULTY, '/questions/mass-closure'));
  const card = page.getByRole('article', { name: /^Answer: / });
  await card.getByText('not complete: 2 values missing').first().waitFor();
  expect(await seenText(card)).toContain('80-002 Body harness');
  await page.getByText('Write other values over the study’s').click();
  await page.getByLabel(/^corner load, front left/).fill('500 ± 0.5 kg');
  await page.getByRole('button', { name: 'Ask', exact: true }).click();
  await card
    .getByRole('row', { name: /mass on the corner scales/ })
    .first()
    .getByText('1 683.0')
    .waitFor();
  await page.context().close();
});

it('cautions stand on the card with the warning sign and their words', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/questions/mass-closure'));
  const cautions = page.getByRole('region', { name: 'Cautions' });
  await cautions.getByRole('img', { name: 'Warning' }).first().waitFor();
  expect(await seenText(cautions)).toContain('local rules come first');
  await page.context().close();
});
