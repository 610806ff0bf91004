import { describe, expect, it } from 'vitest';
import type { Reading, StudyView } from '../../src/study/index.ts';
import { type Given, importText, lines, START } from './help.ts';

/** The one reading of a property of a node. */
function readingOf(view: StudyView, label: string, property: string): Reading {
  const readings = view.readings(view.find(label)?.id ?? '', property);
  expect(readings).toHaveLength(1);
  return (readings[0] as { reading: Reading }).reading;
}

/** A cell of a table of parts becomes a reading. */
function check(
  name: string,
  headings: string,
  row: string,
  property: string,
  expected: object,
  given: Given = {},
): void {
  it(name, async () => {
    const { view } = await importText('parts', lines(`number,${headings}`, `a,${row}`), given);
    expect(readingOf(view, 'a', property)).toMatchObject(expected);
  });
}

const mass = (x: number, spread: object) => ({ value: { t: 'scalar', kind: 'mass', x, spread } });

describe('parts', () => {
  check(
    'mass with a spread of its own column',
    'mass_kg,mass_u_kg',
    '6.9,0.01',
    'mass',
    mass(6.9, { s: 'normal', u: 0.01 }),
  );
  check(
    'a spread in another unit',
    'mass_kg,mass_u_g',
    '6.9,10',
    'mass',
    mass(6.9, { s: 'normal', u: 0.01 }),
  );
  check(
    'a spread within the cell',
    'mass_kg',
    '12.5 ± 0.2 kg',
    'mass',
    mass(12.5, { s: 'normal', u: 0.2 }),
  );
  check('a unit within the cell wins', 'mass_kg', '500 g', 'mass', mass(0.5, { s: 'unknown' }));
  check('no spread is unknown', 'mass_kg', '6.9', 'mass', mass(6.9, { s: 'unknown' }));
  check(
    'a spread of zero is exact',
    'mass_kg,mass_u_kg',
    '6.9,0',
    'mass',
    mass(6.9, { s: 'exact' }),
  );
  check('pounds', 'mass_lb', '1', 'mass', mass(0.45359237, { s: 'unknown' }));
  check('decimal comma', 'mass_kg', '"6,9"', 'mass', mass(6.9, { s: 'unknown' }));
  check('an instrument makes it measured', 'mass_kg,instrument', '6.9,scale B', 'mass', {
    how: 'measured',
    instrument: 'scale B',
  });
  check('none leaves it seen', 'mass_kg,instrument', '6.9,', 'mass', { how: 'seen' });
  check(
    'as the user says',
    'mass_kg,instrument',
    '6.9,',
    'mass',
    { how: 'supplied' },
    { overrides: { how: 'supplied' } },
  );
  check(
    'one instrument for all',
    'mass_kg',
    '6.9',
    'mass',
    { how: 'measured', instrument: 'scale C' },
    { overrides: { instrument: 'scale C' } },
  );
  check(
    'words stay seen then',
    'mass_kg,material',
    '6.9,steel',
    'material',
    { how: 'seen', value: { t: 'text', text: 'steel' } },
    { overrides: { instrument: 'scale C', how: 'measured' } },
  );
  check('pieces', 'pieces', '4', 'count', { value: { t: 'count', n: 4, spread: { s: 'exact' } } });
  check(
    'a position with one spread',
    'x_mm,y_mm,z_mm,position_u_mm',
    '-180.0,430,1000,5',
    'position',
    {
      value: {
        t: 'vector',
        x: [-0.18, 0.43, 1],
        cov: [2.5e-5, 0, 0, 0, 2.5e-5, 0, 0, 0, 2.5e-5],
        frame: 'vehicle',
      },
    },
  );
  check('a position without a spread', 'x_mm,y_mm,z_mm', '1,2,3', 'position', {
    value: { cov: [] },
  });
  check('where it came from', 'mass_kg', '6.9', 'mass', {
    source: { file: 'parts.csv', row: 2, column: 'mass_kg' },
    asWritten: '6.9 kg',
    by: 'tester',
    takenAt: { local: '2026-10-05T09:00' },
    of: { condition: 'kerb' },
  });
  check(
    'a condition of its own',
    'mass_kg',
    '6.9',
    'mass',
    { of: { condition: 'dry' } },
    { condition: 'dry' },
  );

  it('empty cells are no readings', async () => {
    const { view } = await importText(
      'parts',
      lines('number,mass_kg,material,x_mm,y_mm,z_mm', 'a,,,,,'),
    );
    expect(view.properties(view.find('a')?.id ?? '')).toEqual([]);
  });

  it('parts hang below their assembly, below parts before them, or below the vehicle', async () => {
    const table = lines('number,assembly', 'a,10', 'b,a', 'c,b', 'd,');
    const { view, preview } = await importText('parts', table);
    const parents = ['a', 'b', 'c', 'd'].map(
      (label) => view.node(view.find(label)?.parent ?? '')?.label,
    );
    expect(parents).toEqual(['10', 'a', 'b', 'V']);
    expect(view.findings).toEqual([]);
    expect(preview.counts).toMatchObject({ parts: 4 });
  });

  it('assemblies are made where the user says so', async () => {
    const { view } = await importText('parts', lines('number,assembly', 'a,77'), {
      overrides: { makeAssemblies: true },
    });
    expect(view.find('77')).toMatchObject({ kind: 'assembly', parent: 'V' });
    expect(view.find('a')?.parent).toBe(view.find('77')?.id);
  });

  it('labels that are names of language features are labels like others', async () => {
    const { view } = await importText(
      'parts',
      lines('number,assembly', 'constructor,10', '__proto__,constructor', 'x,__proto__'),
    );
    expect(view.find('x')?.parent).toBe(view.find('__proto__')?.id);
    expect(view.find('__proto__')?.parent).toBe(view.find('constructor')?.id);
  });

  it('parents are found across chunks and blank rows, and row numbers are those of the file', async () => {
    const rows = Array.from({ length: 2500 }, (_, i) => `p${i},${i > 2400 ? 'p3' : '10'},1`);
    rows.splice(1000, 0, ',,');
    const { view, batches } = await importText(
      'parts',
      lines('number,assembly,mass_kg', ...rows),
      {},
      4096,
    );
    const tables = batches.flat().flatMap((e) => (e.e === 'table.add' ? [e.table] : []));
    expect(tables.map((t) => [t.firstRow, t.rows.length])).toEqual([
      [2, 1000],
      [1003, 1500],
    ]);
    expect(view.find('p2450')?.parent).toBe(view.find('p3')?.id);
    expect(readingOf(view, 'p2450', 'mass').source?.row).toBe(2453);
  });

  it('instruments are put once, and those of the study not again', async () => {
    const start = [
      ...START,
      {
        v: 1,
        e: 'instrument.put',
        instrument: { id: 'scale A', label: 'scale A', note: 'checked' },
      } as const,
    ];
    const { view, batches } = await importText(
      'parts',
      lines('number,mass_kg,scale', 'a,1,scale A', 'b,2,scale B', 'c,3,scale B'),
      { start },
    );
    const put = batches.flat().flatMap((e) => (e.e === 'instrument.put' ? [e.instrument.id] : []));
    expect(put).toEqual(['scale B']);
    expect(view.instrument('scale A')?.note).toBe('checked');
  });
});

describe('joints', () => {
  it('hold several ends, and keep the words of ends that name nothing', async () => {
    const table = lines(
      'number,from,to,type,count_holes,torque_Nm,access_s',
      'J1,10;40,a bracket,bolt,18,95,1.2',
    );
    const { view } = await importText('joints', table);
    const joint = view.find('J1');
    const ends = view.links('joins', joint?.id).map((l) => [l.role, l.words, l.to]);
    expect(ends).toEqual([
      ['from', '10', '10'],
      ['from', '40', '40'],
      ['to', 'a bracket', null],
    ]);
    expect(readingOf(view, 'J1', 'torque.specified').value).toMatchObject({
      kind: 'torque',
      x: 95,
    });
    expect(readingOf(view, 'J1', 'count.holes').value).toMatchObject({ t: 'count', n: 18 });
    expect(joint).toMatchObject({ kind: 'joint', parent: 'V' });
  });
});

describe('a spread that columns share', () => {
  const table = lines('number,from,to,access_s,drive_s', 'J1,10,40,2,10', 'J2,10,40,4 ± 1,');
  const spreads = { 'time.access,time.drive': '15 %' };

  it('is one cause of all their values, and their own spreads stay', async () => {
    const { view, preview } = await importText('joints', table, { overrides: { spreads } });
    const drive = readingOf(view, 'J1', 'time.drive');
    const [share] = drive.causes;
    expect(drive).toMatchObject({
      value: { x: 10, spread: { s: 'exact' } },
      causes: [{ effect: 10 }],
    });
    expect(view.cause(share?.cause ?? '')).toMatchObject({ spread: { s: 'normal', u: 0.15 } });
    expect(readingOf(view, 'J2', 'time.access')).toMatchObject({
      value: { x: 4, spread: { s: 'normal', u: 1 } },
      causes: [{ cause: share?.cause, effect: 4 }],
    });
    expect(preview.assumed).toContainEqual(
      expect.objectContaining({
        what: 'common relative spread of time.access,time.drive',
        value: '15 %',
      }),
    );
  });
});

describe('assemblies', () => {
  it('are made below the vehicle or below each other; the same one again stays', async () => {
    const { view, preview } = await importText(
      'assemblies',
      lines('number,name,parent', '40,battery,', '41,cells,40', '42,module,41'),
    );
    expect(view.node(view.find('42')?.parent ?? '')?.label).toBe('41');
    expect(preview.counts).toMatchObject({ assemblies: 2, 'there already': 1 });
    expect(preview.notes[0]?.value).toBe('40');
    expect(view.findings).toEqual([]);
  });
});

const READINGS =
  'subject,kind,parent,name,property,value,unit,u,u_unit,how,instrument,condition,note';

describe('readings', () => {
  const reading = (name: string, row: string, property: string, expected: object, label = 'V') =>
    it(name, async () => {
      const { view } = await importText('readings', lines(READINGS, row));
      expect(readingOf(view, label, property)).toMatchObject(expected);
    });
  reading('a length', 'V,,,,wheelbase,2920,mm,2,mm,measured,tape,kerb,read twice', 'wheelbase', {
    value: { kind: 'length', x: 2.92, spread: { s: 'normal', u: 0.002 } },
    asWritten: '2920 mm',
    how: 'measured',
    instrument: 'tape',
    note: 'read twice',
    source: { row: 2, column: 'value', file: 'readings.csv' },
  });
  reading(
    'a spread in the unit of its value',
    'V,,,,wheelbase,292,cm,1,,supplied,,,',
    'wheelbase',
    {
      value: { x: 2.92, spread: { s: 'normal', u: 0.01 } },
    },
  );
  reading(
    'an energy',
    '40,,,,packEnergy,56.3,kW.h,0.3,kWh,supplied,,,',
    'packEnergy',
    {
      value: { kind: 'energy', x: 56.3 * 3.6e6, spread: { u: 0.3 * 3.6e6 } },
    },
    '40',
  );
  reading(
    'a subject that is made',
    'lift 4,trial,V,rear raised,liftAngle,4,deg,0.1,deg,measured,inclinometer,,',
    'liftAngle',
    {
      value: { kind: 'angle', x: (4 * Math.PI) / 180 },
    },
    'lift 4',
  );
  reading('words', 'V,,,,plate,ABC 1,,,,seen,,,', 'plate', { value: { t: 'text', text: 'ABC 1' } });
  reading('a property without a meaning here', 'V,,,,sill height,410,mm,,,seen,,,', 'sill height', {
    value: { kind: 'length', x: 0.41, spread: { s: 'unknown' } },
  });
  reading('a value that is not there', 'V,,,,wheelbase,not taken,mm,,,measured,,,', 'wheelbase', {
    value: { t: 'absent', why: 'not taken' },
  });
  reading(
    'a point in one cell',
    '40,,,,position,100; 0; 300,mm,5,,seen,,,',
    'position',
    {
      value: { t: 'vector', x: [0.1, 0, 0.3], cov: [2.5e-5, 0, 0, 0, 2.5e-5, 0, 0, 0, 2.5e-5] },
    },
    '40',
  );
  reading('a condition of its own', 'V,,,,wheelbase,2920,mm,,,supplied,,hung,', 'wheelbase', {
    of: { condition: 'hung' },
  });

  it('make a vehicle in an empty study, and what belongs to it', async () => {
    const rows = [
      'W,vehicle,,a van,wheelbase,2920,mm,2,mm,measured,tape,,',
      'W,vehicle,,a van,payload,650,kg,,,supplied,,,',
      'lift,trial,,,liftAngle,4,deg,,,seen,,,',
    ];
    const { view } = await importText('readings', lines(READINGS, ...rows), {
      start: [{ v: 1, e: 'condition.put', id: 'kerb', words: 'kerb' }],
    });
    expect(view.root()).toMatchObject({ label: 'W', name: 'a van' });
    expect(view.find('lift')?.parent).toBe(view.root()?.id);
    expect(view.findings).toEqual([]);
  });

  it('of one thing stand beside each other', async () => {
    const row = 'V,,,,wheelbase,2920,mm,2,mm,measured,tape,,';
    const { view } = await importText('readings', lines(READINGS, row, row));
    expect(view.readings('V', 'wheelbase')).toHaveLength(2);
  });

  it('note another name and an unknown property', async () => {
    const { preview } = await importText(
      'readings',
      lines(READINGS, 'V,vehicle,,another name,weelbase,2,m,,,seen,,,'),
    );
    expect(preview.notes.map((n) => n.value)).toEqual(['another name', 'weelbase']);
  });
});

describe('claims', () => {
  const CLAIMS = 'id,words,subject,question,output,is,value,unit,how,by,at';
  it('are heard, and tied where a question is named', async () => {
    const rows = [
      'C1,The pack is over 120 Wh/kg,40,pack-energy-density,specific,at least,120,W.h/kg,guessed,lead,2026-10-05T10:42',
      'C2,It looks thick,10,,,,,,seen,lead,2026-10-05T11:00',
    ];
    const { view } = await importText('claims', lines(CLAIMS, ...rows));
    expect(view.claims().map((c) => [c.id, c.words, c.about, c.heard])).toEqual([
      ['C1', 'The pack is over 120 Wh/kg', ['40'], '2026-10-05T10:42'],
      ['C2', 'It looks thick', ['10'], '2026-10-05T11:00'],
    ]);
    expect(view.ties('C1')).toMatchObject([
      {
        question: 'pack-energy-density',
        output: 'specific',
        subject: '40',
        test: { is: 'at least', value: 432_000, asWritten: '120 W.h/kg' },
      },
    ]);
    expect(view.ties('C2')).toEqual([]);
  });
});

describe('a table that changes while it is imported', () => {
  it('is refused, so that the stage that takes it is dropped', async () => {
    const { importTable } = await import('../../src/capture/index.ts');
    const { someIds, viewOf } = await import('./help.ts');
    let opened = 0;
    const open = async function* () {
      yield lines('number,mass_kg', opened++ < 2 ? 'a,1' : 'a,-1');
    };
    const read = await importTable({
      form: 'parts',
      file: 'parts.csv',
      open,
      view: viewOf(START),
      ids: someIds(),
      by: 'tester',
      takenAt: { local: '2026-10-05' },
    });
    const drain = async () => {
      for await (const _ of read.entries);
    };
    await expect(drain()).rejects.toThrow(/changed while it was imported/);
  });
});
