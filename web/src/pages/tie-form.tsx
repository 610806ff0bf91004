import { useState } from 'react';
import { unitSymbol } from '../../../src/quantity/index.ts';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { useHeader } from '../app/study-header.ts';
import { NodePicker } from '../parts/node-picker.tsx';
import { Refusals } from '../parts/refusals.tsx';
import type { ClaimRow, TieTyped } from '../worker/claim-rows.ts';

export interface TieFormProps {
  readonly row: ClaimRow;
  readonly onDone: () => void;
}

type Draft = Omit<TieTyped, 'claim'>;

/** Ties a claim to a question, of a node, and says what would make it true. */
export function TieForm({ row, onDone }: TieFormProps) {
  const { desk } = useClient();
  const { root } = useHeader();
  const questions = useDesk(['questions'], (d) => d.questions());
  const [draft, setDraft] = useState<Draft>(() => firstDraft(row, root));
  const [error, setError] = useState<unknown>();
  const put = (set: Partial<Draft>) => setDraft((before) => ({ ...before, ...set }));
  const question = questions.data?.find((q) => q.id === draft.question);
  const output = question?.outputs.find((o) => o.name === draft.output);
  const tie = async () => {
    try {
      const subject = draft.subject || root || '';
      await desk.tie({ ...draft, subject, claim: row.claim.id }, recorder());
      onDone();
    } catch (problem) {
      setError(problem);
    }
  };
  return (
    <form
      className="tie-form"
      onSubmit={(event) => {
        event.preventDefault();
        void tie();
      }}
    >
      <label className="field wide">
        Question that answers it
        <select
          value={draft.question}
          onChange={(e) => put({ question: e.target.value, output: '' })}
        >
          <option value="">choose one</option>
          {questions.data?.map((q) => (
            <option key={q.id} value={q.id}>
              {q.wording}
            </option>
          ))}
        </select>
      </label>
      <NodePicker
        title="Asked of"
        value={draft.subject}
        onChange={(subject) => put({ subject })}
        empty="the whole vehicle"
        {...(question && question.subject !== 'study' ? { kind: question.subject } : {})}
      />
      <label className="field">
        Result
        <select value={draft.output} onChange={(e) => put({ output: e.target.value })}>
          <option value="">choose one</option>
          {question?.outputs.map((o) => (
            <option key={o.name} value={o.name}>
              {o.meaning}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        It holds if that is
        <select value={draft.is} onChange={(e) => put({ is: e.target.value as Draft['is'] })}>
          <option>at least</option>
          <option>at most</option>
        </select>
      </label>
      <label className="field">
        Value{output ? ` in ${unitSymbol(output.unit) || 'plain numbers'}, or with its unit` : ''}
        <input
          value={draft.value}
          autoComplete="off"
          onChange={(e) => put({ value: e.target.value })}
        />
      </label>
      <div className="acts">
        <button type="button" onClick={onDone}>
          Leave it
        </button>
        <button type="submit" className="primary">
          Tie
        </button>
      </div>
      <Refusals error={error} />
    </form>
  );
}

const firstDraft = ({ tie, claim, hint }: ClaimRow, root: string | undefined): Draft => ({
  question: tie?.question ?? hint?.question ?? '',
  subject: tie?.subject ?? claim.about[0] ?? root ?? '',
  output: tie?.output ?? hint?.output ?? '',
  is: tie?.test.is ?? hint?.is ?? 'at least',
  value: tie?.test.asWritten ?? hint?.value ?? '',
});
