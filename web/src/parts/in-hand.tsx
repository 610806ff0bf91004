import { Link } from '@tanstack/react-router';
import { useDesk, useSaveState } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { useHeader } from '../app/study-header.ts';
import { CellShown } from './cell-shown.tsx';
import { FindingsList } from './findings-list.tsx';
import { NextReadings } from './next-readings.tsx';
import { PartPhotos } from './part-photos.tsx';

/** The part in hand: the same one on the map, in the table and wherever it is named. */
export function InHand() {
  const { selected, select } = useSelection();
  const { study } = useHeader();
  const { data: node } = useDesk(
    ['node', selected],
    (desk) => desk.node(selected ?? ''),
    selected !== undefined,
  );
  if (!node || selected === undefined) return null;
  return (
    <section className="in-hand" aria-live="polite">
      <h2>
        In hand
        <button type="button" className="link" onClick={() => select(undefined)}>
          put down
        </button>
      </h2>
      <h3>
        {node.label} {node.name}
      </h3>
      <p className="soft">
        {node.kind}
        {node.above !== '' && `, of ${node.above}`}
      </p>
      <OthersAt node={node.id} />
      <NextHere node={node.id} />
      <dl>
        {node.cells.map(({ property, words, cell }) => (
          <div key={property}>
            <dt>{words}</dt>
            <dd>
              <CellShown
                cell={cell}
                subject={node.id}
                property={property}
                of={`${words} of ${node.label}`}
              />
            </dd>
          </div>
        ))}
      </dl>
      <FoundHere node={node.id} />
      <PartPhotos node={node.id} label={node.label} />
      <p className="acts">
        <Link to="/s/$study/parts" params={{ study }} search={{ part: node.id }}>
          In the table
        </Link>
        <Link to="/s/$study/map" params={{ study }} search={{ part: node.id }}>
          On the map
        </Link>
      </p>
    </section>
  );
}

/** Who else has this part in hand at the moment. */
function OthersAt({ node }: { readonly node: string }) {
  const { others } = useSaveState();
  return others
    .filter(({ part }) => part === node)
    .map(({ page, by, device }) => (
      <p key={page} className="open">
        {by} ({device}) has this in hand too.
      </p>
    ));
}

/** Edits that met, and whatever else is odd about the part in hand. */
function FoundHere({ node }: { readonly node: string }) {
  const { data } = useDesk(['findings', node], (desk) => desk.findings(node));
  return <FindingsList findings={data ?? []} />;
}

/** Readings told of a part in hand, of each sort. */
const TOLD = 3;

/** What of this part is worth measuring next, while it is in hand. */
function NextHere({ node }: { readonly node: string }) {
  const { data } = useDesk(['next', node], (desk) => desk.next(TOLD, node));
  if (!data || data.readings.length === 0) return null;
  return (
    <>
      <h3>Measure next on it</h3>
      <NextReadings next={data} readings={data.readings} />
    </>
  );
}
