import { request as httpRequest, type IncomingHttpHeaders } from 'node:http';

export interface Answered {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly bytes: Buffer;
  readonly text: string;
  /** The body as JSON; `undefined` when it is none. */
  readonly json: unknown;
}

export interface Call {
  readonly method?: string;
  /** Anything but text and bytes is sent as JSON. */
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

/** One request on a connection of its own, as it stands: Host and Origin can be anything, which `fetch` does not allow. */
export function call(
  port: number,
  path: string,
  { method = 'GET', body, headers = {} }: Call = {},
): Promise<Answered> {
  const isRaw = typeof body === 'string' || body instanceof Uint8Array;
  const payload = body === undefined || isRaw ? body : JSON.stringify(body);
  const type = body === undefined || isRaw ? {} : { 'content-type': 'application/json' };
  return new Promise((resolve, reject) => {
    const request = httpRequest(
      { host: '127.0.0.1', port, path, method, agent: false, headers: { ...type, ...headers } },
      (response) => {
        const chunks: Buffer[] = [];
        response.on('data', (chunk: Buffer) => chunks.push(chunk));
        response.on('error', reject);
        response.on('end', () =>
          resolve(answered(response.statusCode ?? 0, response.headers, Buffer.concat(chunks))),
        );
      },
    );
    request.on('error', reject);
    request.end(payload);
  });
}

function answered(status: number, headers: IncomingHttpHeaders, bytes: Buffer): Answered {
  const text = bytes.toString('utf8');
  const isJson = headers['content-type']?.startsWith('application/json') ?? false;
  return { status, headers, bytes, text, json: isJson ? JSON.parse(text) : undefined };
}
