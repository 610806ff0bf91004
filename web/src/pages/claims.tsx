import { useState } from 'react';
import { useDesk } from '../app/desk-client.ts';
import { Refusals } from '../parts/refusals.tsx';
import { ClaimCard } from './claim-card.tsx';
import { ClaimForm } from './claim-form.tsx';

/** What was said at the vehicle: open until a question answers it with number, spread and word. */
export function ClaimsPage() {
  const claims = useDesk(['claims'], (desk) => desk.claims());
  const [tying, setTying] = useState<string>();
  return (
    <div className="page claims-page">
      <h1>Claims</h1>
      <ClaimForm onMade={setTying} />
      <Refusals error={claims.error} />
      {claims.data?.length === 0 && <p>No claim was typed yet.</p>}
      {[...(claims.data ?? [])].reverse().map((row) => (
        <ClaimCard
          key={row.claim.id}
          row={row}
          tying={tying === row.claim.id}
          onTie={(on) => setTying(on ? row.claim.id : undefined)}
        />
      ))}
    </div>
  );
}
