// One file more under src/engine, the registry made again, and nothing else: the command line,
// the HTTP interface, the form and answer card of the pages, and the PDF all have the question.
import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { askAnswer, questionsAnswer } from '../../src/server/contract.ts';
import { openBrowser } from '../web/open-browser.ts';
import { ProjectCopy } from './project-copy.ts';

const ID = 'made-up-axles';
const WORDING = 'Which axle of this made-up vehicle carries more?';

let copy: ProjectCopy;

beforeAll(() => {
  copy = new ProjectCopy();
  copyFileSync(
    join(ROOT, 'test/whole/made-up-question.txt'),
    join(copy.dir, `src/engine/mass/${ID}.question.ts`),
  );
  copy.run('npm', 'run', '--silent', 'registry');
  copy.hoistside(
    '--library',
    'lib',
    'import',
    'demo/tables/van-27-clean',
    '--study',
    'made up',
    '--vehicle',
    'VAN-27',
    '--new',
    '--invented',
  );
});
afterAll(() => copy.remove());

test('the command line lists, explains and answers it', () => {
  expect(copy.hoistside('ask')).toContain(WORDING);
  expect(copy.hoistside('ask', ID)).toContain('corner load, front left');
  expect(copy.hoistside('ask', ID, '--example')).toMatch(
    /front axle over rear axle +140\.0 ± 1\.0 +kg +different/,
  );
  expect(copy.hoistside('ask', ID, '--example')).toMatch(
    /Made-up loads of the corners\n +fl +█+ +452 kg\n/,
  );
  const asked = JSON.parse(
    copy.hoistside('--library', 'lib', 'ask', ID, '--study', 'made up', '--json'),
  );
  // Corner loads of the made-up record: 462.5 + 457.0 − 353.5 − 372.5 kg.
  expect(asked.answers[0].outs.excess.x).toBeCloseTo(193.5, 9);
});

test('the PDF has its answer, method and section', () => {
  copy.hoistside('--library', 'lib', 'report', '--study', 'made up', '-o', 'report.pdf');
  const text = copy.run('pdftotext', '-layout', 'report.pdf', '-').replaceAll(/\s+/g, ' ');
  for (const words of [
    'A made-up section',
    WORDING,
    'front axle over rear axle',
    '193.5',
    'Made up for a test',
    'Made-up loads of the corners',
  ])
    expect(text).toContain(words);
});

describe('served', () => {
  test('the interface describes and answers it; the pages show its form and card', async () => {
    copy.run('npm', 'run', '--silent', 'build:web');
    const { address, stop } = await copy.serve('lib');
    try {
      await checkInterface(address);
      await checkPages(address);
    } finally {
      await stop();
    }
  });
});

async function checkInterface(address: URL): Promise<void> {
  const headers = {
    authorization: `Bearer ${address.hash.replace('#token=', '')}`,
    'content-type': 'application/json',
  };
  const { questions } = questionsAnswer.parse(
    await (await fetch(new URL('/api/questions', address), { headers })).json(),
  );
  expect(questions.map((q) => q.id)).toContain(ID);
  const body = JSON.stringify({
    question: ID,
    values: { fl: '500 ± 1 kg', fr: '500 ± 1 kg', rl: '400 ± 1 kg', rr: '400 ± 1 kg' },
  });
  const { answers } = askAnswer.parse(
    await (await fetch(new URL('/api/ask', address), { method: 'POST', headers, body })).json(),
  );
  const excess = answers[0]?.outs.excess;
  expect(excess).toMatchObject({ x: 200, decision: { word: 'different' } });
  expect(excess?.u).toBeCloseTo(2, 9);
  expect(answers[0]?.figures?.map((f) => f.title)).toContain('Made-up loads of the corners');
}

async function checkPages(address: URL): Promise<void> {
  const browser = await openBrowser();
  try {
    const page = await browser.newPage();
    await page.goto(address.href);
    await page
      .getByRole('link', { name: /made up/ })
      .first()
      .click();
    await page.getByRole('link', { name: 'Questions' }).click();
    await page.getByText(WORDING).click();
    await page.getByText('values written here').click();
    await page.getByRole('button', { name: 'Fill the example' }).click();
    await page.getByLabel(/corner load, front left/).fill('460 ± 0.5 kg');
    await page.getByRole('button', { name: 'Ask', exact: true }).click();
    const card = page.locator('.question-answer');
    const shown = async () => ((await card.textContent()) ?? '').replaceAll(/\s+/g, ' ');
    await expect.poll(shown, { timeout: 15_000 }).toMatch(/front axle over rear axle/);
    await expect.poll(shown).toContain('148.0');
    const text = await shown();
    const figure = card.getByRole('img', { name: /^Made-up loads of the corners/ });
    // The figure is laid out when its width is known.
    await expect.poll(() => figure.locator('svg text').allTextContents()).toContain('460 kg');
    expect(text).toContain('different');
    expect(text).toContain('Made up for a test');
  } finally {
    await browser.close();
  }
}
