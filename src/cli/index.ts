/**
 * cli: the command line, one file a command.
 *
 * Reads what was typed, opens the library, calls a use case, prints. `--json` prints one object;
 * exit codes come from the one table of refusals.
 * Depends on app, report, server and, once, store to wire it. Stays away from calculation.
 */
export { main } from './main.ts';
