import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import type { Library } from '../app/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Log } from './answer-errors.ts';
import type { Door } from './door.ts';
import { freshToken, localDoor } from './guard.ts';
import { WhoIsHere } from './here.ts';
import { ownNames } from './lan/addresses.ts';
import { certificateFor } from './lan/certificate.ts';
import type { Lan } from './lan/lan.ts';
import { addLanPages } from './lan/lan-pages.ts';
import { type PairedDevice, PairedDevices } from './lan/paired-devices.ts';
import { PairingCodes } from './lan/pairing-code.ts';
import { makeApp } from './make-app.ts';
import { addPair, addPairing } from './routes/pairing.ts';

export interface LanOptions {
  /** Any free one when absent. */
  readonly port?: number;
  /** Told of each device that was paired. */
  readonly paired?: (device: PairedDevice) => void;
}

export interface ServerOptions {
  readonly library: Library;
  /** Folder of the built pages. */
  readonly webDir: string;
  /** Any free one when absent. */
  readonly port?: number;
  /** Serves the network too, to devices that were paired. */
  readonly lan?: LanOptions;
  /** Takes the lines about defects; standard error when absent. */
  readonly log?: Log;
}

export interface RunningServer {
  /** To open in a browser; the token is in the fragment, which no server or log sees. */
  readonly address: string;
  readonly port: number;
  readonly token: string;
  readonly lan?: Lan & { readonly port: number };
  /** Ends when what was under way has been answered; the library stays open. */
  close(): Promise<void>;
}

/**
 * Serves a library to this machine, and to paired devices on the network when asked to.
 * @throws RefusalError `busy` when a port is taken, `not-allowed` when it may not be used.
 */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { library, webDir, port: wanted = 0, log = console.error } = options;
  const here = new WhoIsHere();
  const lan = options.lan && (await startLan(options, options.lan, { log, here }));
  const token = freshToken();
  const door = localDoor(token);
  const app = await makeApp({
    ...{ library, webDir, door, log, here },
    more: (api) => addPairing(api, lan),
  });
  try {
    await listen(app, '127.0.0.1', wanted);
  } catch (error) {
    await lan?.close();
    throw error;
  }
  const port = portOf(app);
  return {
    ...{ address: `http://127.0.0.1:${port}/#token=${token}`, port, token },
    ...(lan ? { lan } : {}),
    close: async () => {
      await lan?.close();
      await app.close();
    },
  };
}

/** On every address of this machine, encrypted; keys and paired devices lie in the library's folder. */
async function startLan(
  { library, webDir }: ServerOptions,
  { port: wanted = 0, paired = () => {} }: LanOptions,
  shared: { readonly log: Log; readonly here: WhoIsHere },
) {
  const folder = lanFolder(library.dir);
  const certificate = await certificateFor(folder, ownNames());
  const devices = new PairedDevices(folder);
  const names = [...certificate.names.addresses, ...certificate.names.names];
  const lan = {
    certificate,
    devices,
    codes: new PairingCodes(),
    paired,
    addresses: [] as string[],
  };
  const door: Door = {
    ...{ scheme: 'https', names, holder: (token) => devices.holder(token) },
    signIn: 'Pair the device: open /pair here and type the code that the desk shows.',
  };
  const app = await makeApp({
    ...{ library, webDir, door, ...shared, tls: certificate.server },
    open: async (api, pages) => {
      await addPair(api, lan);
      addLanPages(pages, certificate);
    },
  });
  await listen(app, '0.0.0.0', wanted);
  const port = portOf(app);
  lan.addresses.push(...names.map((name) => `https://${name}:${port}`));
  return { ...lan, port, close: async () => void (await app.close()) };
}

/** Where a library keeps what its server needs on the network; no backup or bundle has it. */
export const lanFolder = (libraryDir: string): string => join(libraryDir, 'lan');

const portOf = (app: FastifyInstance): number => (app.server.address() as AddressInfo).port;

async function listen(app: FastifyInstance, host: string, port: number): Promise<void> {
  try {
    await app.listen({ host, port });
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
