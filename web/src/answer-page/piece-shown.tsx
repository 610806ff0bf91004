import { Cautions } from '../answer/cautions.tsx';
import { DetailTable } from '../answer/detail-table.tsx';
import { GroupsTable } from '../answer/groups-table.tsx';
import { FigureShown } from '../figure/figure-shown.tsx';
import { FindingsList } from '../parts/findings-list.tsx';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
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

/** Rows of a table in sight before the rest is asked for. */
const ROWS_IN_SIGHT = 12;

export interface PieceProps {
  /** Names of the results shown; all but steps of the working when absent. */
  readonly results?: readonly string[] | undefined;
  /** Beginnings of the titles of the figures shown; all when absent. */
  readonly figures?: readonly string[] | undefined;
  readonly piece: Piece;
  readonly sheet: AnswerSheet;
}

/** One piece of an answer, as every page shows it. */
export function PieceShown({ piece, sheet, results, figures }: PieceProps) {
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
