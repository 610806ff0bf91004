import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { openPage, seenText } from './browser.ts';
import { DemoServer } from './demo-server.ts';
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

const table = (file: string): string => join(ROOT, 'demo/tables/van-27-clean', file);
const csv = (name: string, text: string) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(text),
});

it('a new study takes the tables of a record, looked at first, and sums them up', async () => {
  const { page, errors } = await openPage(browser, server.address);
  await page.getByLabel('Title').fill('Second van');
  await page.getByLabel('Vehicle').fill('VAN-2');
  await page.getByLabel('Invented: mark every sheet so').check();
  await page.getByRole('button', { name: 'Make it' }).click();
  await page
    .getByLabel('Files')
    .setInputFiles(['parts.csv', 'assemblies.csv', 'rates-R1.json'].map(table));

  const step = (file: string) => page.locator('.import-step', { hasText: file });
  // What parts belong to comes first, whatever the order of choosing.
  expect(await page.locator('.import-step h2').allTextContents()).toEqual([
    'assemblies.csv',
    'parts.csv',
    'rates-R1.json',
  ]);
  await step('assemblies.csv').getByRole('button', { name: 'Import' }).click();
  await step('assemblies.csv').getByText('imported').waitFor();
  await step('parts.csv').getByRole('button', { name: 'Look at it first' }).click();
  await step('parts.csv').getByText('Nothing is written yet').waitFor();
  expect(await seenText(step('parts.csv'))).toMatch(/mass_kg .*mass, all pieces/);
  await step('parts.csv').getByRole('button', { name: 'Import' }).click();
  await step('parts.csv')
    .getByText(/imported: 248 rows/)
    .waitFor();
  await step('rates-R1.json').getByRole('button', { name: 'Import' }).click();
  await step('rates-R1.json').getByText('imported').waitFor();

  await page.getByRole('navigation').getByRole('link', { name: 'Overview' }).click();
  await page.locator('.tile', { hasText: 'Parts as weighed' }).getByText('1 645.29').waitFor();
  await page.getByRole('contentinfo').getByText('Second van, invented').waitFor();
  expect(errors).toEqual([]);
  await page.context().close();
});

it('a table with a slip says file, row, column, value and what to do, and changes nothing', async () => {
  const { page } = await openPage(browser, server.page('VAN-27', '/import'));
  await page
    .getByLabel('Files')
    .setInputFiles([csv('parts.csv', 'number,name,mass_kg\n99-001,Bracket,-2.5\n')]);
  const step = page.locator('.import-step');
  await step.getByRole('button', { name: 'Import' }).click();
  await step.getByRole('alert').waitFor();
  const text = await seenText(step.getByRole('alert'));
  for (const part of ['parts.csv', 'row 2', 'mass_kg', '-2.5', 'negative'])
    expect(text).toContain(part);
  await page.getByRole('link', { name: 'Parts', exact: true }).click();
  await page.getByText('248 of 248 rows').waitFor();
  await page.context().close();
});
