/**
 * server: the HTTP interface to a library, and the pages: for this machine, and for paired
 * devices on the network when it is asked to.
 *
 * Schemas of requests and answers (contract.ts, which the pages import too), routes, the table
 * of errors at work, and who may call: Host and Origin, a token of this run on the loopback
 * address, and lan/ for the network: a certificate of this machine's own, pairing, devices.
 * Depends on app and report, on study and quantity for their types, and on the store's port.
 * Stays away from calculation, from SQL and from the wording of reports.
 */
export * from './contract.ts';
export { type PairedDevice, PairedDevices } from './lan/paired-devices.ts';
export * from './start-server.ts';
