import { useEffect, useRef, useState } from 'react';
import { WAYS, type Way } from '../../../src/quantity/index.ts';
import { type Refusal, RefusalError } from '../../../src/study/index.ts';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import type { CellStory } from '../worker/cell-story.ts';
import type { CellEdit } from '../worker/edit-cell.ts';
import { invalid, Wrong } from './field-error.tsx';
import { NameField } from './name-field.tsx';
import { Refusals } from './refusals.tsx';
import { readBack, ValueField } from './value-field.tsx';

export interface EditCellProps {
  readonly story: CellStory;
  readonly onDone: () => void;
}

type Draft = Omit<CellEdit, 'subject' | 'property'>;

/** Correct a value (the old one is withdrawn and stays visible) or measure it again (both stand). */
export function EditCell({ story, onDone }: EditCellProps) {
  const { desk } = useClient();
  const [draft, setDraft] = useState<Draft>(() => firstDraft(story));
  const [error, setError] = useState<unknown>();
  const form = useRef<HTMLFormElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: only a new error takes the focus
  useEffect(
    () => form.current?.querySelector<HTMLElement>('[aria-invalid=true]')?.focus(),
    [error],
  );
  const put = (set: Partial<Draft>) => setDraft((before) => ({ ...before, ...set }));
  const record = async () => {
    try {
      await desk.edit({ ...story.of, ...draft }, recorder());
      onDone();
    } catch (problem) {
      setError(problem);
    }
  };
  const isSaid = story.holds !== 'text' && draft.written.some((text) => !readBack(story, text).ok);
  return (
    <form
      ref={form}
      className="edit-cell"
      onSubmit={(event) => {
        event.preventDefault();
        void record();
      }}
    >
      {story.cell.c !== 'missing' && (
        <ModeChoice mode={draft.mode} onChange={(mode) => put({ mode })} />
      )}
      {draft.written.map((text, i) => (
        <ValueField
          // biome-ignore lint/suspicious/noArrayIndexKey: components have no other name
          key={i}
          story={story}
          component={i}
          text={text}
          onChange={(written) => put({ written: draft.written.with(i, written) })}
        />
      ))}
      <HowFields draft={draft} put={put} wrong={at('instrument', error)} />
      {draft.mode === 'correct' && story.cell.c !== 'missing' && (
        <label>
          What was wrong with the old value
          <input
            value={draft.why}
            {...invalid(at('reason', error))}
            onChange={(e) => put({ why: e.target.value })}
          />
          <Wrong refusal={at('reason', error)} />
        </label>
      )}
      <label>
        Note
        <input value={draft.note} onChange={(e) => put({ note: e.target.value })} />
      </label>
      <NameField />
      <Refusals error={elsewhere(error, isSaid)} />
      <div className="acts">
        <button type="button" onClick={onDone}>
          Leave it
        </button>
        <button type="submit" className="primary">
          {draft.mode === 'correct' ? 'Correct' : 'Keep reading'}
        </button>
      </div>
    </form>
  );
}

/** The refusal of a field beside the value. */
const at = (column: string, error: unknown): Refusal | undefined =>
  error instanceof RefusalError ? error.refusals.find((r) => r.place.column === column) : undefined;

/** What no field says: of a value that is objected to as it is typed, nothing more. */
function elsewhere(error: unknown, isSaid: boolean): unknown {
  if (!(error instanceof RefusalError)) return error;
  const [first, ...more] = error.refusals.filter(
    ({ place: { column } }) => column !== 'instrument' && column !== 'reason' && !isSaid,
  );
  return first && new RefusalError(first, ...more);
}

const firstDraft = ({ cell, holds }: CellStory): Draft => ({
  mode: cell.c === 'missing' ? 'again' : 'correct',
  written: holds === 'vector' ? ['', '', ''] : [''],
  how: 'measured',
  instrument: '',
  note: '',
  why: '',
});

const ModeChoice = ({
  mode,
  onChange,
}: {
  mode: Draft['mode'];
  onChange: (m: Draft['mode']) => void;
}) => (
  <fieldset className="choice">
    <legend>What is this?</legend>
    <label>
      <input type="radio" checked={mode === 'correct'} onChange={() => onChange('correct')} />
      Correct: the old value is wrong, it is withdrawn and stays visible
    </label>
    <label>
      <input type="radio" checked={mode === 'again'} onChange={() => onChange('again')} />
      Measured again: both readings stand
    </label>
  </fieldset>
);

interface HowFieldsProps {
  readonly draft: Draft;
  readonly put: (set: Partial<Draft>) => void;
  /** Why the instrument as it stands is not taken. */
  readonly wrong: Refusal | undefined;
}

function HowFields({ draft, put, wrong }: HowFieldsProps) {
  const instruments = useDesk(['instruments'], (desk) => desk.instruments());
  return (
    <>
      <label>
        How it is known
        <select value={draft.how} onChange={(e) => put({ how: e.target.value as Way })}>
          {WAYS.map((way) => (
            <option key={way}>{way}</option>
          ))}
        </select>
      </label>
      <label>
        Instrument{draft.how === 'measured' ? ', needed' : ''}
        <input
          value={draft.instrument}
          list="instruments"
          autoComplete="off"
          {...invalid(wrong)}
          onChange={(e) => put({ instrument: e.target.value })}
        />
        <Wrong refusal={wrong} />
        <datalist id="instruments">
          {instruments.data?.map((label) => (
            <option key={label} value={label} />
          ))}
        </datalist>
      </label>
    </>
  );
}
