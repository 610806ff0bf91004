import type { FastifyInstance } from 'fastify';
import type { LanCertificate } from './certificate.ts';
import { PAGE_CSS } from './page.ts';
import { PAIR_JS, pairPage } from './pair-page.ts';
import { trustPage } from './trust-page.ts';

/** Pages for who is not signed in yet: how to trust the server, and where to type the code. */
export function addLanPages(app: FastifyInstance, certificate: LanCertificate): void {
  const files: readonly (readonly [path: string, type: string, body: string | Buffer])[] = [
    ['/pair', 'text/html; charset=utf-8', pairPage()],
    ['/pair/page.css', 'text/css; charset=utf-8', PAGE_CSS],
    ['/pair/page.js', 'text/javascript; charset=utf-8', PAIR_JS],
    ['/trust', 'text/html; charset=utf-8', trustPage(certificate)],
    ['/trust/authority.crt', 'application/x-x509-ca-cert', certificate.authority],
  ];
  for (const [path, type, body] of files)
    app.get(path, { schema: { hide: true } }, async (_request, reply) =>
      reply.type(type).header('cache-control', 'no-store').send(body),
    );
}
