import type { AddressInfo } from 'node:net';
import type { FastifyInstance } from 'fastify';
import type { Library } from '../app/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Log } from './answer-errors.ts';
import { freshToken } from './guard.ts';
import { makeApp } from './make-app.ts';

export interface ServerOptions {
  readonly library: Library;
  /** Folder of the built pages. */
  readonly webDir: string;
  /** Any free one when absent. */
  readonly port?: number;
  /** Takes the lines about defects; standard error when absent. */
  readonly log?: Log;
}

export interface RunningServer {
  /** To open in a browser; the token is in the fragment, which no server or log sees. */
  readonly address: string;
  readonly port: number;
  readonly token: string;
  /** Ends when what was under way has been answered; the library stays open. */
  close(): Promise<void>;
}

/**
 * Serves a library to this machine and nobody else.
 * @throws RefusalError `busy` when the port is taken, `not-allowed` when it may not be used.
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { library, webDir, port: wanted = 0, log = console.error } = options;
  const token = freshToken();
  const app = await makeApp({ library, webDir, token, log });
  await listen(app, wanted);
  const { port } = app.server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/#token=${token}`,
    port,
    token,
    close: async () => void (await app.close()),
  };
}

async function listen(app: FastifyInstance, port: number): Promise<void> {
  try {
    await app.listen({ host: '127.0.0.1', port });
  } catch (error) {
    await app.close();
    throw listenRefusal(error, port) ?? error;
  }
}

function listenRefusal(error: unknown, port: number): RefusalError | undefined {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  const place = { column: 'port' };
  if (code === 'EADDRINUSE')
    return new RefusalError({
      code: 'busy',
      place,
      value: String(port),
      why: `port ${port} of this machine is taken by another program`,
      next: 'Name another port, or none to have a free one chosen; a server that runs already can be used as it is.',
    });
  if (code === 'EACCES' || code === 'ERR_SOCKET_BAD_PORT')
    return new RefusalError({
      code: 'not-allowed',
      place,
      value: String(port),
      why: `port ${port} can not be used`,
      next: 'Name a port from 1024 to 65535, or none to have a free one chosen.',
    });
  return undefined;
}
