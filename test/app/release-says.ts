import { answersOf, type Library } from '../../src/app/index.ts';
import type { PartRow } from '../../src/store/index.ts';
import type { Id } from '../../src/study/index.ts';

/** What a release made of a study, by which a later one is told to read it the same. */
export interface ReleaseSays {
  readonly study: Id;
  readonly revision: string;
  readonly findings: readonly string[];
  readonly parts: readonly PartRow[];
  readonly answers: readonly {
    readonly question: string;
    readonly version: number;
    readonly subject: string;
    readonly outs: Readonly<Record<string, readonly [x: number, u: number | 'incomplete']>>;
  }[];
}

export async function releaseSays(library: Library, study: Id): Promise<ReleaseSays> {
  const view = await library.view(study);
  const { answers } = await answersOf(view);
  return {
    ...{ study, revision: view.revision, findings: view.findings.map((f) => f.code) },
    parts: await library.store.find({ study, limit: 1000 }),
    answers: answers.map(({ question, version, basis, outs }) => ({
      ...{ question, version, subject: basis.subject ?? '' },
      outs: Object.fromEntries(Object.values(outs).map((o) => [o.name, [o.x, o.u] as const])),
    })),
  };
}
