import { hostname, networkInterfaces } from 'node:os';
import { isPrivate } from './name-constraints.ts';

/** How other machines can call this one. */
export interface OwnNames {
  /** IPv4 addresses of private networks. */
  readonly addresses: readonly string[];
  /** Names, lower case: its own, and the one that workshops' networks answer to without a server. */
  readonly names: readonly string[];
}

export function ownNames(): OwnNames {
  const all = Object.values(networkInterfaces()).flatMap((list) => list ?? []);
  const addresses = all
    .filter((one) => one.family === 'IPv4' && !one.internal && isPrivate(one.address))
    .map((one) => one.address);
  const [first = 'hoistside'] = hostname().toLowerCase().split('.');
  const own = first.replace(/[^a-z0-9-]/g, '') || 'hoistside';
  return { addresses: [...new Set(addresses)], names: [`${own}.local`, own] };
}
