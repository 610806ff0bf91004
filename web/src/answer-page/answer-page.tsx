import type { ReactNode } from 'react';
import { type Lead, LeadNumbers } from './lead-numbers.tsx';

export interface AnswerPageProps {
  readonly title: string;
  /** Numbers that the page turns on, in a row above all else. */
  readonly lead?: readonly Lead[];
  /** Sections: `Asked` for what a question answers, `PageSection` for what is drawn beside it. */
  readonly children: ReactNode;
}

/**
 * A page made of named answers: each section names a question and which pieces of its answer
 * stand there, so that numbers, words and figures are those of the question's one file.
 */
export const AnswerPage = ({ title, lead, children }: AnswerPageProps) => (
  <div className="answer-page">
    <h1>{title}</h1>
    {lead && <LeadNumbers lead={lead} />}
    <div className="answer-page-sections">{children}</div>
  </div>
);

export interface PageSectionProps {
  readonly title: string;
  /** Over the whole width: drawings and wide tables. */
  readonly wide?: boolean;
  readonly children: ReactNode;
}

/** A section of a page, under a thin rule. */
export const PageSection = ({ title, wide = false, children }: PageSectionProps) => (
  <section className={wide ? 'wide' : ''}>
    <h2>{title}</h2>
    {children}
  </section>
);
