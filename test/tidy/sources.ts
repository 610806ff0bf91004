import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { ROOT } from '../../scripts/root.ts';

/** Folders that hold no source of ours, by name, at any depth. */
const NOT_OURS = new Set(['node_modules', 'dist', '.git', '.cache', 'out', 'library', 'coverage']);

/** Paths from the root, forward slashes, sorted: every file below `folder` ('' for the root). */
export function filesBelow(folder: string, ...endings: readonly string[]): readonly string[] {
  if (!existsSync(join(ROOT, folder))) return [];
  return readdirSync(join(ROOT, folder), { withFileTypes: true })
    .filter((entry) => !NOT_OURS.has(entry.name))
    .flatMap((entry) => {
      const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
      return entry.isDirectory() ? filesBelow(path, ...endings) : [path];
    })
    .filter((path) => endings.length === 0 || endings.some((ending) => path.endsWith(ending)))
    .sort();
}

export const readText = (path: string): string => readFileSync(join(ROOT, path), 'utf8');

/** The syntax tree of a source text; `path` tells TypeScript from TSX. */
export const parse = (path: string, text: string): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);

/** Every node of a tree, the root first. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
  yield node;
  const children: ts.Node[] = [];
  ts.forEachChild(node, (child) => {
    children.push(child);
  });
  for (const child of children) yield* nodesOf(child);
}

/** `path:line` of a node, to click on. */
export function placeOf(file: ts.SourceFile, node: ts.Node): string {
  return `${file.fileName}:${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}`;
}
