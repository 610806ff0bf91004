import { describe, expect, it } from 'vitest';
import { photoEntry, photoMediaType, readPhotoList } from '../../src/capture/index.ts';
import { RefusalError } from '../../src/study/index.ts';
import { lines, START, viewOf } from './help.ts';

const bytes = (text: string) => Uint8Array.from(text, (c) => c.charCodeAt(0));
const PNG = bytes('\x89PNG\r\n\x1a\n....');
const JPEG = bytes('\xff\xd8\xff\xe0....');

describe('a photograph', () => {
  const accepted = (name: string, head: Uint8Array, mediaType: string) =>
    it(name, () => expect(photoMediaType(head, 'x.png')).toBe(mediaType));
  accepted('PNG', PNG, 'image/png');
  accepted('JPEG, whatever its name says', JPEG, 'image/jpeg');

  const refused = (name: string, head: Uint8Array, why: RegExp) =>
    it(`refuses ${name}`, () => expect(() => photoMediaType(head, 'x.png')).toThrow(why));
  refused('a drawing that can hold scripts', bytes('<svg xmlns="http'), /no PNG or JPEG/);
  refused('a page', bytes('<!DOCTYPE html>'), /no PNG or JPEG/);
  refused('a GIF', bytes('GIF89a'), /a GIF picture/);
  refused('a PDF', bytes('%PDF-1.7'), /a PDF document/);
  refused('nothing', bytes(''), /no PNG or JPEG/);
  refused('bytes of no kind', bytes('\x00\x01\x02'), /no PNG or JPEG/);

  it('becomes an entry', () => {
    const item = {
      file: 'a.png',
      subject: '10',
      caption: 'floor',
      takenAt: { local: '2026-10-05T09:00' },
    };
    expect(photoEntry({ ...item, id: 'p1', hash: 'ab', head: JPEG })).toEqual({
      v: 1,
      e: 'photo.add',
      photo: {
        id: 'p1',
        blob: 'ab',
        mediaType: 'image/jpeg',
        subject: '10',
        caption: 'floor',
        takenAt: item.takenAt,
      },
    });
  });
});

describe('a list of photographs', () => {
  const LIST = 'file,subject,caption,taken_at';
  const read = (...rows: string[]) =>
    readPhotoList(lines(LIST, ...rows), 'photos.csv', viewOf(START));

  it('names pictures, what they show and when', () => {
    expect(read('a/1.png,40,"lid, from above",2026-10-05T09:00', '2.jpg,,all,2026-10-06')).toEqual([
      {
        file: 'a/1.png',
        subject: '40',
        caption: 'lid, from above',
        takenAt: { local: '2026-10-05T09:00' },
      },
      { file: '2.jpg', subject: null, caption: 'all', takenAt: { local: '2026-10-06' } },
    ]);
  });

  const refused = (name: string, row: string, column: string, why: RegExp) =>
    it(`refuses ${name}`, () => {
      try {
        read('1.png,40,x,2026-10-05', row);
        expect.unreachable();
      } catch (error) {
        expect(error).toBeInstanceOf(RefusalError);
        const { refusals } = error as RefusalError;
        expect(refusals).toHaveLength(1);
        expect(refusals[0].place).toEqual({ file: 'photos.csv', row: 3, column });
        expect(refusals[0].why).toMatch(why);
      }
    });
  refused('an unknown subject', '2.png,77,x,2026-10-05', 'subject', /no 77/);
  refused('a path out of the folder', '../2.png,40,x,2026-10-05', 'file', /not beside the list/);
  refused('a path from the root', '/etc/2.png,40,x,2026-10-05', 'file', /not beside the list/);
  refused('a time that is none', '2.png,40,x,yesterday', 'taken_at', /time can not be read/);
  refused('a ragged row', '2.png,40', 'file', /more or fewer cells/);
  refused('no picture', ',40,x,2026-10-05', 'file', /names no picture/);
});
