import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { HOSTLESS } from './import-rules.ts';
import { filesBelow, nodesOf, parse, placeOf, readText } from './sources.ts';

/** Places where a type is given up. */
function anyTypes(path: string, text: string): readonly string[] {
  const file = parse(path, text);
  return [...nodesOf(file)]
    .filter((node) => node.kind === ts.SyntaxKind.AnyKeyword)
    .map((node) => placeOf(file, node));
}

const hostless = HOSTLESS.flatMap((folder) => filesBelow(`src/${folder}`, '.ts'));

describe('quantity, data, study, engine and drawing', () => {
  it('have no any', () => {
    expect(hostless.flatMap((path) => anyTypes(path, readText(path)))).toEqual([]);
    expect(anyTypes('a.ts', 'const x: Record<string, any> = {};')).toEqual(['a.ts:1']);
    expect(anyTypes('a.ts', '/** any of these */ const any = "any";')).toEqual([]);
  });

  it('ask the compiler for no comment-made exceptions', () => {
    const silenced = hostless.filter((path) => /@ts-|<reference|biome-ignore/.test(readText(path)));
    expect(silenced).toEqual([]);
  });

  /** `npm run check` and `npm test` compile this project: a use of Node or the DOM stops them there. */
  it('compile with neither Node nor DOM types', () => {
    const config = ts.parseConfigFileTextToJson(
      'tsconfig.engine.json',
      readText('tsconfig.engine.json'),
    ).config;
    expect(config.compilerOptions).toEqual({ lib: ['ES2022'], types: [] });
    expect(config.include).toEqual(HOSTLESS.map((folder) => `src/${folder}`));
    expect(config.exclude).toBeUndefined();
  });
});
