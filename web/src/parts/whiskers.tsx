import { Fragment } from 'react';
import { numberLine, type Shown } from './number-text.ts';

/** A number on the common scale of a comparison. */
export interface WhiskerRow {
  readonly name: string;
  readonly shown: Shown;
}

const WIDTH = 200;
const ROW = 15;
/** Free ends of the scale, as a share of its length. */
const MARGIN = 0.06;

/** Numbers beside each other on one scale: a stroke at the value, whiskers of two standard uncertainties. */
export function Whiskers({ rows }: { readonly rows: readonly WhiskerRow[] }) {
  const spans = rows.map(({ name, shown }) => ({ name, x: shown.x, half: 2 * uOf(shown) }));
  const low = Math.min(...spans.map((s) => s.x - s.half));
  const high = Math.max(...spans.map((s) => s.x + s.half));
  const length = (high - low) * (1 + 2 * MARGIN) || 1;
  const at = (x: number) => ((x - low) / length + MARGIN) * WIDTH;
  const words = rows.map(({ name, shown }) => `${name} ${numberLine(shown)}`).join('; ');
  return (
    <div
      className="whiskers"
      role="img"
      aria-label={`On one scale, with whiskers of two standard uncertainties: ${words}`}
    >
      {spans.map(({ name, x, half }) => (
        <Fragment key={name}>
          <span>{name}</span>
          <svg viewBox={`0 0 ${WIDTH} ${ROW}`} preserveAspectRatio="none" aria-hidden="true">
            <path d={`M${at(x - half)} 7.5H${at(x + half)}`} className="reach" />
            <path d={`M${at(x - half)} 4v7M${at(x + half)} 4v7`} className="ends" />
            <path d={`M${at(x)} 1.5v12`} className="value" />
          </svg>
        </Fragment>
      ))}
    </div>
  );
}

const uOf = ({ u, knownU }: Shown): number => (typeof u === 'number' ? u : (knownU ?? 0));
