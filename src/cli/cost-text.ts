import type { DifferenceByCause } from '../engine/index.ts';
import { numberText, shownNumber, textTable, wrap } from '../report/index.ts';

const WORDS: Readonly<Record<DifferenceByCause['causes'][number]['cause'], string>> = {
  ...{ facts: 'facts of the record', rates: 'rates', volume: 'pieces a year', method: 'method' },
};

const money = (x: number, u: number): string =>
  numberText(shownNumber({ x, u, kind: 'money', unit: '{u}', how: 'calculated' }));

/** A difference of costs with what each cause adds, and how it was shared out. */
export function differenceByCauseText(d: DifferenceByCause): string {
  const rows = d.causes.map((c) => [
    WORDS[c.cause],
    money(c.d, c.u),
    c.d === 0 ? 'the same on both sides' : c.word,
  ]);
  const table = textTable(
    [
      { head: 'cause', numbers: false },
      { head: 'second less first', numbers: true },
      { head: 'word', numbers: false },
    ],
    [...rows, ['all together', money(d.d, d.u), d.word]],
  );
  return `${[
    `Cost of the parts: first ${money(d.first, d.firstU)}, second ${money(d.second, d.secondU)}`,
    ...table,
    ...wrap(`Shared out: ${d.averaging}.`),
  ].join('\n')}\n`;
}
