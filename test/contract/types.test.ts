import { expect, it } from 'vitest';
import type { z } from 'zod';
import type { Overrides, Preview } from '../../src/capture/index.ts';
import type {
  Answer,
  Figure,
  PlainQuestion,
  StudyAnswers,
  WrittenInputs,
} from '../../src/engine/index.ts';
import type { Value } from '../../src/quantity/index.ts';
import type { arrived, change, entry, finding, refusal, value } from '../../src/schema/index.ts';
import type * as contract from '../../src/server/contract.ts';
import type { answer } from '../../src/server/schemas/answers.ts';
import type { figure } from '../../src/server/schemas/figures.ts';
import type { overrides, preview } from '../../src/server/schemas/imports.ts';
import type { question, writtenInputs } from '../../src/server/schemas/questions.ts';
import type { Ack, Arrived, StudyHead } from '../../src/store/index.ts';
import type { Change, Entry, Finding, Refusal } from '../../src/study/index.ts';

/** True only where both are one type, down to what may be left out. */
type Same<A, B> =
  (<T>() => T extends A ? 1 : 2) extends <T>() => T extends B ? 1 : 2 ? true : false;
/** Written out, so that an Omit or an intersection is compared by what it holds. */
type Plain<T> = contract.Frozen<T>;
type Of<S extends z.ZodType> = contract.Frozen<z.infer<S>>;

/** Fails to compile where a schema and the type it stands for have come apart. */
const SAME: readonly true[] = [
  true satisfies Same<Of<typeof value>, Plain<Value>>,
  true satisfies Same<Of<typeof entry>, Plain<Entry>>,
  true satisfies Same<Of<typeof change>, Plain<Change>>,
  true satisfies Same<Of<typeof arrived>, Plain<Arrived>>,
  true satisfies Same<Of<typeof contract.studyHead>, Plain<StudyHead>>,
  true satisfies Same<Of<typeof contract.ackAnswer>, Plain<Ack>>,
  true satisfies Same<Of<typeof finding>, Plain<Finding>>,
  true satisfies Same<Of<typeof refusal>, Plain<Refusal>>,
  true satisfies Same<Of<typeof figure>, Plain<Figure>>,
  true satisfies Same<Of<typeof answer>, Plain<Answer>>,
  true satisfies Same<contract.StudyAnswersAnswer, Plain<StudyAnswers>>,
  true satisfies Same<Of<typeof question>, Plain<PlainQuestion>>,
  true satisfies Same<Of<typeof overrides>, Plain<Overrides>>,
  true satisfies Same<Of<typeof preview>, Plain<Preview>>,
  true satisfies Same<Of<typeof writtenInputs>, Plain<WrittenInputs>>,
];

it('schemas are of the types they stand for, which the compiler checks', () => {
  expect(SAME).not.toContain(false);
});
