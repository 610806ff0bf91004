import { propertyDef } from '../src/study/index.ts';
import { formatTable, type TextRow } from './csv.ts';
import {
  ASSEMBLY_FUNCTIONS,
  FUNCTIONS,
  type WrittenLine,
  type WrittenNumber,
} from './source/alternative-lines.ts';
import { VEHICLE_HEADINGS } from './vehicle-table.ts';
import { fromHalfWidth, reading } from './way-in-tables.ts';

/** A design or a line, and what it belongs to. */
const made = (parent: string, name: string) => ({ kind: 'alternative', parent, name });
type Made = ReturnType<typeof made>;

function numberRow(subject: string, of: Made, name: string, number: WrittenNumber): TextRow {
  const [x, half] = typeof number === 'number' ? [number, 0] : number;
  const property = `cost.${name}`;
  const value = String(Number(x.toPrecision(12)));
  const unit = propertyDef(property)?.unit ?? '1';
  return reading({ subject, property, value, unit, u: fromHalfWidth(half), made: of });
}

const lineRows = (subject: string, of: Made, { words = {}, numbers }: WrittenLine): TextRow[] => [
  ...Object.entries(words).map(([name, value]) =>
    reading({ subject, property: `cost.${name}`, value, made: of }),
  ),
  ...Object.entries(numbers).map(([name, number]) => numberRow(subject, of, name, number)),
];

/** alternatives.csv: what other designs for the same function are made of and need beside them; what assemblies are for. */
export function alternativesTable(): string {
  const rows = FUNCTIONS.flatMap(({ label, name, serves, designs }) => {
    const does = (subject: string, of: Made): TextRow =>
      reading({ subject, property: 'cost.function', value: serves, how: 'seen', made: of });
    return [
      does(label, made('40', name)),
      ...designs.flatMap((design, i) => {
        const above = `${label}-${i + 1}`;
        const said = Object.entries(design.words ?? {}).map(([name, value]) =>
          reading({ subject: above, property: `cost.${name}`, value, how: 'inferred' }),
        );
        return [
          does(above, made(label, design.name)),
          ...said,
          ...design.lines.flatMap((line, k) =>
            lineRows(`${above}-${k + 1}`, made(above, line.name), line),
          ),
        ];
      }),
    ];
  });
  const shares = Object.entries(ASSEMBLY_FUNCTIONS).map(([subject, value]) =>
    reading({ subject, property: 'cost.functions', value, how: 'inferred' }),
  );
  return formatTable(VEHICLE_HEADINGS, [...rows, ...shares]);
}
