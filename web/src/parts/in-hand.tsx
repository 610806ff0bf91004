import { Link } from '@tanstack/react-router';
import { propertyWords } from '../../../src/study/index.ts';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.ts';
import { useHeader } from '../app/study-shell.tsx';
import { PART_PROPERTIES } from '../worker/part-rows.ts';
import { CellShown } from './cell-shown.tsx';

/** The part in hand: the same one on the map, in the table and wherever it is named. */
export function InHand() {
  const { selected, select } = useSelection();
  const { study } = useHeader();
  const rows = useDesk(['parts'], (desk) => desk.parts());
  const row = rows.data?.find((r) => r.id === selected);
  if (!row) return null;
  return (
    <section className="in-hand" aria-live="polite">
      <h2>
        In hand
        <button type="button" className="link" onClick={() => select(undefined)}>
          put down
        </button>
      </h2>
      <h3>
        {row.label} {row.name}
      </h3>
      <p className="soft">{row.assembly}</p>
      <dl>
        {PART_PROPERTIES.map((property) => (
          <div key={property}>
            <dt>{propertyWords(property)}</dt>
            <dd>
              <CellShown
                cell={row.cells[property]}
                subject={row.id}
                property={property}
                of={`${propertyWords(property)} of ${row.label}`}
              />
            </dd>
          </div>
        ))}
      </dl>
      <p>
        <Link to="/s/$study/parts" params={{ study }} search={{ part: row.id }}>
          In the table
        </Link>{' '}
        <Link to="/s/$study/map" params={{ study }} search={{ part: row.id }}>
          On the map
        </Link>
      </p>
    </section>
  );
}
