import {
  type Ask,
  loadAll,
  loadQuestion,
  type MeasureNext,
  type MeasureNextOptions,
  measureNext,
  type Width,
} from '../engine/index.ts';
import { type Kind, parseQuantity } from '../quantity/index.ts';
import { type Refusal, RefusalError, type StudyView } from '../study/index.ts';

/** What to measure next in a study as it stands. */
export const measureNextOf = async (
  view: StudyView,
  options: MeasureNextOptions = {},
): Promise<MeasureNext> => measureNext(view, await loadAll(), options);

/**
 * Reads how narrow a total is wanted: `mass-closure.gap`, with `0.5 kg` or `10 %` of its value;
 * `mass-roll-up.mass@40` asks it of a node.
 * @throws RefusalError when there is no such output or the width is none.
 */
export async function readAsk(name: string, width: string): Promise<Ask> {
  const [, id = '', output = '', subject] = /^([^.]+)\.([^@]+)(?:@(.+))?$/.exec(name) ?? [];
  if (id === '')
    throw refused(name, 'this names no output', 'Write e.g. mass-closure.gap="0.5 kg".');
  const { question } = await loadQuestion(id);
  const spec = question.body.outputs.find((o) => o.name === output);
  if (!spec) {
    const names = question.body.outputs.map((o) => o.name).join(', ');
    throw refused(name, `${id} has no such output`, `Its outputs are: ${names}.`);
  }
  return {
    ...{ question: id, output, width: readWidth(width, spec.kind, spec.unit) },
    ...(subject === undefined ? {} : { subject }),
  };
}

function readWidth(text: string, kind: Kind, unit: string): Width {
  const relative = parseQuantity(text, 'ratio', { unit: '1' });
  if (kind !== 'ratio' && text.includes('%') && relative.ok) return { relative: relative.value.x };
  const parsed = parseQuantity(text, kind, { unit });
  if (!parsed.ok) throw refused(text, parsed.why, parsed.next);
  if (parsed.value.x > 0) return { u: parsed.value.x };
  throw refused(text, 'the spread asked for is not above zero', 'Write e.g. "0.5 kg" or "5 %".');
}

const refused = (value: string, why: string, next: string): RefusalError => {
  const refusal: Refusal = { code: 'bad-call', place: { column: 'ask' }, value, why, next };
  return new RefusalError(refusal);
};
