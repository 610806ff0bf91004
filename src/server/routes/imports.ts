import { fileToImport, importTableInto, type Library, previewTableInto } from '../../app/index.ts';
import { onDisk } from '../body-on-disk.ts';
import {
  type ImportAnswer,
  type ImportQuery,
  importAnswer,
  importQuery,
  studyPath,
} from '../contract.ts';
import { handOf } from '../door.ts';
import { takeRawBodies } from '../raw-body.ts';
import { type AddRoutes, FAILURES, rawBody } from './route.ts';

/** Held on disk while it is checked and read; larger tables come in by the command line. */
const TABLE_LIMIT = 512 * 2 ** 20;

export const addImports: AddRoutes = (scope, library) => {
  takeRawBodies(scope);
  scope.post(
    '/studies/:study/import',
    {
      schema: {
        summary: 'Previews a table, or imports it, all or nothing',
        consumes: ['application/octet-stream'],
        params: studyPath,
        querystring: importQuery,
        body: rawBody,
        response: { 200: importAnswer, ...FAILURES },
      },
    },
    async (request) => {
      const { study } = await library.findStudy(request.params.study);
      const { file } = request.query;
      return onDisk(request, TABLE_LIMIT, file, (path) =>
        importFrom(library, study, path, request.query, request.author),
      );
    },
  );
};

async function importFrom(
  library: Library,
  study: string,
  path: string,
  query: ImportQuery,
  author: string,
): Promise<ImportAnswer> {
  const { form, file, dry, by = author, overrides, sheet } = query;
  const choice = {
    ...(sheet === undefined ? {} : { sheet }),
    ...(overrides?.decimal === undefined ? {} : { decimal: overrides.decimal }),
  };
  const request = {
    ...(await fileToImport(path, choice, file)),
    ...{ form, by, hand: handOf(author, by) },
    ...(overrides === undefined ? {} : { overrides }),
  };
  if (dry === '1') return { preview: await previewTableInto(library, study, request) };
  const { preview, rows, changes } = await importTableInto(library, study, request);
  return { preview, imported: { rows, changes } };
}
