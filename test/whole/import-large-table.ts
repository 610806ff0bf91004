// Run by large-table.test.ts in a process of its own: imports a table of parts into a new
// library and prints what it took as one line of JSON.
import {
  createStudy,
  deviceOf,
  fileToImport,
  importTableInto,
  Library,
} from '../../src/app/index.ts';
import { openSqliteStore } from '../../src/store/index.ts';

const [dir = '', table = ''] = process.argv.slice(2);

const store = await openSqliteStore(dir);
const library = new Library(store, dir, await deviceOf(dir));
const study = await createStudy(library, {
  title: 'large',
  vehicle: 'V',
  by: 'test',
  invented: true,
});
const started = performance.now();
const imported = await importTableInto(library, study, {
  ...(await fileToImport(table)),
  form: 'parts',
  by: 'test',
  overrides: { makeAssemblies: true },
});
const seconds = (performance.now() - started) / 1000;
const [head] = await store.studies();
const found = await store.find({ study, text: 'P00012345', limit: 2 });
await store.close();
console.log(
  JSON.stringify({
    rows: imported.rows,
    parts: head?.parts,
    found,
    seconds,
    peakMegabytes: process.resourceUsage().maxRSS / 1024,
  }),
);
