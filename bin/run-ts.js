// Runs one of the project's own TypeScript scripts: node bin/run-ts.js scripts/registry.ts
import './require-node.js';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

const { register } = await import('tsx/esm/api');
register();
const [script, ...rest] = process.argv.slice(2);
process.argv.splice(1, process.argv.length - 1, resolve(script), ...rest);
await import(pathToFileURL(resolve(script)).href);
