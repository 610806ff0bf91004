import { FIELDS, type Overrides, SKIP } from '../../../src/capture/index.ts';
import { unitSymbol } from '../../../src/quantity/index.ts';
import type { ImportAnswer } from '../../../src/server/contract.ts';
import { RefusalError } from '../../../src/study/index.ts';
import { FindingsList } from '../parts/findings-list.tsx';
import { Refusals } from '../parts/refusals.tsx';

type Preview = ImportAnswer['preview'];

export interface PreviewShownProps {
  readonly preview: Preview;
  readonly overrides: Overrides;
  readonly onChange: (overrides: Overrides) => void;
}

/** What a table would become, every guess with its reason, and what keeps it out. */
export function PreviewShown({ preview, overrides, onChange }: PreviewShownProps) {
  const [first, ...more] = preview.problems;
  return (
    <div className="preview">
      <p>
        It would make{' '}
        {Object.entries(preview.counts)
          .map(([what, n]) => `${n} ${what}`)
          .join(', ')}
        . Nothing is written yet.
      </p>
      {first && <Refusals error={new RefusalError(first, ...more)} />}
      <FindingsList findings={preview.notes} />
      <Columns preview={preview} overrides={overrides} onChange={onChange} />
      <ul>
        {[
          { what: 'delimiter', ...preview.delimiter },
          { what: 'decimal sign', ...preview.decimal },
          { what: 'letters', ...preview.encoding },
          ...preview.assumed,
        ].map(({ what, value, why }) => (
          <li key={what}>
            {what}: <b>{value === '\t' ? 'tab' : value}</b> <span className="soft">({why})</span>
          </li>
        ))}
      </ul>
      <FirstRows preview={preview} />
    </div>
  );
}

/** What each column is taken for; another field or unit can be said, then looked at again. */
const Columns = ({ preview, overrides, onChange }: PreviewShownProps) => (
  <div className="table-scroll">
    <table>
      <caption>Columns as they are taken</caption>
      <thead>
        <tr>
          <th scope="col">column</th>
          <th scope="col">holds</th>
          <th scope="col">unit</th>
          <th scope="col">why</th>
        </tr>
      </thead>
      <tbody>
        {preview.columns.map(({ column, field, unit, why }) => (
          <tr key={column}>
            <th scope="row">{column}</th>
            <td>
              <select
                aria-label={`column ${column} holds`}
                value={overrides.columns?.[column] ?? field?.field ?? SKIP}
                onChange={(e) =>
                  onChange({
                    ...overrides,
                    columns: { ...overrides.columns, [column]: e.target.value },
                  })
                }
              >
                <option value={SKIP}>left out</option>
                {FIELDS[preview.form].map((f) => (
                  <option key={f.field} value={f.field}>
                    {f.words}
                  </option>
                ))}
              </select>
            </td>
            <td>
              {field?.kind && (
                <input
                  aria-label={`unit of column ${column}`}
                  size={6}
                  defaultValue={overrides.units?.[column] ?? unitSymbol(unit ?? '')}
                  onBlur={(e) =>
                    onChange({
                      ...overrides,
                      units: { ...overrides.units, [column]: e.target.value },
                    })
                  }
                />
              )}
            </td>
            <td className="soft">{why}</td>
          </tr>
        ))}
      </tbody>
    </table>
  </div>
);

const FirstRows = ({ preview }: { readonly preview: Preview }) => (
  <details>
    <summary>First rows as written</summary>
    <div className="table-scroll">
      <table>
        <thead>
          <tr>
            <th scope="col">row</th>
            {preview.columns.map(({ column }) => (
              <th scope="col" key={column}>
                {column}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {preview.rows.map(({ row, cells }) => (
            <tr key={row}>
              <th scope="row">{row}</th>
              {cells.map((cell, i) => (
                <td key={preview.columns[i]?.column} className={cell.problem ? 'open' : ''}>
                  {cell.written} {cell.problem && <b>{cell.problem}</b>}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  </details>
);
