import { useState } from 'react';
import {
  type Kind,
  kindDef,
  parseQuantity,
  standardUncertainty,
  unitSymbol,
  WAYS,
  type Way,
} from '../../../src/quantity/index.ts';
import { propertyDef } from '../../../src/study/index.ts';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import type { CellStory } from '../worker/cell-story.ts';
import type { CellEdit } from '../worker/edit-cell.ts';
import { numberLine } from './number-text.ts';
import { Refusals } from './refusals.tsx';

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
  const put = (set: Partial<Draft>) => setDraft((before) => ({ ...before, ...set }));
  const record = async () => {
    try {
      await desk.edit({ ...story.of, ...draft }, recorder());
      onDone();
    } catch (problem) {
      setError(problem);
    }
  };
  return (
    <form
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
      <HowFields draft={draft} put={put} />
      {draft.mode === 'correct' && story.cell.c !== 'missing' && (
        <label>
          What was wrong with the old value
          <input value={draft.why} onChange={(e) => put({ why: e.target.value })} />
        </label>
      )}
      <label>
        Note
        <input value={draft.note} onChange={(e) => put({ note: e.target.value })} />
      </label>
      <Refusals error={error} />
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

interface ValueFieldProps {
  readonly story: CellStory;
  readonly component: number;
  readonly text: string;
  readonly onChange: (text: string) => void;
}

/** A value as people write it, read back at once so that a slip is seen before it is kept. */
function ValueField({ story, component, text, onChange }: ValueFieldProps) {
  const axis = story.holds === 'vector' ? ` ${'XYZ'[component]}` : '';
  const heard = story.holds === 'text' ? undefined : readBack(story, text);
  return (
    <label>
      New value{axis}
      <input
        value={text}
        required
        autoComplete="off"
        aria-describedby={`heard-${component}`}
        onChange={(e) => onChange(e.target.value)}
      />
      <small id={`heard-${component}`} className={heard?.ok === false ? 'open' : 'soft'}>
        {heard?.words ?? ''}
      </small>
    </label>
  );
}

function readBack(story: CellStory, text: string): { ok: boolean; words: string } {
  const { cell } = story;
  const def = propertyDef(story.of.property);
  const number = cell.c === 'number' || cell.c === 'vector' ? cell : undefined;
  const kind = number?.kind ?? def?.kind ?? 'ratio';
  const unit = number?.unit ?? def?.unit ?? kindDef(kind).show[0];
  if (text.trim() === '') return { ok: true, words: `for example ${exampleOf(kind, unit)}` };
  const read = parseQuantity(text, kind, { unit });
  if (!read.ok) return { ok: false, words: `not read: ${read.why}. ${read.next}` };
  const { x, spread } = read.value;
  const u = standardUncertainty(spread, x) ?? (kind === 'count' ? 0 : 'unknown');
  return { ok: true, words: `read as ${numberLine({ x, u, kind, unit })}` };
}

const exampleOf = (kind: Kind, unit: string): string =>
  kind === 'count' ? '12' : `12.5 ± 0.2 ${unitSymbol(unit)}`;

function HowFields({ draft, put }: { draft: Draft; put: (set: Partial<Draft>) => void }) {
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
          onChange={(e) => put({ instrument: e.target.value })}
        />
        <datalist id="instruments">
          {instruments.data?.map((label) => (
            <option key={label} value={label} />
          ))}
        </datalist>
      </label>
    </>
  );
}
