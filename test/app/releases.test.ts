import { readdirSync, readFileSync } from 'node:fs';
import { cp } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ROOT } from '../../scripts/root.ts';
import { importBundle, type Library } from '../../src/app/index.ts';
import { Libraries } from './libraries.ts';
import { type ReleaseSays, releaseSays } from './release-says.ts';

const RELEASES = join(ROOT, 'test/fixtures/releases');

let libraries: Libraries;
beforeAll(async () => {
  libraries = await Libraries.start();
});
afterAll(() => libraries.end());

/** Questions may come, and get new versions; what still is asked the same is answered the same. */
async function saysTheSame(library: Library, then: ReleaseSays): Promise<void> {
  const now = await releaseSays(library, then.study);
  const { revision, findings, parts } = now;
  expect({ revision, findings, parts }).toEqual({
    ...{ revision: then.revision, findings: then.findings, parts: then.parts },
  });
  const same = (a: ReleaseSays['answers'][number], b: ReleaseSays['answers'][number]) =>
    a.question === b.question && a.version === b.version && a.subject === b.subject;
  for (const before of then.answers) {
    const after = now.answers.find((answer) => same(answer, before));
    const isAsked = now.answers.some((a) => a.question === before.question);
    if (after) sameOuts(after.outs, before.outs);
    else expect(isAsked, `${before.question} of ${before.subject}`).toBe(true);
  }
}

type Outs = ReleaseSays['answers'][number]['outs'];
function sameOuts(now: Outs, then: Outs): void {
  for (const [name, [x, u]] of Object.entries(then)) {
    const [nowX = Number.NaN, nowU = Number.NaN] = now[name] ?? [];
    expect(Math.abs(nowX - x), name).toBeLessThanOrEqual(1e-12 * Math.abs(x));
    if (u === 'incomplete' || nowU === 'incomplete') expect(nowU).toBe(u);
    else expect(Math.abs(nowU - u), name).toBeLessThanOrEqual(1e-9 * Math.abs(u));
  }
}

describe.each(readdirSync(RELEASES))('what release %s wrote', (release) => {
  const folder = join(RELEASES, release);
  const then: ReleaseSays = JSON.parse(readFileSync(join(folder, 'says.json'), 'utf8'));

  test('its library is upgraded and says the same, with rows as made anew', async () => {
    await cp(join(folder, 'library'), libraries.path(release), { recursive: true });
    const library = await libraries.open(release);
    await saysTheSame(library, then);
    await library.store.rebuild();
    await saysTheSame(library, then);
    await library.record(then.study, 'R. Example', 'goes on', [
      { v: 1, e: 'node.name', id: 'p1', name: 'goes on' },
    ]);
    expect((await library.view(then.study)).node('p1')?.name).toBe('goes on');
  });

  test('its bundle comes in and says the same', async () => {
    const library = await libraries.open(`${release}-bundle`);
    await importBundle(library, join(folder, 'study.hoist.zip'), 'R. Example');
    await saysTheSame(library, then);
  });
});
