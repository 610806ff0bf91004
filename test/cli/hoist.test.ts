/** Marks and records by the command line and by the interface, on the made-up van of the demo. */
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { openLibrary } from '../../src/cli/open-library.ts';
import type { ReportHoist } from '../../src/report/index.ts';
import { type RunningServer, startServer } from '../../src/server/index.ts';
import { type Change, makeChange, ulid } from '../../src/study/index.ts';
import { call } from '../contract/http.ts';
import { record as recordOf } from '../study/gate-records.ts';
import { CommandLine } from './run.ts';

let line: CommandLine;
const hoist = (...args: readonly string[]) => line.run('hoist', '--study', 'VAN', ...args);
const steps = async () => {
  const { hoist } = (await line.json('hoist', '--study', 'VAN')) as { hoist: ReportHoist };
  return new Map(hoist.steps.map((s) => [s.label, s]));
};

beforeAll(async () => {
  line = await CommandLine.open();
  const { code, err } = await line.run(
    ...[
      'import',
      join(ROOT, 'demo/tables/van-27-clean'),
      '--study',
      'VAN',
      '--new',
      '--vehicle',
      'VAN-27',
    ],
  );
  if (code !== 0) throw new Error(err);
}, 60_000);
afterAll(() => line.close());

describe('hoistside hoist', () => {
  it('shows each step with its balance, gates, what must come first, and holds with the questions that need them', async () => {
    const all = await steps();
    expect(all.get('R01')).toMatchObject({ standing: 'to be done', waitsFor: ['R00'] });
    expect(all.get('R02')?.gates.map((g) => g.id)).toEqual(
      expect.arrayContaining(['high-voltage', 'absence-of-voltage', 'hoist-limit', 'lowering']),
    );
    expect(all.get('R00')?.holds.join()).toMatch(/measure first: .*kerb posture.*needed by “/);
    expect(all.get('R02')?.balance).toMatch(/margin 656/);
  });

  it('marks a step whose gates are complete, the balance with it; not one that must wait', async () => {
    const early = await hoist('--step', 'R01', '--done');
    expect(early.code).toBe(6);
    expect(early.err).toContain('must be done first');
    expect((await hoist('--step', 'R00', '--done')).code).toBe(0);
    expect((await hoist('--step', 'R01', '--done')).code).toBe(0);
    const all = await steps();
    expect(all.get('R01')?.standing).toBe('done');
    expect(all.get('R01')?.gates).toEqual([
      { id: 'hoist-limit', title: 'Balance on the hoist', says: 'complete', lacking: [] },
    ]);
  });

  it('refuses a high-voltage step without its record, and its override', async () => {
    const done = await hoist('--step', 'R02', '--done');
    expect(done.code).toBe(6);
    expect(done.err).toContain('tester proven on a known source after');
    const over = await hoist(
      '--step',
      'R02',
      '--gate',
      'absence-of-voltage',
      '--override',
      'in a hurry',
    );
    expect(over.code).toBe(6);
    expect(over.err).toContain('there is no override for this gate');
    expect((await steps()).get('R02')?.standing).toBe('to be done');
  });

  it('reads lines with their units, and says what is still lacking', async () => {
    const args = ['--step', 'R06', '--gate', 'pyrotechnics', '--set', 'batteryOff=yes'];
    await hoist(...args, '--set', 'makersWait=10 min', '--set', 'waited=9.5 min');
    const gate = (await steps()).get('R06')?.gates.find((g) => g.id === 'pyrotechnics');
    expect(gate?.says).toBe('not complete');
    expect(gate?.lacking.join()).toContain('waited since: below waiting time');
    await hoist(
      '--step',
      'R06',
      '--gate',
      'pyrotechnics',
      '--set',
      'waited=12 min',
      '--set',
      'faceUp=yes',
    );
    expect((await steps()).get('R06')?.gates.find((g) => g.id === 'pyrotechnics')?.says).toBe(
      'complete',
    );
    expect((await hoist('--step', 'R06', '--gate', 'dust', '--set', 'x=1')).code).toBe(2);
  });

  it('an override elsewhere stands with its name and reason', async () => {
    const args = ['--step', 'R04', '--gate', 'lowering', '--override', 'stands are away'];
    expect((await hoist(...args, '--by', 'A. Lead')).code).toBe(0);
    const gate = (await steps()).get('R04')?.gates.find((g) => g.id === 'lowering');
    expect(gate?.says).toBe('override by A. Lead: stands are away');
  });
});

describe('by the interface', () => {
  let server: RunningServer;
  beforeAll(async () => {
    const library = await openLibrary(line.library);
    server = await startServer({ library, webDir: join(line.dir, 'no-pages'), log: () => {} });
  });
  afterAll(() => server.close());

  it('a mark without its record, as an offline tablet would send it, is kept and not shown as done', async () => {
    const library = await openLibrary(line.library);
    const { study } = await library.findStudy('VAN');
    const view = await library.view(study);
    const step = view.find('R02')?.id ?? '';
    const author = {
      study,
      by: 'tablet',
      device: 'tablet-1',
      view,
      nowMs: Date.now(),
      random: Math.random,
    };
    const send = async (entries: Change['entries'], seq: number): Promise<number> => {
      const made = makeChange(author, { words: 'done on the tablet', entries });
      const body = { changes: [{ ...made, seq }] };
      const headers = { authorization: `Bearer ${server.token}` };
      return (
        await call(server.port, `/api/studies/${study}/changes`, { method: 'POST', body, headers })
      ).status;
    };
    const at = '2026-11-25T10:00:00';
    const mark = {
      v: 1,
      e: 'step.mark',
      mark: { id: ulid(1, Math.random), step, at, done: true },
    } as const;
    expect(await send([mark], 1)).toBe(200);
    const after = await library.view(study);
    expect(after.step(step).done).toBe(false);
    expect(after.gestures().some((g) => g.words === 'done on the tablet')).toBe(true);
    expect((await steps()).get('R02')?.standing).toBe('marked, not shown as done');
    // A record that is put down afterwards does not reach back.
    expect(await send([recordOf(step, 'absence-of-voltage')], 2)).toBe(200);
    expect((await library.view(study)).step(step).done).toBe(false);
    await library.close();
  });
});
