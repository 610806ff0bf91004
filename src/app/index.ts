/**
 * app: use cases shared by the server and the command line.
 *
 * Open a library, import a record, record a change, ask, sum up a study, write its report.
 * Depends on every layer below it. Stays away from HTTP, terminals and wording.
 */
export * from './library.ts';
