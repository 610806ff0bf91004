import { useState } from 'react';
import { PhotosShown } from '../parts/photos-shown.tsx';
import type { WalkRow } from '../worker/walk-rows.ts';
import { ClaimCard } from './claim-card.tsx';
import { WalkDraft } from './walk-draft.tsx';

/** One stretch of the time line: its time, words and photographs, its drafts, and what they became. */
export function WalkLine({ row, onPlay }: { readonly row: WalkRow; readonly onPlay: () => void }) {
  const [tying, setTying] = useState<string>();
  return (
    <li className="walk-line">
      <div className="walk-said">
        <button
          type="button"
          className="link walk-clock"
          onClick={onPlay}
          aria-label={`Play from ${row.clock}`}
        >
          {row.clock}
        </button>
        <p>
          {row.who !== '' && <b>{row.who} </b>}
          {row.text}
          {row.marks > 0 && <b className="walk-mark"> marked</b>}
        </p>
        <PhotosShown photos={row.photos} />
      </div>
      <div className="walk-drafts">
        {row.drafts.map((draft) => (
          <WalkDraft key={draft.id} draft={draft} />
        ))}
        {row.settled.map((one) => (
          <p key={one.id} className="soft">
            {one.as}: {one.words}
          </p>
        ))}
      </div>
      <div className="walk-answers">
        {row.claims.map((claim) => (
          <ClaimCard
            key={claim.claim.id}
            row={claim}
            tying={tying === claim.claim.id}
            onTie={(on) => setTying(on ? claim.claim.id : undefined)}
          />
        ))}
      </div>
    </li>
  );
}
