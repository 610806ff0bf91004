import { stat } from 'node:fs/promises';
import { basename } from 'node:path';
import { Command, Option } from 'commander';
import {
  createStudy,
  fileToImport,
  formOf,
  type ImportRequest,
  importBundle,
  importRates,
  importRecord,
  importTableInto,
  type Library,
  type NewStudy,
  previewRecord,
  previewTableInto,
  type RecordRequest,
  type RecordStep,
  rehearse,
  TABLE_FORMS,
} from '../app/index.ts';
import type { Overrides, Preview, TableForm, TableProgress } from '../capture/index.ts';

import { type Id, RefusalError } from '../study/index.ts';
import type { Io } from './io.ts';
import { whoIsHere, withLibrary } from './open-library.ts';
import { pair, wayNamed } from './options.ts';
import { bundleText, previewText } from './texts.ts';

interface ImportOptions {
  readonly study?: string;
  readonly new?: boolean;
  readonly vehicle?: string;
  readonly invented?: boolean;
  readonly form?: TableForm;
  readonly column: Readonly<Record<string, string>>;
  readonly unit: Readonly<Record<string, string>>;
  readonly spread: Readonly<Record<string, string>>;
  readonly delimiter?: string;
  readonly decimal?: '.' | ',';
  readonly how?: string;
  readonly instrument?: string;
  readonly sheet?: string;
  readonly makeAssemblies?: boolean;
  readonly preview?: boolean;
  readonly by?: string;
  readonly json?: boolean;
}

const EXAMPLES = `
A folder brings in assemblies.csv, parts.csv, joints.csv, bags.csv, precedence.csv, vehicle.csv,
readings.csv, modules.csv, hoist.csv, removals.csv, work.csv, fastenings.csv, element-times.csv,
alternatives.csv, seals.csv, zones.csv, barriers.csv, crossings.csv, lines.csv,
claims.csv,
rates*.json and photos.csv, whichever are there. One file needs its form, unless its name tells.

  hoistside import ./record --study "My van" --new
  hoistside import parts.csv --study "My van" --preview          what would be read, and why
  hoistside import weights.csv --form parts --study "My van" --unit mass=lb --column "Wt=mass"
  hoistside import joints.csv --study "My van" --spread "time.access,time.drive=15 %"
  hoistside import weights.xlsx --form parts --sheet "Day 2" --study "My van"
  hoistside import my-van.hoist.zip                              a study from a bundle, or what it adds
  hoistside import our-times.csv --form element-times --study "My van"

A table is imported whole or not at all: each problem is named with file, row, column and value.
`;

export const importCommand = (io: Io): Command =>
  new Command('import')
    .description('import a table, a rate book or a folder of them into a study, or a bundle')
    .argument('<path>', 'file or folder')
    .option('--study <name>', 'study to import into; a bundle brings its own')
    .option('--new', 'make the study first')
    .option(
      '--vehicle <label>',
      'label of the vehicle of a new study; the study’s name when not given',
    )
    .option('--invented', 'the new study is made up, and says so on every output')
    .addOption(new Option('--form <form>', 'what the table holds').choices([...TABLE_FORMS]))
    .option('--column <heading=field>', 'what a column holds; may be repeated', pair, {})
    .option('--unit <field=unit>', 'unit of a column; may be repeated', pair, {})
    .option(
      '--spread <fields=percent>',
      'relative spread that all values of these columns share; may be repeated',
      pair,
      {},
    )
    .option('--sheet <name>', 'sheet of a workbook; the first when not given')
    .option('--delimiter <sign>', 'what parts the columns')
    .addOption(new Option('--decimal <sign>', 'decimal sign').choices(['.', ',']))
    .option('--how <way>', 'how values are known where nothing else says it')
    .option('--instrument <name>', 'instrument of values for which no column names one')
    .option('--make-assemblies', 'make assemblies that rows name and the study does not have')
    .option('--preview', 'show what would be read, and write nothing')
    .option('--by <name>', 'who imports')
    .option('--json', 'print one JSON object')
    .addHelpText('after', EXAMPLES)
    .action(async (path: string, options: ImportOptions, command: Command) => {
      await withLibrary(command, (library) => run(io, library, path, options));
    });

async function run(io: Io, library: Library, path: string, options: ImportOptions): Promise<void> {
  const by = options.by ?? whoIsHere();
  await mustExist(path);
  if (path.endsWith('.zip')) return bringIn(io, library, path, options, by);
  const target = await targetOf(library, options, by);
  if (options.preview) return preview(io, library, target, path, options, by);
  const { study, steps } = await importPath(io, library, target, path, options, by);
  const peakMb = Math.round(process.resourceUsage().maxRSS / 1024);
  if (options.json) io.out(`${JSON.stringify({ study, files: steps, peakMemoryMb: peakMb })}\n`);
  else io.out(`${steps.map(stepText).join('')}peak memory ${peakMb} MB\n`);
}

/** The study to import into, or what is to be made first. */
async function targetOf(
  library: Library,
  options: ImportOptions,
  by: string,
): Promise<Id | NewStudy> {
  const title = options.study ?? noStudy();
  if (!options.new) return (await library.findStudy(title)).study;
  return { title, vehicle: options.vehicle ?? title, by, invented: options.invented === true };
}

const stepText = ({ file, rows, notes }: RecordStep): string =>
  `${file}: ${rows} ${rows === 1 ? 'row' : 'rows'}\n${notes.map((n) => `  note: ${n.value === undefined ? '' : `${n.value}: `}${n.what}. ${n.next}\n`).join('')}`;

async function bringIn(
  io: Io,
  library: Library,
  path: string,
  { json, study }: ImportOptions,
  by: string,
): Promise<void> {
  if (study !== undefined) throw bundleHasItsOwn(study);
  const bundle = await importBundle(library, path, by);
  io.out(json ? `${JSON.stringify({ bundle })}\n` : bundleText(bundle));
}

interface Done {
  readonly study: Id;
  readonly steps: readonly RecordStep[];
}

async function importPath(
  io: Io,
  library: Library,
  target: Id | NewStudy,
  path: string,
  options: ImportOptions,
  by: string,
): Promise<Done> {
  if ((await stat(path)).isDirectory()) {
    const progress = (file: string, p: TableProgress) => io.progress(progressText(file, p));
    return importRecord(library, target, { ...folderRequest(path, options, by), progress });
  }
  if (path.endsWith('.json')) {
    const study = await madeStudy(library, target);
    const rows = await importRates(library, study, path, by);
    return { study, steps: [{ file: basename(path), rows, notes: [] }] };
  }
  const request = await requestFor(path, options, by);
  // A new study is made only once its table is known to be good.
  if (typeof target !== 'string') await checkFirst(library, target, request);
  const study = await madeStudy(library, target);
  const progress = (p: TableProgress) => io.progress(progressText(request.file, p));
  const { rows, preview: seen } = await importTableInto(library, study, { ...request, progress });
  return { study, steps: [{ file: request.file, rows, notes: seen.notes }] };
}

const madeStudy = async (library: Library, target: Id | NewStudy): Promise<Id> =>
  typeof target === 'string' ? target : createStudy(library, target);

async function checkFirst(
  library: Library,
  target: NewStudy,
  request: ImportRequest,
): Promise<void> {
  const seen = await rehearse(library, target, (copy, study) =>
    previewTableInto(copy, study, request),
  );
  const [first, ...more] = seen.problems;
  if (first) throw new RefusalError(first, ...more);
}

function folderRequest(dir: string, options: ImportOptions, by: string): RecordRequest {
  if (Object.keys({ ...options.column, ...options.unit }).length > 0) throw oneTableOnly(dir);
  const { columns: _columns, units: _units, spreads, ...overrides } = overridesOf(options);
  return { dir, by, overrides, ...(spreads ? { spreads } : {}) };
}

async function preview(
  io: Io,
  library: Library,
  target: Id | NewStudy,
  path: string,
  options: ImportOptions,
  by: string,
): Promise<void> {
  const seen = (await stat(path)).isDirectory()
    ? await previewRecord(library, target, folderRequest(path, options, by))
    : [await previewOne(library, target, await requestFor(path, options, by))];
  io.out(
    options.json ? `${JSON.stringify({ previews: seen })}\n` : seen.map(previewText).join('\n'),
  );
}

const previewOne = (
  library: Library,
  target: Id | NewStudy,
  request: ImportRequest,
): Promise<Preview> =>
  typeof target === 'string'
    ? previewTableInto(library, target, request)
    : rehearse(library, target, (copy, study) => previewTableInto(copy, study, request));

async function requestFor(path: string, options: ImportOptions, by: string) {
  const form = options.form ?? formOf(path);
  if (!form) throw noForm(path);
  const { sheet, decimal } = options;
  const choice = {
    ...(sheet === undefined ? {} : { sheet }),
    ...(decimal === undefined ? {} : { decimal }),
  };
  return { ...(await fileToImport(path, choice)), form, by, overrides: overridesOf(options) };
}

function overridesOf(options: ImportOptions): Overrides {
  const { delimiter, decimal, how, instrument, makeAssemblies } = options;
  return {
    columns: options.column,
    units: options.unit,
    spreads: options.spread,
    ...(delimiter === undefined
      ? {}
      : { delimiter: delimiter as NonNullable<Overrides['delimiter']> }),
    ...(decimal === undefined ? {} : { decimal }),
    ...(how === undefined ? {} : { how: wayNamed(how) }),
    ...(instrument === undefined ? {} : { instrument }),
    ...(makeAssemblies ? { makeAssemblies } : {}),
  };
}

/** "parts.csv: checking 42 %" */
export function progressText(file: string, p: TableProgress): string {
  const share = p.total ? ` ${Math.round((100 * p.done) / p.total)} %` : '';
  return `${file}: ${p.phase}${share}`;
}

async function mustExist(path: string): Promise<void> {
  try {
    await stat(path);
  } catch {
    throw new RefusalError({
      code: 'not-found',
      place: { file: path },
      value: path,
      why: 'there is no such file or folder',
      next: 'Check the path.',
    });
  }
}

function noStudy(): never {
  throw new RefusalError({
    code: 'bad-call',
    place: { column: 'study' },
    why: '--study is missing',
    next: 'Name the study to import into; with --new it is made first.',
  });
}

const bundleHasItsOwn = (study: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { column: 'study' },
    value: study,
    why: 'a bundle brings its own study',
    next: 'Leave --study out.',
  });

const oneTableOnly = (dir: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { file: dir },
    value: dir,
    why: '--column and --unit speak of one table, and this is a folder',
    next: 'Import that table by itself.',
  });

const noForm = (path: string): RefusalError =>
  new RefusalError({
    code: 'bad-call',
    place: { file: path },
    value: path,
    why: 'what the table holds can not be told from its name',
    next: `Say it with --form: ${TABLE_FORMS.join(', ')}.`,
  });
