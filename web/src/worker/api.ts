import type {
  AckAnswer,
  ChangesAnswer,
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

/** Calls of the server's interface, with the token of the printed address. */
export class Api {
  constructor(
    private readonly origin: string,
    private readonly token: string,
  ) {}

  studies(): Promise<StudiesAnswer> {
    return this.json('GET', '/api/studies');
  }

  newStudy(spec: NewStudy): Promise<NewStudyAnswer> {
    return this.json('POST', '/api/studies', spec);
  }

  changes(study: Id, after: number, limit: number): Promise<ChangesAnswer> {
    return this.json('GET', `${studyPath(study)}/changes?after=${after}&limit=${limit}`);
  }

  /** Answers once the changes are on disk. */
  post(study: Id, changes: readonly Change[]): Promise<AckAnswer> {
    return this.json('POST', `${studyPath(study)}/changes`, { changes });
  }

  async file(path: string): Promise<Blob> {
    return (await this.send('GET', path)).blob();
  }

  /** `body` goes as JSON, a file as its bytes. @throws RefusalError for what the server refuses, Unreachable when it can not answer. */
  async json<T>(method: string, path: string, body?: unknown): Promise<T> {
    return (await (await this.send(method, path, body)).json()) as T;
  }

  async send(method: string, path: string, body?: unknown): Promise<Response> {
    const isFile = body instanceof Blob;
    const init: RequestInit = {
      method,
      headers: {
        authorization: `Bearer ${this.token}`,
        ...(body === undefined ? {} : { 'content-type': isFile ? FILE : 'application/json' }),
      },
      ...(body === undefined ? {} : { body: isFile ? body : JSON.stringify(body) }),
    };
    const response = await fetch(`${this.origin}${path}`, init).catch((error: unknown) => {
      throw new Unreachable(`the server does not answer (${String(error)})`);
    });
    if (response.ok) return response;
    throw await refused(response);
  }
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
