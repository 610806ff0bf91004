import { describe, expect, it } from 'vitest';
import type { Overrides, Preview, TableForm } from '../../src/capture/index.ts';
import { lines, previewText } from './help.ts';

/** What a preview guesses of a table. */
function check(
  name: string,
  source: string | Uint8Array,
  expected: (preview: Preview) => void,
  overrides: Overrides = {},
  form: TableForm = 'parts',
): void {
  it(name, async () => expected(await previewText(form, source, { overrides })));
}

const TABLE = lines('number,name,mass_kg', 'a,rail,6.9', 'b,dash,7.25');
const guessed = (p: Preview) => [p.delimiter.value, p.decimal.value];

describe('delimiter and decimal sign', () => {
  check('comma and point', TABLE, (p) => expect(guessed(p)).toEqual([',', '.']));
  check('semicolon and comma', lines('number;mass_kg', 'a;6,9'), (p) => {
    expect(guessed(p)).toEqual([';', ',']);
    expect(p.decimal.why).toBe('from "6,9"');
  });
  check('tab', lines('number\tmass_kg', 'a\t6.9'), (p) => expect(guessed(p)).toEqual(['\t', '.']));
  check('bar', lines('number|mass_kg', 'a|6,9'), (p) => expect(guessed(p)).toEqual(['|', ',']));
  check('comma within quoted cells', lines('number,mass_kg', 'a,"6,9"'), (p) =>
    expect(guessed(p)).toEqual([',', ',']),
  );
  check(
    'words with commas do not tell a decimal sign',
    lines('number;name;mass_kg', 'a;5,5 mm sheet;6.9'),
    (p) => expect(guessed(p)).toEqual([';', '.']),
  );
  check('three digits behind a comma tell nothing', lines('number;mass_kg', 'a;1,645'), (p) => {
    expect(p.decimal.value).toBe('.');
    expect(p.decimal.why).toMatch(/no number .* tells/);
  });
  check('both signs seen: both are shown', lines('number;mass_kg', 'a;6.9', 'b;6,9'), (p) => {
    expect(p.decimal.value).toBe('.');
    expect(p.decimal.others).toEqual([{ value: ',', why: 'from "6,9"' }]);
  });
  check(
    'as the user says',
    lines('number;mass_kg', 'a;1,645'),
    (p) => {
      expect(p.decimal).toEqual({ value: ',', why: 'as you said', given: true, others: [] });
      expect(p.problems).toEqual([]);
    },
    { decimal: ',' },
  );
  check('unknown headings fall to the most even cut', lines('foo;bar;baz', 'a;b;c'), (p) =>
    expect(p.delimiter.value).toBe(';'),
  );
});

describe('encoding', () => {
  const utf16 = (text: string, big: boolean) => {
    const bytes = new Uint8Array(2 + text.length * 2);
    const view = new DataView(bytes.buffer);
    view.setUint16(0, 0xfeff, !big);
    for (let i = 0; i < text.length; i++) view.setUint16(2 + 2 * i, text.charCodeAt(i), !big);
    return bytes;
  };
  const asRead = (p: Preview) => p.rows.map((r) => r.cells[1]?.written);
  const table = lines('number,name', 'a,Träger');
  check('UTF-8', table, (p) =>
    expect([p.encoding.value, ...asRead(p)]).toEqual(['utf-8', 'Träger']),
  );
  check('UTF-8 with its mark', `\ufeff${table}`, (p) => {
    expect(p.columns[0]?.field?.field).toBe('number');
    expect(p.encoding.why).toMatch(/byte order mark/);
  });
  check('UTF-16, little end first', utf16(table, false), (p) =>
    expect([p.encoding.value, ...asRead(p), p.counts.rows]).toEqual(['utf-16le', 'Träger', 1]),
  );
  check('UTF-16, big end first', utf16(table, true), (p) =>
    expect([p.encoding.value, ...asRead(p), p.counts.rows]).toEqual(['utf-16be', 'Träger', 1]),
  );
  check('lines that end with return and line feed', 'number,name\r\na,rail\r\n', (p) =>
    expect([asRead(p), p.problems, p.counts.rows]).toEqual([['rail'], [], 1]),
  );
  check('lines that end with return alone', 'number,name\ra,rail\r', (p) =>
    expect([asRead(p), p.problems, p.counts.rows]).toEqual([['rail'], [], 1]),
  );
});

describe('columns', () => {
  const heading = (
    text: string,
    field: string | undefined,
    unit?: string,
    form: TableForm = 'parts',
  ) =>
    check(
      `${form}: ${text}`,
      lines(`number,from,to,${text.includes(',') ? `"${text}"` : text}`, 'a,10,40,'),
      (p) => {
        const column = p.columns[3];
        expect([column?.field?.field, column?.unit]).toEqual([field, unit]);
        expect(column?.why).not.toBe('');
      },
      {},
      form,
    );
  heading('mass_kg', 'mass', 'kg');
  heading('Mass [g]', 'mass', 'g');
  heading('mass (lb)', 'mass', '[lb_av]');
  heading('mass / kg', 'mass', 'kg');
  heading('mass, kg', 'mass', 'kg');
  heading('weight kg', 'mass', 'kg');
  heading('mass', 'mass');
  heading('mass_u_g', 'mass.u', 'g');
  heading('u(mass) [g]', undefined);
  heading('mass uncertainty [g]', 'mass.u', 'g');
  heading('thickness_in', 'thickness', '[in_i]');
  heading('x_mm', 'position.x', 'mm');
  heading('position_u_mm', 'position.u', 'mm');
  heading('Qty', 'count', '1');
  heading('scale', 'mass.instrument');
  heading('Part Number', 'number');
  heading('colour', undefined);
  heading('mass_total', undefined);
  heading('torque_Nm', 'torque.specified', 'N.m', 'joints');
  heading('access_s', 'time.access', 's', 'joints');
  heading('drive [min]', 'time.drive', 'min', 'joints');
  heading('count_holes', 'count.holes', '1', 'joints');
  heading('from_words', 'words.from', undefined, 'joints');

  check('unknown columns are named and left out', lines('number,colour', 'a,red'), (p) => {
    expect(p.unmapped).toEqual(['colour']);
    expect(p.columns[1]?.why).toMatch(/ignored unless mapped/);
  });
  check(
    'the user maps a column',
    lines('number,heft [g]', 'a,250'),
    (p) => {
      expect(p.columns[1]).toMatchObject({ unit: 'g', given: true, why: 'as you said' });
      expect(p.rows[0]?.cells[1]?.value).toMatchObject({ kind: 'mass', x: 0.25 });
    },
    { columns: { 'heft [g]': 'mass' } },
  );
  check(
    'the user leaves a column out',
    lines('number,mass', 'a,250'),
    (p) => {
      expect(p.problems).toEqual([]);
      expect(p.unmapped).toEqual(['mass']);
    },
    { columns: { mass: 'skip' } },
  );
  check(
    'the user names a unit by field',
    lines('number,mass', 'a,250'),
    (p) => {
      expect(p.columns[1]).toMatchObject({ unit: 'g' });
      expect(p.rows[0]?.cells[1]?.value).toMatchObject({ x: 0.25 });
    },
    { units: { mass: 'g' } },
  );
  check(
    'the user names a unit for all of a position',
    lines('number,x,y,z', 'a,1,2,3'),
    (p) => expect(p.rows[0]?.cells[1]?.value).toMatchObject({ x: [0.01, 0.02, 0.03] }),
    { units: { position: 'cm' } },
  );
  const refused = (name: string, overrides: Overrides, why: RegExp) =>
    check(
      name,
      TABLE,
      (p) => expect(p.problems.map((r) => r.why)).toEqual([expect.stringMatching(why)]),
      overrides,
    );
  refused('a column that is not there', { columns: { heft: 'mass' } }, /no column "heft"/);
  refused('a field that is not there', { columns: { name: 'colour' } }, /no field "colour"/);
  refused(
    'a unit for nothing',
    { units: { thickness: 'mm' } },
    /no column .* quantity "thickness"/,
  );
  refused('a unit of something else', { units: { mass: 'mm' } }, /mm is a unit of length/);
  refused('no unit at all', { units: { mass: 'stone-ish' } }, /no unit known/);
});

describe('preview', () => {
  check(
    'the first twenty rows, all counted',
    lines('number,mass_kg', ...Array.from({ length: 30 }, (_, i) => `p${i},1`)),
    (p) => {
      expect(p.rows).toHaveLength(20);
      expect(p.rows.at(-1)?.row).toBe(21);
      expect(p.counts).toMatchObject({ rows: 30, parts: 30, readings: 30 });
    },
  );
  check('marks the bad cell', lines('number,mass_kg', 'a,1', 'b,-1'), (p) => {
    expect(p.rows[1]?.cells[1]).toMatchObject({ written: '-1', problem: 'a mass is negative' });
    expect(p.rows[0]?.cells[1]?.problem).toBeUndefined();
  });
  check(
    'says what it assumes',
    TABLE,
    (p) =>
      expect(p.assumed.map((a) => [a.what, a.value, a.given])).toEqual([
        ['how values without an instrument are known', 'inferred', true],
        ['how values with an instrument are known', 'measured', false],
        ['condition', 'kerb', false],
      ]),
    { how: 'inferred' },
  );
  check('blank rows are counted and left out', 'number,mass_kg\na,1\n\n,\nb,2\n', (p) => {
    expect(p.counts).toMatchObject({ rows: 2, 'blank rows': 2 });
    expect(p.rows.map((r) => r.row)).toEqual([2, 5]);
  });
  check(
    'ends of joints that name nothing are noted',
    lines('number,from,to', 'J1,10,a bracket'),
    (p) => {
      expect(p.problems).toEqual([]);
      expect(p.notes).toMatchObject([{ value: 'a bracket', level: 'note' }]);
    },
    {},
    'joints',
  );
});
