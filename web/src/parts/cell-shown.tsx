import type { ShownCell } from '../worker/shown-cell.ts';
import { numberText } from './number-text.ts';
import { lineOf } from './ways.ts';
import { useWhy } from './why.tsx';

export interface CellShownProps {
  readonly cell: ShownCell;
  readonly subject: string;
  readonly property: string;
  /** What it is, for those who hear the page. */
  readonly of: string;
  /** Need not be there: a value that is missing is a dash, and no open business. */
  readonly optional?: boolean;
}

/** A cell of the record; a touch tells where it comes from, and lets it be corrected. */
export function CellShown({ cell, subject, property, of, optional = false }: CellShownProps) {
  const open = useWhy();
  const isMissing = cell.c === 'missing';
  const isOpen = isMissing && !optional;
  return (
    <button
      type="button"
      className={`number ${isOpen ? 'open' : ''}`}
      onClick={() => open({ of: 'cell', subject, property })}
    >
      <span className="heard">{of}: </span>
      {isMissing && optional ? <Dash /> : <CellInside cell={cell} />}
      <span className="heard">{isMissing ? '' : `, ${cell.how}`}; where it comes from</span>
    </button>
  );
}

const Dash = () => (
  <>
    <span className="soft" aria-hidden="true">
      –
    </span>
    <span className="heard">none</span>
  </>
);

function CellInside({ cell }: { readonly cell: ShownCell }) {
  if (cell.c === 'missing') return <>{cell.why === 'no reading' ? 'missing' : cell.why}</>;
  const line = `digits line-${lineOf(cell.how)}`;
  const doubt = cell.doubt ? <span className="open"> doubt</span> : null;
  if (cell.c === 'text')
    return (
      <>
        <span className={line}>{cell.text}</span>
        {doubt}
      </>
    );
  if (cell.c === 'number') {
    const { value, spread, unit, lack } = numberText(cell);
    return (
      <>
        <span className={line}>{value}</span>
        <Spread spread={spread} isKnown={lack === ''} />
        {unit !== '' && <span className="unit"> {unit}</span>}
        {doubt}
      </>
    );
  }
  // The largest spread of the three stands for all: one line has room for one.
  const u = cell.u.reduce(
    (a, b) => (a === 'unknown' || b === 'unknown' ? 'unknown' : Math.max(a, b)),
    0,
  );
  const texts = cell.x.map((x) => numberText({ x, u, kind: cell.kind, unit: cell.unit }));
  return (
    <>
      <span className={line}>{texts.map((t) => t.value).join('; ')}</span>
      <Spread spread={texts[0]?.spread ?? ''} isKnown={u !== 'unknown'} />
      <span className="unit"> {texts[0]?.unit}</span>
      {doubt}
    </>
  );
}

/** "± 0.2", or "± ?" where the spread is not known. */
const Spread = ({ spread, isKnown }: { readonly spread: string; readonly isKnown: boolean }) =>
  isKnown ? (
    spread !== '' && <span className="spread"> ± {spread}</span>
  ) : (
    <span className="spread">
      {' '}
      ± <span aria-hidden="true">?</span>
      <span className="heard">spread not known</span>
    </span>
  );
