import { type AskStudy, boundInStudy } from '../ask.ts';
import { bindWritten } from '../bind/bind-written.ts';
import type { Question, WrittenInputs } from '../method.ts';
import type { Questions } from '../registry.ts';
import { type SampleRun, sampleBound } from './monte-carlo.ts';
import type { SampleOptions } from './sampled.ts';

/** A Monte Carlo run of a question asked of a study; it is void once the study has gone on. */
export const sampleStudy = (
  question: Question,
  questions: Questions,
  from: AskStudy,
  options: SampleOptions = {},
): SampleRun => sampleBound(question, boundInStudy(question, questions, from), options);

/** A Monte Carlo run of a question asked of values as people write them. */
export const sampleWritten = (
  question: Question,
  written: WrittenInputs,
  options: SampleOptions = {},
): SampleRun => sampleBound(question, bindWritten(question, written), options);
