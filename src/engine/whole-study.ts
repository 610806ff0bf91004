import type { Claim, Finding, Id, StudyView, Tie } from '../study/index.ts';
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
  readonly claims: readonly ClaimState[];
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
  const answers = all.flatMap((question, i) => {
    run?.tick(i / all.length);
    const from = { view, ...(rates === undefined ? {} : { rates }) };
    return subjectsFor(question, questions, view).map((subject) =>
      askStudy(question, questions, { ...from, subject }),
    );
  });
  run?.tick(1);
  return { answers, claims: claimStates(view, questions) };
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
  if (!view.node(tie.subject))
    return { claim, tie, state: 'open', lacks: ['its subject is not in the study'] };
  const answer = askStudy(question, questions, { view, subject: tie.subject });
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

function openClaim(claim: Claim, tie: Tie, answer: Answer, out: Out | undefined): ClaimState {
  const lacks = answer.findings.filter((f) => f.level === 'gap').map(lackText);
  return {
    claim,
    tie,
    state: 'open',
    answer,
    lacks: lacks.length > 0 ? lacks : [`${tie.output} could not be worked out`],
    ...(out ? { out } : {}),
  };
}

const lackText = (f: Finding): string =>
  [f.place.subject, f.place.property ?? f.place.column, f.what].filter(Boolean).join(': ');
