import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Entry } from '../../src/study/index.ts';
import { stepPlaces } from '../../web/src/worker/step-places.ts';
import { node, studyOf } from '../study/made-study.ts';
import { openPage, seenText } from './browser.ts';
import { CLEAN, DemoServer, FAULTY } from './demo-server.ts';
import { openBrowser } from './open-browser.ts';

const joins = (to: string, role: 'from' | 'to'): Entry => ({
  ...{ v: 1, e: 'link.add' },
  link: { id: `j1-${role}`, kind: 'joins', from: 'j1', to, role },
});

describe('places of steps', () => {
  const view = studyOf(
    node('a1', 'van', 'assembly'),
    node('p1', 'a1'),
    node('p2', 'van'),
    node('j1', 'van', 'joint'),
    joins('a1', 'from'),
    joins('p2', 'to'),
  );

  it('are both sides of a joint, and what an assembly takes along', () => {
    expect(stepPlaces(view, ['J1 bolt M12x90', 'take off A1 name of a1', 'no such thing'])).toEqual(
      [
        { touches: ['a1', 'p2'], takesOff: [] },
        { touches: ['a1'], takesOff: ['a1', 'p1'] },
        { touches: [], takesOff: [] },
      ],
    );
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

  it('counts 63 groups and 474 elements, and names the planted bag and the one without a parent', async () => {
    const { page, errors } = await openPage(browser, server.page(FAULTY, '/joints'));
    const lead = page.locator('.tiles.lead');
    await expect.poll(() => seenText(lead.locator('.digits'))).toMatch(/^63 474 1 1 /);
    await page.getByText('17 by bag, 18 by holes').first().waitFor();
    await page.getByText('no joint is written on the bag').first().waitFor();
    const register = page.locator('table.register').first();
    await page.getByLabel(/^Show/).selectOption('bag and holes differ');
    await expect.poll(() => register.locator('tbody tr').count()).toBe(1);
    const line = await seenText(register.locator('tbody tr'));
    expect(line).toContain('J103');
    expect(line).toContain('differs');
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it('steps the way to the pack on the map: what is off is gone from it', async () => {
    const { page, errors } = await openPage(browser, server.page(CLEAN, '/joints'));
    const way = page.locator('.way-steps');
    await way.getByText('Step 1 of 5: J103').waitFor();
    await way.locator('svg rect.assembly').first().waitFor();
    const labels = () => way.locator('svg .leader text').allTextContents();
    await expect.poll(labels).toContain('10-013');
    for (let i = 0; i < 4; i += 1) await way.getByRole('button', { name: 'Next step' }).click();
    await way.getByText('Step 5 of 5: take off 40').waitFor();
    await expect.poll(labels).toContain('40');
    for (const blocker of ['J103', 'J407', 'J604', 'S01'])
      expect(await seenText(way.locator('ol'))).toContain(blocker);
    expect(errors).toEqual([]);
    await page.context().close();
  });

  it('says that there is no way where the bolts are locked, and gives another where a line is', async () => {
    const { page } = await openPage(browser, server.page(CLEAN, '/joints'));
    await page.locator('.way-steps').waitFor();
    await page.getByLabel('Locked, by number').fill('J103');
    await page.getByText('there is no way: J103 stops it', { exact: false }).waitFor();
    await page.getByLabel('Locked, by number').fill('J604');
    await page.getByText('with this locked there is another way').waitFor();
    await page.context().close();
  });

  it('takes “not applicable” for a figure of a fastening, by the keyboard', async () => {
    const { page, errors } = await openPage(browser, server.page(CLEAN, '/joints'));
    const open = page.getByRole('button', { name: 'capital, a vehicle of LID-1' });
    await open.focus();
    await page.keyboard.press('Enter');
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Record a reading' }).click();
    await dialog.getByLabel('New value').fill('not applicable');
    await dialog.getByText('read as no value: not applicable').waitFor();
    await page.keyboard.press('Enter');
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => seenText(open)).toContain('not applicable');
    expect(errors).toEqual([]);
    await page.context().close();
  });
});
