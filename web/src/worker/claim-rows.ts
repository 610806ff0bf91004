import type { ClaimState, Decision, Questions } from '../../../src/engine/index.ts';
import { kindDef, parseQuantity, type Way } from '../../../src/quantity/index.ts';
import {
  type Claim,
  type Entry,
  type Id,
  RefusalError,
  type StudyView,
  type Tie,
} from '../../../src/study/index.ts';
import { type AnswerSheet, answerSheet, type SheetOut } from './answer-sheet.ts';
import { questionOf } from './answers-of.ts';
import { nodeWords } from './node-words.ts';
import { type TieHint, tieHint } from './walk-rows.ts';

/** A claim as pages show it. */
export interface ClaimRow {
  readonly claim: Claim;
  readonly about: readonly { readonly id: Id; readonly words: string }[];
  readonly tie?: Tie & {
    readonly title: string;
    readonly subjectWords: string;
    readonly outputWords: string;
  };
  readonly state: ClaimState['state'];
  readonly out?: SheetOut;
  readonly decision?: Decision;
  /** What else the same answer decides. */
  readonly beside: readonly SheetOut[];
  readonly lacks: readonly string[];
  /** Question that may answer a claim of its kind. */
  readonly hint?: TieHint;
}

export function claimRow(state: ClaimState, view: StudyView, questions: Questions): ClaimRow {
  const { claim, tie, decision, lacks } = state;
  const hint = tie ? undefined : tieHint(view, claim);
  const outs = sheetOf(state, questions)?.outs ?? [];
  const out = outs.find((o) => o.name === tie?.output);
  return {
    claim,
    about: claim.about.map((id) => ({ id, words: wordsOf(view, id) })),
    ...(tie ? { tie: tieWords(tie, view, questions) } : {}),
    state: state.state,
    ...(out ? { out } : {}),
    ...(decision ? { decision } : {}),
    beside: outs.filter((o) => o.decision !== undefined && o !== out),
    lacks,
    ...(hint ? { hint } : {}),
  };
}

function sheetOf({ answer, tie }: ClaimState, questions: Questions): AnswerSheet | undefined {
  const question = tie && questions.get(tie.question);
  return answer && question ? answerSheet(question, answer, tie.subject) : undefined;
}

const tieWords = (
  tie: Tie,
  view: StudyView,
  questions: Questions,
): NonNullable<ClaimRow['tie']> => {
  const question = questions.get(tie.question);
  const output = question?.body.outputs.find((o) => o.name === tie.output);
  return {
    ...tie,
    title: question?.title ?? tie.question,
    subjectWords: wordsOf(view, tie.subject),
    outputWords: output?.meaning ?? tie.output,
  };
};

function wordsOf(view: StudyView, id: Id): string {
  const node = view.node(id);
  return node ? nodeWords(node) : id;
}

/** A claim as typed at the vehicle. */
export interface ClaimTyped {
  readonly words: string;
  readonly how: Way;
  readonly by: string;
  /** Id of the node it is about; the vehicle when empty. */
  readonly about: Id;
}

export function claimEntries(
  view: StudyView,
  typed: ClaimTyped,
  id: Id,
  heard: string,
): { words: string; entries: Entry[] } {
  const words = typed.words.trim();
  if (words === '')
    throw new RefusalError({
      code: 'bad-value',
      place: { column: 'claim' },
      value: '',
      why: 'nothing is said',
      next: 'Write what was said, word for word.',
    });
  const about = typed.about === '' ? (view.root()?.id ?? '') : typed.about;
  const claim: Claim = {
    id,
    words,
    how: typed.how,
    by: typed.by,
    heard,
    about: about === '' ? [] : [about],
    evidence: [],
  };
  return { words: `claim: ${words}`, entries: [{ v: 1, e: 'claim.put', claim }] };
}

/** What would make a claim true, as typed. */
export interface TieTyped {
  readonly claim: Id;
  readonly question: string;
  readonly subject: Id;
  readonly output: string;
  readonly is: 'at least' | 'at most';
  readonly value: string;
}

/** @throws RefusalError when the question, the output or the value can not be used. */
export function tieEntries(
  view: StudyView,
  questions: Questions,
  typed: TieTyped,
  id: Id,
): { words: string; entries: Entry[] } {
  const question = questionOf(questions, typed.question);
  const output = question.body.outputs.find((o) => o.name === typed.output);
  if (!output)
    throw new RefusalError({
      code: 'not-found',
      place: { column: 'output' },
      value: typed.output,
      why: `"${question.title}" has no such output`,
      next: `Choose one of: ${question.body.outputs.map((o) => o.name).join(', ')}.`,
    });
  const unit = output.unit === '' ? kindDef(output.kind).show[0] : output.unit;
  const read = parseQuantity(typed.value, output.kind, { unit });
  if (!read.ok)
    throw new RefusalError({
      code: 'bad-value',
      place: { column: typed.is },
      value: typed.value,
      why: read.why,
      next: read.next,
    });
  const tie: Tie = {
    id,
    claim: typed.claim,
    question: typed.question,
    subject: typed.subject,
    output: typed.output,
    test: { is: typed.is, value: read.value.x, asWritten: typed.value.trim() },
  };
  const claim = view.claims().find((c) => c.id === typed.claim);
  return {
    words: `tie claim: ${claim?.words ?? typed.claim}`,
    entries: [
      ...view.ties(typed.claim).map((t): Entry => ({ v: 1, e: 'claim.untie', id: t.id })),
      { v: 1, e: 'claim.tie', tie },
    ],
  };
}

/** @throws RefusalError without a reason. */
export function withdrawEntries(view: StudyView, id: Id, why: string) {
  if (why.trim() === '')
    throw new RefusalError({
      code: 'bad-value',
      place: { column: 'reason' },
      value: '',
      why: 'a claim is withdrawn without a reason',
      next: 'Say in a few words why it does not stand.',
    });
  const claim = view.claims().find((c) => c.id === id);
  const entries: Entry[] = [{ v: 1, e: 'claim.withdraw', id, why: why.trim() }];
  return { words: `withdraw claim: ${claim?.words ?? id}`, entries };
}
