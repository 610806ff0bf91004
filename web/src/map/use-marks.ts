import { useMemo } from 'react';
import { outOf, useAnswers } from '../parts/use-out.ts';
import { type Mark, markOf } from './marks.ts';

/** Centres of gravity of the study: by the scales, and from the parts. */
export function useMarks(): readonly Mark[] {
  const corners = useAnswers('cg-from-corners').data?.[0];
  const lift = useAnswers('cg-height-axle-lift').data?.[0];
  const parts = useAnswers('mass-roll-up').data?.[0];
  return useMemo(() => {
    const out = (sheet: typeof corners, name: string) => outOf(sheet, name)?.out;
    return [
      ...markOf('by the scales', 'circle', [
        out(corners, 'x'),
        out(corners, 'y'),
        out(lift, 'height'),
      ]),
      ...markOf('from the parts', 'square', [out(parts, 'x'), out(parts, 'y'), out(parts, 'z')]),
    ];
  }, [corners, lift, parts]);
}
