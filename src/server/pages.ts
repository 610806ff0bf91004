import { existsSync } from 'node:fs';
import { join } from 'node:path';
import staticFiles from '@fastify/static';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { noSuchRoute } from './answer-errors.ts';

/**
 * Serves the built pages of `webDir` at `/`. Addresses that are no file are pages of the
 * application; where nothing was built, one page says what to do.
 */
export async function servePages(app: FastifyInstance, webDir: string): Promise<void> {
  const isBuilt = existsSync(join(webDir, 'index.html'));
  if (isBuilt)
    await app.register(staticFiles, {
      root: webDir,
      wildcard: true,
      setHeaders: (reply, path) => {
        reply.setHeader('cache-control', isNamedByContent(path) ? FOREVER : 'no-cache');
      },
      cacheControl: false,
    });
  app.setNotFoundHandler((request, reply) => {
    if (!wantsPage(request)) throw noSuchRoute(request);
    return isBuilt ? reply.sendFile('index.html') : notBuilt(reply);
  });
}

const FOREVER = 'public, max-age=31536000, immutable';

/** The build names what it puts under assets/ by a digest of its content. */
const isNamedByContent = (path: string): boolean => /[\\/]assets[\\/]/.test(path);

/** A browser that opens an address, not a script that misses a file. */
const wantsPage = (request: FastifyRequest): boolean =>
  (request.method === 'GET' || request.method === 'HEAD') &&
  (request.headers.accept ?? '').includes('text/html');

const notBuilt = (reply: FastifyReply): FastifyReply =>
  reply.code(503).type('text/html; charset=utf-8').send(NOT_BUILT);

const NOT_BUILT = `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<title>Hoistside: pages not built</title>
<h1>The pages are not built yet</h1>
<p>Stop the server, run <code>npm run build:web</code> in the folder of the program, and start it again.</p>
<p>The record is not touched by this, and the interface under <code>/api</code> answers meanwhile.</p>
</html>
`;
