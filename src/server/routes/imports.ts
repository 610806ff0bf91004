import { createReadStream, createWriteStream } from 'node:fs';
import { mkdtemp, rm, stat } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pipeline } from 'node:stream/promises';
import type { FastifyRequest } from 'fastify';
import { importTableInto, type Library, previewTableInto } from '../../app/index.ts';
import {
  type ImportAnswer,
  type ImportQuery,
  importAnswer,
  importQuery,
  studyPath,
} from '../contract.ts';
import { bodyOf, takeRawBodies } from '../raw-body.ts';
import { type AddRoutes, AUTHOR, FAILURES, rawBody } from './route.ts';

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
      return onDisk(request, file, (path) => importFrom(library, study, path, request.query));
    },
  );
};

async function importFrom(
  library: Library,
  study: string,
  path: string,
  query: ImportQuery,
): Promise<ImportAnswer> {
  const { form, file, dry, by = AUTHOR, overrides } = query;
  const request = {
    ...{ form, file, by },
    open: () => createReadStream(path),
    size: (await stat(path)).size,
    ...(overrides === undefined ? {} : { overrides }),
  };
  if (dry === '1') return { preview: await previewTableInto(library, study, request) };
  const { preview, rows, changes } = await importTableInto(library, study, request);
  return { preview, imported: { rows, changes } };
}

/** Puts the body where it can be read several times, and takes it away afterwards. */
async function onDisk<T>(
  request: FastifyRequest,
  file: string,
  work: (path: string) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'hoistside-import-'));
  try {
    const path = join(folder, 'table');
    await pipeline(bodyOf(request, TABLE_LIMIT, { file }), createWriteStream(path));
    return await work(path);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
