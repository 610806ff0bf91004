import { describe, expect, it } from 'vitest';
import { altText, layOut } from '../../src/drawing/index.ts';
import { askWritten, loadAll } from '../../src/engine/index.ts';
import { offPaper, wordsOverWords } from './on-paper.ts';
import { say } from './sample-figures.ts';

const questions = await loadAll();
const drawn = [...questions.values()]
  .map((q) => [q.id, askWritten(q, q.example)] as const)
  .filter(([, { figures = [] }]) => figures.length > 0);

it('many questions draw', () => {
  expect(drawn.length).toBeGreaterThan(15);
});

describe.each(drawn)('figures of %s, of its example', (_id, { figures = [], findings }) => {
  it('are whole', () => {
    expect(findings.map((f) => f.code)).not.toContain('figure-left-out');
    expect(new Set(figures.map((f) => f.title)).size).toBe(figures.length);
    for (const f of figures) expect(altText(f, say).length).toBeLessThan(2000);
  });

  it.each([340, 728])('stay on a paper %d wide, no words over others', (width) => {
    for (const f of figures) {
      const picture = layOut(f, { width, say });
      expect(offPaper(picture)).toEqual([]);
      expect(wordsOverWords(picture)).toEqual([]);
    }
  });
});
