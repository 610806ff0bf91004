import { join } from 'node:path';
import type { OwnNames } from './addresses.ts';
import {
  derOf,
  fingerprintOf,
  isGood,
  isOver,
  makeAuthority,
  makeServerCertificate,
  permitted,
  type Signed,
} from './authority.ts';
import { readPrivate, writePrivate } from './private-files.ts';

/** What a server on the network shows, and what tablets have to trust for it. */
export interface LanCertificate {
  readonly server: Signed;
  readonly names: OwnNames;
  /** The authority's certificate as bytes (DER). */
  readonly authority: Buffer;
  /** Its SHA-256, to be compared by eye. */
  readonly fingerprint: string;
}

/**
 * The certificate of a library's server, kept in its folder and made anew when it ends soon or
 * the machine has other addresses. The authority stays for ten years, so that tablets need to be
 * told once.
 */
export async function certificateFor(folder: string, own: OwnNames): Promise<LanCertificate> {
  const bare = own.names.find((name) => !name.endsWith('.local')) ?? 'hoistside';
  const authority =
    (await kept(folder, 'authority', (signed) => !isOver(signed))) ??
    (await keep(folder, 'authority', await makeAuthority(bare)));
  const names = permitted(authority, own);
  const server =
    (await kept(folder, 'server', (signed) => isGood(signed, authority, names))) ??
    (await keep(folder, 'server', await makeServerCertificate(authority, names)));
  return { server, names, authority: derOf(authority), fingerprint: fingerprintOf(authority) };
}

type Role = 'authority' | 'server';

async function kept(
  folder: string,
  role: Role,
  isStillGood: (signed: Signed) => boolean,
): Promise<Signed | undefined> {
  const cert = await readPrivate(join(folder, `${role}.pem`));
  const key = await readPrivate(join(folder, `${role}-key.pem`));
  if (cert === undefined || key === undefined) return undefined;
  return isStillGood({ cert, key }) ? { cert, key } : undefined;
}

/** The key first: a certificate without its key is made anew, not used. */
async function keep(folder: string, role: Role, signed: Signed): Promise<Signed> {
  await writePrivate(join(folder, `${role}-key.pem`), signed.key);
  await writePrivate(join(folder, `${role}.pem`), signed.cert);
  return signed;
}
