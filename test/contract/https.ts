import { request } from 'node:https';
import { connect } from 'node:tls';
import type { Answered, Call } from './http.ts';

export interface TlsPeer {
  readonly port: number;
  /** Certificate that is trusted, PEM: nothing else is. */
  readonly ca: string;
  /** Name under which the server is called, and which its certificate must have. */
  readonly name: string;
}

/** One request over TLS, checked as a browser does that was told to trust `ca`. */
export function callTls(
  { port, ca, name }: TlsPeer,
  path: string,
  { method = 'GET', body, headers = {} }: Call = {},
): Promise<Answered> {
  const isRaw = typeof body === 'string' || body instanceof Uint8Array;
  const payload = body === undefined || isRaw ? body : JSON.stringify(body);
  const type = payload === undefined || isRaw ? {} : { 'content-type': 'application/json' };
  const to = { host: '127.0.0.1', servername: name, port, path, method, ca, agent: false };
  const all = { host: `${name}:${port}`, ...type, ...headers };
  return new Promise((resolve, reject) => {
    const sent = request({ ...to, headers: all }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('error', reject);
      response.on('end', () => {
        const bytes = Buffer.concat(chunks);
        const text = bytes.toString('utf8');
        const isJson = response.headers['content-type']?.startsWith('application/json') ?? false;
        const json: unknown = isJson ? JSON.parse(text) : undefined;
        resolve({ status: response.statusCode ?? 0, headers: response.headers, bytes, text, json });
      });
    });
    sent.on('error', reject);
    sent.end(payload);
  });
}

/** What the server's certificate is refused for, or undefined when it is taken. */
export const tlsComplaint = ({ port, ca, name }: TlsPeer): Promise<string | undefined> =>
  new Promise((resolve) => {
    const socket = connect({ host: '127.0.0.1', servername: name, port, ca }, () => {
      socket.destroy();
      resolve(undefined);
    });
    socket.on('error', (error) => resolve(error.message));
  });
