import { withoutPlace } from '../capture/index.ts';
import {
  type Answer,
  hoistSheets,
  loadAll,
  measureNext,
  type Questions,
  type Run,
  type StudyAnswers,
} from '../engine/index.ts';
import {
  type AnsweredClaim,
  type MapMark,
  mapDrawing,
  type ReportModel,
  type ReportPhoto,
  renderPdf,
  reportModel,
} from '../report/index.ts';
import type { Photo, StudyView } from '../study/index.ts';
import { answersOf } from './ask.ts';
import type { Library } from './library.ts';
import { samplesInDoubt } from './sample.ts';

/** Photographs printed at most; the rest is counted in the record. */
const PHOTOS_PRINTED = 12;
/** Readings to take next that are printed, of each sort. */
const NEXT_PRINTED = 8;

/** What a study's report says, from all its answers. `date` is the ISO 8601 date of issue. */
export async function studyReport(
  library: Library,
  view: StudyView,
  date: string,
  run?: Run,
): Promise<ReportModel> {
  const [questions, answers] = [await loadAll(), await answersOf(view, run)];
  return reportModel({
    view,
    rates: view.rates(),
    date,
    answered: answers.answers.flatMap((answer) => answered(answer, questions, view)),
    notAnswered: answers.refused.map(({ question, why }) => ({ question, subject: '', why })),
    claims: answers.claims.map((c) => claimOf(c, view, questions)),
    hoist: hoistSheets(view, questions),
    next: measureNext(view, questions, { limit: NEXT_PRINTED }),
    map: mapDrawing(view, marksOf(answers)),
    photos: await photosOf(library, view.photos().slice(0, PHOTOS_PRINTED)),
  });
}

/** The report as a tagged PDF. */
export const reportPdf = async (
  library: Library,
  view: StudyView,
  date: string,
): Promise<Uint8Array> => renderPdf(await studyReport(library, view, date));

function answered(answer: Answer, questions: Questions, view: StudyView) {
  const question = questions.get(answer.question);
  const root = view.root();
  const whole = root && answer.basis.subject === `${root.label} ${root.name}`.trim();
  if (!question) return [];
  const sampled = samplesInDoubt(answer, question, questions, view);
  return [{ question, subject: whole ? '' : (answer.basis.subject ?? ''), answer, sampled }];
}

function claimOf(
  state: StudyAnswers['claims'][number],
  view: StudyView,
  questions: Questions,
): AnsweredClaim {
  const { claim, tie, out, decision, lacks } = state;
  const question = tie && questions.get(tie.question);
  return {
    claim,
    about: claim.about.map((id) => view.node(id)?.label ?? id),
    ...(tie ? { tie } : {}),
    ...(question ? { question } : {}),
    ...(out ? { out } : {}),
    ...(decision ? { decision } : {}),
    ...(lacks.length > 0 ? { why: lacks.join('; ') } : {}),
  };
}

/** Centres of gravity to mark on the drawing: from the scales, and from the parts. */
function marksOf(answers: StudyAnswers): MapMark[] {
  const out = (question: string, name: string) =>
    answers.answers.find((a) => a.question === question)?.outs[name]?.x;
  const mark = (
    words: string,
    sign: MapMark['sign'],
    x?: number,
    y?: number,
    z?: number,
  ): MapMark[] =>
    x === undefined || y === undefined
      ? []
      : [{ words, sign, x, y, ...(z === undefined ? {} : { z }) }];
  return [
    ...mark(
      'by the scales',
      'circle',
      out('cg-from-corners', 'x'),
      out('cg-from-corners', 'y'),
      out('cg-height-axle-lift', 'height'),
    ),
    ...mark(
      'from the parts',
      'square',
      out('mass-roll-up', 'x'),
      out('mass-roll-up', 'y'),
      out('mass-roll-up', 'z'),
    ),
  ];
}

async function photosOf(library: Library, photos: readonly Photo[]): Promise<ReportPhoto[]> {
  return Promise.all(
    photos.map(async ({ blob, caption, mediaType }) => {
      const chunks: Uint8Array[] = [];
      for await (const chunk of library.store.getBlob(blob)) chunks.push(chunk);
      return { caption, mediaType, bytes: withoutPlace(new Uint8Array(Buffer.concat(chunks))) };
    }),
  );
}
