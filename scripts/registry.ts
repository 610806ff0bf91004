/**
 * Makes what follows from the question files (src/engine/registry.generated.ts, the pages of
 * docs/methods and docs/validation) and from the schemas of the record (docs/bundle.schema.json).
 * With --check it writes nothing and fails when any is stale.
 */
import { generatedFiles, stalePaths, writeFiles } from './registry/generated-files.ts';
import { ROOT } from './root.ts';

const made = await generatedFiles(ROOT);
const stale = stalePaths(ROOT, made);

if (process.argv.includes('--check')) {
  for (const path of stale) console.error(`${path} is not what the sources give.`);
  if (stale.length > 0) console.error('Run `npm run registry` and commit what it writes.');
  process.exitCode = stale.length > 0 ? 1 : 0;
} else {
  writeFiles(ROOT, made);
  console.log(
    `${made.size} files made from questions and schemas, ${stale.length} of them changed.`,
  );
}
