import type { PlainQuestion } from '../../../src/engine/index.ts';
import { unitSymbol } from '../../../src/quantity/index.ts';
import type { WrittenRow } from './question-form.tsx';

type TableInput = Extract<PlainQuestion['inputs'][number], { readonly in: 'table' }>;
type Column = TableInput['columns'][number];

export interface FormTableProps {
  readonly input: TableInput;
  readonly rows: readonly WrittenRow[];
  readonly onChange: (rows: readonly WrittenRow[]) => void;
}

/** A table input as rows to be typed in. */
export const FormTable = ({ input, rows, onChange }: FormTableProps) => (
  <fieldset className="form-table">
    <legend>{input.meaning}</legend>
    {rows.length > 0 && (
      <div className="table-scroll">
        <table>
          <thead>
            <tr>
              {input.columns.map((column) => (
                <th scope="col" key={column.name}>
                  {headingOf(column)}
                </th>
              ))}
              <th scope="col">
                <span className="heard">take out</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: rows have no other name
              <tr key={i}>
                {input.columns.map((column) => (
                  <td key={column.name}>
                    <input
                      aria-label={`${column.meaning}, row ${i + 1}`}
                      value={row[column.name] ?? ''}
                      autoComplete="off"
                      onChange={(e) =>
                        onChange(rows.with(i, { ...row, [column.name]: e.target.value }))
                      }
                    />
                  </td>
                ))}
                <td>
                  <button
                    type="button"
                    aria-label={`Take out row ${i + 1}`}
                    onClick={() => onChange(rows.toSpliced(i, 1))}
                  >
                    −
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    )}
    <button type="button" onClick={() => onChange([...rows, {}])}>
      Add a row
    </button>
  </fieldset>
);

const headingOf = (column: Column): string =>
  column.in === 'scalar' ? `${column.meaning} [${unitSymbol(column.unit) || '1'}]` : column.meaning;
