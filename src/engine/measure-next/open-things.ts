import { USUAL_ASKS } from '../../data/index.ts';
import { type Id, RefusalError, type StudyView } from '../../study/index.ts';
import { askStudy } from '../ask.ts';
import { isSettled } from '../direction.ts';
import type { Answer, Out, Question } from '../method.ts';
import type { Questions } from '../registry.ts';
import { claimStates } from '../whole-study.ts';
import type { Ask, MeasureNextOptions, OpenThing, Width } from './measure-next-types.ts';

/** An open thing with the answer behind it. */
export interface OpenAnswer {
  readonly thing: OpenThing;
  readonly answer: Answer;
  readonly out: Out | undefined;
}

/** Claims without a settled word, margins not proven, and totals wider than asked or incomplete. */
export function openThings(
  view: StudyView,
  questions: Questions,
  options: MeasureNextOptions,
): OpenAnswer[] {
  const asks = options.asks ?? USUAL_ASKS;
  return [
    ...openClaims(view, questions),
    ...asks.flatMap((ask) => askedTotal(ask, view, questions, options)),
  ];
}

function openClaims(view: StudyView, questions: Questions): OpenAnswer[] {
  return claimStates(view, questions).flatMap(({ claim, tie, answer, out, decision }) => {
    if (!tie || !answer || isSettled(decision?.word)) return [];
    const spec = outputOf(questions.get(tie.question), tie.output);
    if (!spec) return [];
    const { question, subject, output } = tie;
    const found = { ...{ question, subject, output }, ...stateOf(spec, out) };
    const thing: OpenThing = {
      ...found,
      about: 'claim',
      words: claim.words,
      ...(decision ? { decision } : {}),
    };
    return [{ thing, answer, out }];
  });
}

function askedTotal(
  ask: Ask,
  view: StudyView,
  questions: Questions,
  { rates, run }: MeasureNextOptions,
): OpenAnswer[] {
  const question = questions.get(ask.question);
  const spec = outputOf(question, ask.output);
  const subject = ask.subject === undefined ? view.root()?.id : view.find(ask.subject)?.id;
  if (!question || !spec || subject === undefined) return [];
  const answer = answerOf(question, questions, view, subject, rates, run);
  const out = answer?.outs[ask.output];
  if (!answer || !hasAnything(answer)) return [];
  const wanted = out && widthOf(ask.width, out.x);
  const isOpen = !out || out.u === 'incomplete' || (wanted !== undefined && out.u > wanted);
  const unproven = out?.decision?.word === 'not proven';
  if (!isOpen && !unproven) return [];
  const thing: OpenThing = {
    ...{ question: ask.question, subject, output: ask.output, ...stateOf(spec, out) },
    about: isOpen ? 'total' : 'margin',
    words: spec.meaning,
    ...(wanted === undefined ? {} : { wanted }),
    ...(out?.decision ? { decision: out.decision } : {}),
  };
  return [{ thing, answer, out }];
}

const widthOf = (width: Width, x: number): number =>
  'u' in width ? width.u : width.relative * Math.abs(x);

/** A question that nobody has begun to answer is not open: nothing of it is in the record. */
const hasAnything = (answer: Answer): boolean =>
  Object.keys(answer.outs).length > 0 || answer.reads.some((read) => read.there);

const outputOf = (question: Question | undefined, output: string) =>
  question?.body.outputs.find((o) => o.name === output);

const stateOf = (
  { kind, unit }: { readonly kind: OpenThing['kind']; readonly unit: string },
  out: Out | undefined,
): Pick<OpenThing, 'kind' | 'unit' | 'x' | 'u'> => ({
  ...{ kind, unit, u: out?.u ?? ('incomplete' as const) },
  ...(out ? { x: out.x } : {}),
});

/** Unlike conditions and the like leave a total aside: they are told where it is asked. */
function answerOf(
  question: Question,
  questions: Questions,
  view: StudyView,
  subject: Id,
  rates: string | undefined,
  run: MeasureNextOptions['run'],
): Answer | undefined {
  try {
    return askStudy(question, questions, {
      ...{ view, subject },
      ...(rates === undefined ? {} : { rates }),
      ...(run === undefined ? {} : { run }),
    });
  } catch (error) {
    if (error instanceof RefusalError) return undefined;
    throw error;
  }
}
