import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { alternativesTable } from './alternatives-table.ts';
import { claimsTable } from './claims-table.ts';
import { linesTable } from './lines-table.ts';
import { modulesTable } from './modules-table.ts';
import { album } from './photos/album.ts';
import { formatRateBook, rateBooks } from './rate-books.ts';
import {
  assembliesTable,
  jointsTable,
  partNames,
  partsTable,
  type RecordKind,
} from './record-tables.ts';
import { hoistTable, removalsTable } from './removals-table.ts';
import { barriersTable, crossingsTable, sealsTable, zonesTable } from './sealing-tables.ts';
import {
  bagsTable,
  chainTable,
  locatorsTable,
  pointsTable,
  readingsTable,
} from './survey-tables.ts';
import { vehicleTable } from './vehicle-table.ts';
import { fasteningsTable, precedenceTable, workTable } from './way-in-tables.ts';

type Files = ReadonlyMap<string, string | Uint8Array>;

/** Every file of one record, by its path in the record's folder. */
export function demoRecord(record: RecordKind): Files {
  const [r1, r2] = rateBooks();
  return new Map<string, string | Uint8Array>([
    ['assemblies.csv', assembliesTable()],
    ['parts.csv', partsTable(record)],
    ['joints.csv', jointsTable(record)],
    ['vehicle.csv', vehicleTable()],
    ['modules.csv', modulesTable()],
    ['hoist.csv', hoistTable()],
    ['removals.csv', removalsTable()],
    ['claims.csv', claimsTable()],
    ['bags.csv', bagsTable(record)],
    ['precedence.csv', precedenceTable()],
    ['work.csv', workTable()],
    ['fastenings.csv', fasteningsTable()],
    ['seals.csv', sealsTable()],
    ['zones.csv', zonesTable()],
    ['barriers.csv', barriersTable()],
    ['crossings.csv', crossingsTable()],
    ['alternatives.csv', alternativesTable()],
    ['lines.csv', linesTable()],
    ['locators.csv', locatorsTable(record)],
    ['points.csv', pointsTable(record)],
    ['chain.csv', chainTable(record)],
    ['readings.csv', readingsTable(record)],
    ['rates-R1.json', formatRateBook(r1)],
    ['rates-R2.json', formatRateBook(r2)],
    ...album(partNames()),
  ]);
}

function writeRecord(folder: string, files: Files): void {
  rmSync(folder, { recursive: true, force: true });
  for (const [path, content] of files) {
    const to = join(folder, path);
    mkdirSync(resolve(to, '..'), { recursive: true });
    writeFileSync(to, content);
  }
}

/**
 * Writes the clean and the faulty record of VAN-27 (invented) into `van-27-clean` and
 * `van-27-faulty` below `outDir`, replacing what is there. The same bytes each time.
 */
export function generateDemo(outDir: string): void {
  for (const record of ['clean', 'faulty'] as const)
    writeRecord(join(outDir, `van-27-${record}`), demoRecord(record));
}

if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href)
  generateDemo(fileURLToPath(new URL('tables', import.meta.url)));
