import { useState } from 'react';
import type { DetailTable as Detail } from '../../../src/engine/index.ts';
import { formatNumber, kindDef, unitSymbol } from '../../../src/quantity/index.ts';
import { plainText } from './groups-table.tsx';

type Column = Detail['columns'][number];

export interface DetailTableProps {
  readonly detail: Detail;
  /** Rows in sight until all are asked for; all at once when absent. */
  readonly inSight?: number;
}

/** A table that a question brings along: a census by kind, say. */
export function DetailTable({ detail, inSight = Number.POSITIVE_INFINITY }: DetailTableProps) {
  const [whole, setWhole] = useState(false);
  const folds = detail.rows.length > inSight + 1;
  const rows = folds && !whole ? detail.rows.slice(0, inSight) : detail.rows;
  return (
    <>
      <RowsTable detail={{ ...detail, rows }} />
      {folds && (
        <button type="button" aria-expanded={whole} onClick={() => setWhole(!whole)}>
          {whole ? `First ${inSight} only` : `All ${detail.rows.length} rows`}
          <span className="heard"> of {detail.title}</span>
        </button>
      )}
    </>
  );
}

const RowsTable = ({ detail }: { readonly detail: Detail }) => (
  <div className="table-scroll">
    <table>
      <caption>{detail.title}</caption>
      <thead>
        <tr>
          {detail.columns.map((column) => (
            <th scope="col" key={column.name} className={column.kind ? 'num' : ''}>
              {column.name} <small>{unitSymbol(unitOf(column))}</small>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {detail.rows.map((row) => (
          <tr key={row.join('\n')}>
            {row.map((value, i) => {
              const column = detail.columns[i];
              return (
                <td key={column?.name} className={typeof value === 'number' ? 'num' : ''}>
                  {cellText(value, column)}
                </td>
              );
            })}
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

const unitOf = ({ unit, kind }: Column): string => unit ?? (kind ? kindDef(kind).show[0] : '1');

function cellText(value: string | number, column: Column | undefined): string {
  if (typeof value === 'string') return value;
  if (column?.kind) return plainText(value, column.kind, unitOf(column));
  return formatNumber(value, Number.isInteger(value) ? 0 : 3);
}
