import { existsSync } from 'node:fs';
import { join, posix } from 'node:path';
import ts from 'typescript';
import { ROOT } from '../../scripts/root.ts';
import { nodesOf, parse, placeOf } from './sources.ts';

/** One import or re-export, static or dynamic, value or type. */
export interface Import {
  readonly place: string;
  readonly spec: string;
  readonly typeOnly: boolean;
}

/** What a source text imports, in any of the ways the language has. */
export function importsOf(path: string, text: string): readonly Import[] {
  const file = parse(path, text);
  const found: Import[] = [];
  for (const node of nodesOf(file)) {
    const spec = specifier(node);
    if (spec) found.push({ place: placeOf(file, node), spec, typeOnly: isTypeOnly(node) });
  }
  return found;
}

function specifier(node: ts.Node): string | undefined {
  if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node))
    return literal(node.moduleSpecifier);
  if (ts.isImportTypeNode(node) && ts.isLiteralTypeNode(node.argument))
    return literal(node.argument.literal);
  if (ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword)
    return literal(node.arguments[0]);
  return undefined;
}

const literal = (node: ts.Node | undefined): string | undefined =>
  node !== undefined && ts.isStringLiteralLike(node) ? node.text : undefined;

function isTypeOnly(node: ts.Node): boolean {
  if (ts.isImportTypeNode(node)) return true;
  if (ts.isExportDeclaration(node)) return node.isTypeOnly;
  if (!ts.isImportDeclaration(node)) return false;
  const clause = node.importClause;
  if (clause?.isTypeOnly) return true;
  const named = clause?.namedBindings;
  if (clause?.name !== undefined || named === undefined || !ts.isNamedImports(named)) return false;
  return named.elements.length > 0 && named.elements.every((element) => element.isTypeOnly);
}

/** Our own folders that code of a folder may import, itself apart. */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  quantity: [],
  data: ['quantity'],
  study: ['quantity', 'data'],
  engine: ['quantity', 'data', 'study'],
  formula: [],
  drawing: ['quantity', 'engine'],
  schema: ['quantity', 'study'],
  speech: ['quantity', 'study'],
  capture: ['quantity', 'study'],
  store: ['quantity', 'study'],
  report: ['quantity', 'study', 'engine', 'formula', 'drawing'],
  app: ['quantity', 'data', 'study', 'engine', 'schema', 'speech', 'capture', 'store', 'report'],
  server: ['quantity', 'study', 'engine', 'schema', 'capture', 'store', 'report', 'app'],
  cli: ['quantity', 'study', 'engine', 'speech', 'capture', 'store', 'report', 'app', 'server'],
  web: ['quantity', 'data', 'study', 'engine', 'formula', 'drawing', 'speech', 'capture'],
};

/**
 * Where one folder may take only types from another: results and requests, not what works them
 * out. What does the work reaches the hosts through the use cases of app.
 */
const TYPES_ONLY = new Set([
  'report engine',
  'drawing engine',
  ...['server', 'cli'].flatMap((host) => [`${host} engine`, `${host} capture`]),
]);

/** Hosts that take the store itself in one file, which wires it, and its types anywhere. */
export const WIRES_STORE: readonly string[] = ['server', 'cli'];

/** Doors beside index.ts: what the web needs of folders whose index brings Node with it. */
const SIDE_DOORS: Readonly<Record<string, readonly string[]>> = {
  web: ['src/server/contract.ts', 'src/store/port.ts', 'src/store/indexed/index.ts'],
};

/** These run anywhere, so they import no package and nothing of a host. */
export const HOSTLESS: readonly string[] = [
  'quantity',
  'data',
  'study',
  'engine',
  'formula',
  'drawing',
];

/** `src/engine/mass/x.ts` is in `engine`, `web/main.tsx` in `web`; undefined outside both. */
export const folderOf = (path: string): string | undefined =>
  path.startsWith('web/') ? 'web' : /^src\/([^/]+)\//.exec(path)?.[1];

/** Every breach of the import table in one file, each as a line that says what is wrong. */
export const wrongImports = (path: string, text: string): readonly string[] =>
  importsOf(path, text).flatMap((one) => {
    const why = one.spec.startsWith('.') ? wrongOwn(path, one) : wrongPackage(path, one.spec);
    return why === undefined ? [] : [`${one.place} imports ${one.spec}: ${why}`];
  });

function wrongOwn(path: string, { spec, typeOnly }: Import): string | undefined {
  const target = posix.join(posix.dirname(path), spec.replace(/\?.*$/, ''));
  const from = folderOf(path);
  const to = folderOf(target);
  if (from === undefined || from === to) return wrongDoor(path, target);
  if (SIDE_DOORS[from]?.includes(target)) return undefined;
  if (target === 'package.json') return undefined;
  if (to === undefined) return `${from} may import nothing outside src`;
  if (!MAY_IMPORT[from]?.includes(to)) return `${from} may not import ${to}`;
  if (TYPES_ONLY.has(`${from} ${to}`) && !typeOnly) return `${from} may take only types of ${to}`;
  return wrongDoor(path, target);
}

/** Any folder with an index.ts is entered only by it. */
function wrongDoor(path: string, target: string): string | undefined {
  for (let folder = posix.dirname(target); folder.includes('/'); folder = posix.dirname(folder)) {
    if (path.startsWith(`${folder}/`)) return undefined;
    const door = `${folder}/index.ts`;
    if (target !== door && existsSync(join(ROOT, door))) return `the door of ${folder} is ${door}`;
  }
  return undefined;
}

function wrongPackage(path: string, spec: string): string | undefined {
  const from = folderOf(path);
  if (from !== undefined && HOSTLESS.includes(from))
    return `${from} imports no package and no host`;
  if (from === 'web' && spec.startsWith('node:')) return 'the web runs in a browser';
  return undefined;
}
