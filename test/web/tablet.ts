import { type ChildProcess, spawn } from 'node:child_process';
import { createHash, X509Certificate } from 'node:crypto';
import { once } from 'node:events';
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { findBinary } from '../../scripts/ensure-debian.ts';
import type { DemoServer } from './demo-server.ts';
import { FLAGS } from './open-browser.ts';

/**
 * A tablet on the workshop's network: a real browser with a disk of its own, which finds the desk
 * under its name and takes the key of its certificate for good, as one does that was told to. It
 * can be killed and started again, as a flat battery does.
 */
export class Tablet {
  #child: ChildProcess | undefined;
  #browser: Browser | undefined;

  private constructor(
    private readonly disk: string,
    private readonly flags: readonly string[],
    readonly origin: string,
  ) {}

  static async start(server: DemoServer): Promise<Tablet> {
    const { origin } = server.lan;
    const disk = await mkdtemp(join(tmpdir(), 'hoistside-tablet-'));
    const flags = [
      `--host-resolver-rules=MAP ${new URL(origin).hostname} 127.0.0.1`,
      `--ignore-certificate-errors-spki-list=${await keyDigest(server.dir)}`,
    ];
    const tablet = new Tablet(disk, flags, origin);
    await tablet.switchOn();
    return tablet;
  }

  /** Starts the browser on what its disk has. */
  async switchOn(): Promise<void> {
    const path = findBinary('chromium');
    if (!path) throw new Error('chromium is missing: npm test installs it.');
    const all = ['--headless=new', '--remote-debugging-port=0', `--user-data-dir=${this.disk}`];
    const child = spawn(path, [...FLAGS, ...all, ...this.flags, 'about:blank'], {
      stdio: ['ignore', 'ignore', 'pipe'],
      detached: true,
    });
    this.#child = child;
    this.#browser = await chromium.connectOverCDP(await endpointOf(child));
  }

  /** A page of the desk's address; the first one is opened by pairing. */
  async open(path: string): Promise<Page> {
    const page = await this.context.newPage();
    await page.setViewportSize({ width: 1440, height: 900 });
    page.setDefaultTimeout(60_000);
    await page.goto(`${this.origin}${path}`);
    return page;
  }

  /** Types the code as a person does; the tablet stays signed in from then on. */
  async pair(code: string, name: string): Promise<Page> {
    const page = await this.open('/pair');
    await page.getByLabel('Code').fill(code);
    await page.getByLabel('Name of this device').fill(name);
    await page.getByRole('button', { name: 'Pair' }).click();
    await page.locator('.study-list a').first().waitFor();
    return page;
  }

  get context(): BrowserContext {
    const context = this.#browser?.contexts()[0];
    if (!context) throw new Error('the tablet is switched off');
    return context;
  }

  /** Ends all of the browser at once, whatever it is doing. */
  async kill(): Promise<void> {
    const child = this.#child;
    if (child?.pid === undefined || child.exitCode !== null || child.signalCode !== null) return;
    const ended = once(child, 'exit');
    // The group of processes that was started above: the browser and its pages.
    process.kill(-child.pid, 'SIGKILL');
    await ended;
    this.#browser = undefined;
  }

  async stop(): Promise<void> {
    await this.kill();
    await rm(this.disk, { recursive: true, force: true, maxRetries: 5, retryDelay: 200 });
  }
}

async function endpointOf(child: ChildProcess): Promise<string> {
  if (!child.stderr) throw new Error('the browser has no output');
  for await (const line of createInterface({ input: child.stderr })) {
    const found = /^DevTools listening on (ws:\S+)/.exec(line)?.[1];
    if (found === undefined) continue;
    child.stderr.resume();
    return found;
  }
  throw new Error('the browser ended before it listened');
}

/** SHA-256 of the public key of the desk's certificate, base64, as Chromium takes it. */
async function keyDigest(library: string): Promise<string> {
  const { publicKey } = new X509Certificate(await readFile(join(library, 'lan/server.pem')));
  const spki = publicKey.export({ type: 'spki', format: 'der' });
  return createHash('sha256').update(spki).digest('base64');
}
