import type { Answer, Out } from './method.ts';

/** An output of a question that two states of a study answer differently. */
export interface OutDifference {
  readonly question: string;
  readonly title: string;
  /** Absent for a question about the whole study. */
  readonly subject?: string;
  readonly output: string;
  /** Absent where there was no such answer. */
  readonly before?: Out;
  readonly after?: Out;
}

/** Outputs whose value or spread differ, to the last digit, in the order of the answers. */
export function compareAnswers(
  before: readonly Answer[],
  after: readonly Answer[],
): readonly OutDifference[] {
  const [was, is] = [byOutput(before), byOutput(after)];
  return [...new Set([...is.keys(), ...was.keys()])].flatMap((key) => {
    const [then, now] = [was.get(key), is.get(key)];
    const named = now ?? then;
    if (!named || sameOut(then?.out, now?.out)) return [];
    const { question, title, basis } = named.answer;
    return [
      {
        ...{ question, title, output: named.out.name },
        ...(basis.subject === undefined ? {} : { subject: basis.subject }),
        ...(then ? { before: then.out } : {}),
        ...(now ? { after: now.out } : {}),
      },
    ];
  });
}

interface Named {
  readonly answer: Answer;
  readonly out: Out;
}

const byOutput = (answers: readonly Answer[]): ReadonlyMap<string, Named> =>
  new Map(
    answers.flatMap((answer) =>
      Object.values(answer.outs).map((out) => [
        `${answer.question}\n${answer.basis.subject ?? ''}\n${out.name}`,
        { answer, out },
      ]),
    ),
  );

const sameOut = (a: Out | undefined, b: Out | undefined): boolean =>
  a?.x === b?.x && a?.u === b?.u && a?.knownU === b?.knownU;
