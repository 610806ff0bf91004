import {
  type Claim,
  type Id,
  type Place,
  propertyWords,
  RefusalError,
  type StudyView,
  type Tie,
} from '../study/index.ts';
import { askStudy } from './ask.ts';
import { decideMargin } from './decide.ts';
import type { Answer, Decision, Out, Question, Run } from './method.ts';
import type { Questions } from './registry.ts';

/** A claim with what its question says of it now. */
export interface ClaimState {
  readonly claim: Claim;
  readonly tie?: Tie;
  readonly state: 'open' | 'answered';
  readonly out?: Out;
  readonly answer?: Answer;
  /** Margin to what would make it true; only where the answer is complete. */
  readonly decision?: Decision;
  /** What is missing to answer it. */
  readonly lacks: readonly string[];
}

/** Everything the registry can say of a study as it stands. */
export interface StudyAnswers {
  readonly answers: readonly Answer[];
  /** Questions that were refused, unlike conditions for example, and why. */
  readonly refused: readonly Refused[];
  readonly claims: readonly ClaimState[];
}
export interface Refused {
  readonly question: Pick<Question, 'id' | 'title'>;
  readonly why: string;
}

/** Nodes that a question can be asked of as things stand: all its single numbers are there. */
export function subjectsFor(
  question: Question,
  questions: Questions,
  view: StudyView,
): readonly Id[] {
  const root = view.root();
  if (!root) return [];
  if (question.subject === 'study') return [root.id];
  return view
    .nodes(question.subject)
    .map((n) => n.id)
    .filter((id) => hasItsNumbers(askStudy(question, questions, { view, subject: id })));
}

const hasItsNumbers = (answer: Answer): boolean =>
  Object.keys(answer.outs).length > 0 && !answer.findings.some((f) => f.code === 'not-worked-out');

/**
 * Asks every question of everything it can be asked of, those on request left out, then answers
 * the claims.
 */
export function answerStudy(
  view: StudyView,
  questions: Questions,
  options: { readonly rates?: string; readonly run?: Run } = {},
): StudyAnswers {
  const { rates, run } = options;
  const all = [...questions.values()]
    .filter((q) => !q.onRequest)
    .sort((a, b) => a.section.order - b.section.order || (a.id < b.id ? -1 : 1));
  const refused: Refused[] = [];
  const answers = all.flatMap((question, i) => {
    run?.tick(i / all.length);
    const from = { view, ...(rates === undefined ? {} : { rates }) };
    try {
      return subjectsFor(question, questions, view).map((subject) =>
        askStudy(question, questions, { ...from, subject }),
      );
    } catch (error) {
      if (!(error instanceof RefusalError)) throw error;
      refused.push({ question: { id: question.id, title: question.title }, why: error.message });
      return [];
    }
  });
  run?.tick(1);
  return { answers, refused, claims: claimStates(view, questions) };
}

/** Every live claim with its state. */
export const claimStates = (view: StudyView, questions: Questions): ClaimState[] =>
  view.claims().map((claim) => claimState(claim, view, questions));

function claimState(claim: Claim, view: StudyView, questions: Questions): ClaimState {
  const tie = view.ties(claim.id).at(-1);
  if (!tie) return { claim, state: 'open', lacks: ['it is not tied to a question yet'] };
  const question = questions.get(tie.question);
  if (!question)
    return { claim, tie, state: 'open', lacks: [`there is no question ${tie.question}`] };
  const answer = tryToAsk(question, questions, view, tie.subject);
  if (typeof answer === 'string') return { claim, tie, state: 'open', lacks: [answer] };
  const out = answer.outs[tie.output];
  if (!out || out.u === 'incomplete') return openClaim(claim, tie, answer, out);
  const d = tie.test.is === 'at least' ? out.x - tie.test.value : tie.test.value - out.x;
  return {
    claim,
    tie,
    state: 'answered',
    out,
    answer,
    decision: decideMargin(d, out.u, out.dof),
    lacks: [],
  };
}

/** The answer, or why there is none: the subject may be gone since, or was never of the kind. */
function tryToAsk(
  question: Question,
  questions: Questions,
  view: StudyView,
  subject: Id,
): Answer | string {
  try {
    return askStudy(question, questions, { view, subject });
  } catch (error) {
    if (error instanceof RefusalError) return error.message;
    throw error;
  }
}

function openClaim(claim: Claim, tie: Tie, answer: Answer, out: Out | undefined): ClaimState {
  const lacks = out ? outLacks(out) : answerLacks(answer);
  return {
    claim,
    tie,
    state: 'open',
    answer,
    lacks: lacks.length > 0 ? lacks : [`${tie.output} could not be worked out`],
    ...(out ? { out } : {}),
  };
}

/** What one output lacks: readings, and spreads that are not known. */
const outLacks = (out: Out): string[] => [
  ...out.missing.map((place) => `${placeWords(place)} is missing`),
  ...out.unknownSpread.map((place) => `${placeWords(place)} has no known spread`),
];

/** What an answer without the output lacks: the missing readings, else whatever it found. */
function answerLacks(answer: Answer): string[] {
  const missing = answer.findings.filter((f) => f.code === 'missing');
  if (missing.length > 0) return missing.map((f) => `${placeWords(f.place)} is missing`);
  return answer.findings
    .filter((f) => f.level === 'gap')
    .map((f) => `${placeWords(f.place)}: ${f.what}`);
}

const placeWords = ({ subject, property, column }: Place): string =>
  [subject, property === undefined ? column : propertyWords(property)].filter(Boolean).join(', ');
