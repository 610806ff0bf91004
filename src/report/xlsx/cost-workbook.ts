import type { Cell, CellValue, WriteSheet } from 'hucre/xlsx';
import type { PricedNumber, PricedPart, PricedParts } from '../../engine/index.ts';
import { placeText } from '../../study/index.ts';

/** Columns of the sheet of parts, behind label and assembly, in the order of their letters from C. */
const NUMBERS = [
  ['mass', 'mass, kg'],
  ['gross', 'gross over net'],
  ['price', 'material, u/kg'],
  ['conversion', 'conversion, u/kg'],
  ['tool', 'set of tools, u'],
  ['life', 'pieces of a set'],
  ['pieces', 'pieces'],
] as const;

const OVERHEAD = 'Basis!$B$8';
const MADE = 'Basis!$B$7';
const APART = 'Basis!$B$9';
const FIRST = 2;

type Sparse = Map<string, Partial<Cell>>;

/**
 * The cost of parts as a workbook that goes on calculating: each cost is a formula of its row and
 * of the basis, sums are sums, and where each number comes from stands beside it.
 */
export async function costWorkbook(priced: PricedParts): Promise<Uint8Array> {
  const { writeXlsx } = await import('hucre/xlsx');
  const sheets = [
    basisSheet(priced),
    partsSheet(priced),
    assembliesSheet(priced),
    tracesSheet(priced),
    withoutSheet(priced),
  ];
  const made: unknown = await writeXlsx({ sheets });
  if (made instanceof Uint8Array) return made;
  throw new TypeError('the workbook was not written as bytes');
}

function basisSheet({ basis, overhead, parts }: PricedParts): WriteSheet {
  return {
    name: 'Basis',
    rows: [
      ['Cost of the parts', basis.invented ? 'INVENTED: rates or record are made up' : ''],
      ['study', basis.study ?? ''],
      ['revision', basis.revision ?? ''],
      ['subject', basis.subject ?? ''],
      ['rates version', basis.rates ?? ''],
      ['currency', basis.currency ?? ''],
      ['vehicles in all years', parts[0]?.numbers.made?.x ?? null],
      ['factor for overhead and profit', overhead?.x ?? null],
      ['tools counted apart (1) or in the conversion by mass (0)', 0],
    ],
  };
}

function partsSheet({ parts }: PricedParts): WriteSheet {
  const last = parts.length + FIRST - 1;
  const cells: Sparse = new Map();
  for (const [i, { cost }] of parts.entries())
    cells.set(`${i + 1},9`, formula(costOfRow(i + FIRST), cost));
  cells.set(
    `${parts.length + 1},9`,
    formula(
      `SUM(J${FIRST}:J${last})`,
      sum(parts, (p) => p.cost),
    ),
  );
  cells.set(`${parts.length + 1},2`, formula(`SUM(C${FIRST}:C${last})`, sum(parts, massOf)));
  return {
    name: 'Parts',
    rows: [
      ['part', 'assembly', ...NUMBERS.map(([, title]) => title), 'cost with overhead, u'],
      ...parts.map(rowOf),
      ['all parts that are costed'],
    ],
    cells,
    freezePane: { rows: 1 },
  };
}

const rowOf = ({ label, assembly, numbers }: PricedPart): CellValue[] => [
  label,
  assembly,
  ...NUMBERS.map(([name]) => numbers[name]?.x ?? null),
];

/** k (m (y p + c) + δ T S / N): columns C mass, D gross, E price, F conversion, G tool, H life, I pieces. */
const costOfRow = (r: number): string =>
  `${OVERHEAD}*(C${r}*(D${r}*E${r}+F${r})+${APART}*G${r}*MAX(1,ROUNDUP(I${r}*${MADE}/H${r}-0.000000001,0))/${MADE})`;

/** A formula with its result as it stands, for whoever does not calculate it anew. */
const formula = (text: string, result: number): Partial<Cell> => ({
  ...{ formula: text, formulaResult: result, type: 'formula' },
});

const sum = (parts: readonly PricedPart[], of: (part: PricedPart) => number): number =>
  parts.reduce((total, part) => total + of(part), 0);
const massOf = ({ numbers }: PricedPart): number => numbers.mass?.x ?? 0;
const costOf = ({ cost }: PricedPart): number => cost;

/** Sums by assembly: place and letter of the column, column of the parts, and what it holds. */
const SUMMED = [
  [1, 'B', 'C', massOf],
  [2, 'C', 'J', costOf],
] as const;

function assembliesSheet({ parts }: PricedParts): WriteSheet {
  const names = [...new Set(parts.map((p) => p.assembly))].sort();
  const last = parts.length + FIRST - 1;
  const range = (column: string) => `Parts!$${column}$${FIRST}:$${column}$${last}`;
  const cells: Sparse = new Map();
  for (const [at, letter, source, of] of SUMMED) {
    for (const [i, name] of names.entries()) {
      const own = parts.filter((p) => p.assembly === name);
      const text = `SUMIF(${range('B')},A${i + FIRST},${range(source)})`;
      cells.set(`${i + 1},${at}`, formula(text, sum(own, of)));
    }
    const text = `SUM(${letter}${FIRST}:${letter}${names.length + 1})`;
    cells.set(`${names.length + 1},${at}`, formula(text, sum(parts, of)));
  }
  return {
    name: 'Assemblies',
    rows: [['assembly', 'mass, kg', 'cost with overhead, u'], ...names.map((n) => [n]), ['all']],
    cells,
  };
}

/** Where each number of each part comes from. */
function tracesSheet({ parts, overhead }: PricedParts): WriteSheet {
  const line = (part: string, name: string, n: PricedNumber): CellValue[] => [
    ...[part, name, n.x, n.how, placeText(n.place)],
  ];
  return {
    name: 'Where from',
    rows: [
      ['part', 'number', 'value, SI', 'how known', 'reading, cell of the rate book or assumption'],
      ...(overhead ? [line('', 'overhead', overhead)] : []),
      ...parts.flatMap((p) =>
        NUMBERS.flatMap(([name]) => {
          const n = p.numbers[name];
          return n ? [line(p.label, name, n)] : [];
        }),
      ),
    ],
    freezePane: { rows: 1 },
  };
}

const withoutSheet = ({ without }: PricedParts): WriteSheet => ({
  name: 'Not costed',
  rows: [
    ['part', 'material / process without a price'],
    ...without.map(({ label, why }) => [label, why]),
  ],
});
