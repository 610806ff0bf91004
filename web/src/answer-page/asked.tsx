import { Link } from '@tanstack/react-router';
import { useDesk } from '../app/desk-client.ts';
import { useHeader } from '../app/study-header.ts';
import { Refusals } from '../parts/refusals.tsx';
import { useAnswers } from '../parts/use-out.ts';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
import { onceNamed } from '../worker/node-words.ts';
import { PageSection } from './answer-page.tsx';
import { type Piece, PieceShown } from './piece-shown.tsx';

export interface AskedProps {
  readonly question: string;
  readonly shows: readonly Piece[];
  /** Node asked about: for questions that are asked on request only. Else all that it can be asked of. */
  readonly of?: string;
  /** The question's own title when absent. */
  readonly title?: string;
  /** Names of the results shown; all but steps of the working when absent. */
  readonly results?: readonly string[];
  /** Beginnings of the titles of the figures shown; all when absent. */
  readonly figures?: readonly string[];
  readonly wide?: boolean;
}

/** What a question answers, of the study as it stands: the pieces named, the whole a touch away. */
export const Asked = (props: AskedProps) =>
  props.of === undefined ? <AskedOfAll {...props} /> : <AskedOfOne {...props} of={props.of} />;

function AskedOfAll(props: AskedProps) {
  const { data, error } = useAnswers(props.question);
  return <AskedShown {...props} sheets={data} error={error} />;
}

function AskedOfOne(props: AskedProps & { readonly of: string }) {
  const { question, of } = props;
  const { data, error } = useDesk(['answer', question, of], (d) => d.answer(question, of, {}));
  return <AskedShown {...props} sheets={data && [data]} error={error} />;
}

interface ShownProps extends AskedProps {
  readonly sheets: readonly AnswerSheet[] | undefined;
  readonly error: unknown;
}

function AskedShown(props: ShownProps) {
  const { question, shows, title, wide = false, sheets, error } = props;
  const questions = useDesk(['questions'], (desk) => desk.questions());
  const own = questions.data?.find((q) => q.id === question);
  return (
    <PageSection title={title ?? own?.title ?? question} wide={wide}>
      <Refusals error={error} />
      {sheets?.length === 0 && (
        <p className="open">
          <b>open</b> <small>the record does not have what it needs yet</small>
        </p>
      )}
      {sheets?.map((sheet) => (
        <div key={sheet.subject} className="asked">
          {sheets.length > 1 && <h3>{onceNamed(sheet.basis.subject ?? '')}</h3>}
          {shows.map((piece) => (
            <PieceShown key={piece} {...props} piece={piece} sheet={sheet} />
          ))}
        </div>
      ))}
      <WholeAnswer question={question} of={sheets?.[0]?.subject} />
    </PageSection>
  );
}

/** Spread, working, method and sources stand with the question. */
function WholeAnswer({ question, of }: { question: string; of: string | undefined }) {
  const { study } = useHeader();
  return (
    <p className="whole-answer">
      <Link
        to="/s/$study/questions/$question"
        params={{ study, question }}
        search={(before) => ({ ...before, of })}
      >
        Spread, working and sources<span className="heard"> of {question}</span>
      </Link>
    </p>
  );
}
