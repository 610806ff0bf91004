import { useParams, useSearch } from '@tanstack/react-router';
import { useCallback, useState } from 'react';
import type { PlainQuestion, WrittenInputs } from '../../../src/engine/index.ts';
import { formulaOf } from '../../../src/formula/index.ts';
import { RefusalError } from '../../../src/study/index.ts';
import { AnswerCard } from '../answer/answer-card.tsx';
import { QuestionForm } from '../answer/question-form.tsx';
import type { StartSampling } from '../answer/sampling-shown.tsx';
import { useClient, useDesk } from '../app/desk-client.ts';
import { useHeader } from '../app/study-header.ts';
import { usePageTitle } from '../app/use-page-title.ts';
import { FormulaShown } from '../parts/formula-shown.tsx';
import { onlyWritten } from '../parts/only-written.ts';
import { Refusals } from '../parts/refusals.tsx';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
import { nodeWords } from '../worker/node-words.ts';

const PATH = '/s/$study/questions/$question';

/** One question: asked of the study as it stands, or of values written here. */
export function QuestionPage() {
  const { question: id } = useParams({ from: PATH });
  const { of } = useSearch({ from: PATH });
  const { data, error } = useDesk(['questions'], (desk) => desk.questions());
  const question = data?.find((q) => q.id === id);
  if (!question)
    return <Refusals error={error ?? (data && new Error(`There is no question ${id}.`))} />;
  return <Asked key={id} question={question} of={of} />;
}

interface AskedProps {
  readonly question: PlainQuestion;
  readonly of: string | undefined;
}

function Asked({ question, of }: AskedProps) {
  const { root, title } = useHeader();
  usePageTitle(question.title, title);
  const [source, setSource] = useState<'study' | 'values'>('study');
  const [subject, setSubject] = useState(of ?? (question.subject === 'study' ? (root ?? '') : ''));
  const [written, setWritten] = useState<WrittenInputs>({});
  const [asked, setAsked] = useState<{ sheet: AnswerSheet; sample: StartSampling }>();
  const [error, setError] = useState<unknown>();
  const { desk } = useClient();
  const ask = async () => {
    setError(undefined);
    try {
      const given = onlyWritten(written);
      const of = { question: question.id, subject: subject || undefined, over: given };
      setAsked(
        source === 'values'
          ? {
              sheet: await desk.answerValues(question.id, given),
              sample: (options, told) => desk.sampleValues(question.id, given, options, told),
            }
          : {
              sheet: await desk.answer(of.question, of.subject, given),
              sample: (options, told) => desk.sample(of, options, told),
            },
      );
    } catch (problem) {
      setAsked(undefined);
      setError(inWords(problem, question));
    }
  };
  return (
    <div className="question-page">
      <section className="question-ask">
        <h1>{question.wording}</h1>
        <form
          onSubmit={(event) => {
            event.preventDefault();
            void ask();
          }}
        >
          <SourceChoice source={source} onChange={setSource} />
          {source === 'study' && (
            <SubjectChoice question={question} subject={subject} onChange={setSubject} />
          )}
          <details open={source === 'values'} key={source}>
            <summary>
              {source === 'values' ? 'Values' : 'Write other values over the study’s'}
            </summary>
            <QuestionForm
              question={question}
              written={written}
              onChange={setWritten}
              ifEmpty={
                source === 'values'
                  ? 'Write numbers as you say them: 12.5 ± 0.2 kg, 9–10 mm, about 2 mm. What is left empty is missing.'
                  : 'What is left empty is taken from the study.'
              }
            />
            <div className="acts">
              <button type="button" onClick={() => setWritten(question.example)}>
                Fill the example
              </button>
              <button type="button" onClick={() => setWritten({})}>
                Empty all
              </button>
            </div>
          </details>
          <button type="submit" className="primary">
            Ask
          </button>
        </form>
        <Refusals error={error} />
      </section>
      <section className="question-answer">
        {asked ? (
          <AnswerCard {...asked} />
        ) : source === 'study' && subject !== '' ? (
          <StandingAnswer question={question.id} subject={subject} />
        ) : (
          <About question={question} />
        )}
      </section>
    </div>
  );
}

/** Fields by what they mean, as the form has them, in place of their names on a command line. */
function inWords(problem: unknown, { inputs }: PlainQuestion): unknown {
  if (!(problem instanceof RefusalError)) return problem;
  const [first, ...more] = problem.refusals.map((refusal) => {
    const input = inputs.find((i) => i.name === refusal.place.column);
    return input?.meaning === undefined
      ? refusal
      : { ...refusal, place: { ...refusal.place, column: input.meaning } };
  });
  return first ? new RefusalError(first, ...more) : problem;
}

/** The answer as the study stands: follows every edit. */
function StandingAnswer({ question, subject }: { question: string; subject: string }) {
  const { desk } = useClient();
  const answer = useDesk(['answer', question, subject], (d) => d.answer(question, subject, {}));
  const sample: StartSampling = useCallback(
    (options, told) => desk.sample({ question, subject, over: {} }, options, told),
    [desk, question, subject],
  );
  return answer.data ? (
    <AnswerCard sheet={answer.data} sample={sample} />
  ) : (
    <Refusals error={answer.error} />
  );
}

const SourceChoice = ({
  source,
  onChange,
}: {
  source: 'study' | 'values';
  onChange: (source: 'study' | 'values') => void;
}) => (
  <fieldset className="choice">
    <legend>Asked of</legend>
    <label>
      <input type="radio" checked={source === 'study'} onChange={() => onChange('study')} />
      the study as it stands
    </label>
    <label>
      <input type="radio" checked={source === 'values'} onChange={() => onChange('values')} />
      values written here
    </label>
  </fieldset>
);

interface SubjectChoiceProps {
  readonly question: PlainQuestion;
  readonly subject: string;
  readonly onChange: (subject: string) => void;
}

/** Nodes that the question may be asked of: a study's question also of one assembly alone. */
function SubjectChoice({ question, subject, onChange }: SubjectChoiceProps) {
  const kind = question.subject === 'study' ? 'vehicle' : question.subject;
  const nodes = useDesk(['nodes', kind], (desk) => desk.nodes(kind));
  return (
    <label className="field">
      Subject
      <select value={subject} onChange={(e) => onChange(e.target.value)}>
        {question.subject !== 'study' && <option value="">choose one</option>}
        {nodes.data?.map((node) => (
          <option key={node.id} value={node.id}>
            {nodeWords(node)}
          </option>
        ))}
      </select>
    </label>
  );
}

/** What the method is, before anything is asked. */
const About = ({ question }: { readonly question: PlainQuestion }) => (
  <article className="answer">
    <h2>{question.title}</h2>
    <h3>It gives</h3>
    <ul>
      {question.outputs.map((o) => (
        <li key={o.name}>
          {o.meaning} <FormulaShown formula={formulaOf(o.shown)} />
        </li>
      ))}
    </ul>
    <h3>Assumptions</h3>
    <ul>
      {question.assumptions.map((a) => (
        <li key={a}>{a}</li>
      ))}
    </ul>
    <h3>Checked against</h3>
    <ul>
      {question.checks.map((c) => (
        <li key={c.what}>
          {c.what}: {c.source} <small>({c.status})</small>
        </li>
      ))}
    </ul>
  </article>
);
