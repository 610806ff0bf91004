import { AnswerPage } from '../answer-page/answer-page.tsx';
import { Asked } from '../answer-page/asked.tsx';
import type { Lead } from '../answer-page/lead-numbers.tsx';
import { ResidualMap } from '../mass/residual-map.tsx';

const NO_BALANCE = 'no corner loads, or no part weighed';
const lead = (title: string, output: string): Lead => ({
  ...{ title, output, question: 'mass-balance', without: NO_BALANCE },
});

const LEAD: readonly Lead[] = [
  lead('Gap in force', 'force'),
  lead('Gap in X', 'shiftX'),
  lead('Gap in Y', 'shiftY'),
  lead('Gap in Z', 'shiftZ'),
];

/** Whether the masses close, module by module; what would explain it where they do not. */
export const MassPage = () => (
  <AnswerPage title="Mass" lead={LEAD}>
    <ResidualMap />
    <Asked
      question="mass-closure"
      shows={['figures', 'findings']}
      figures={['Balance']}
      title="Whole vehicle"
    />
    <Asked
      question="mass-balance"
      shows={['figures']}
      figures={['Results that decide']}
      title="Moments"
    />
    <Asked
      question="mass-balance"
      shows={['figures']}
      figures={['Gap of each module', 'Balance of']}
      title="Modules"
    />
    <Asked question="mass-faults" shows={['figures', 'findings']} title="Suspects" />
    <Asked
      question="mass-faults"
      shows={['table', 'further']}
      title="What each suspect explains, and what would not show"
      wide
    />
    <Asked question="fluid-balance" shows={['results', 'findings', 'table']} />
    <Asked question="cg-height-axle-lift" shows={['results', 'figures', 'findings']} />
    <Asked question="mass-inertia" shows={['results', 'findings']} />
  </AnswerPage>
);
