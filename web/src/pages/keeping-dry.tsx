import { AnswerPage } from '../answer-page/answer-page.tsx';
import { Asked } from '../answer-page/asked.tsx';
import type { Lead } from '../answer-page/lead-numbers.tsx';

const LEAD: readonly Lead[] = [
  {
    ...{ title: 'Crossings into dry', question: 'crossing-paths', output: 'into' },
    without: 'no zone yet',
  },
  {
    ...{ title: 'Of these unsealed', question: 'crossing-paths', output: 'unsealed' },
    without: 'no zone yet',
  },
  {
    ...{ title: 'Fasteners ending in dry', question: 'fastener-ends', output: 'dry' },
    without: 'no fastener has a place yet',
  },
  {
    ...{ title: 'Leak', question: 'leak-from-decay', output: 'flow' },
    without: 'no leak test yet',
  },
  {
    ...{ title: 'Least line load', question: 'seal-line-load', output: 'held' },
    without: 'no lid has its flange yet',
  },
];

/** Zones and what crosses between them, leaks, the lid’s line load, and circuits by zone. */
export const KeepingDryPage = () => (
  <AnswerPage title="Keeping dry" lead={LEAD}>
    <Asked question="crossing-paths" shows={['figures', 'results', 'findings', 'table']} wide />
    <Asked question="fastener-ends" shows={['figures', 'results', 'findings', 'table']} wide />
    <Asked question="crossing-count" shows={['results', 'figures', 'findings']} />
    <Asked question="leak-budget" shows={['results', 'figures', 'findings']} />
    <Asked question="leak-from-decay" shows={['results', 'findings']} />
    <Asked question="seal-line-load" shows={['figures', 'results', 'findings']} wide />
    <Asked question="line-census" shows={['figures', 'findings', 'table']} wide />
    <Asked question="pressure-drop" shows={['results', 'findings']} />
    <Asked question="voltage-drop" shows={['results', 'findings']} />
  </AnswerPage>
);
