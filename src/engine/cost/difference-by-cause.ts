import { FormBuilder, formUncertainty, type LinearForm } from '../../quantity/index.ts';
import { RefusalError, type StudyView } from '../../study/index.ts';
import { formOfOut } from '../answer-forms.ts';
import { askStudy } from '../ask.ts';
import { decideDifference } from '../decide.ts';
import type { DecisionWord, Question, WrittenInputs } from '../method.ts';
import type { Questions } from '../registry.ts';

/** What a result of costs can differ by. */
export const CAUSES = ['facts', 'rates', 'volume', 'method'] as const;
export type Cause = (typeof CAUSES)[number];

/** One of two results: each of its four sides may come from the one or the other. */
export interface CostSide {
  /** Facts: the readings of a study as it stands there, and what is asked about. */
  readonly facts: { readonly view: StudyView; readonly subject?: string };
  /** Version of the rate book; the latest of the study when not named. */
  readonly rates?: string;
  /** Pieces a year as written; the book's own when not named. */
  readonly volume?: string;
  /** Inputs that say how it is worked out: tools apart, for example. */
  readonly method?: WrittenInputs;
}

/** What one cause adds to the difference, SI. */
export interface CauseShare {
  readonly cause: Cause;
  readonly d: number;
  readonly u: number;
  readonly word: DecisionWord;
}

/** The difference of two results, second less first, by its causes. */
export interface DifferenceByCause {
  readonly output: string;
  /** The two results with their standard uncertainties, SI. */
  readonly first: number;
  readonly firstU: number;
  readonly second: number;
  readonly secondU: number;
  readonly d: number;
  readonly u: number;
  readonly word: DecisionWord;
  readonly causes: readonly CauseShare[];
  /** How what several causes do together is shared out. */
  readonly averaging: string;
}

export const AVERAGING =
  'each cause is the mean of what it changes over all orders in which the causes may come (Shapley value), so that they sum to the difference';

/**
 * Divides the difference of an output between two results among facts, rates, volume and method:
 * every mixture of the two is asked, and what a cause changes is averaged over all orders.
 * @throws RefusalError where a mixture has no such number.
 */
export function differenceByCause(
  question: Question,
  questions: Questions,
  output: string,
  [first, second]: readonly [CostSide, CostSide],
): DifferenceByCause {
  const changed = CAUSES.filter((cause) => first[cause] !== second[cause]);
  const asked = new Map<string, LinearForm>();
  const formAt = (from: ReadonlySet<Cause>): LinearForm => {
    const key = changed.filter((c) => from.has(c)).join();
    const held = asked.get(key) ?? ask(question, questions, output, mixed(first, second, from));
    asked.set(key, held);
    return held;
  };
  const [a, b] = [formAt(new Set()), formAt(new Set(changed))];
  const shares = CAUSES.map((cause) => ({ cause, form: shapley(cause, changed, formAt) }));
  const whole = new FormBuilder().add(b).add(a, -1).done();
  return {
    ...{ output, first: a.x, firstU: formUncertainty(a) },
    ...{ second: b.x, secondU: formUncertainty(b), ...worded(whole), averaging: AVERAGING },
    causes: shares.map(({ cause, form }) => ({ cause, ...worded(form) })),
  };
}

function worded(form: LinearForm): { d: number; u: number; word: DecisionWord } {
  const u = formUncertainty(form);
  return { d: form.x, u, word: decideDifference(form.x, u, null).word };
}

/** The first side with these causes taken from the second. */
function mixed(first: CostSide, second: CostSide, from: ReadonlySet<Cause>): CostSide {
  const side = (cause: Cause): CostSide => (from.has(cause) ? second : first);
  const [rates, volume] = [side('rates').rates, side('volume').volume];
  const { method } = side('method');
  return {
    facts: side('facts').facts,
    ...(rates === undefined ? {} : { rates }),
    ...(volume === undefined ? {} : { volume }),
    ...(method === undefined ? {} : { method }),
  };
}

function ask(q: Question, questions: Questions, output: string, side: CostSide): LinearForm {
  const { facts, rates, volume, method } = side;
  const over = { ...method, ...(volume === undefined ? {} : { volume }) };
  const answer = askStudy(q, questions, {
    ...facts,
    ...(rates === undefined ? {} : { rates }),
    ...(Object.keys(over).length === 0 ? {} : { over }),
  });
  const out = answer.outs[output];
  if (out) return formOfOut(out);
  throw new RefusalError({
    code: 'no-answer',
    place: { subject: answer.basis.subject ?? '', column: output },
    value: output,
    why: `"${answer.title}" has no number of this name with rates ${rates ?? 'as latest'}, volume ${volume ?? 'of the book'}`,
    next: 'See what its findings lack, with the question asked by itself.',
  });
}

/** Mean over all orders of what a cause changes when it comes: weights |S|! (n − |S| − 1)! / n!. */
function shapley(
  cause: Cause,
  changed: readonly Cause[],
  formAt: (from: ReadonlySet<Cause>) => LinearForm,
): LinearForm {
  const sum = new FormBuilder();
  if (!changed.includes(cause)) return sum.done();
  const others = changed.filter((c) => c !== cause);
  const n = changed.length;
  for (let mask = 0; mask < 2 ** others.length; mask++) {
    const before = new Set(others.filter((_, i) => (mask >> i) % 2 === 1));
    const weight = (factorial(before.size) * factorial(n - before.size - 1)) / factorial(n);
    sum.add(formAt(new Set([...before, cause])), weight).add(formAt(before), -weight);
  }
  return sum.done();
}

const factorial = (n: number): number => (n <= 1 ? 1 : n * factorial(n - 1));
