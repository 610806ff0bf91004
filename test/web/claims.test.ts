import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
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

it('a claim typed at the vehicle is open, then tied by hand, then answered', async () => {
  const { page, errors } = await openPage(browser, server.page(CLEAN, '/claims'));
  await page.getByLabel('What was said').fill('The whole thing is over 1.6 tonnes');
  await page.getByLabel('Known how').selectOption('guessed');
  await page.getByLabel('Said by').fill('lead');
  await page.getByRole('button', { name: 'Keep the claim' }).click();
  const card = page.getByRole('article', { name: 'The whole thing is over 1.6 tonnes' });
  await card.getByText('open: not tied to a question yet').waitFor();

  await card.getByLabel('Question that answers it').selectOption('mass-roll-up');
  await card.getByLabel('Result').selectOption('mass');
  await card.getByLabel('It holds if that is').selectOption('at least');
  await card.getByLabel(/^Value/).fill('heavy');
  await card.getByRole('button', { name: 'Tie', exact: true }).click();
  await card.getByRole('alert').waitFor();
  await card.getByLabel(/^Value/).fill('1.6 t');
  await card.getByRole('button', { name: 'Tie', exact: true }).click();

  await card.getByText('holds', { exact: true }).first().waitFor();
  const text = await seenText(card);
  expect(text).toMatch(/1 645\.\d+ ± 0\.\d+ kg/);
  expect(text).toContain('at least 1 600 kg');
  await card.locator('summary', { hasText: 'holds' }).click();
  await card.getByText(/Rule: holds above 2 u/).waitFor();
  expect(errors).toEqual([]);

  await card.getByRole('button', { name: 'Withdraw', exact: true }).click();
  await card.getByRole('button', { name: 'Withdraw the claim' }).click();
  await card.getByText('a claim is withdrawn without a reason').waitFor();
  await card.getByLabel('Why it does not stand').fill('said of another vehicle');
  await card.getByRole('button', { name: 'Withdraw the claim' }).click();
  await card.waitFor({ state: 'detached' });
  await page.context().close();
});

it('the claims of the demo say what they lack, or hold, or are not proven', async () => {
  const { page } = await openPage(browser, server.page(CLEAN, '/claims'));
  const card = (name: RegExp) => page.getByRole('article', { name });
  await card(/12 V battery/).waitFor();
  expect(await seenText(card(/12 V battery/))).toContain('energy of the pack is missing');
  expect(await seenText(card(/over 120 Wh/))).toMatch(/holds.*at least 120 W·h\/kg/);
  expect(await seenText(card(/under 530 mm/))).toContain('not proven');
  await page.context().close();
});
