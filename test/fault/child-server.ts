import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { z } from 'zod';
import { ROOT } from '../../scripts/root.ts';
import { type Answered, type Call, call } from '../contract/http.ts';

const RUN = ['bin/run-ts.js', 'test/fault/serve-child.ts'];
const started = z.strictObject({ pid: z.int(), port: z.int(), token: z.string() });

/** A server in a process of its own, on the library in a folder. */
export class ChildServer {
  readonly #child: ChildProcess;
  readonly #its: z.infer<typeof started>;

  private constructor(child: ChildProcess, its: z.infer<typeof started>) {
    this.#child = child;
    this.#its = its;
  }

  /** `before` is a command that runs the server's process, e.g. one that traces it. */
  static async start(dir: string, before: readonly string[] = []): Promise<ChildServer> {
    const [command = '', ...args] = [...before, process.execPath, ...RUN, dir];
    const child = spawn(command, args, { cwd: ROOT, stdio: ['ignore', 'pipe', 'inherit'] });
    const lines = createInterface({ input: child.stdout });
    const ended = once(child, 'exit').then(([code]) => {
      throw new Error(`the server ended with ${code} before it listened`);
    });
    const [line] = await Promise.race([once(lines, 'line'), ended]);
    ended.catch(() => undefined);
    return new ChildServer(child, started.parse(JSON.parse(line)));
  }

  call(path: string, options: Call = {}): Promise<Answered> {
    const { port, token } = this.#its;
    const authorization = `Bearer ${token}`;
    return call(port, path, { ...options, headers: { authorization, ...options.headers } });
  }

  /** At once, whatever it is doing. The process itself, not the command that may run it. */
  kill(): void {
    if (this.#child.exitCode !== null || this.#child.signalCode !== null) return;
    process.kill(this.#its.pid, 'SIGKILL');
  }

  async ended(): Promise<void> {
    if (this.#child.exitCode === null && this.#child.signalCode === null)
      await once(this.#child, 'exit');
  }
}
