import { changesOf, type Id, type StudyView } from '../../../src/study/index.ts';
import { timeOf } from './clock-time.ts';

/** What the foot of each sheet says of the open study. */
export interface StudyHeader {
  readonly study: Id;
  readonly title: string;
  readonly vehicle: string;
  readonly condition: string;
  readonly rates: string;
  readonly currency: string;
  readonly revision: string;
  /** ISO 8601 date of the latest change; empty when there is none. */
  readonly date: string;
  readonly invented: boolean;
  readonly root: Id | undefined;
  readonly parts: number;
  /** Recordings of a walkaround. */
  readonly speeches: number;
}

export function headerOf(view: StudyView): StudyHeader {
  const { title, vehicle, condition, invented } = view.header;
  const book = view.rates();
  const last = changesOf(view).at(-1);
  return {
    study: view.study,
    title,
    vehicle,
    condition: view.condition(condition),
    rates: book?.version ?? '',
    currency: book?.currency ?? '',
    revision: view.revision,
    date: last ? timeOf(last.clock).slice(0, 10) : '',
    invented,
    root: view.root()?.id,
    parts: view.nodes('part').length,
    speeches: view.speeches().length,
  };
}
