import { describe, expect, it } from 'vitest';
import { filesBelow, readText } from './sources.ts';

const LIMIT = 400;

/** Longer files, each with its reason; what is generated or a table of data has one by its place. */
const LONGER: Readonly<Record<string, string>> = {
  'src/engine/method.ts': 'all types of a question and its answer, read together',
  'test/capture/refusals.test.ts': 'a list of bad tables, a case each',
};
const isTable = (path: string): boolean =>
  /\.generated\.ts$|^src\/data\/|^demo\/source\//.test(path);

const lines = (path: string): number => readText(path).split('\n').length - 1;
const code = ['src', 'web', 'test', 'scripts', 'demo', 'bench', 'bin'].flatMap((folder) =>
  filesBelow(folder, '.ts', '.tsx', '.js', '.css', '.typ'),
);

describe('files', () => {
  it(`of code have at most ${LIMIT} lines`, () => {
    const long = code.filter((path) => !isTable(path) && !LONGER[path] && lines(path) > LIMIT);
    expect(long.map((path) => `${path}: ${lines(path)} lines`)).toEqual([]);
  });

  it('that are excepted still need it', () => {
    expect(Object.keys(LONGER).filter((path) => lines(path) <= LIMIT)).toEqual([]);
  });
});
