import { Link } from '@tanstack/react-router';
import type { PlainQuestion } from '../../../src/engine/index.ts';
import { useDesk } from '../app/desk-client.ts';
import { useHeader } from '../app/study-header.ts';
import { Refusals } from '../parts/refusals.tsx';

/** Every question that the engine can answer, by section. */
export function QuestionsPage() {
  const { data, error } = useDesk(['questions'], (desk) => desk.questions());
  if (!data) return <Refusals error={error} />;
  return (
    <div className="page">
      <h1>Questions</h1>
      {sectionsOf(data).map((questions) => (
        <section key={questions[0]?.section.id}>
          <h2>{questions[0]?.section.title}</h2>
          <ul className="question-list">
            {questions.map((q) => (
              <li key={q.id}>
                <QuestionLink question={q} />
              </li>
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

const subjectWords = (kind: PlainQuestion['subject']): string =>
  kind === 'study' ? 'the study' : `${/^[aeiou]/.test(kind) ? 'an' : 'a'} ${kind}`;

function QuestionLink({ question }: { readonly question: PlainQuestion }) {
  const { study } = useHeader();
  return (
    <Link to="/s/$study/questions/$question" params={{ study, question: question.id }}>
      <b>{question.wording}</b>
      <span className="soft">
        {question.title} · asked of {subjectWords(question.subject)}
      </span>
    </Link>
  );
}

/** Questions of one section together, sections in their order. */
function sectionsOf(questions: readonly PlainQuestion[]): PlainQuestion[][] {
  const sections = new Map<string, PlainQuestion[]>();
  const sorted = [...questions].sort((a, b) => a.section.order - b.section.order);
  for (const q of sorted) sections.set(q.section.id, [...(sections.get(q.section.id) ?? []), q]);
  return [...sections.values()];
}
