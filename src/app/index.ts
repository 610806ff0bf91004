/**
 * app: use cases shared by the server and the command line.
 *
 * Open a library, make a study, import a record, record a change, ask, sum up a study, write
 * its report.
 * Depends on every layer below it. Stays away from HTTP, terminals and wording.
 */
export * from './ask.ts';
export { type Backup, backupLibrary } from './backup/backup-library.ts';
export * from './backup/check-library.ts';
export * from './backup/restore-backup.ts';
export * from './backup/scheduled-backup.ts';
export * from './bag-labels.ts';
export * from './bundle/import-bundle.ts';
export * from './bundle/save-bundle.ts';
export * from './bundle/write-bundle.ts';
export * from './compare.ts';
export * from './compare-study.ts';
export * from './cost.ts';
export * from './count-in-library.ts';
export * from './create-study.ts';
export * from './describe-questions.ts';
export * from './hoist.ts';
export * from './import-record.ts';
export * from './import-table.ts';
export * from './library.ts';
export * from './measure-next.ts';
export * from './photographs.ts';
export * from './purge-study.ts';
export * from './record-claim.ts';
export * from './rehearsal.ts';
export * from './sample.ts';
export * from './study-report.ts';
export * from './table-file.ts';
export * from './version.ts';
export * from './walkaround.ts';
