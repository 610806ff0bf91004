import { spawnSync } from 'node:child_process';
import { X509Certificate } from 'node:crypto';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { ensureDebian } from '../../scripts/ensure-debian.ts';
import {
  isGood,
  makeAuthority,
  makeServerCertificate,
  type Signed,
} from '../../src/server/lan/authority.ts';
import { certificateFor } from '../../src/server/lan/certificate.ts';

let dir: string;
beforeEach(async () => {
  dir = await mkdtemp(join(tmpdir(), 'hoistside-certificate-'));
});
afterEach(() => rm(dir, { recursive: true }));

const OWN = { addresses: ['192.168.7.20', '10.0.0.5'], names: ['bench.local', 'bench'] };

/** What a general-purpose verifier says: the openssl command of the system. */
async function openssl(authority: Signed, server: Signed, ...more: string[]): Promise<string> {
  const [ca, cert] = [join(dir, 'ca.pem'), join(dir, 'server.pem')];
  await writeFile(ca, authority.cert);
  await writeFile(cert, server.cert);
  const args = ['verify', '-x509_strict', '-purpose', 'sslserver', '-CAfile', ca, ...more, cert];
  const { stdout, stderr } = spawnSync(ensureDebian('openssl', 'openssl'), args, {
    encoding: 'utf8',
  });
  return `${stdout}${stderr}`;
}

describe('a certificate made on the machine', () => {
  test.each([
    ['-verify_hostname', 'bench.local'],
    ['-verify_hostname', 'bench'],
    ['-verify_ip', '192.168.7.20'],
    ['-verify_ip', '10.0.0.5'],
  ])('is good to openssl by %s %s', async (flag, name) => {
    const authority = await makeAuthority('bench');
    const server = await makeServerCertificate(authority, OWN);
    expect(await openssl(authority, server, flag, name)).toMatch(/server\.pem: OK\n$/);
  });

  test('is not by another name', async () => {
    const authority = await makeAuthority('bench');
    const server = await makeServerCertificate(authority, OWN);
    expect(await openssl(authority, server, '-verify_hostname', 'other.local')).toContain(
      'mismatch',
    );
  });

  test.each([
    ['a public address', { addresses: ['203.0.113.9'], names: ['bench.local'] }],
    ['a name of the internet', { addresses: [], names: ['www.example'] }],
    ['another bare name', { addresses: [], names: ['bench2'] }],
  ])('can not vouch for %s, whoever has the key of the authority', async (_what, names) => {
    const authority = await makeAuthority('bench');
    const forged = await makeServerCertificate(authority, names);
    expect(await openssl(authority, forged)).toContain('permitted subtree violation');
  });

  test('is no authority itself, and lasts little more than a year', async () => {
    const authority = await makeAuthority('bench');
    const server = new X509Certificate((await makeServerCertificate(authority, OWN)).cert);
    expect(server.ca).toBe(false);
    const days = (Date.parse(server.validTo) - Date.now()) / 86_400_000;
    expect(days).toBeGreaterThan(390);
    expect(days).toBeLessThan(398);
  });
});

describe('kept in a folder', () => {
  test('it is the same at the next start', async () => {
    const [first, second] = [await certificateFor(dir, OWN), await certificateFor(dir, OWN)];
    expect(second).toEqual(first);
  });

  test('it is made anew for another address; the authority stays', async () => {
    const first = await certificateFor(dir, OWN);
    const moved = { ...OWN, addresses: ['192.168.7.21'] };
    const second = await certificateFor(dir, moved);
    expect(second.fingerprint).toBe(first.fingerprint);
    expect(second.server).not.toEqual(first.server);
    expect(new X509Certificate(second.server.cert).checkIP('192.168.7.21')).toBeDefined();
  });

  test('it is made anew when it ends within a month, or its key is lost', async () => {
    const authority = await makeAuthority('bench');
    const lastYear = new Date(Date.now() - 380 * 86_400_000);
    const old = await makeServerCertificate(authority, OWN, lastYear);
    expect(isGood(old, authority, OWN)).toBe(false);
    const first = await certificateFor(dir, OWN);
    await rm(join(dir, 'server-key.pem'));
    const second = await certificateFor(dir, OWN);
    expect(second.server).not.toEqual(first.server);
    expect(await readFile(join(dir, 'server-key.pem'), 'utf8')).toContain('PRIVATE KEY');
  });

  test('a machine that was renamed keeps its authority, and loses its bare name', async () => {
    const first = await certificateFor(dir, OWN);
    const renamed = { ...OWN, names: ['other.local', 'other'] };
    const second = await certificateFor(dir, renamed);
    expect(second.fingerprint).toBe(first.fingerprint);
    expect(second.names.names).toEqual(['other.local']);
  });
});
