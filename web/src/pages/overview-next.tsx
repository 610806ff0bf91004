import { useDesk } from '../app/desk-client.ts';
import { counted } from '../parts/counted.ts';
import { NextReadings } from '../parts/next-readings.tsx';

/** Readings of each sort that are asked for, and of all of them in sight. */
const [ASKED, IN_SIGHT] = [8, 4];

/** Which reading would settle or narrow most of what is open. */
export function OverviewNext() {
  const { data } = useDesk(['next'], (desk) => desk.next(ASKED));
  if (!data) return null;
  // What is missing stands in full under "What is not known"; here one of each sort leads.
  const lacking = data.readings.filter((r) => r.why !== 'spread');
  const narrowing = data.readings.filter((r) => r.why === 'spread');
  const first = [...lacking.slice(0, 2), ...narrowing].slice(0, IN_SIGHT);
  const rest = data.readings.filter((r) => !first.includes(r));
  return (
    <section>
      <h2>Measure next</h2>
      <p className="soft">
        {data.open.length === 0
          ? 'Nothing is open: every claim has its word, every total is as narrow as asked.'
          : `${counted(data.open.length, 'number')} open`}
      </p>
      <NextReadings next={data} readings={first} />
      {rest.length > 0 && (
        <details>
          <summary>{rest.length + data.leftOut} more</summary>
          <NextReadings next={data} readings={rest} />
          {data.leftOut > 0 && <p className="soft">and {data.leftOut} that would do less</p>}
        </details>
      )}
    </section>
  );
}
