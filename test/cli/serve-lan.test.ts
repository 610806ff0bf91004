import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { main } from '../../src/cli/index.ts';
import { callTls } from '../contract/https.ts';
import { CommandLine } from './run.ts';

let line: CommandLine;
beforeAll(async () => {
  line = await CommandLine.open();
});
afterAll(() => line.close());

/** Serves until `use` has ended, then as if Ctrl-C was pressed. */
async function served(use: (printed: string) => Promise<void>): Promise<void> {
  let printed = '';
  const io = {
    out: (text: string) => {
      printed += text;
    },
    err: () => {},
    progress: () => {},
  };
  const args = ['serve', '--lan', '--port', '0', '--lan-port', '0'];
  const ended = main(['--library', line.library, ...args], io);
  while (!printed.includes('with the code'))
    await new Promise((resolve) => setTimeout(resolve, 10));
  try {
    await use(printed);
  } finally {
    process.emit('SIGINT');
    expect(await ended).toBe(0);
  }
}

test('a tablet is paired by what the terminal prints, listed, and forgotten', async () => {
  await served(async (printed) => {
    const [, name = '', port = ''] = /https:\/\/([\w.-]+\.local):(\d+)/.exec(printed) ?? [];
    const code = /with the code (\d{4} \d{4})/.exec(printed)?.[1];
    const ca = await readFile(join(line.library, 'lan', 'authority.pem'), 'utf8');
    const peer = { name, port: Number(port), ca };
    const body = { code, name: 'made-up tablet' };
    expect((await callTls(peer, '/api/pair', { method: 'POST', body })).status).toBe(200);
    expect((await callTls(peer, '/trust')).text).toContain(
      /fingerprint: ([0-9A-F:]+)/.exec(printed)?.[1] ?? 'none',
    );
  });
  const { out } = await line.run('devices');
  expect(out).toContain('made-up tablet');
  const id = / {2}([0-9a-f-]{36}) {2}/.exec(out)?.[1] ?? '';
  expect((await line.run('devices', '--forget', id)).out).toContain('No device is paired');
  expect((await line.run('devices', '--forget', id)).code).toBe(3);
});
