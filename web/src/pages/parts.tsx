import { useMemo, useState } from 'react';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { counted } from '../parts/counted.ts';
import { InHand } from '../parts/in-hand.tsx';
import { LineKey } from '../parts/line-key.tsx';
import { filterParts, type PartFilter, SHOW, type Show } from '../parts/part-filter.ts';
import { PartsTable } from '../parts/parts-table.tsx';
import { TotalsStrip } from '../parts/totals-strip.tsx';
import { PasteCells } from './paste-cells.tsx';

/** Every part with what is known of it; sorted, filtered, corrected and measured again here. */
export function PartsPage() {
  const parts = useDesk(['parts'], (desk) => desk.parts());
  const { selected } = useSelection();
  const [filter, setFilter] = useState<PartFilter>({ text: '', show: 'all parts' });
  const all = parts.data;
  const rows = useMemo(() => filterParts(all ?? [], filter), [all, filter]);
  return (
    <div className="parts-page">
      <h1 className="heard">Parts</h1>
      <div className="parts-bar">
        <label className="inline">
          Find
          <input
            type="search"
            value={filter.text}
            onChange={(e) => setFilter({ ...filter, text: e.target.value })}
          />
        </label>
        <label className="inline">
          Show
          <select
            value={filter.show}
            onChange={(e) => setFilter({ ...filter, show: e.target.value as Show })}
          >
            {SHOW.map((show) => (
              <option key={show}>{show}</option>
            ))}
          </select>
        </label>
        <span role="status">
          {rows.length} of {counted(all?.length ?? 0, 'row')}
        </span>
        <PasteCells />
        <LineKey />
      </div>
      <TotalsStrip />
      <div className={selected ? 'parts-split with-part' : 'parts-split'}>
        <PartsTable rows={rows} />
        <aside>
          <InHand />
        </aside>
      </div>
    </div>
  );
}
