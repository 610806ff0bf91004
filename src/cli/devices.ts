import { Command } from 'commander';
import { RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { libraryDir } from './open-library.ts';

interface DevicesOptions {
  readonly forget?: string;
  readonly json?: boolean;
}

export const devicesCommand = (io: Io): Command =>
  new Command('devices')
    .description('devices that were paired with the library’s server; let one in no more')
    .option('--forget <id>', 'the device with this id can sign in no more, at once')
    .option('--json', 'print one JSON object')
    .action(async ({ forget, json }: DevicesOptions, command: Command) => {
      // Loaded here so that other commands start without it.
      const { lanFolder, PairedDevices } = await import('../server/index.ts');
      const paired = new PairedDevices(lanFolder(libraryDir(command)));
      if (forget !== undefined && !(await paired.forget(forget))) throw noDevice(forget);
      const devices = await paired.list();
      const lines = devices.map((d) => `${d.paired.slice(0, 16)}  ${d.id}  ${d.name}\n`);
      const none = 'No device is paired. Pair one: hoistside serve --lan\n';
      io.out(json ? `${JSON.stringify({ devices })}\n` : lines.join('') || none);
    });

const noDevice = (id: string): RefusalError =>
  new RefusalError({
    code: 'not-found',
    place: { column: 'forget' },
    value: id,
    why: 'no device of this id is paired',
    next: 'See: hoistside devices.',
  });
