import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { withLibrary } from './open-library.ts';

interface ServeOptions {
  readonly port: string;
}

const WEB_DIR = fileURLToPath(new URL('../../web/dist/', import.meta.url));

export const serveCommand = (io: Io): Command =>
  new Command('serve')
    .description('serve the library to a browser on this machine; stops on Ctrl-C')
    .option('--port <n>', 'port on 127.0.0.1; a free one with 0', '4270')
    .addHelpText(
      'after',
      '\nThe printed address carries a token: who has it can read and change the library.\n',
    )
    .action(async (options: ServeOptions, command: Command) => {
      const port = portOf(options.port);
      await withLibrary(command, async (library) => {
        // Loaded here so that other commands start without it.
        const { startServer } = await import('../server/index.ts');
        const server = await startServer({ library, webDir: WEB_DIR, port });
        io.out(`Open ${server.address}\nLibrary: ${library.dir}. Stop with Ctrl-C.\n`);
        await stopped();
        await server.close();
      });
    });

const stopped = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });

function portOf(text: string): number {
  const port = Number(text);
  if (Number.isInteger(port) && port >= 0 && port < 65536) return port;
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'port' },
    value: text,
    why: 'this is no port',
    next: 'Give a whole number from 0 to 65535.',
  });
}
