import { Link } from '@tanstack/react-router';
import { Cautions } from '../answer/cautions.tsx';
import { DetailTable } from '../answer/detail-table.tsx';
import { GroupsTable } from '../answer/groups-table.tsx';
import { useDesk } from '../app/desk-client.ts';
import { useHeader } from '../app/study-header.ts';
import { FigureShown } from '../figure/figure-shown.tsx';
import { FindingsList } from '../parts/findings-list.tsx';
import { Refusals } from '../parts/refusals.tsx';
import { useAnswers } from '../parts/use-out.ts';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
import { onceNamed } from '../worker/node-words.ts';
import { PageSection } from './answer-page.tsx';
import { ResultLines } from './result-lines.tsx';

/** Pieces of an answer that a page may show, in the order named. */
export type Piece =
  | 'results'
  | 'figures'
  | 'findings'
  | 'table'
  | 'groups'
  | 'further'
  | 'cautions';

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

/** Rows of a table in sight before the rest is asked for. */
const ROWS_IN_SIGHT = 12;

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

interface PieceProps extends Pick<AskedProps, 'results' | 'figures'> {
  readonly piece: Piece;
  readonly sheet: AnswerSheet;
}

function PieceShown({ piece, sheet, results, figures }: PieceProps) {
  switch (piece) {
    case 'results':
      return <ResultLines sheet={sheet} names={results} />;
    case 'figures':
      return sheet.figures
        ?.filter(({ title }) => figures?.some((begin) => title.startsWith(begin)) ?? true)
        .map((figure) => <FigureShown key={figure.title} figure={figure} />);
    case 'findings':
      return <FindingsList findings={sheet.findings} />;
    case 'table':
      return sheet.detail && <DetailTable detail={sheet.detail} inSight={ROWS_IN_SIGHT} />;
    case 'groups':
      return <GroupsTable sheet={sheet} />;
    case 'further':
      return sheet.further?.map((detail) => (
        <DetailTable key={detail.title} detail={detail} inSight={ROWS_IN_SIGHT} />
      ));
    case 'cautions':
      return <Cautions cautions={sheet.cautions} />;
  }
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
