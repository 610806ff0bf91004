import helmet from '@fastify/helmet';
import fastify, { type FastifyInstance } from 'fastify';
import type { Library } from '../app/index.ts';
import { answerErrors, type Log, noSuchRoute } from './answer-errors.ts';
import { checkSchema } from './check-schema.ts';
import { checkCaller, requireToken } from './guard.ts';
import { addDocument, documentRoutes } from './openapi.ts';
import { servePages } from './pages.ts';
import { addAbout } from './routes/about.ts';
import { addBlobs } from './routes/blobs.ts';
import { addBundles } from './routes/bundles.ts';
import { addChanges } from './routes/changes.ts';
import { addImports } from './routes/imports.ts';
import { addQuestions } from './routes/questions.ts';
import { addReport } from './routes/report.ts';
import type { AddRoutes, Scope } from './routes/route.ts';
import { addStudies } from './routes/studies.ts';

export interface AppOptions {
  readonly library: Library;
  /** Folder of the built pages. */
  readonly webDir: string;
  readonly token: string;
  readonly log: Log;
}

const ROUTES: readonly AddRoutes[] = [
  addAbout,
  addStudies,
  addChanges,
  addQuestions,
  addImports,
  addBlobs,
  addBundles,
  addReport,
  addDocument,
];

/** The whole server, ready to listen. */
export async function makeApp({
  library,
  webDir,
  token,
  log,
}: AppOptions): Promise<FastifyInstance> {
  const onError = answerErrors(log);
  const app = fastify({ frameworkErrors: onError, bodyLimit: 2 ** 20 });
  app.setErrorHandler(onError);
  app.setValidatorCompiler(checkSchema);
  // What is stored goes out as it is, whatever version wrote it: tests hold answers to their
  // schemas, no answer is held back for them.
  app.setSerializerCompiler(() => JSON.stringify);
  app.addHook('onRequest', async (request) => checkCaller(request));
  await app.register(helmet, HEADERS);
  await documentRoutes(app);
  await app.register(
    async (api) => {
      await requireToken(api, token);
      api.addHook(
        'onRequest',
        async (_request, reply) => void reply.header('cache-control', 'no-store'),
      );
      api.setNotFoundHandler((request) => {
        throw noSuchRoute(request);
      });
      for (const add of ROUTES) await api.register(async (scope) => add(scope as Scope, library));
    },
    { prefix: '/api' },
  );
  await servePages(app, webDir);
  return app;
}

/** Scripts, workers and everything else from here only; WebAssembly and pictures from memory too. */
const HEADERS = {
  strictTransportSecurity: false,
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'", "'wasm-unsafe-eval'"],
      workerSrc: ["'self'"],
      imgSrc: ["'self'", 'blob:'],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
  },
} as const;
