/**
 * W3C WebVTT file parsing, cases of the public test suite web-platform-tests/wpt,
 * webvtt/parsing/file-parsing/tests (arrows, header-*, ids, newlines, nulls, timings-*,
 * whitespace-chars): inputs and outcomes as there. SubRip has no standard: common practice.
 *
 * We differ from the suite on purpose in one thing: a file that does not open with WEBVTT gives
 * no cue there; here its words are kept, with a finding, since what was said can't be said again.
 */
import { describe, expect, it } from 'vitest';
import { readSpeech } from '../../src/speech/index.ts';

const read = (text: string) => readSpeech(new TextEncoder().encode(text), 'talk.vtt');
const times = (text: string) => read(text).cues.map((c) => [c.fromS, c.toS]);
const texts = (text: string) => read(text).cues.map((c) => c.text);
const file = (...blocks: string[]): string => `WEBVTT\n\n${blocks.join('\n\n')}\n`;

const TOO_SHORT = `0000:00.000
00:0:00.000
00:0000.000
00:00:0.000
00:00:00000
00:00:00.00
00:00:00.0
00:00:00.
00:00:00
00:00:0
00:00:
00:00
00:0
00:
00
0

0:00.000
0000.000
00:0.000
00:00000
00:00.00
00:00.0
00:00.
0:00.
:00.
00.
0.
.`.split('\n');

const TOO_LONG = `00::00:00.000
00:000:00.000
00:00::00.000
00:00:000.000
00:00:00..000
00:00:00.0000
00:00.0000
000:00.000
00::00.000
00:000.000
00:00..000`.split('\n');

describe('times (timings-*)', () => {
  it('hours may be left out', () => {
    const text = file(
      '00:00.000 --> 00:00:01.000\ntext1',
      '00:00:00.000 --> 00:01.000\ntext2',
      '00:00.000 --> 00:01.000\ntext3',
    );
    expect(times(text)).toEqual([
      [0, 1],
      [0, 1],
      [0, 1],
    ]);
  });
  it('too short: hours of one digit are read, all else is not', () => {
    const bad = TOO_SHORT.map((t) => `${t} --> 00:00:01.000\ninvalid`);
    const text = file(
      '0:00:00.000 --> 00:00:01.000\ntext1',
      ...bad,
      '00:00.000 --> 0:01.000\ninvalid',
      '00:00:00.000 --> 0:00:01.000\ntext2',
    );
    expect(texts(text)).toEqual(['text1', 'text2']);
    expect(times(text)).toEqual([
      [0, 1],
      [0, 1],
    ]);
    expect(read(text).findings.filter((f) => f.code === 'cue-without-times')).toHaveLength(30);
  });
  it('too long: hours of three digits are read, all else is not', () => {
    const bad = TOO_LONG.map((t) => `${t} --> 00:00:01.000\ninvalid`);
    const text = file(
      '000:00:00.000 --> 00:00:01.000\ntext1',
      ...bad,
      '00:00.000 --> 000:01.000\ninvalid',
      '00:00:00.000 --> 000:00:01.000\ntext2',
    );
    expect(texts(text)).toEqual(['text1', 'text2']);
  });
  it('a cue that ends before it starts is kept, and found', () => {
    const text = file(
      '00:00:00.000 --> 00:00:00.000\ntext1',
      '00:00:01.000 --> 00:00:00.999\ntext2',
      '00:01:00.000 --> 00:00:59.999\ntext3',
      '01:00:00.000 --> 00:59:59.999\ntext4',
    );
    expect(times(text)).toEqual([
      [0, 0],
      [1, 0.999],
      [60, 59.999],
      [3600, 3599.999],
    ]);
    expect(read(text).findings.filter((f) => f.code === 'cue-ends-before-it-starts')).toHaveLength(
      3,
    );
  });
  it('sixty: 60 hours are, 60 minutes and 60 seconds are not', () => {
    expect(times(file('60:00:00.000 --> 60:00:01.000\ntext'))).toEqual([[216000, 216001]]);
    for (const t of ['00:60:00.000', '00:00:60.000', '60:00.000', '00:60.000'])
      expect(times(file(`${t} --> 99:00:00.000\ninvalid`))).toEqual([]);
  });
});

describe('blocks', () => {
  it('arrows: six cues', () => {
    const text =
      'WEBVTT\n\n-->\n00:00:00.000 --> 00:00:01.000\ntext1\nfoo-->\n00:00:00.000 --> 00:00:01.000\ntext2\n-->foo\n00:00:00.000 --> 00:00:01.000\ntext3\n--->\n00:00:00.000 --> 00:00:01.000\ntext4\n-->-->\n00:00:00.000 --> 00:00:01.000\ntext5\n00:00:00.000 --> 00:00:01.000\ntext6\n\n00:00:00.000 -a -->\n\n00:00:00.000 --a -->\n\n00:00:00.000 - -->\n\n00:00:00.000 -- -->\n';
    expect(texts(text)).toEqual(['text1', 'text2', 'text3', 'text4', 'text5', 'text6']);
  });
  it('ids: five cues, a line of one blank being an id', () => {
    const at = '00:00:00.000 --> 00:00:01.000';
    const text = `WEBVTT\n\n leading space\n${at}\ntext1\n\ntrailing space \n${at}\ntext2\n\n-- >\n${at}\ntext3\n\n->\n${at}\ntext4\n\n \n${at}\ntext5`;
    expect(texts(text)).toEqual(['text1', 'text2', 'text3', 'text4', 'text5']);
  });
  it('newlines: CR, LF and CRLF', () => {
    const block = (id: string, n: string) =>
      `${id}${n}00:00:00.000 --> 00:00:01.000${n}text${n}${n}`;
    expect(
      texts(`WEBVTT\n\n${block('cr', '\r')}${block('lf', '\n')}${block('crlf', '\r\n')}`),
    ).toHaveLength(3);
  });
  it('nulls become U+FFFD', () => {
    expect(texts(file('\0 id\n00:00:00.000 --> 00:00:01.000\n\0text\u00003'))).toEqual([
      '\ufffdtext\ufffd3',
    ]);
  });
  it('white space about the times', () => {
    const text =
      'WEBVTT\n\nspaces\n   00:00:00.000    -->  00:00:01.000 \n   text1\n\ntabs\n\t\t\t00:00:00.000\t\t\t\t-->\t\t00:00:01.000\t\ntext2\n\nform feed\n\f00:00:00.000\f-->\f00:00:01.000\f\ntext3\n\nvertical tab\n\v00:00:00.000\v-->\v00:00:01.000\v\ninvalid';
    expect(texts(text).slice(0, 3)).toEqual(['text1', 'text2', 'text3']);
  });
  it.each(['WEBVTT garbage', 'WEBVTT\tgarbage', '\ufeffWEBVTT', 'WEBVTT\nkey: value'])(
    'header %j',
    (header) => {
      const talk = read(`${header}\n\n00:00:00.000 --> 00:00:01.000\ntext`);
      expect([talk.cues.length, talk.findings]).toEqual([1, []]);
    },
  );
  it('times straight below the header', () => {
    expect(texts('WEBVTT\n00:00:00.000 --> 00:00:01.000\ntext')).toEqual(['text']);
  });
  it('notes, styles and regions are no speech', () => {
    expect(
      texts(
        file(
          'NOTE hidden\nwords',
          'STYLE\n::cue { color: red }',
          'REGION\nid:a',
          '00:01.000 --> 00:02.000 align:start line:0\nspoken',
        ),
      ),
    ).toEqual(['spoken']);
  });
});

describe('SubRip (common practice, no source)', () => {
  const srt = (line: string) => read(`1\n${line}\nwords here\n`);
  it.each(['00:00:01,000 --> 00:00:02,500', '00:01,000 --> 00:02,500'])('%s', (line) => {
    expect(srt(line)).toMatchObject({
      format: 'SubRip',
      cues: [{ fromS: 1, toS: 2.5, text: 'words here' }],
    });
  });
  it('an arrow of another length is refused where commas tell the format', () => {
    const talk = read(
      '1\n00:00:01,000 --> 00:00:02,500\none\n\n2\n00:00:03,000 ---> 00:00:04,000\ntwo\n',
    );
    expect(talk.cues.map((c) => c.text)).toEqual(['one']);
    expect(talk.findings.map((f) => [f.code, f.place.row])).toEqual([['cue-without-times', 6]]);
  });
});
