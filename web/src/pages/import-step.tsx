import { Link } from '@tanstack/react-router';
import { useEffect, useState } from 'react';
import { TABLE_FORMS } from '../../../src/capture/index.ts';
import type { ImportAnswer } from '../../../src/server/contract.ts';
import { useClient } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { useHeader } from '../app/study-header.ts';
import { counted } from '../parts/counted.ts';
import { Refusals } from '../parts/refusals.tsx';
import { PreviewShown } from './preview-shown.tsx';
import { type FileForm, type FileStep, isWorkbookName, sendTable } from './table-files.ts';

export interface ImportStepProps {
  readonly step: FileStep;
  /** Without waiting for the button. */
  readonly looksAtOnce?: boolean;
  readonly onChange: (step: FileStep) => void;
}

type Done = { readonly rows: number; readonly of: string };

/** One file: what it is taken for, a look at it, and its import. */
export function ImportStep({ step, looksAtOnce = false, onChange }: ImportStepProps) {
  const { api, desk } = useClient();
  const { study } = useHeader();
  const [preview, setPreview] = useState<ImportAnswer['preview']>();
  const [done, setDone] = useState<Done>();
  const [busy, setBusy] = useState(false);
  const [error, setError] = useState<unknown>();
  const { form, file } = step;
  const run = async (act: () => Promise<void>) => {
    setBusy(true);
    setError(undefined);
    await act().catch(setError);
    setBusy(false);
  };
  const send = (dry: boolean) =>
    run(async () => {
      if (form === 'leave out') return;
      if (form === 'rate book') {
        setDone({
          rows: await desk.rateBook(await file.text(), file.name, recorder()),
          of: 'rate',
        });
        return;
      }
      const answer = await sendTable(api, study, { ...step, form }, recorder(), dry);
      setPreview(answer.preview);
      if (answer.imported) setDone({ rows: answer.imported.rows, of: 'row' });
    });
  // biome-ignore lint/correctness/useExhaustiveDependencies: a step that was changed is looked at by its button
  useEffect(() => {
    if (looksAtOnce) void send(true);
  }, []);
  return (
    <section className="import-step">
      <h2>{file.name}</h2>
      <label className="inline">
        holds
        <select
          value={form}
          disabled={done !== undefined}
          onChange={(e) => onChange({ ...step, form: e.target.value as FileForm })}
        >
          {[...TABLE_FORMS, 'rate book', 'leave out'].map((name) => (
            <option key={name}>{name}</option>
          ))}
        </select>
      </label>
      {isWorkbookName(file.name) && !done && (
        <label className="inline">
          sheet
          <input
            placeholder="the first"
            value={step.sheet ?? ''}
            onChange={(e) => onChange({ ...step, sheet: e.target.value })}
          />
        </label>
      )}
      {done ? (
        <p role="status">
          <b>imported</b>: {counted(done.rows, done.of)}.{' '}
          <Link to="/s/$study" params={{ study }}>
            To the overview
          </Link>
        </p>
      ) : (
        form !== 'leave out' && (
          <span className="acts">
            {form !== 'rate book' && (
              <button type="button" disabled={busy} onClick={() => void send(true)}>
                {preview ? 'Look again' : 'Look at it first'}
              </button>
            )}
            <button
              type="button"
              className="primary"
              disabled={busy}
              onClick={() => void send(false)}
            >
              Import
            </button>
          </span>
        )
      )}
      <Refusals error={error} />
      {preview && !done && (
        <PreviewShown
          preview={preview}
          overrides={step.overrides}
          onChange={(overrides) => onChange({ ...step, overrides })}
        />
      )}
    </section>
  );
}
