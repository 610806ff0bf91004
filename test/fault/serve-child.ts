/** A server on the SQLite library of a folder, without pages, to be killed: `serve-child.ts <folder>`. */
import { join } from 'node:path';
import { deviceOf, Library } from '../../src/app/index.ts';
import { startServer } from '../../src/server/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';

const [, , dir = ''] = process.argv;
const store = await openSqliteStore(dir);
const library = new Library(store, dir, await deviceOf(dir));
const { port, token } = await startServer({ library, webDir: join(dir, 'no-pages') });
console.log(JSON.stringify({ pid: process.pid, port, token }));
