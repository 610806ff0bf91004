import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Command } from 'commander';
import { createStudy, importRecord, type Library, studyReport } from '../app/index.ts';
import { type ReportModel, renderPdf, summaryText } from '../report/index.ts';
import type { Id } from '../study/index.ts';
import type { Io } from './io.ts';
import { openLibrary } from './open-library.ts';

const TABLES = fileURLToPath(new URL('../../demo/tables/', import.meta.url));
/** Date of issue of the demo's reports, so that they come out the same each time. */
const DEMO_DATE = '2026-11-25';
/** Estimated element times of joints share one estimator's error. */
const JOINT_SPREADS = { 'time.access,time.drive': '15 %' };

const RECORDS = [
  { folder: 'van-27-clean', title: 'VAN-27', note: 'invented demo: every number is made up' },
  {
    folder: 'van-27-faulty',
    title: 'VAN-27 with planted faults',
    note: 'invented demo: every number is made up, and some are wrong on purpose',
  },
] as const;

interface DemoOptions {
  readonly to: string;
  readonly json?: boolean;
}

export const demoCommand = (io: Io): Command =>
  new Command('demo')
    .description('import the invented VAN-27 into a library of its own, calculate and report')
    .option(
      '--to <folder>',
      'folder for the demo’s library and reports; made anew each time',
      join('out', 'demo'),
    )
    .option('--json', 'print one JSON object')
    .action((options: DemoOptions) => runDemo(io, options));

async function runDemo(io: Io, options: DemoOptions): Promise<void> {
  const libraryDir = join(options.to, 'library');
  await rm(libraryDir, { recursive: true, force: true });
  await mkdir(libraryDir, { recursive: true });
  const library = await openLibrary(libraryDir);
  try {
    const models = [];
    for (const record of RECORDS) models.push(await oneRecord(io, library, record, options.to));
    if (options.json) io.out(`${JSON.stringify({ reports: models })}\n`);
    else io.out(`${models.map(summaryText).join('\n\n')}\n${where(options.to, libraryDir)}`);
  } finally {
    await library.close();
  }
}

async function oneRecord(
  io: Io,
  library: Library,
  record: (typeof RECORDS)[number],
  to: string,
): Promise<ReportModel> {
  const { folder, title, note } = record;
  const study = await createStudy(library, {
    title,
    vehicle: 'VAN-27',
    by: 'demo',
    invented: true,
    note,
  });
  await importRecord(library, study, {
    dir: join(TABLES, folder),
    by: 'demo',
    spreads: JOINT_SPREADS,
    done: ({ file, rows }) => io.progress(`${title}: ${file}, ${rows} rows`),
  });
  return reportOf(io, library, study, title, join(to, `${folder}.pdf`));
}

async function reportOf(
  io: Io,
  library: Library,
  study: Id,
  title: string,
  file: string,
): Promise<ReportModel> {
  const run = {
    tick: (share: number) => io.progress(`${title}: calculating ${Math.round(100 * share)} %`),
  };
  const model = await studyReport(library, await library.view(study), DEMO_DATE, run);
  io.progress(`${title}: setting the pages`);
  await writeFile(file, await renderPdf(model));
  io.progress(`${title}: ${file} written`);
  return model;
}

const where = (to: string, libraryDir: string): string =>
  `Reports: ${RECORDS.map((r) => join(to, `${r.folder}.pdf`)).join(', ')}\nLook at it in a browser: npm start -- --library ${libraryDir}\n`;
