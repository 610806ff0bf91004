import { type KeyboardEvent, useState } from 'react';
import { WAYS, type Way } from '../../../src/quantity/index.ts';
import type { Accepted } from '../../../src/speech/index.ts';
import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { NodePicker } from '../parts/node-picker.tsx';
import { Refusals } from '../parts/refusals.tsx';
import type { DraftRow } from '../worker/walk-rows.ts';

/** A draft with its four acts, by key or by one touch. */
export function WalkDraft({ draft }: { readonly draft: DraftRow }) {
  const { desk } = useClient();
  const [error, setError] = useState<unknown>();
  const [correcting, setCorrecting] = useState(false);
  const accept = (said: Omit<Accepted, 'draft'> = {}) =>
    desk.spoken({ do: 'accept', said: { draft: draft.id, ...said } }, recorder()).catch(setError);
  const acts: Readonly<Record<string, () => unknown>> = {
    a: () =>
      draft.how === 'measured' && draft.form === 'reading' ? setCorrecting(true) : accept(),
    e: () => setCorrecting(true),
    s: () => desk.spoken({ do: 'split', draft: draft.id }, recorder()).catch(setError),
    r: () => desk.spoken({ do: 'reject', draft: draft.id }, recorder()).catch(setError),
  };
  const onKey = (event: KeyboardEvent<HTMLElement>) => {
    if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey)
      return;
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined) {
      event.preventDefault();
      toNeighbour(event.currentTarget, step);
    } else if (acts[event.key]) {
      event.preventDefault();
      acts[event.key]?.();
    }
  };
  const of = draft.about.map((a) => a.words).join(' or ') || 'no part named';
  return (
    <article
      className="walk-draft"
      // biome-ignore lint/a11y/noNoninteractiveTabindex: its keys are told above the time line
      tabIndex={0}
      onKeyDown={onKey}
      aria-label={`Draft: ${draft.words}`}
    >
      <p>
        <b>{of}</b>: {draft.kind} <span className="walk-heard">{draft.heard}</span>
        <span className="soft">
          {' '}
          “{draft.words}”, {draft.how}, as a {draft.form}
        </span>
      </p>
      <div className="acts">
        <button type="button" className="primary" onClick={acts.a}>
          Accept
        </button>
        <button type="button" onClick={acts.e}>
          Correct
        </button>
        {draft.form === 'reading' && (
          <button type="button" onClick={() => accept({ as: 'claim' })}>
            As a claim
          </button>
        )}
        {draft.about.length > 1 && (
          <button type="button" onClick={acts.s}>
            Split
          </button>
        )}
        <button type="button" onClick={acts.r}>
          Reject
        </button>
      </div>
      {correcting && (
        <Correct draft={draft} onAccept={accept} onLeave={() => setCorrecting(false)} />
      )}
      <Refusals error={error} />
    </article>
  );
}

/** The next or previous draft of the page takes the keys. */
function toNeighbour(here: HTMLElement, step: number): void {
  const all = [...document.querySelectorAll<HTMLElement>('.walk-draft')];
  all[all.indexOf(here) + step]?.focus();
}

interface CorrectProps {
  readonly draft: DraftRow;
  readonly onAccept: (said: Omit<Accepted, 'draft'>) => void;
  readonly onLeave: () => void;
}

/** What was misheard, put right: part, value, way of knowing; a measured value names its instrument. */
function Correct({ draft, onAccept, onLeave }: CorrectProps) {
  const { desk } = useClient();
  const [subject, setSubject] = useState(
    draft.about.length === 1 ? (draft.about[0]?.id ?? '') : '',
  );
  const [value, setValue] = useState(draft.heard);
  const [how, setHow] = useState<Way>(draft.how);
  const [instrument, setInstrument] = useState('');
  const [said, setSaid] = useState('');
  const changed = (): Omit<Accepted, 'draft'> => ({
    ...(subject !== '' && subject !== draft.about[0]?.id ? { subject } : {}),
    ...(draft.about.length > 1 && subject !== '' ? { subject } : {}),
    ...(draft.isQuantity && value !== draft.heard ? { value } : {}),
    ...(how === draft.how ? {} : { how }),
    ...(instrument.trim() === '' ? {} : { instrument }),
  });
  return (
    <form
      className="tie-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (said.trim() !== '' && subject !== '')
          void desk.spoken({ do: 'word', said, part: subject }, recorder());
        onAccept(changed());
      }}
    >
      <NodePicker title="Of" value={subject} onChange={setSubject} empty="choose the part" />
      {draft.isQuantity && (
        <label className="field">
          Value
          <input value={value} onChange={(e) => setValue(e.target.value)} />
        </label>
      )}
      <label className="field">
        Known how
        <select value={how} onChange={(e) => setHow(e.target.value as Way)}>
          {WAYS.map((way) => (
            <option key={way}>{way}</option>
          ))}
        </select>
      </label>
      <label className="field">
        Instrument{how === 'measured' ? ' (needed)' : ''}
        <input value={instrument} onChange={(e) => setInstrument(e.target.value)} />
      </label>
      <label className="field wide">
        What was said for this part, if it should be known from now on
        <input value={said} onChange={(e) => setSaid(e.target.value)} />
      </label>
      <div className="acts">
        <button type="button" onClick={onLeave}>
          Leave it
        </button>
        <button type="submit" className="primary">
          Accept so
        </button>
      </div>
    </form>
  );
}
