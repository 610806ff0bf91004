import { Link } from '@tanstack/react-router';
import { useDesk } from '../app/desk-client.ts';
import { useHeader } from '../app/study-header.ts';
import { testText } from '../parts/claim-test.ts';
import { numberLine } from '../parts/number-text.ts';

/** What was claimed at the vehicle, and what the record says of it. */
export function OverviewClaims() {
  const { study } = useHeader();
  const { data } = useDesk(['claims'], (desk) => desk.claims());
  if (!data) return null;
  return (
    <section>
      <h2>
        <Link to="/s/$study/claims" params={{ study }}>
          Claims
        </Link>
      </h2>
      {data.length === 0 && <p>None was typed yet.</p>}
      {data.map((row) => (
        <div key={row.claim.id} className="entry">
          <h3>
            {row.claim.words}
            <em className={row.decision ? '' : 'open'}>{row.decision?.word ?? 'open'}</em>
          </h3>
          <p className="soft">
            {row.decision && row.out ? `${numberLine(row.out)}, ${testText(row)}` : row.lacks[0]}
          </p>
        </div>
      ))}
    </section>
  );
}
