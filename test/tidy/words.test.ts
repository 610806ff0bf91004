import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { filesBelow, nodesOf, parse, placeOf, readText } from './sources.ts';

const TEXT_ENDINGS = ['.ts', '.tsx', '.js', '.css', '.html', '.typ', '.md', '.json', '.yaml'];
const SCRIPT_ENDINGS = ['.ts', '.tsx', '.js'];
const notLock = (path: string): boolean => path !== 'package-lock.json';
const everything = filesBelow('', ...TEXT_ENDINGS).filter(notLock);

/** Put together here, so that this file does not hold the words it looks for. */
const NOWHERE = [
  ['TO', 'DO'],
  ['FIX', 'ME'],
  ['seed', ' document'],
  ['transcript', '.md'],
].map((halves) => halves.join(''));
const NO_NAME = ['place', 'holder'].join('');

describe('words that stand nowhere', () => {
  it.each(NOWHERE)('%s', (word) => {
    const asWord = new RegExp(`\\b${word.replace('.', '\\.')}\\b`);
    expect(everything.filter((path) => asWord.test(readText(path)))).toEqual([]);
  });

  it('names that promise something later', () => {
    const named = everything
      .filter((path) => SCRIPT_ENDINGS.some((ending) => path.endsWith(ending)))
      .flatMap((path) => names(path, readText(path)));
    expect(named).toEqual([]);
    expect(names('a.ts', `const ${NO_NAME}Mass = 1;`)).toEqual(['a.ts:1']);
  });
});

/** Names with the forbidden word in them; the attribute of an HTML field is no name of ours. */
function names(path: string, text: string): readonly string[] {
  const file = parse(path, text);
  return [...nodesOf(file)]
    .filter((node) => ts.isIdentifier(node) && !ts.isJsxAttribute(node.parent))
    .filter((node) => node.getText(file).toLowerCase().includes(NO_NAME))
    .map((node) => placeOf(file, node));
}

/** As a claim: "safety" and the browser's safe-area are other words. */
const CLAIM = /\bsafe(ly|r|st)?\b(?!-area)/i;

/** Texts a user may read in which something is called safe. */
function claims(path: string, text: string): readonly string[] {
  const file = parse(path, text);
  return [...nodesOf(file)]
    .filter((node) => ts.isStringLiteralLike(node) || isTemplatePart(node) || ts.isJsxText(node))
    .filter((node) => CLAIM.test(node.getText(file)))
    .map((node) => `${placeOf(file, node)} ${node.getText(file).trim().slice(0, 80)}`);
}

const isTemplatePart = (node: ts.Node): boolean =>
  ts.isTemplateHead(node) || ts.isTemplateMiddle(node) || ts.isTemplateTail(node);

describe('the tool never calls anything safe', () => {
  const shown = ['src', 'web', 'demo'];

  it('in the texts of its code', () => {
    const scripts = shown.flatMap((folder) => filesBelow(folder, ...SCRIPT_ENDINGS));
    expect(scripts.flatMap((path) => claims(path, readText(path)))).toEqual([]);
  });

  it('in page and print templates', () => {
    const templates = shown.flatMap((folder) => filesBelow(folder, '.html', '.typ', '.csv'));
    expect(templates.filter((path) => CLAIM.test(readText(path)))).toEqual([]);
  });

  it('and such a claim is seen', () => {
    expect(claims('a.ts', ['const words = `It is safe at ', '{x} kg`;'].join('$'))).toHaveLength(1);
    expect(claims('a.tsx', 'const words = <p>Safe to touch.</p>;')).toHaveLength(1);
    expect(
      claims('a.ts', "const words = 'safety sign'; const n = Number.MAX_SAFE_INTEGER;"),
    ).toEqual([]);
  });
});
