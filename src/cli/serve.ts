import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { type Library, ScheduledBackup } from '../app/index.ts';
import type { RunningServer } from '../server/index.ts';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { withLibrary } from './open-library.ts';
import { spanMs } from './span.ts';

interface ServeOptions {
  readonly port: string;
  readonly backupTo?: string;
  readonly backupEvery: string;
  readonly backupKeep: string;
  readonly lan?: boolean;
  readonly lanPort: string;
}

const WEB_DIR = fileURLToPath(new URL('../../web/dist/', import.meta.url));

export const serveCommand = (io: Io): Command =>
  new Command('serve')
    .description('serve the library to a browser on this machine; stops on Ctrl-C')
    .option('--port <n>', 'port on 127.0.0.1; a free one with 0', '4270')
    .option('--lan', 'serve the network too, encrypted, to devices that are paired by a code')
    .option('--lan-port <n>', 'port on the network; a free one with 0', '4271')
    .option('--backup-to <folder>', 'back the library up into this folder while it is served')
    .option('--backup-every <span>', 'how often, e.g. 24h, 90min, 7d', '24h')
    .option('--backup-keep <n>', 'how many backups are kept there', '30')
    .addHelpText(
      'after',
      '\nThe printed address carries a token: who has it can read and change the library.\nTablets: serve --lan, then open the address it prints on the tablet, /trust first, then /pair.\n',
    )
    .action(async (options: ServeOptions, command: Command) => {
      const port = wholeNumber(options.port, 'port', 0, 65_535);
      const serve = async (library: Library): Promise<void> => {
        const backups = scheduled(io, library, options);
        // Loaded here so that other commands start without it.
        const { startServer } = await import('../server/index.ts');
        const lan = lanOptions(io, options);
        const server = await startServer({ library, webDir: WEB_DIR, port, ...lan });
        io.out(`Open ${server.address}\nLibrary: ${library.dir}. Stop with Ctrl-C.\n`);
        if (server.lan) io.out(lanText(server.lan));
        if (library.store.readOnly) io.err(`Read only: ${library.store.readOnly}.\n`);
        await stopped();
        await server.close();
        await backups?.stop();
      };
      await withLibrary(command, serve, true);
    });

/** The first code is printed at the start; pages at the desk make further ones. */
function lanOptions(io: Io, { lan, lanPort }: ServeOptions) {
  if (!lan) return {};
  const port = wholeNumber(lanPort, 'lan-port', 0, 65_535);
  const paired = ({ name }: { readonly name: string }) => io.err(`paired: ${name}\n`);
  return { lan: { port, paired } };
}

function lanText({ addresses, certificate, codes }: NonNullable<RunningServer['lan']>): string {
  const { code, expires } = codes.issue();
  const until = new Date(expires).toTimeString().slice(0, 5);
  return [
    'On the network, to paired devices only:',
    ...addresses.map((address) => `  ${address}`),
    `First on a tablet: open /trust there, and compare this fingerprint: ${certificate.fingerprint}`,
    `Then /pair, with the code ${code}, good once until ${until}.`,
    '',
  ].join('\n');
}

function scheduled(
  io: Io,
  library: Library,
  { backupTo: to, backupEvery, backupKeep }: ServeOptions,
): ScheduledBackup | undefined {
  const everyMs = spanMs(backupEvery, 'backup-every');
  const keep = wholeNumber(backupKeep, 'backup-keep', 1, 10_000);
  if (to === undefined) return undefined;
  const words = (error: unknown) => (error instanceof Error ? error.message : String(error));
  return new ScheduledBackup({
    ...{ library, to, everyMs, keep },
    done: ({ folder, damaged }) => {
      io.err(`backup: ${folder}\n`);
      if (damaged.length > 0)
        io.err(`${damaged.length} damaged blobs are not in it; see: hoistside check-library\n`);
    },
    failed: (error) => io.err(`NO BACKUP WAS MADE: ${words(error)}\n`),
  });
}

const stopped = (): Promise<void> =>
  new Promise((resolve) => {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, () => resolve());
  });

function wholeNumber(text: string, option: string, least: number, most: number): number {
  const n = Number(text);
  if (text.trim() !== '' && Number.isInteger(n) && n >= least && n <= most) return n;
  throw new RefusalError({
    code: 'bad-call',
    place: { column: option },
    value: text,
    why: `this is no ${option}`,
    next: `Give a whole number from ${least} to ${most}.`,
  });
}
