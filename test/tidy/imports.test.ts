import { describe, expect, it } from 'vitest';
import packageJson from '../../package.json' with { type: 'json' };
import { folderOf, importsOf, WIRES_STORE, wrongImports } from './import-rules.ts';
import { filesBelow, readText } from './sources.ts';

const ours = [...filesBelow('src', '.ts', '.tsx'), ...filesBelow('web', '.ts', '.tsx')];

describe('imports go one way', () => {
  it('in every file of src and web', () => {
    expect(ours.length).toBeGreaterThan(20);
    expect(ours.flatMap((path) => wrongImports(path, readText(path)))).toEqual([]);
  });

  const wrong = (path: string, text: string): number => wrongImports(path, text).length;

  it('and each kind of breach is seen', () => {
    expect(wrong('src/quantity/a.ts', "import { x } from '../study/index.ts';")).toBe(1);
    expect(wrong('src/engine/a.ts', "export * from '../store/index.ts';")).toBe(1);
    expect(wrong('src/engine/mass/a.ts', "type X = import('../../app/index.ts').X;")).toBe(1);
    expect(wrong('src/study/a.ts', "const x = import('../engine/index.ts');")).toBe(1);
    expect(wrong('src/engine/a.ts', "import { KINDS } from '../quantity/kinds.ts';")).toBe(1);
    expect(wrong('src/engine/a.ts', "import { readFileSync } from 'node:fs';")).toBe(1);
    expect(wrong('src/report/a.ts', "import { ask } from '../engine/index.ts';")).toBe(1);
    expect(wrong('web/a.tsx', "import { openStore } from '../src/store/index.ts';")).toBe(1);
    expect(wrong('test/a.test.ts', "import { KINDS } from '../src/quantity/kinds.ts';")).toBe(1);
  });

  it('and what is allowed is left alone', () => {
    expect(wrong('src/engine/mass/a.question.ts', "import { question } from '../method.ts';")).toBe(
      0,
    );
    expect(wrong('src/report/a.ts', "import type { Answer } from '../engine/index.ts';")).toBe(0);
    expect(wrong('web/a.tsx', "import type { Ack } from '../src/store/port.ts';")).toBe(0);
  });
});

describe('the store', () => {
  it.each(WIRES_STORE)('is wired in one file of %s at most', (host) => {
    const wiring = filesBelow(`src/${host}`, '.ts').filter((path) =>
      importsOf(path, readText(path)).some(
        ({ spec, typeOnly }) => !typeOnly && /\/store\/index\.ts$/.test(spec),
      ),
    );
    expect(wiring.length).toBeLessThanOrEqual(1);
  });
});

describe('packages', () => {
  const runtime = new Set(Object.keys(packageJson.dependencies));
  const packageOf = (spec: string): string =>
    spec
      .split('/')
      .slice(0, spec.startsWith('@') ? 2 : 1)
      .join('/');

  it('that the installed tool needs are dependencies, not development ones', () => {
    const missing = ours
      .filter((path) => folderOf(path) !== 'web')
      .flatMap((path) => importsOf(path, readText(path)))
      .filter(({ spec, typeOnly }) => !typeOnly && !/^(\.|node:)/.test(spec))
      .filter(({ spec }) => !runtime.has(packageOf(spec)))
      .map(({ place, spec }) => `${place} imports ${spec}`);
    expect(missing).toEqual([]);
  });
});
