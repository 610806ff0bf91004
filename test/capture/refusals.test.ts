import { describe, expect, it } from 'vitest';
import type { TableForm } from '../../src/capture/index.ts';
import { placeText, refusalText } from '../../src/study/index.ts';
import { type Given, lines, refusalsOf } from './help.ts';

interface Expected {
  readonly row: number;
  readonly column: string;
  readonly value: string;
  readonly why: RegExp;
  readonly next: RegExp;
}

/** A table is refused for one reason, with its place, its value and what to do; nothing comes out. */
function check(
  name: string,
  form: TableForm,
  source: string | Uint8Array,
  expected: Expected,
  given: Given = {},
): void {
  it(name, async () => {
    const refusals = await refusalsOf(form, source, given);
    expect(refusals.map((r) => `${placeText(r.place)}: ${r.why}`)).toHaveLength(1);
    const [refusal] = refusals;
    expect(refusal?.place).toEqual({
      file: `${form}.csv`,
      row: expected.row,
      column: expected.column,
    });
    expect(refusal?.value).toBe(expected.value);
    expect(refusal?.why).toMatch(expected.why);
    expect(refusal?.next).toMatch(expected.next);
    expect(refusal && refusalText(refusal)).toContain(`row ${expected.row}`);
  });
}

const PARTS = 'number,assembly,name,pieces,mass_kg,mass_u_kg,x_mm,y_mm,z_mm';
const GOOD = '10-001,10,rail,1,6.9,0.01,1,2,3';

describe('a bad table of parts is refused as a whole', () => {
  check('a row with too few cells', 'parts', lines(PARTS, GOOD, '10-002,10,rail,1'), {
    row: 3,
    column: 'mass_kg',
    value: '10-002,10,rail,1',
    why: /4 cells where the headings are 9/,
    next: /Add the missing cells/,
  });
  check('a row with too many cells', 'parts', lines(PARTS, `${GOOD},stray`), {
    row: 2,
    column: 'cell 10',
    value: 'stray',
    why: /10 cells/,
    next: /quotation marks/,
  });
  check(
    'a wrong delimiter',
    'parts',
    lines('number;mass_kg;name', '1;2.5;rail'),
    {
      row: 1,
      column: 'number;mass_kg;name',
      value: 'number;mass_kg;name',
      why: /one column only/,
      next: /semicolon would make 3 columns: --delimiter semicolon/,
    },
    { overrides: { delimiter: ',' } },
  );
  check('headings parted by something else', 'parts', lines('number mass name', '1 2.5 rail'), {
    row: 1,
    column: 'number mass name',
    value: 'number mass name',
    why: /one column only/,
    next: /--delimiter/,
  });
  check(
    'a decimal comma where a point is set',
    'parts',
    lines('number;mass_kg;thickness_mm', '1;6.9;1.8', '2;6,9;1.8'),
    {
      row: 3,
      column: 'mass_kg',
      value: '6,9',
      why: /decimal comma where the table has a decimal point/,
      next: /--decimal ","/,
    },
  );
  check(
    'a decimal point where a comma is set',
    'parts',
    lines('number;mass_kg', '1;6.9'),
    {
      row: 2,
      column: 'mass_kg',
      value: '6.9',
      why: /decimal point where the table has a decimal comma/,
      next: /--decimal "."/,
    },
    { overrides: { decimal: ',' } },
  );
  check('a comma that may group thousands', 'parts', lines('number;mass_kg', '1;1,645'), {
    row: 2,
    column: 'mass_kg',
    value: '1,645',
    why: /may be 1645 or 1\.645/,
    next: /--decimal ","/,
  });
  check('a decimal comma in the spread', 'parts', lines('number;mass_kg;mass_u_kg', '1;6.9;0,01'), {
    row: 2,
    column: 'mass_u_kg',
    value: '0,01',
    why: /decimal comma/,
    next: /--decimal/,
  });
  check('no unit, neither in heading nor cells', 'parts', lines('number,mass', '1,2.5', '2,3.5'), {
    row: 2,
    column: 'mass',
    value: '2.5',
    why: /no unit/,
    next: /--unit mass=kg/,
  });
  check('a spread without a unit', 'parts', lines('number,mass,mass_u', '1,2.5 kg,0.1'), {
    row: 2,
    column: 'mass_u',
    value: '0.1',
    why: /no unit/,
    next: /--unit mass\.u=kg/,
  });
  check('a unit of something else in the heading', 'parts', lines('number,mass [mm]', '1,2.5'), {
    row: 1,
    column: 'mass [mm]',
    value: 'mass [mm]',
    why: /mm is a unit of length, not of mass/,
    next: /Correct the heading/,
  });
  check('a unit of something else in a cell', 'parts', lines('number,mass_kg', '1,2.5 mm'), {
    row: 2,
    column: 'mass_kg',
    value: '2.5 mm',
    why: /mm is a unit of length/,
    next: /another unit/,
  });
  check('a negative mass', 'parts', lines(PARTS, '10-001,10,rail,1,-6.9,0.01,1,2,3'), {
    row: 2,
    column: 'mass_kg',
    value: '-6.9',
    why: /mass is negative/,
    next: /sign, and the tare/,
  });
  check('a negative spread', 'parts', lines('number,mass_kg,mass_u_kg', '1,2,-0.1'), {
    row: 2,
    column: 'mass_u_kg',
    value: '-0.1',
    why: /negative/,
    next: /positive/,
  });
  check('a spread without its value', 'parts', lines('number,mass_kg,mass_u_kg', '1,,0.1'), {
    row: 2,
    column: 'mass_u_kg',
    value: '0.1',
    why: /without its value/,
    next: /Give the value/,
  });
  check('two spreads', 'parts', lines('number,mass_kg,mass_u_kg', '1,2 ± 0.1,0.1'), {
    row: 2,
    column: 'mass_kg',
    value: '2 ± 0.1',
    why: /spread of its own/,
    next: /Leave one/,
  });
  check('a position in part', 'parts', lines('number,x_mm,y_mm,z_mm', '1,2,,4'), {
    row: 2,
    column: 'y_mm',
    value: '',
    why: /some of its three numbers/,
    next: /X, Y and Z/,
  });
  check('a part that is its own parent', 'parts', lines('number,assembly', '10-001,10-001'), {
    row: 2,
    column: 'assembly',
    value: '10-001',
    why: /its own parent/,
    next: /assembly that it belongs to/,
  });
  check('a parent that comes later', 'parts', lines('number,assembly', 'a,b', 'b,10'), {
    row: 2,
    column: 'assembly',
    value: 'b',
    why: /comes later, in row 3/,
    next: /before the rows/,
  });
  check('two parts that are each other’s parent', 'parts', lines('number,assembly', 'a,b', 'b,a'), {
    row: 2,
    column: 'assembly',
    value: 'b',
    why: /comes later/,
    next: /parent of each other/,
  });
  check('a parent that nobody knows', 'parts', lines('number,assembly', 'a,77', 'b,77'), {
    row: 2,
    column: 'assembly',
    value: '77',
    why: /no 77 in the study or in the table/,
    next: /--make-assemblies/,
  });
  check('a number twice in the table', 'parts', lines('number,name', 'a,x', 'b,y', 'a,z'), {
    row: 4,
    column: 'number',
    value: 'a',
    why: /stands in row 2 already/,
    next: /another number/,
  });
  check('a number that the study has', 'parts', lines('number,name', '40,x'), {
    row: 2,
    column: 'number',
    value: '40',
    why: /in the study already/,
    next: /another number/,
  });
  check('a row without a number', 'parts', lines('number,name', ',x'), {
    row: 2,
    column: 'number',
    value: '',
    why: /no number/,
    next: /number of its own/,
  });
  check('a count that is not whole', 'parts', lines('number,pieces', 'a,2.5'), {
    row: 2,
    column: 'pieces',
    value: '2.5',
    why: /no whole number/,
    next: /counted/,
  });
  check('a count below zero', 'parts', lines('number,pieces', 'a,-2'), {
    row: 2,
    column: 'pieces',
    value: '-2',
    why: /negative/,
    next: /sign/,
  });
  check('a word for a number', 'parts', lines('number,mass_kg', 'a,heavy'), {
    row: 2,
    column: 'mass_kg',
    value: 'heavy',
    why: /no mass that can be read/,
    next: /Write a number with its unit/,
  });
  check('a column for the number is missing', 'parts', lines('name,mass_kg', 'a,1'), {
    row: 1,
    column: 'number',
    value: 'name | mass_kg',
    why: /no column holds the number of the part/,
    next: /--column "HEADING=number"/,
  });
  check('two columns for one thing', 'parts', lines('number,mass_kg,weight_kg', 'a,1,2'), {
    row: 1,
    column: 'weight_kg',
    value: 'mass_kg | weight_kg',
    why: /both look like mass/,
    next: /--column "weight_kg=skip"/,
  });
  check('headings only', 'parts', lines('number,mass_kg'), {
    row: 2,
    column: 'number',
    value: '',
    why: /no rows/,
    next: /a row for each/,
  });
  check(
    'a study without a vehicle',
    'parts',
    lines('number,mass_kg', 'a,1'),
    {
      row: 1,
      column: 'parent',
      value: 'untitled study',
      why: /no vehicle/,
      next: /readings that names the vehicle/,
    },
    { start: [{ v: 1, e: 'condition.put', id: 'kerb', words: 'kerb' }] },
  );
  check(
    'measured without an instrument',
    'parts',
    lines('number,mass_kg', 'a,1'),
    {
      row: 1,
      column: 'how',
      value: 'measured',
      why: /needs an instrument/,
      next: /--instrument/,
    },
    { overrides: { how: 'measured' } },
  );
});

describe('a file that is no table is refused', () => {
  const bytes = (...start: number[]) => new Uint8Array([...start, 1, 2, 3, 4, 5, 6, 7, 8]);
  const binary = (name: string, source: Uint8Array, value: string, why: RegExp) =>
    check(name, 'parts', source, {
      row: 1,
      column: 'first bytes',
      value,
      why,
      next: /Save the table as CSV/,
    });
  binary(
    'a PNG',
    bytes(0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a),
    '89 50 4E 47 0D 0A 1A 0A',
    /PNG/,
  );
  binary('a workbook', bytes(0x50, 0x4b, 0x03, 0x04), '50 4B 03 04 01 02 03 04', /workbook/);
  binary('a PDF', new TextEncoder().encode('%PDF-1.7\n'), '25 50 44 46 2D 31 2E 37', /PDF/);
  binary('zero bytes', bytes(0x61, 0x00), '61 00 01 02 03 04 05 06', /zero bytes/);
  check('an empty file', 'parts', '', {
    row: 1,
    column: 'headings',
    value: '',
    why: /empty/,
    next: /row of headings/,
  });
  check(
    'text in another encoding',
    'parts',
    new Uint8Array([...new TextEncoder().encode('number,name\na,caf'), 0xe9, 0x0a]),
    {
      row: 2,
      column: 'name',
      value: 'caf\ufffd',
      why: /no UTF-8/,
      next: /CSV in UTF-8/,
    },
  );
  check(
    'zero bytes far into the file',
    'parts',
    lines('number,name', ...Array.from({ length: 9000 }, (_, i) => `p${i},n`), 'last,\0'),
    {
      row: 9002,
      column: 'name',
      value: '\0',
      why: /no UTF-8/,
      next: /CSV in UTF-8/,
    },
  );
  check('a quotation mark that is not closed', 'parts', lines('number,name', 'a,"open', 'b,c'), {
    row: 2,
    column: 'name',
    value: '"open\nb,c\n',
    why: /none closes/,
    next: /Close the quoted cell/,
  });
});

describe('a bad table of other forms is refused as a whole', () => {
  const JOINTS = 'number,from,to,type,torque_Nm';
  check('a joint with an open end', 'joints', lines(JOINTS, 'J1,10,,bolt,8'), {
    row: 2,
    column: 'to',
    value: '',
    why: /open end/,
    next: /what it joins/,
  });
  check('a joint’s number twice', 'joints', lines(JOINTS, 'J1,10,40,bolt,8', 'J1,10,40,bolt,8'), {
    row: 3,
    column: 'number',
    value: 'J1',
    why: /row 2 already/,
    next: /another number/,
  });
  check(
    'a shared spread of no column',
    'joints',
    lines(JOINTS, 'J1,10,40,bolt,8'),
    {
      row: 1,
      column: 'time.drive',
      value: '15 %',
      why: /no column holds time.drive/,
      next: /--spread/,
    },
    { overrides: { spreads: { 'time.drive': '15 %' } } },
  );
  const READINGS = 'subject,kind,parent,name,property,value,unit,u,u_unit,how,instrument';
  const reading = (name: string, row: string, expected: Omit<Expected, 'row'>) =>
    check(name, 'readings', lines(READINGS, row), { row: 2, ...expected });
  reading('measured without an instrument', 'V,,,,wheelbase,2920,mm,2,mm,measured,', {
    column: 'instrument',
    value: '',
    why: /names no instrument/,
    next: /Name the instrument/,
  });
  reading('no unit', 'V,,,,wheelbase,2920,,2,,supplied,', {
    column: 'unit',
    value: '',
    why: /no unit/,
    next: /for a plain number write 1/,
  });
  reading('a unit of something else', 'V,,,,wheelbase,2920,kg,2,,supplied,', {
    column: 'unit',
    value: 'kg',
    why: /kg is a unit of mass/,
    next: /unit of that kind/,
  });
  reading('an unknown subject', 'W,,,,wheelbase,2920,mm,2,,supplied,', {
    column: 'subject',
    value: 'W',
    why: /no W in the study/,
    next: /kind and parent/,
  });
  reading('an unknown kind of subject', 'W,lorry,V,,wheelbase,2920,mm,2,,supplied,', {
    column: 'kind',
    value: 'lorry',
    why: /no kind of subject/,
    next: /vehicle, assembly/,
  });
  reading('its own parent', 'W,trial,W,,liftAngle,4,deg,,,supplied,', {
    column: 'parent',
    value: 'W',
    why: /its own parent/,
    next: /belongs to/,
  });
  reading('an unknown parent', 'W,trial,X,,liftAngle,4,deg,,,supplied,', {
    column: 'parent',
    value: 'X',
    why: /no X in the study or earlier/,
    next: /first/,
  });
  reading('a second vehicle', 'W,vehicle,,,wheelbase,2920,mm,,,supplied,', {
    column: 'subject',
    value: 'W',
    why: /has its vehicle already: V/,
    next: /study of its own/,
  });
  reading('an unknown way of knowing', 'V,,,,wheelbase,2920,mm,2,,felt,', {
    column: 'how',
    value: 'felt',
    why: /no such way/,
    next: /measured, supplied/,
  });
  reading('no value', 'V,,,,wheelbase,,mm,,,supplied,', {
    column: 'value',
    value: '',
    why: /no value/,
    next: /not taken, destroyed/,
  });
  reading('a negative load', 'V,,,,cornerLoad.FL,-400,kg,,,supplied,', {
    column: 'value',
    value: '-400',
    why: /mass is negative/,
    next: /tare/,
  });
  check(
    'a shared spread where rows have their own',
    'readings',
    lines('subject,property,value', 'V,colour,red'),
    {
      row: 1,
      column: 'mass',
      value: '1 %',
      why: /no columns that share a spread/,
      next: /--spread/,
    },
    { overrides: { spreads: { mass: '1 %' } } },
  );
  check('an assembly of another name', 'assemblies', lines('number,name', '40,engine'), {
    row: 2,
    column: 'number',
    value: '40',
    why: /as the assembly "battery"/,
    next: /rename it/,
  });
  check(
    'an assembly that is its own parent',
    'assemblies',
    lines('number,name,parent', '41,x,41'),
    {
      row: 2,
      column: 'parent',
      value: '41',
      why: /its own parent/,
      next: /belongs to/,
    },
  );
  const CLAIMS = 'id,words,subject,question,output,is,value,unit,how,by,at';
  check(
    'a claim about nothing',
    'claims',
    lines(CLAIMS, 'C1,heavy,X,,,,,,guessed,lead,2026-10-05'),
    {
      row: 2,
      column: 'subject',
      value: 'X',
      why: /no X/,
      next: /import the parts first/,
    },
  );
  check(
    'a claim tied to no question',
    'claims',
    lines(CLAIMS, 'C1,heavy,40,how-heavy,mass,at least,1,kg,guessed,lead,2026-10-05'),
    {
      row: 2,
      column: 'question',
      value: 'how-heavy',
      why: /no question how-heavy has an output "mass"/,
      next: /tie the claim later/,
    },
    { knowsOutput: () => false },
  );
});

describe('problems are told together', () => {
  it('each with its place, in the order of rows', async () => {
    const source = lines(PARTS, GOOD, '10-001,10,x,1,1,,,,', 'b,99,x,1.5,-1,,,,', 'c,c,x,1,,,,,');
    const refusals = await refusalsOf('parts', source);
    expect(refusals.map((r) => [r.place.row, r.place.column])).toEqual([
      [3, 'number'],
      [4, 'pieces'],
      [4, 'mass_kg'],
      [4, 'assembly'],
      [5, 'assembly'],
    ]);
  });

  it('up to fifty of them', async () => {
    const rows = Array.from({ length: 200 }, (_, i) => `p${i},-1`);
    expect(await refusalsOf('parts', lines('number,mass_kg', ...rows))).toHaveLength(50);
  });
});
