import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { main } from '../../src/cli/index.ts';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** The command line on a library in a folder of its own, in this process. */
export class CommandLine {
  private constructor(readonly dir: string) {}

  static async open(): Promise<CommandLine> {
    return new CommandLine(await mkdtemp(join(tmpdir(), 'hoistside-cli-')));
  }

  get library(): string {
    return join(this.dir, 'library');
  }

  async run(...args: readonly string[]): Promise<Ran> {
    const said = { out: '', err: '' };
    const io = {
      out: (text: string) => {
        said.out += text;
      },
      err: (text: string) => {
        said.err += text;
      },
      progress: () => {},
    };
    const code = await main(['--library', this.library, ...args], io);
    return { code, ...said };
  }

  /** What a command prints with --json. @throws Error with its refusals when it ends badly. */
  async json(...args: readonly string[]): Promise<unknown> {
    const { code, out } = await this.run(...args, '--json');
    if (code !== 0) throw new Error(out);
    return JSON.parse(out);
  }

  close(): Promise<void> {
    return rm(this.dir, { recursive: true });
  }
}
