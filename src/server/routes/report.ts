import type { FastifyReply } from 'fastify';
import { type Library, reportPdf } from '../../app/index.ts';
import { studyPath } from '../contract.ts';
import { type AddRoutes, bytesAnswer, FAILURES } from './route.ts';

export const addReport: AddRoutes = (scope, library) => {
  scope.get(
    '/studies/:study/report.pdf',
    {
      schema: {
        summary: 'The printed report of a study as it stands',
        params: studyPath,
        response: { 200: bytesAnswer('application/pdf', 'A tagged PDF'), ...FAILURES },
      },
    },
    async ({ params }, reply) => sendReport(library, params.study, reply),
  );
};

async function sendReport(
  library: Library,
  wanted: string,
  reply: FastifyReply,
): Promise<FastifyReply> {
  const { study } = await library.findStudy(wanted);
  const pdf = await reportPdf(library, await library.view(study), today());
  return reply
    .type('application/pdf')
    .header('content-disposition', 'inline; filename="report.pdf"')
    .send(Buffer.from(pdf));
}

/** Date of issue on this machine's calendar, ISO 8601. */
function today(): string {
  const now = new Date();
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
