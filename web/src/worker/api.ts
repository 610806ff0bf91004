import type {
  AckAnswer,
  BlobAnswer,
  ChangesAnswer,
  HereAnswer,
  HerePost,
  NewStudy,
  NewStudyAnswer,
  StudiesAnswer,
} from '../../../src/server/contract.ts';
import { type Change, type Id, type Refusal, RefusalError } from '../../../src/study/index.ts';

/** The server can not be reached, or failed: what was sent may be sent again. */
export class Unreachable extends Error {
  constructor(why: string) {
    super(why);
    this.name = 'Unreachable';
  }
}

const FILE = 'application/octet-stream';

/** A network that is there and carries nothing is taken for one that is not, after so long. */
const SHORT_MS = 15_000;
const LONG_MS = 60_000;

/** Calls of the server's interface, with the token of the printed address. */
export class Api {
  constructor(
    private readonly origin: string,
    private readonly token: string,
  ) {}

  studies(): Promise<StudiesAnswer> {
    return this.json('GET', '/api/studies', undefined, SHORT_MS);
  }

  newStudy(spec: NewStudy): Promise<NewStudyAnswer> {
    return this.json('POST', '/api/studies', spec);
  }

  changes(study: Id, after: number, limit: number): Promise<ChangesAnswer> {
    const path = `${studyPath(study)}/changes?after=${after}&limit=${limit}`;
    return this.json('GET', path, undefined, LONG_MS);
  }

  /** Answers once the changes are on disk. */
  post(study: Id, changes: readonly Change[]): Promise<AckAnswer> {
    return this.json('POST', `${studyPath(study)}/changes`, { changes }, LONG_MS);
  }

  /** Tells who has what in hand in this page, and hears of the others. */
  here(study: Id, here: HerePost): Promise<HereAnswer> {
    return this.json('POST', `${studyPath(study)}/here`, here, SHORT_MS);
  }

  /** Answers once the bytes are on disk, under their hash. */
  putBlob(bytes: Blob): Promise<BlobAnswer> {
    return this.json('PUT', '/api/blobs', bytes);
  }

  async file(path: string): Promise<Blob> {
    return (await this.send('GET', path)).blob();
  }

  /** `body` goes as JSON, a file as its bytes. @throws RefusalError for what the server refuses, Unreachable when it can not answer. */
  async json<T>(method: string, path: string, body?: unknown, withinMs?: number): Promise<T> {
    const response = await this.send(method, path, body, withinMs);
    // The rest of an answer may be cut off as well as its beginning.
    return response.json().catch(noAnswer) as Promise<T>;
  }

  async send(method: string, path: string, body?: unknown, withinMs?: number): Promise<Response> {
    const isFile = body instanceof Blob;
    const init: RequestInit = {
      method,
      headers: {
        authorization: `Bearer ${this.token}`,
        ...(body === undefined ? {} : { 'content-type': isFile ? FILE : 'application/json' }),
      },
      ...(body === undefined ? {} : { body: isFile ? body : JSON.stringify(body) }),
      ...(withinMs === undefined ? {} : { signal: AbortSignal.timeout(withinMs) }),
    };
    const response = await fetch(`${this.origin}${path}`, init).catch(noAnswer);
    if (response.ok) return response;
    throw await refused(response);
  }
}

function noAnswer(error: unknown): never {
  throw new Unreachable(`the server does not answer (${String(error)})`);
}

export const studyPath = (study: Id): string => `/api/studies/${encodeURIComponent(study)}`;

/** What the server said instead of an answer. A defect may pass: send again. */
async function refused(response: Response): Promise<Error> {
  const said: unknown = await response.json().catch(() => undefined);
  const refusals = refusalsOf(said);
  if (!refusals) return new Unreachable(`the server failed with status ${response.status}`);
  const [first, ...more] = refusals;
  return new RefusalError(first, ...more);
}

function refusalsOf(said: unknown): readonly [Refusal, ...Refusal[]] | undefined {
  if (typeof said !== 'object' || said === null || !('refusals' in said)) return undefined;
  const list = said.refusals as readonly Refusal[];
  const [first, ...more] = list;
  return first ? [first, ...more] : undefined;
}
