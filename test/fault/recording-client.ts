import { ackAnswer, changesAnswer } from '../../src/server/index.ts';
import type { Change, Entry } from '../../src/study/index.ts';
import { addNode, Device, studyPut } from '../store/make-changes.ts';
import type { ChildServer } from './child-server.ts';

export const STUDY = 'study-killed';
export const PART = 'door';

/** A further weighing of the one part: readings are never overwritten, so each must stay. */
const weighing = (n: number): Entry => ({
  v: 1,
  e: 'reading.add',
  reading: {
    id: `weighing ${n}`,
    of: { subject: PART, property: 'mass', condition: 'kerb' },
    value: { t: 'scalar', kind: 'mass', x: 12 + n / 1000, spread: { s: 'normal', u: 0.01 } },
    asWritten: `${12 + n / 1000} ± 0.01 kg`,
    how: 'measured',
    by: 'R. Example',
    takenAt: { local: '2026-01-05T09:00:00', zone: 'UTC' },
    instrument: 'bench scale',
    evidence: [],
    causes: [],
  },
});

/** A device that records one change after the other, and sends again what was not acknowledged. */
export class RecordingClient {
  readonly #device = new Device(STUDY);
  #sent: Change[] = [];
  #acknowledged = 0;

  /** Changes that the server said are on disk. */
  get acknowledged(): readonly Change[] {
    return this.#sent.slice(0, this.#acknowledged);
  }
  /** The change on its way, if any: it may have been kept or not. */
  get open(): readonly Change[] {
    return this.#sent.slice(this.#acknowledged);
  }

  /** Records the next change; returns once it is acknowledged. */
  async record(server: ChildServer): Promise<void> {
    if (this.open.length === 0) this.#sent.push(this.#next());
    const answer = await server.call(`/api/studies/${STUDY}/changes`, {
      method: 'POST',
      body: { changes: this.open },
    });
    if (answer.status !== 200) throw new Error(`not acknowledged: ${answer.text}`);
    ackAnswer.parse(answer.json);
    this.#acknowledged = this.#sent.length;
  }

  #next(): Change {
    const n = this.#sent.length;
    if (n > 0) return this.#device.change([weighing(n)]);
    const vehicle = addNode('van', null, 'vehicle');
    return this.#device.change([studyPut('killed, made up'), vehicle, addNode(PART, 'van')]);
  }
}

/** Every change that a server holds, page by page, in the order of arrival. */
export async function heldBy(server: ChildServer): Promise<readonly Change[]> {
  const held: Change[] = [];
  for (let after = 0; ; ) {
    const answer = await server.call(`/api/studies/${STUDY}/changes?after=${after}`);
    if (answer.status !== 200) throw new Error(`not handed out: ${answer.text}`);
    const { changes, next } = changesAnswer.parse(answer.json);
    if (changes.length === 0) return held;
    held.push(...changes.map((arrived) => arrived.change));
    after = next;
  }
}
