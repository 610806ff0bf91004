import { fileURLToPath } from 'node:url';
import { cellText, formatTable, readTable, type TextRow } from './csv.ts';
import { VAN_27 } from './source/van-27.ts';

const sourceParts = (): TextRow[] =>
  readTable(fileURLToPath(new URL('source/parts.csv', import.meta.url)));

/** Numbers of the parts of an assembly that are so; x is rearward, in mm. */
export const partsWhere = (
  assembly: string,
  isSo: (part: { readonly name: string; readonly x: number }) => boolean,
): string[] =>
  sourceParts()
    .filter((row) => cellText(row, 'assembly') === assembly)
    .filter((row) => isSo({ name: cellText(row, 'name'), x: Number(cellText(row, 'x_mm')) }))
    .map((row) => cellText(row, 'id'));

/** modules.csv: what was in the modules that were weighed in one piece; assemblies stand for all below them. */
export function modulesTable(): string {
  const { pack, front } = VAN_27.modules;
  const rows = [
    { module: pack.subject, holds: pack.holds.join(';'), without: pack.without.join(';') },
    {
      module: front.subject,
      holds: [
        ...front.holds,
        ...front.aheadOfX.flatMap(({ assembly, xMm }) => partsWhere(assembly, ({ x }) => x < xMm)),
      ].join(';'),
      without: '',
    },
  ];
  return formatTable(['module', 'holds', 'without'], rows);
}
