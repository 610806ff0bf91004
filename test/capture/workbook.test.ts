import { readFile } from 'node:fs/promises';
import { buffer } from 'node:stream/consumers';
import { beforeAll, describe, expect, test } from 'vitest';
import { ZipFile } from 'yazl';
import { readWorkbook, type SheetChoice } from '../../src/capture/index.ts';
import { numberText } from '../../src/capture/workbook/number-text.ts';
import { cellName } from '../../src/capture/workbook/sheet-notes.ts';
import { type Refusal, RefusalError } from '../../src/study/index.ts';

/** Written by openpyxl: see make-workbooks.py beside it. */
const WEIGHTS = new URL('../fixtures/workbooks/weights.xlsx', import.meta.url);
let weights: Uint8Array;
beforeAll(async () => {
  weights = await readFile(WEIGHTS);
});

const read = (choice: SheetChoice = {}) => readWorkbook(weights, 'weights.xlsx', choice);

describe('a workbook', () => {
  test('gives its first sheet that is not hidden, cells as written, rows with their numbers', async () => {
    const { sheet, others, text, given } = await read();
    expect([sheet, others, given]).toEqual(['Parts', ['Hidden', 'Day 2'], false]);
    expect(text.split('\n').slice(0, 5)).toEqual([
      'number,name,mass,thickness [mm],material,note',
      '00123,made-up door,12.34567890123457 kg,1.5,steel,',
      'A-2,"lid, with a comma",8.25 ± 0.05 kg,9–10,"so-called ""hard"" foam",',
      ',,,,,',
      'A-3,bracket,0.25 kg,,Pölycarbonat,2026-03-04',
    ]);
    expect(text).toContain('A-4,"pin\nin two lines",0.00001 kg,0.3,brass,');
  });

  test('gives the sheet that is asked for, hidden or not', async () => {
    expect((await read({ sheet: 'Day 2' })).text).toBe('number,name,mass [kg]\nW-1,rail,6.5\n');
    expect(await read({ sheet: 'Hidden' })).toMatchObject({
      text: 'not to be read\n',
      given: true,
    });
  });

  test('writes numbers with the decimal sign that the rest of the table has', async () => {
    const { text } = await read({ sheet: 'Day 2', decimal: ',' });
    expect(text).toContain('W-1,rail,"6,5"');
  });

  test('tells of dates, by cell', async () => {
    const { notes } = await read();
    expect(notes).toMatchObject([{ value: 'F5', level: 'doubt' }]);
    expect(notes[0]?.what).toContain('1 cells hold a date');
  });
});

describe('a number is written out', () => {
  test.each<[number, string | undefined, string]>([
    [12.5, undefined, '12.5'],
    [12.5, 'General', '12.5'],
    [1234.5, '#,##0.00', '1234.5'],
    [0.07, '0%', '7 %'],
    [0.15, '0.0 %', '15 %'],
    [12.34, '0.0" kg"', '12.34 kg'],
    [12.34, '0.0\\ "N·m"', '12.34 N·m'],
    [-3, '0" °C";[Red]-0" °C"', '-3 °C'],
    [7, '"P-"0', 'P-7'],
    [12.5, '#,##0.00 [$€-407]', '12.5 €'],
    [12.5, '[$£-809]#,##0.00', '£12.5'],
    [42, '000000', '000042'],
    [4.2, '00', '4.2'],
    [1.5e-7, '0.00E+00', '1.5e-7'],
    [1500, '0.0,"t"', '1500 [0.0,"t"]'],
  ])('%s shown as %s: %s', (x, format, text) => {
    expect(numberText(x, format, '.')).toBe(text);
  });

  test('with a decimal comma', () => {
    expect(numberText(12.5, '0.0" kg"', ',')).toBe('12,5 kg');
  });

  test.each([
    [0, 0, 'A1'],
    [6, 25, 'Z7'],
    [0, 26, 'AA1'],
    [0, 701, 'ZZ1'],
    [0, 702, 'AAA1'],
  ])('row %d column %d is %s', (row, column, name) => {
    expect(cellName(row, column)).toBe(name);
  });
});

const NS = 'http://schemas.openxmlformats.org';
const XML = '<?xml version="1.0" encoding="UTF-8"?>';

/** A workbook with one sheet of these cells, part by part as ECMA-376 has them. */
async function workbook(cells: string, more: ReadonlyMap<string, Buffer> = new Map()) {
  const zip = new ZipFile();
  const add = (name: string, text: string) => zip.addBuffer(Buffer.from(XML + text), name);
  const rel = (target: string, type: string) =>
    `<Relationships xmlns="${NS}/package/2006/relationships"><Relationship Id="r1" Type="${NS}/officeDocument/2006/relationships/${type}" Target="${target}"/></Relationships>`;
  add('[Content_Types].xml', `<Types xmlns="${NS}/package/2006/content-types"/>`);
  add('_rels/.rels', rel('xl/workbook.xml', 'officeDocument'));
  add('xl/_rels/workbook.xml.rels', rel('worksheets/sheet1.xml', 'worksheet'));
  add(
    'xl/workbook.xml',
    `<workbook xmlns="${NS}/spreadsheetml/2006/main" xmlns:r="${NS}/officeDocument/2006/relationships"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>`,
  );
  add(
    'xl/worksheets/sheet1.xml',
    `<worksheet xmlns="${NS}/spreadsheetml/2006/main"><sheetData>${cells}</sheetData></worksheet>`,
  );
  for (const [name, bytes] of more) zip.addBuffer(bytes, name);
  zip.end();
  return buffer(zip.outputStream);
}

const cell = (name: string, inner: string, attributes = '') =>
  `<c r="${name}"${attributes}>${inner}</c>`;
const HEAD = `<row r="1">${cell('A1', '<is><t>number</t></is>', ' t="inlineStr"')}${cell('B1', '<is><t>mass [kg]</t></is>', ' t="inlineStr"')}</row>`;

async function refusalOf(bytes: Uint8Array, choice: SheetChoice = {}): Promise<Refusal> {
  const error = await readWorkbook(bytes, 'w.xlsx', choice).catch((e: unknown) => e);
  expect(error).toBeInstanceOf(RefusalError);
  const [refusal] = (error as RefusalError).refusals;
  expect(refusal.code).toBe('bad-table');
  expect(refusal.place.file).toBe('w.xlsx');
  return refusal;
}

describe('formulas', () => {
  test('give their stored results', async () => {
    const row = `<row r="2">${cell('A2', '<f>"P"&amp;1</f><v>P1</v>', ' t="str"')}${cell('B2', '<f>1+1.5</f><v>2.5</v>')}</row>`;
    expect((await readWorkbook(await workbook(HEAD + row), 'w.xlsx')).text).toContain('P1,2.5');
  });

  test('without a result are refused by cell', async () => {
    const row = `<row r="2">${cell('A2', '<v>1</v>')}${cell('B2', '<f>SUM(C:C)</f>')}</row>`;
    expect(await refusalOf(await workbook(HEAD + row))).toMatchObject({
      ...{ place: { row: 2, column: 'B2' }, value: '=SUM(C:C)' },
      why: 'the formula has no stored result',
    });
  });

  test('in error are told by cell', async () => {
    const row = `<row r="2">${cell('A2', '<v>#DIV/0!</v>', ' t="e"')}</row>`;
    const { notes, text } = await readWorkbook(await workbook(HEAD + row), 'w.xlsx');
    expect(text).toContain('#DIV/0!');
    expect(notes).toMatchObject([{ value: 'A2' }]);
  });
});

describe('is refused with a reason:', () => {
  test('a file cut short, at every tenth', async () => {
    for (let share = 1; share < 10; share++)
      await refusalOf(weights.subarray(0, Math.floor((weights.length * share) / 10)));
  });

  test('a zip that is no workbook', async () => {
    const zip = new ZipFile();
    zip.addBuffer(Buffer.from('hello'), 'hello.txt');
    zip.end();
    expect((await refusalOf(await buffer(zip.outputStream))).why).toContain('can not be read');
  });

  test('one that unpacks to far too much', async () => {
    const more = new Map([['xl/media/zeros.bin', Buffer.alloc(300 * 2 ** 20)]]);
    expect((await refusalOf(await workbook(HEAD, more))).why).toContain('unpack to too much');
  });

  test('one whose sheet unpacks to more than it says', async () => {
    const bytes = await workbook(HEAD + ' '.repeat(5_000_000));
    const at = bytes.lastIndexOf('xl/worksheets/sheet1.xml') - 46 + 24;
    bytes.writeUInt32LE(1000, at);
    await refusalOf(bytes);
    bytes.writeUInt32LE(0, at);
    expect((await refusalOf(bytes)).why).toContain('unpack to too much');
  });

  test('a sheet that is not there, and a workbook without one', async () => {
    expect(await refusalOf(weights, { sheet: 'Day 3' })).toMatchObject({
      ...{ value: 'Day 3', next: 'Name one of its sheets: Hidden, Parts, Day 2.' },
    });
  });

  test('a sheet with a cell at the far corner', async () => {
    const corner = `<row r="1048576">${cell('XFD1048576', '<v>1</v>')}</row>`;
    await refusalOf(await workbook(HEAD + corner));
  });
});
