import { formatTable, type TextRow } from './csv.ts';
import { LINES } from './source/lines.ts';

const text = (x: number | undefined): string => (x === undefined ? '' : String(x));
/** A value with its standard uncertainty; both empty where there is none. */
const pair = (heading: string, unit: string, x: number | undefined, u: number): TextRow => ({
  [`${heading} [${unit}]`]: text(x),
  [`${heading}_u [${unit}]`]: x === undefined ? '' : String(Number(u.toPrecision(3))),
});
const share = (x: number | undefined, of: number): number => of * (x ?? 0);

const rowOf = ({ fluid, cable, ...line }: (typeof LINES)[number]): TextRow => ({
  ...{ number: line.number, name: line.name, by: line.by, kind: line.kind, circuit: line.circuit },
  ...{ through: line.through, from: line.from, to: line.to, route_mm: line.route },
  replaced: line.replaced,
  ...pair('length', 'm', line.lengthM, share(line.lengthM, 0.02)),
  ...pair('bore', 'mm', line.boreMm, 0.1),
  ...pair('outer_diameter', 'mm', line.outerMm, 0.1),
  ...{ clips: String(line.clips), connectors: String(line.connectors) },
  ...pair('bend', 'mm', line.bendMm, 1),
  ...pair('bend_limit', 'mm', line.bendLimitMm, 0.1),
  ...pair('flow', 'L/min', fluid?.flowLMin, 0.5),
  ...pair('density', 'kg/m3', fluid?.density, 5),
  ...pair('viscosity', 'mPa.s', fluid?.mPas, 0.2),
  ...pair('losses', '1', fluid?.losses, 1),
  ...pair('current', 'A', cable?.currentA, share(cable?.currentA, 0.05)),
  ...pair('conductor', 'mm2', cable?.areaMm2, share(cable?.areaMm2, 0.02)),
  ...pair('voltage', 'V', cable?.voltageV, share(cable?.voltageV, 0.02)),
});

/** lines.csv: pipes, hoses and cables with their route; in both records the same. */
export function linesTable(): string {
  const rows = LINES.map(rowOf);
  return formatTable(Object.keys(rows[0] ?? {}), rows);
}
