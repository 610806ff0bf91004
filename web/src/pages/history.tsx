import { useState } from 'react';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { FindingsList } from '../parts/findings-list.tsx';
import { Refusals } from '../parts/refusals.tsx';
import { minuteText } from '../parts/time-text.ts';
import type { HistoryRow } from '../worker/history-rows.ts';

/** Everything that was done to the study, newest first; each can be undone and done again. */
export function HistoryPage() {
  const { data, error } = useDesk(['history'], (desk) => desk.history());
  return (
    <div className="page">
      <h1>History</h1>
      <Refusals error={error} />
      <FoundInRecord />
      <div className="table-scroll">
        <table className="history">
          <thead>
            <tr>
              <th scope="col">when</th>
              <th scope="col">what</th>
              <th scope="col">by</th>
              <th scope="col">device</th>
              <th scope="col">state</th>
              <th scope="col">
                <span className="heard">undo or redo</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {data?.map((row) => (
              <HistoryLine key={row.gesture} row={row} />
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}

/** Edits that met, clocks that jumped, changes that have not arrived. */
function FoundInRecord() {
  const { data } = useDesk(['findings'], (desk) => desk.findings());
  if (!data || data.length === 0) return null;
  return (
    <section>
      <h2>Found in the record</h2>
      <FindingsList findings={data} />
    </section>
  );
}

function HistoryLine({ row }: { readonly row: HistoryRow }) {
  const { desk } = useClient();
  const [error, setError] = useState<unknown>();
  const reverse = (gesture: string) => desk.undo(gesture, recorder()).catch(setError);
  const { undoneBy } = row;
  return (
    <tr>
      <td>{minuteText(row.at)}</td>
      <th scope="row">
        {row.undone ? <s>{row.words}</s> : row.words}
        <Refusals error={error} />
      </th>
      <td>{row.by}</td>
      <td>{row.own ? `${row.device}, this browser` : row.device}</td>
      <td>{row.undone ? 'undone' : 'stands'}</td>
      <td>
        {!row.undone && row.undoes === undefined && (
          <button type="button" onClick={() => void reverse(row.gesture)}>
            Undo<span className="heard"> {row.words}</span>
          </button>
        )}
        {undoneBy !== undefined && (
          <button type="button" onClick={() => void reverse(undoneBy)}>
            Redo<span className="heard"> {row.words}</span>
          </button>
        )}
      </td>
    </tr>
  );
}
