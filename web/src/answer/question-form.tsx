import { useId } from 'react';
import type { PlainQuestion, WrittenInputs } from '../../../src/engine/index.ts';
import { formulaOf } from '../../../src/formula/index.ts';
import { unitSymbol } from '../../../src/quantity/index.ts';
import { FormulaShown } from '../parts/formula-shown.tsx';
import { FormTable } from './form-table.tsx';

type Input = PlainQuestion['inputs'][number];
type Single = Exclude<Input, { readonly in: 'table' }>;
export type WrittenRow = Readonly<Record<string, string>>;

export interface QuestionFormProps {
  readonly question: PlainQuestion;
  readonly written: WrittenInputs;
  readonly onChange: (written: WrittenInputs) => void;
  /** Said of what is left empty. */
  readonly ifEmpty: string;
}

/** Fields for each input of a question, made from what the question says of itself. */
export const QuestionForm = ({ question, written, onChange, ifEmpty }: QuestionFormProps) => (
  <div className="question-form">
    <p className="soft">{ifEmpty}</p>
    {question.inputs.map((input) =>
      input.in === 'table' ? (
        <FormTable
          key={input.name}
          input={input}
          rows={rowsOf(written[input.name])}
          onChange={(rows) => onChange({ ...written, [input.name]: rows })}
        />
      ) : (
        <Field
          key={input.name}
          input={input}
          text={textOf(written[input.name])}
          onChange={(text) => onChange({ ...written, [input.name]: text })}
        />
      ),
    )}
  </div>
);

const textOf = (value: WrittenInputs[string] | undefined): string =>
  typeof value === 'string' ? value : '';
const rowsOf = (value: WrittenInputs[string] | undefined): readonly WrittenRow[] =>
  typeof value === 'object' ? value : [];

interface FieldProps {
  readonly input: Single;
  readonly text: string;
  readonly onChange: (text: string) => void;
}

function Field({ input, text, onChange }: FieldProps) {
  const id = useId();
  const hint = input.in === 'scalar' ? hintOf(input) : '';
  const props = { id, value: text, 'aria-describedby': `${id}-hint` };
  return (
    <div className="field">
      <label htmlFor={id}>
        {input.meaning}{' '}
        {input.in === 'scalar' && <FormulaShown formula={formulaOf(input.symbol)} />}
      </label>
      {input.in === 'term' && input.options ? (
        <select {...props} onChange={(e) => onChange(e.target.value)}>
          <option value="">not given</option>
          {input.options.map((option) => (
            <option key={option}>{option}</option>
          ))}
        </select>
      ) : (
        <input {...props} autoComplete="off" onChange={(e) => onChange(e.target.value)} />
      )}
      <small id={`${id}-hint`} className="soft">
        {hint}
      </small>
    </div>
  );
}

/** "kg; plausible 50 to 2 500". */
function hintOf(input: Extract<Single, { in: 'scalar' }>): string {
  const unit = unitSymbol(input.unit) || 'a plain number';
  const range = `plausible ${input.range[0]} to ${input.range[1]}`;
  const assumed = input.assumed === undefined ? '' : `; assumed when empty: ${input.assumed}`;
  return `${unit}; ${range}${assumed}`;
}
