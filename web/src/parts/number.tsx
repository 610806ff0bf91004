import type { ReactNode } from 'react';
import { numberText, type Shown } from './number-text.ts';
import { type How, lineOf } from './ways.ts';
import { useWhy, type WhyTarget } from './why.tsx';

export interface NumberProps {
  readonly shown: Shown;
  readonly how: How;
  /** What it is a number of, for those who hear the page. */
  readonly of: string;
  /** Numbers that stand beside it, to be rounded to one place with it. */
  readonly beside?: readonly Shown[];
  /** Where it comes from, one touch away; plain text without. */
  readonly why?: WhyTarget;
  readonly size?: 'large';
}

/** A number with its spread and unit; the line under it says how it is known. */
export function NumberShown({ shown, how, of, beside, why, size }: NumberProps): ReactNode {
  const { value, spread, unit, lack } = numberText(shown, beside);
  const open = useWhy();
  const inside = (
    <>
      <span className={`digits line-${lineOf(how)}`}>{value}</span>
      {spread !== '' && <span className="spread"> ± {spread}</span>}
      {unit !== '' && <span className="unit"> {unit}</span>}
      {lack !== '' && <span className="lack"> {lack}</span>}
    </>
  );
  const className = `number ${size ?? ''} ${lack === '' ? '' : 'open'}`;
  if (!why) return <span className={className}>{inside}</span>;
  return (
    <button type="button" className={className} onClick={() => open(why)}>
      <span className="heard">{of}: </span>
      {inside}
      <span className="heard">, {how}; where it comes from</span>
    </button>
  );
}
