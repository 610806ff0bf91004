import { describe, expect, it } from 'vitest';
import { readSpeech } from '../../src/speech/index.ts';
import { RefusalError } from '../../src/study/index.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
const read = (text: string) => readSpeech(bytes(text), 'talk.vtt');
const codes = (text: string) => read(text).findings.map((f) => f.code);

describe('speech files that are not as they should be', () => {
  it('overlapping cues are kept and noted with their line', () => {
    const talk = read('WEBVTT\n\n00:00.000 --> 00:05.000\none\n\n00:04.000 --> 00:06.000\ntwo\n');
    expect(talk.cues).toHaveLength(2);
    expect(talk.findings).toMatchObject([
      { code: 'cues-overlap', level: 'note', place: { file: 'talk.vtt', row: 6 } },
    ]);
  });

  it('without its header a file is read, with a finding', () => {
    const talk = read('00:00.000 --> 00:01.000\nwords\n');
    expect(talk.cues).toHaveLength(1);
    expect(talk.findings.map((f) => f.code)).toEqual(['no-webvtt-header']);
  });

  it('bytes that are no UTF-8 are shown as such, with their line', () => {
    const talk = readSpeech(
      new Uint8Array([
        ...bytes('WEBVTT\n\n00:00.000 --> 00:01.000\nlid '),
        0xff,
        0xfe,
        ...bytes(' here'),
      ]),
      'talk.vtt',
    );
    expect(talk.cues[0]?.text).toBe('lid \ufffd\ufffd here');
    expect(talk.findings).toMatchObject([{ code: 'no-utf-8', place: { row: 4 } }]);
  });

  it('markup is taken off and what entities spell stays words', () => {
    const talk = read(
      'WEBVTT\n\n00:00.000 --> 00:01.000\n<v lead>the <b>lid</b> <img src=x onerror=alert(1)><script>alert(2)</script> &lt;script&gt; R&amp;D\n',
    );
    expect(talk.cues[0]).toMatchObject({ who: 'lead', text: 'the lid alert(2) <script> R&D' });
    expect(talk.findings.map((f) => f.code)).toEqual(['markup-in-cue']);
  });

  it('ten hours are read in the time of a breath', () => {
    const two = (n: number): string => String(n).padStart(2, '0');
    const at = (s: number): string =>
      `${two(Math.floor(s / 3600))}:${two(Math.floor(s / 60) % 60)}:${two(s % 60)}.000`;
    const cues = Array.from(
      { length: 12_000 },
      (_, i) => `${at(3 * i)} --> ${at(3 * i + 3)}\nwords number ${i}\n`,
    );
    const start = performance.now();
    const talk = read(`WEBVTT\n\n${cues.join('\n')}`);
    expect(talk.cues.at(-1)).toMatchObject({ toS: 36_000 });
    expect(talk.findings).toEqual([]);
    expect(performance.now() - start).toBeLessThan(2000);
  });

  it('text with times, names and lines that go on', () => {
    const talk = read('[00:00:05] lead: the lid\nis moulded\n(1:12) second: about two\n');
    expect(talk).toMatchObject({
      format: 'timed text',
      cues: [
        { fromS: 5, toS: 72, who: 'lead', text: 'the lid is moulded' },
        { fromS: 72, who: 'second', text: 'about two' },
      ],
    });
  });

  it('a file without a time is refused with what to do', () => {
    expect(() => read('just words')).toThrow(RefusalError);
    expect(() => read('just words')).toThrow(/no times are in this file.*WebVTT, SubRip/);
    expect(() => read('')).toThrow(RefusalError);
  });

  it('a header alone is refused, an unreadable line is named', () => {
    expect(() => read('WEBVTT\n')).toThrow(RefusalError);
    expect(codes('WEBVTT\n\n0:0 --> 1:1\nlost words\n')).toEqual(['cue-without-times']);
  });
});
