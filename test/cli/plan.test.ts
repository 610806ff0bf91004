/** The measurement plan of the made-up van of the demo. */
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import type { MeasurementPlan } from '../../src/engine/index.ts';
import { CommandLine } from './run.ts';

let line: CommandLine;
beforeAll(async () => {
  line = await CommandLine.open();
  const dir = join(ROOT, 'demo/tables/van-27-faulty');
  const { code, err } = await line.run(
    'import',
    dir,
    '--study',
    'VAN',
    '--new',
    '--vehicle',
    'VAN-27',
  );
  if (code !== 0) throw new Error(err);
}, 60_000);
afterAll(() => line.close());

it('says what to read, with what, before which step, and for which question; and how far the study is', async () => {
  const { plan } = (await line.json('plan', '--study', 'VAN', '--date', '2026-11-25')) as {
    plan: MeasurementPlan;
  };
  // Coolant and harness were never weighed, by the table of planted faults.
  expect(plan.weighed).toEqual({ parts: 246, of: 248 });
  const radius = plan.readings.find((r) => r.label.includes('tyre radius'));
  expect(radius).toMatchObject({ instrument: 'steel tape', minutes: 2, before: 'R00' });
  expect(radius?.needs.join()).toContain('Centre of gravity');
  expect(plan.readings.findIndex((r) => r.before === undefined)).toBeGreaterThan(0);
  expect(plan.notReceived.join()).toContain('odometer');
  expect(plan.notReceived.join()).not.toContain('corner load');
  const { out } = await line.run('plan', '--study', 'VAN');
  expect(out).toContain('weighed: 246 of 248 parts, 99 %');
  expect(out).toContain('before R00: ');
});
