import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { useWhy } from '../parts/why.tsx';
import type { Gap, GapPlace } from '../worker/gaps.ts';

/** Places in sight before the rest of a kind folds away. */
const IN_SIGHT = 3;

/** What is not known; each line leads to the part and to where the reading is filled in. */
export function OverviewGaps() {
  const { data } = useDesk(['gaps'], (desk) => desk.gaps());
  if (!data) return null;
  const [gaps, doubts] = (['gap', 'doubt'] as const).map((l) => data.filter((g) => g.level === l));
  return (
    <>
      <section>
        <h2>What is not known</h2>
        {gaps?.length === 0 && <p>Nothing that a question asked for is missing.</p>}
        {gaps?.map((gap) => (
          <GapKind key={`${gap.code} ${gap.words}`} gap={gap} />
        ))}
      </section>
      {doubts !== undefined && doubts.length > 0 && (
        <section>
          <h2>In doubt</h2>
          {doubts.map((gap) => (
            <GapKind key={`${gap.code} ${gap.words}`} gap={gap} />
          ))}
        </section>
      )}
    </>
  );
}

function GapKind({ gap }: { readonly gap: Gap }) {
  const seen = gap.places.length <= IN_SIGHT + 1 ? gap.places : gap.places.slice(0, IN_SIGHT);
  const rest = gap.places.slice(seen.length);
  return (
    <div className="entry">
      <h3>
        {gap.words}
        {gap.level === 'gap' && <em className="open">{gap.places.length} open</em>}
      </h3>
      <Places places={seen} />
      {rest.length > 0 && (
        <details>
          <summary>{rest.length} more</summary>
          <Places places={rest} />
        </details>
      )}
      <p className="soft">{gap.next}</p>
    </div>
  );
}

const Places = ({ places }: { readonly places: readonly GapPlace[] }) => (
  <ul className="places">
    {places.map((place) => (
      <li key={place.words}>
        <PlaceLink place={place} />
        {place.value !== undefined && <span className="soft"> {place.value}</span>}
      </li>
    ))}
  </ul>
);

function PlaceLink({ place: { words, node, cell } }: { readonly place: GapPlace }) {
  const { select } = useSelection();
  const open = useWhy();
  if (!node) return <>{words}</>;
  const go = () => {
    select(node);
    if (cell) open({ of: 'cell', ...cell });
  };
  return (
    <button type="button" className="link" onClick={go}>
      {words}
    </button>
  );
}
