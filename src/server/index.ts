/**
 * server: the HTTP interface to a library, and the pages, for this machine only.
 *
 * Schemas of requests and answers (contract.ts, which the pages import too), routes, the table
 * of errors at work, and who may call: loopback address, Host and Origin, a token.
 * Depends on app and report, on study and quantity for their types, and on the store's port.
 * Stays away from calculation, from SQL and from the wording of reports.
 */
export * from './contract.ts';
export * from './start-server.ts';
