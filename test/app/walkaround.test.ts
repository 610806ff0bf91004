import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  acceptNumbered,
  countInLibrary,
  createStudy,
  importWalkaround,
  keepWord,
  type Library,
  numberedDrafts,
  previewWalkaround,
  rejectNumbered,
  splitNumbered,
} from '../../src/app/index.ts';
import { CLAIM_QUESTIONS, loadQuestion } from '../../src/engine/index.ts';
import { type Id, isMissing, type NodeKind, RefusalError } from '../../src/study/index.ts';
import { Libraries } from './libraries.ts';

const TALK = `WEBVTT

00:00:02.000 --> 00:00:06.000
<v lead>the lid is two point six millimetres thick on the gauge

00:00:07.000 --> 00:00:10.000
<v lead>and it weighs nine or ten kilos

00:00:11.000 --> 00:00:15.000
<v second>the camber link is two kilos

00:00:16.000 --> 00:00:20.000
<v second>the floor is stiffer than the lid mark that

00:00:21.000 --> 00:00:24.000
<v lead>the whatsit is three kilos
`;

let libraries: Libraries;
let library: Library;
let study: Id;
const view = () => library.view(study);
const node = (id: Id, kind: NodeKind, parent: Id, name: string) =>
  ({ v: 1, e: 'node.add', node: { id, kind, parent, label: id, name } }) as const;

beforeAll(async () => {
  libraries = await Libraries.start();
  library = await libraries.open('talk');
  study = await createStudy(library, {
    title: 'cart',
    vehicle: 'CART',
    invented: true,
    by: 'lead',
  });
  const root = (await view()).root()?.id ?? '';
  await library.record(study, 'lead', 'parts', [
    node('40', 'assembly', root, 'traction battery'),
    node('40-1', 'part', '40', 'Lid, moulded'),
    node('40-2', 'part', '40', 'Floor, friction stir welded planks'),
    node('61-1', 'part', '40', 'Camber link LH'),
    node('61-2', 'part', '40', 'Camber link RH'),
  ]);
  await importWalkaround(library, study, {
    file: 'talk.vtt',
    bytes: new TextEncoder().encode(TALK),
    startedAt: '2026-10-05T09:30:00',
    by: 'lead',
  });
});
afterAll(() => libraries.end());

const numberOf = async (words: string): Promise<string> => {
  const at = numberedDrafts(await view()).findIndex(
    (d) => d.draft.words.includes(words) && !d.settled,
  );
  return String(at + 1);
};
const thickness = async () => (await view()).cell('40-1', 'thickness');

describe('a walkaround in the record', () => {
  it('is kept with its drafts and marks; nothing of it is a reading or a claim yet', async () => {
    const now = await view();
    expect(now.speeches()).toMatchObject([{ file: 'talk.vtt', cues: { length: 5 } }]);
    expect(numberedDrafts(now).map((d) => [d.draft.kind, d.draft.about])).toEqual([
      ['quantity', ['40-1']],
      ['quantity', ['40-1']],
      ['quantity', ['61-1', '61-2']],
      ['comparison', ['40-2']],
      ['quantity', ['40-2']],
    ]);
    expect(now.marks()).toMatchObject(
      [{ how: 'word', about: '40-2', at: { local: /2026-10-05T09:30:1\d/ } }].map((m) => ({
        ...m,
        at: {},
      })),
    );
    expect(isMissing(await thickness())).toBe(true);
    expect(now.claims()).toEqual([]);
  });

  it('what was measured is refused without its instrument, and accepted with it', async () => {
    const number = await numberOf('two point six');
    await expect(acceptNumbered(library, study, number, {}, 'lead')).rejects.toThrow(
      /names no instrument/,
    );
    expect(isMissing(await thickness())).toBe(true);
    await acceptNumbered(library, study, number, { instrument: 'gauge 3' }, 'lead');
    const cell = await thickness();
    expect(cell).toMatchObject({ how: 'measured', value: { x: 0.0026, spread: { s: 'unknown' } } });
    const reading = isMissing(cell) ? undefined : cell.from[0]?.reading;
    expect(reading).toMatchObject({
      takenAt: { local: expect.stringContaining('2026-10-05T09:30') },
      evidence: [{ words: expect.stringContaining('two point six') }],
    });
    await expect(
      acceptNumbered(library, study, number, { instrument: 'gauge 3' }, 'lead'),
    ).rejects.toThrow(/accepted already/);
  });

  it('a range keeps both ends; a correction is marked as one', async () => {
    await acceptNumbered(library, study, await numberOf('nine or ten'), {}, 'lead');
    expect((await view()).cell('40-1', 'mass')).toMatchObject({
      how: 'guessed',
      value: { x: 9.5, spread: { s: 'rectangular', half: 0.5 } },
    });
  });

  it('left or right must be said or split', async () => {
    const number = await numberOf('two kilos');
    await expect(acceptNumbered(library, study, number, {}, 'lead')).rejects.toThrow(
      /left or right was not said/,
    );
    await splitNumbered(library, study, number, 'lead');
    const open = numberedDrafts(await view()).filter(
      (d) => d.draft.words.includes('two kilos') && !d.settled,
    );
    expect(open.map((d) => d.draft.about)).toEqual([['61-1'], ['61-2']]);
    await acceptNumbered(library, study, await numberOf('two kilos'), { value: '2.1 kg' }, 'lead');
    expect((await view()).cell('61-1', 'mass')).toMatchObject({ value: { x: 2.1 } });
    await rejectNumbered(library, study, await numberOf('two kilos'), 'lead');
    expect(isMissing((await view()).cell('61-2', 'mass'))).toBe(true);
  });

  it('a comparison becomes a claim with its kind and its words as evidence', async () => {
    await acceptNumbered(library, study, await numberOf('stiffer'), {}, 'lead');
    expect((await view()).claims()).toMatchObject([
      {
        kind: 'stiffness',
        how: 'inferred',
        about: ['40-2'],
        by: 'second',
        evidence: [{ speech: expect.any(String) }],
      },
    ]);
  });

  it("the study's own words are read from then on", async () => {
    const bytes = new TextEncoder().encode(TALK);
    const last = async () =>
      previewWalkaround(await view(), bytes, 'talk.vtt')
        .reading.drafts.at(-1)
        ?.parts.map((p) => p.label);
    expect(await last()).toEqual(['40-2']);
    await keepWord(library, study, 'whatsit', '61-2', 'lead');
    expect(await last()).toEqual(['61-2']);
  });

  it('how common something is, counted with its interval', async () => {
    await createStudy(library, { title: 'other', vehicle: 'OTHER', invented: true, by: 'lead' });
    const found = await countInLibrary(library, 'friction stir');
    expect(found).toMatchObject({ having: ['cart'], without: ['other'], invented: 2 });
    expect(found.proportion).toMatchObject({ hits: 1, of: 2, share: 0.5 });
    expect(found.proportion.low).toBeGreaterThan(0.09);
  });

  it('the same recording twice is refused', async () => {
    const again = {
      file: 'talk.vtt',
      bytes: new TextEncoder().encode(TALK),
      startedAt: '2026-10-05T09:30:00',
      by: 'lead',
    };
    await expect(importWalkaround(library, study, again)).rejects.toThrow(RefusalError);
  });
});

describe('measured needs an instrument, whichever door', () => {
  const reading = (how: 'measured' | 'guessed') =>
    ({
      id: `r-${how}`,
      of: { subject: '40-1', property: 'thickness', condition: 'kerb' },
      value: { t: 'scalar', kind: 'length', x: 0.002, spread: { s: 'unknown' } },
      asWritten: '2 mm',
      how,
      by: 'lead',
      takenAt: { local: '2026-10-05' },
      evidence: [],
      causes: [],
    }) as const;

  it('readings, and claims that say they are measured', async () => {
    const record = (entry: Parameters<Library['record']>[3][number]) =>
      library.record(study, 'lead', 'door', [entry]);
    await expect(record({ v: 1, e: 'reading.add', reading: reading('measured') })).rejects.toThrow(
      /names no instrument/,
    );
    const claim = {
      id: 'c',
      words: 'two',
      how: 'measured',
      by: 'lead',
      heard: '2026-10-05',
      about: [],
      evidence: [],
    } as const;
    await expect(record({ v: 1, e: 'claim.put', claim })).rejects.toThrow(/needs an instrument/);
  });
});

it('kinds of claims lead to questions and outputs of the registry', async () => {
  for (const { question, output } of Object.values(CLAIM_QUESTIONS).flat()) {
    const { question: found } = await loadQuestion(question);
    expect(found.body.outputs.map((o) => o.name)).toContain(output);
  }
});
