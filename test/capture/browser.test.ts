import { fileURLToPath } from 'node:url';
import { createContext, runInContext } from 'node:vm';
import { build } from 'vite';
import { describe, expect, it } from 'vitest';
import { lines, someIds, viewOf } from './help.ts';

/** The folder as one script for a page. */
async function bundled(): Promise<string> {
  const entry = fileURLToPath(new URL('../../src/capture/index.ts', import.meta.url));
  const lib = { entry, formats: ['iife' as const], name: 'capture' };
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: { write: false, minify: false, lib },
  });
  const [chunk] = [built].flat().flatMap((b) => ('output' in b ? b.output : []));
  return chunk && 'code' in chunk ? chunk.code : '';
}

describe('capture in a page', () => {
  it('imports a table with nothing of Node at hand', async () => {
    const code = await bundled();
    expect(code).not.toMatch(/\bfrom ["']node:|require\(["']node:/);
    const page = createContext({
      TextDecoder,
      request: {
        form: 'parts',
        file: 'parts.csv',
        open: async function* () {
          yield new TextEncoder().encode(lines('number;mass_kg', 'a;6,9', 'b;-1,5'));
        },
        view: viewOf([
          {
            v: 1,
            e: 'node.add',
            node: { id: 'V', kind: 'vehicle', parent: null, label: 'V', name: 'V' },
          },
        ]),
        ids: someIds(),
        by: 'tester',
        takenAt: { local: '2026-10-05' },
      },
    });
    runInContext(`${code}; globalThis.previewTable = capture.previewTable;`, page);
    const preview = await runInContext('previewTable(request)', page);
    expect(preview.decimal.value).toBe(',');
    expect(preview.problems.map((p: { why: string }) => p.why)).toEqual(['a mass is negative']);
  });
});
