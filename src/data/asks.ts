/**
 * How narrow the totals of a study are wanted where nobody asked otherwise, as one standard
 * uncertainty. Judgement: about what a client acts on; asked for anew for each study.
 */
export interface UsualAsk {
  readonly question: string;
  readonly output: string;
  /** SI, or over the value. */
  readonly width: { readonly u: number } | { readonly relative: number };
}

export const USUAL_ASKS: readonly UsualAsk[] = [
  { question: 'mass-closure', output: 'gap', width: { u: 0.5 } },
  { question: 'mass-roll-up', output: 'mass', width: { relative: 0.0005 } },
  { question: 'mass-roll-up', output: 'x', width: { u: 0.002 } },
  { question: 'cg-height-axle-lift', output: 'height', width: { u: 0.005 } },
  { question: 'install-time', output: 'time', width: { relative: 0.05 } },
  { question: 'part-cost', output: 'cost', width: { relative: 0.1 } },
];
