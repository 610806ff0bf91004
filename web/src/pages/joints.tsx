import { AnswerPage } from '../answer-page/answer-page.tsx';
import { Asked } from '../answer-page/asked.tsx';
import type { Lead } from '../answer-page/lead-numbers.tsx';
import { FasteningMatrix } from '../joints/fastening-matrix.tsx';
import { JointRegister } from '../joints/joint-register.tsx';
import { WayIn } from '../joints/way-in.tsx';

const LEAD: readonly Lead[] = [
  { title: 'Groups', question: 'joint-census', output: 'groups', without: 'no joint yet' },
  { title: 'Single joints', question: 'joint-census', output: 'elements', without: 'no joint yet' },
  { title: 'Bags that differ', question: 'joint-census', output: 'apart', without: 'no joint yet' },
  {
    ...{ title: 'Bags without a joint', question: 'joint-census', output: 'strayBags' },
    without: 'no joint yet',
  },
  {
    ...{ title: 'Install time', question: 'install-time', output: 'time' },
    without: 'no joint has its times',
  },
];

/** How it is joined, how long that takes, and what the bags say. */
export const JointsPage = () => (
  <AnswerPage title="Joints" lead={LEAD}>
    <Asked question="joint-census" shows={['findings']} title="Bags against holes" wide />
    <WayIn />
    <JointRegister />
    <Asked question="joint-census" shows={['figures']} />
    <Asked question="fastener-census" shows={['results', 'figures', 'findings', 'table']} />
    <Asked question="install-time" shows={['results', 'figures', 'findings']} />
    <Asked question="seam-census" shows={['results', 'figures', 'findings']} />
    <Asked question="galvanic-pairs" shows={['results', 'figures', 'findings', 'table']} />
    <Asked question="surface-census" shows={['results', 'figures', 'findings']} />
    <Asked question="access-times" shows={['figures', 'table', 'findings']} wide />
    <FasteningMatrix />
  </AnswerPage>
);
