import type { RequestListener, Server } from 'node:http';
import { createServer } from 'node:https';
import helmet from '@fastify/helmet';
import fastify, { type FastifyInstance } from 'fastify';
import type { Library } from '../app/index.ts';
import { answerErrors, type Log, noSuchRoute } from './answer-errors.ts';
import { checkSchema } from './check-schema.ts';
import type { Door } from './door.ts';
import { checkCaller, requireToken } from './guard.ts';
import type { WhoIsHere } from './here.ts';
import { addDocument, documentRoutes } from './openapi.ts';
import { servePages } from './pages.ts';
import { addAbout } from './routes/about.ts';
import { addBlobs } from './routes/blobs.ts';
import { addBundles } from './routes/bundles.ts';
import { addChanges } from './routes/changes.ts';
import { addHere } from './routes/here.ts';
import { addImports } from './routes/imports.ts';
import { addQuestions } from './routes/questions.ts';
import { addReport } from './routes/report.ts';
import type { AddRoutes, Scope } from './routes/route.ts';
import { addStudies } from './routes/studies.ts';

export interface AppOptions {
  readonly library: Library;
  /** Folder of the built pages. */
  readonly webDir: string;
  readonly door: Door;
  readonly log: Log;
  /** One for all doors. */
  readonly here: WhoIsHere;
  /** Certificate and key of a server on the network. */
  readonly tls?: { readonly cert: string; readonly key: string };
  /** Routes of this door beside those that every door has. */
  readonly more?: (api: Scope) => void;
  /** Adds routes below /api, and pages, for which nobody needs to sign in. */
  readonly open?: (api: Scope, pages: FastifyInstance) => Promise<void>;
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
  door,
  log,
  here,
  tls,
  more,
  open,
}: AppOptions): Promise<FastifyInstance> {
  const onError = answerErrors(log);
  const app = fastify({
    ...{ frameworkErrors: onError, bodyLimit: 2 ** 20 },
    ...(tls ? { serverFactory: overTls(tls) } : {}),
  });
  app.decorateRequest('author', '');
  app.setErrorHandler(onError);
  app.setValidatorCompiler(checkSchema);
  // What is stored goes out as it is, whatever version wrote it: tests hold answers to their
  // schemas, no answer is held back for them.
  app.setSerializerCompiler(() => JSON.stringify);
  app.addHook('onRequest', async (request) => checkCaller(request, door));
  await app.register(helmet, HEADERS);
  await documentRoutes(app);
  await app.register(async (api) => open?.(api as Scope, app), { prefix: '/api' });
  await app.register(
    async (api) => {
      await requireToken(api, door);
      api.addHook(
        'onRequest',
        async (_request, reply) => void reply.header('cache-control', 'no-store'),
      );
      api.setNotFoundHandler((request) => {
        throw noSuchRoute(request);
      });
      for (const add of ROUTES) await api.register(async (scope) => add(scope as Scope, library));
      addHere(api as Scope, here);
      more?.(api as Scope);
    },
    { prefix: '/api' },
  );
  await servePages(app, webDir);
  return app;
}

/** Requests and answers are the same over TLS; only the type of the server's own class differs. */
const overTls =
  (tls: { readonly cert: string; readonly key: string }) =>
  (handler: RequestListener): Server =>
    createServer(tls, handler) as unknown as Server;

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
      // A film is played from the device it lies on; it is never sent.
      mediaSrc: ["'self'", 'blob:'],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
  },
} as const;
