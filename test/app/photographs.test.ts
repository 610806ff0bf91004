import { createHash } from 'node:crypto';
import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import {
  createStudy,
  exportPhotographs,
  importPhotographs,
  importWalkaround,
  type Library,
} from '../../src/app/index.ts';
import { readExif } from '../../src/capture/index.ts';
import type { Id } from '../../src/study/index.ts';
import { madeJpeg } from '../capture/made-jpeg.ts';
import { blobIn, Libraries } from './libraries.ts';

const PHOTOS = 500;
const BYTES = 300_000;
const MOST_MB = 500;
/** The camera is 43 s ahead of the recorder. */
const AHEAD_S = 43;
const two = (n: number): string => String(n).padStart(2, '0');

let libraries: Libraries;
let library: Library;
let study: Id;
let card: string;
beforeAll(async () => {
  libraries = await Libraries.start();
  library = await libraries.open('photos');
  study = await createStudy(library, {
    title: 'cart',
    vehicle: 'CART',
    invented: true,
    by: 'lead',
  });
  const root = (await library.view(study)).root()?.id ?? '';
  const part = (id: string, name: string) =>
    ({ v: 1, e: 'node.add', node: { id, kind: 'part', parent: root, label: id, name } }) as const;
  await library.record(study, 'lead', 'parts', [part('A1', 'Bonnet'), part('A2', 'Bulkhead')]);
  const talk =
    'WEBVTT\n\n00:00.000 --> 00:05.000\nthe bonnet is two millimetres\n\n01:00.000 --> 01:05.000\nthe bulkhead is one millimetre\n';
  await importWalkaround(library, study, {
    file: 'talk.vtt',
    bytes: Buffer.from(talk),
    startedAt: '2026-10-05T09:30:00',
    by: 'lead',
  });
  card = libraries.path('card');
  await mkdir(card);
  for (let i = 0; i < PHOTOS; i++) {
    const s = i + AHEAD_S;
    const taken = `2026:10:05 09:${two(30 + Math.floor(s / 60))}:${two(s % 60)}`;
    await writeFile(
      join(card, `p${String(i).padStart(3, '0')}.jpg`),
      madeJpeg({ taken }, BYTES, i + 1),
    );
  }
  await writeFile(join(card, 'again.jpg'), await readFile(join(card, 'p007.jpg')));
}, 120_000);
afterAll(() => libraries.end());

const sha = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

test('500 photographs come in with progress, in little memory, tied by time, unchanged', async () => {
  let most = 0;
  const steps: number[] = [];
  const kept = await importPhotographs(library, study, {
    dir: card,
    by: 'lead',
    clockOffsetS: -AHEAD_S,
    progress: (done) => {
      steps.push(done);
      most = Math.max(most, process.memoryUsage().rss);
    },
  });
  expect(kept).toMatchObject({ kept: PHOTOS, duplicates: ['p007.jpg'], untimed: [] });
  expect(steps).toHaveLength(PHOTOS + 1);
  expect(most / 2 ** 20).toBeLessThan(MOST_MB);

  const photos = (await library.view(study)).photos();
  const at = (seconds: number) =>
    photos.find(
      (p) => p.takenAt.local === `2026-10-05T09:3${Math.floor(seconds / 60)}:${two(seconds % 60)}`,
    )?.subject;
  expect([at(10), at(50), at(70), at(120)]).toEqual(['A1', 'A1', 'A2', 'A2']);
  expect(at(400)).toBeNull();
  for (const i of [0, 250, 499]) {
    const original = await readFile(join(card, `p${String(i).padStart(3, '0')}.jpg`));
    const photo = photos.find((p) => p.blob === sha(original));
    expect(sha(await blobIn(library, photo?.blob ?? ''))).toBe(sha(original));
  }
}, 120_000);

test('what is exported carries no place, and the originals still have theirs', async () => {
  const out = libraries.path('out');
  expect(await exportPhotographs(library, study, out)).toBe(PHOTOS);
  const files = await readdir(out);
  expect(files).toHaveLength(PHOTOS);
  for (const file of files) {
    const bytes = await readFile(join(out, file));
    expect(bytes.includes('GPS')).toBe(false);
    expect(readExif(bytes).hasPlace).toBe(false);
  }
  const [first] = (await library.view(study)).photos();
  expect(readExif(await blobIn(library, first?.blob ?? '')).hasPlace).toBe(true);
}, 120_000);

test('a folder without photographs is refused', async () => {
  await mkdir(libraries.path('none'));
  await expect(
    importPhotographs(library, study, { dir: libraries.path('none'), by: 'lead' }),
  ).rejects.toThrow(/no photographs/);
});
