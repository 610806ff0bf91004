import { fileURLToPath } from 'node:url';
import { cellText, formatTable, readTable, type TextRow } from './csv.ts';
import { VAN_27 } from './source/van-27.ts';

const sourceParts = (): TextRow[] =>
  readTable(fileURLToPath(new URL('source/parts.csv', import.meta.url)));

/** Parts of an assembly that lie ahead of a plane. */
const ahead = (assembly: string, xMm: number): string[] =>
  sourceParts()
    .filter((row) => cellText(row, 'assembly') === assembly && Number(cellText(row, 'x_mm')) < xMm)
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
        ...front.aheadOfX.flatMap(({ assembly, xMm }) => ahead(assembly, xMm)),
      ].join(';'),
      without: '',
    },
  ];
  return formatTable(['module', 'holds', 'without'], rows);
}
