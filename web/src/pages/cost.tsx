import { AnswerPage } from '../answer-page/answer-page.tsx';
import { Asked } from '../answer-page/asked.tsx';
import type { Lead } from '../answer-page/lead-numbers.tsx';
import { CostByCause } from './cost-by-cause.tsx';

const NO_RATES = 'no rate book, or no part that it prices';
const lead = (title: string, output: string): Lead => ({
  ...{ title, output, question: 'part-cost', without: NO_RATES },
});

const LEAD: readonly Lead[] = [
  lead('Parts that are costed', 'cost'),
  lead('Share on assumed rates', 'assumedShare'),
  lead('Share of the mass costed', 'costedShare'),
];

/** What the parts should cost, by assembly and function; what other designs would. */
export const CostPage = () => (
  <AnswerPage title="Cost" lead={LEAD}>
    <Asked
      question="part-cost"
      shows={['figures', 'findings']}
      figures={['Cost by function', 'Material, gross', 'Conversion']}
      title="By function and assembly"
    />
    <CostByCause />
    <Asked question="part-cost" shows={['table', 'further']} title="By part and function" wide />
    <Asked
      question="alternative-costs"
      shows={['results', 'figures', 'findings']}
      title="Designs for one function"
      wide
    />
    <Asked
      question="alternative-costs"
      shows={['table', 'further']}
      title="Designs side by side, their differences and break-even points"
      wide
    />
  </AnswerPage>
);
