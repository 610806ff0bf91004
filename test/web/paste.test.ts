import { fileURLToPath } from 'node:url';
import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { axeFaults } from './axe-faults.ts';
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

const WORKBOOK = fileURLToPath(new URL('../fixtures/workbooks/weights.xlsx', import.meta.url));

/** Rows as a spreadsheet puts them on the clipboard. */
const cells = (...rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.join('\t')}\r\n`).join('');

const GOOD = cells(
  ['number', 'assembly', 'name', 'mass [kg]'],
  ['99-001', '10', 'Made-up bracket, left', '2,5'],
  ['99-002', '10', 'Made-up bracket, right', '2,75'],
);
const BAD = cells(
  ['number', 'assembly', 'name', 'mass [kg]'],
  ['99-011', '10', 'Made-up cover', '1.5'],
  ['99-012', '10', 'Made-up lid', '-2.5'],
);
const READINGS = cells(
  ['number', 'property', 'value', 'unit', 'u', 'u unit', 'instrument'],
  ['40-003', 'mass', '6.27', 'kg', '0.01', 'kg', 'scale A'],
);

/** The parts of a study, in a browser with a clipboard. */
async function openParts(study: string) {
  const permissions = ['clipboard-read', 'clipboard-write'];
  const opened = await openPage(browser, server.page(study, '/parts'), { permissions });
  await opened.page.locator('.parts-table tbody tr').first().waitFor();
  return opened;
}

/** Copies text, and pastes it by the keyboard where the focus is. */
async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate(`navigator.clipboard.writeText(${JSON.stringify(text)})`);
  await page.keyboard.press('Control+V');
}

/** What the table is taken for. */
const holds = (step: Locator) => step.getByRole('combobox', { name: /^holds/ });

const dialogOf = (page: Page) => page.getByRole('dialog', { name: 'Cells from a spreadsheet' });

describe('cells pasted on the sheet of parts', () => {
  it('are shown as they are taken, then become parts', async () => {
    const { page, errors } = await openParts(CLEAN);
    await paste(page, GOOD);
    const dialog = dialogOf(page);
    await dialog.getByText('It would make 2 rows').waitFor();
    const seen = await seenText(dialog);
    for (const guess of ['delimiter: tab', 'decimal sign: ,', 'mass, all pieces'])
      expect(seen).toContain(guess);
    expect(await axeFaults(page)).toEqual([]);
    expect(await server.changes(CLEAN)).not.toContainEqual(fromPaste);

    await dialog.getByRole('button', { name: 'Import' }).click();
    await dialog.getByText('imported: 2 rows').waitFor();
    await page.keyboard.press('Escape');
    await page.getByText('250 of 250 rows').waitFor();
    await page.getByRole('searchbox').fill('99-002');
    await page.getByRole('button', { name: 'mass, all pieces of 99-002' }).click();
    const why = await seenText(page.getByRole('dialog'));
    for (const part of ['2.75', 'pasted cells']) expect(why).toContain(part);
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it('bring a reading of a part that is here, beside the one it has', async () => {
    const { page } = await openParts(CLEAN);
    await paste(page, READINGS);
    const dialog = dialogOf(page);
    await dialog.getByText('Nothing is written yet').waitFor();
    expect(await holds(dialog).inputValue()).toBe('readings');
    await dialog.getByRole('button', { name: 'Import' }).click();
    await dialog.getByText('imported: 1 row').waitFor();
    await page.keyboard.press('Escape');
    await page.getByRole('searchbox').fill('40-003');
    await page.getByRole('button', { name: 'mass, all pieces of 40-003' }).click();
    await page.getByRole('dialog').getByText('All 2 readings').waitFor();
    await page.context().close();
  });

  it('with one that is wrong change nothing, and it is named with what to do', async () => {
    const { page } = await openParts(FAULTY);
    const before = await server.changes(FAULTY);
    await paste(page, BAD);
    const dialog = dialogOf(page);
    await dialog.getByText('Nothing is written yet').waitFor();
    await dialog.getByRole('button', { name: 'Import' }).click();
    const told = dialog.locator('.import-step > .refusals');
    await told.waitFor();
    const text = await seenText(told);
    for (const part of ['pasted cells', 'row 3', 'mass [kg]', '-2.5', 'negative'])
      expect(text).toContain(part);
    expect(await axeFaults(page)).toEqual([]);
    expect(await server.changes(FAULTY)).toEqual(before);
    await page.context().close();
  });

  it('by the button, where a browser tells of no paste; a field keeps its own', async () => {
    const { page } = await openParts(FAULTY);
    await page.getByRole('searchbox').focus();
    await paste(page, GOOD);
    expect(await page.getByRole('searchbox').inputValue()).toContain('99-001');
    expect(await dialogOf(page).count()).toBe(0);

    await page.getByRole('button', { name: 'Paste from a spreadsheet' }).click();
    const dialog = dialogOf(page);
    await dialog.getByLabel('Cells, headings first').fill(GOOD);
    expect(await axeFaults(page)).toEqual([]);
    await dialog.getByRole('button', { name: 'Look at the cells' }).click();
    await dialog.getByText('It would make 2 rows').waitFor();
    await page.context().close();
  });
});

it('a workbook comes in by its first sheet, or the one that is named', async () => {
  const { page } = await openPage(browser, server.page(FAULTY, '/import'));
  await page.getByLabel('Files').setInputFiles([WORKBOOK]);
  const step = page.locator('.import-step');
  await holds(step).selectOption('parts');
  await step.getByLabel('sheet').fill('Day 2');
  await step.getByRole('button', { name: 'Look at it first' }).click();
  await step.getByText('sheet: Day 2').waitFor();
  await step.getByRole('button', { name: 'Import' }).click();
  await step.getByText('imported: 1 row').waitFor();
  await page.context().close();
});

/** A change that came in by a paste. */
const fromPaste: unknown = expect.objectContaining({
  words: expect.stringContaining('pasted cells'),
});
