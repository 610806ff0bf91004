import {
  answersOf,
  askOfStudy,
  askValues,
  describeQuestions,
  type Library,
} from '../../app/index.ts';
import { RefusalError } from '../../study/index.ts';
import {
  type AskAnswer,
  type AskPost,
  askAnswer,
  askPost,
  questionsAnswer,
  studyAnswersAnswer,
  studyPath,
} from '../contract.ts';
import { type AddRoutes, FAILURES } from './route.ts';

export const addQuestions: AddRoutes = (scope, library) => {
  scope.get(
    '/questions',
    {
      schema: {
        summary: 'All questions of the registry',
        response: { 200: questionsAnswer, ...FAILURES },
      },
    },
    async () => ({ questions: await describeQuestions() }),
  );
  scope.post(
    '/ask',
    {
      schema: {
        summary: 'Asks a question of written values or of a study',
        body: askPost,
        response: { 200: askAnswer, ...FAILURES },
      },
    },
    ({ body }) => ask(library, body),
  );
  scope.get(
    '/studies/:study/answers',
    {
      schema: {
        summary: 'Every answer and claim of a study as it stands',
        params: studyPath,
        response: { 200: studyAnswersAnswer, ...FAILURES },
      },
    },
    async ({ params }) => {
      const { study } = await library.findStudy(params.study);
      return answersOf(await library.view(study));
    },
  );
};

async function ask(library: Library, post: AskPost): Promise<AskAnswer> {
  const { study: wanted, ...request } = post;
  if (wanted !== undefined) {
    const { study } = await library.findStudy(wanted);
    return { answers: await askOfStudy(await library.view(study), request) };
  }
  const lone = (['subject', 'rates'] as const).find((name) => request[name] !== undefined);
  if (lone) throw withoutStudy(lone, request[lone] ?? '');
  return { answers: [await askValues(request)] };
}

const withoutStudy = (name: string, value: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { column: `body.${name}` },
    value,
    why: `${name} belongs to a study, and no study is named`,
    next: 'Name the study, or leave this out and give all values.',
  });
