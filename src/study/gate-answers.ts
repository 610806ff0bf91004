import { type Gate, type GateItem, gateOf } from '../data/index.ts';
import { type Kind, parseQuantity } from '../quantity/index.ts';
import { type Refusal, RefusalError } from './finding.ts';
import { type GateAnswer, takesNumber } from './gate.ts';

/** Kind and usual unit of the lines that take a number. */
const NUMBERS: Readonly<Partial<Record<GateItem['takes'], readonly [Kind, string]>>> = {
  voltage: ['voltage', 'V'],
  temperature: ['tempAbs', 'Cel'],
  minutes: ['time', 'min'],
  count: ['count', '1'],
  mass: ['mass', 'kg'],
  length: ['length', 'mm'],
  pressure: ['pressureDiff', 'kPa'],
};

/** Unit in which a line's number is read where none is written; nothing for words. */
export const unitOfItem = (item: GateItem): string | undefined => NUMBERS[item.takes]?.[1];

/**
 * Reads the lines of a record as people write them; empty ones are left out.
 * @throws RefusalError for a gate or line that there is none of, and for what can not be read.
 */
export function readGateAnswers(
  gate: string,
  written: Readonly<Record<string, string>>,
): { readonly gate: Gate; readonly answers: readonly GateAnswer[] } {
  const found = gateOf(gate);
  if (!found)
    throw new RefusalError(
      refusal('gate', gate, 'there is no such gate', 'See the gates of the step.'),
    );
  const lines = Object.entries(written).filter(([, text]) => text.trim() !== '');
  return { gate: found, answers: lines.map(([id, text]) => answerOf(found, id, text.trim())) };
}

function answerOf(gate: Gate, id: string, text: string): GateAnswer {
  const item = gate.items.find((i) => i.id === id);
  if (!item) {
    const names = gate.items.map((i) => i.id).join(', ');
    throw new RefusalError(
      refusal(id, text, `${gate.title} has no such line`, `Its lines are: ${names}.`),
    );
  }
  if (!takesNumber(item)) return { item: id, asWritten: text };
  const [kind, unit] = NUMBERS[item.takes] ?? ['ratio', '1'];
  const parsed = parseQuantity(text, kind, { unit });
  if (!parsed.ok) throw new RefusalError(refusal(item.words, text, parsed.why, parsed.next));
  return { item: id, asWritten: text, x: parsed.value.x };
}

const refusal = (column: string, value: string, why: string, next: string): Refusal => ({
  ...{ code: 'bad-value', place: { column }, value, why, next },
});
