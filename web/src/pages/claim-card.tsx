import { useState } from 'react';
import { DecisionShown } from '../answer/decision-shown.tsx';
import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { testText } from '../parts/claim-test.ts';
import { NumberShown } from '../parts/number.tsx';
import { Refusals } from '../parts/refusals.tsx';
import type { ClaimRow } from '../worker/claim-rows.ts';
import { TieForm } from './tie-form.tsx';

export interface ClaimCardProps {
  readonly row: ClaimRow;
  readonly tying: boolean;
  readonly onTie: (on: boolean) => void;
}

/** One claim: who said it and how it was known, what would make it true, and what the record says. */
export function ClaimCard({ row, tying, onTie }: ClaimCardProps) {
  const { claim, about, tie, state } = row;
  const [withdrawing, setWithdrawing] = useState(false);
  return (
    <article className="claim" aria-label={claim.words}>
      <header>
        <h2>“{claim.words}”</h2>
        <Word row={row} />
      </header>
      <p className="soft">
        {claim.how}, {claim.by}, {claim.heard.replace('T', ' ')}
        {about.length > 0 && <> · about {about.map((a) => a.words).join('; ')}</>}
      </p>
      {tie ? (
        <p>
          Holds if “{tie.title}” of {tie.subjectWords} gives {tie.outputWords}: {testText(row)}.
        </p>
      ) : (
        <p className="open">open: not tied to a question yet</p>
      )}
      {tie && row.out && (
        <p>
          <NumberShown
            shown={row.out}
            how="calculated"
            of={row.out.meaning}
            why={{ of: 'out', question: tie.question, subject: tie.subject, output: tie.output }}
          />{' '}
          {row.out.meaning}
        </p>
      )}
      {tie && row.beside.length > 0 && (
        <ul className="beside" aria-label="What else the same answer decides">
          {row.beside.map((out) => (
            <li key={out.name}>
              {out.meaning}:{' '}
              <NumberShown
                shown={out}
                how="calculated"
                of={out.meaning}
                why={{ of: 'out', question: tie.question, subject: tie.subject, output: out.name }}
              />{' '}
              {out.decision && (
                <DecisionShown decision={out.decision} kind={out.kind} unit={out.unit} />
              )}
            </li>
          ))}
        </ul>
      )}
      {tie && state === 'open' && (
        <ul className="open">
          {row.lacks.map((lack) => (
            <li key={lack}>{lack}</li>
          ))}
        </ul>
      )}
      <div className="acts">
        {!tying && (
          <button type="button" onClick={() => onTie(true)}>
            {tie ? 'Tie anew' : 'Say what would make it true'}
          </button>
        )}
        <button type="button" onClick={() => setWithdrawing(!withdrawing)}>
          Withdraw
        </button>
      </div>
      {tying && <TieForm row={row} onDone={() => onTie(false)} />}
      {withdrawing && <WithdrawForm id={claim.id} />}
    </article>
  );
}

function Word({ row: { decision, out } }: { readonly row: ClaimRow }) {
  if (!decision || !out) return <b className="open word">open</b>;
  return (
    <span className="word">
      <DecisionShown decision={decision} kind={out.kind} unit={out.unit} />
    </span>
  );
}

function WithdrawForm({ id }: { readonly id: string }) {
  const { desk } = useClient();
  const [why, setWhy] = useState('');
  const [error, setError] = useState<unknown>();
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        desk.withdrawClaim(id, why, recorder()).catch(setError);
      }}
    >
      <label className="field wide">
        Why it does not stand
        <input value={why} onChange={(e) => setWhy(e.target.value)} />
      </label>
      <button type="submit" className="primary">
        Withdraw the claim
      </button>
      <Refusals error={error} />
    </form>
  );
}
