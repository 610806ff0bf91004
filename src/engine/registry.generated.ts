// Made from the question files by scripts/registry.ts: run `npm run registry`, do not edit.
import type { QuestionHead } from './registry.ts';

export const QUESTION_INDEX: readonly QuestionHead[] = [
  {
    id: 'cg-from-corners',
    title: 'Centre of gravity in plan from the corner scales',
    wording: 'Where is the centre of gravity in plan, by the corner scales?',
    subject: 'study',
    section: { id: 'balance', title: 'Mass and balance', order: 10 },
    load: () => import('./mass/cg-from-corners.question.ts'),
  },
  {
    id: 'cg-height-axle-lift',
    title: 'Height of the centre of gravity by axle lift',
    wording: 'How high is the centre of gravity, by raising one axle?',
    subject: 'study',
    section: { id: 'balance', title: 'Mass and balance', order: 10 },
    load: () => import('./mass/cg-height-axle-lift.question.ts'),
  },
  {
    id: 'install-time',
    title: 'Time to install the joints',
    wording: 'How long does it take to put the joints in, as recorded?',
    subject: 'study',
    section: { id: 'census', title: 'Joints and times', order: 20 },
    load: () => import('./joining/install-time.question.ts'),
  },
  {
    id: 'joint-census',
    title: 'Census of the joints',
    wording: 'How many joints are there, and of which kinds?',
    subject: 'study',
    section: { id: 'census', title: 'Joints and times', order: 20 },
    load: () => import('./joining/joint-census.question.ts'),
  },
  {
    id: 'mass-closure',
    title: 'Closure of the mass',
    wording: 'Do the parts add up to what the whole vehicle weighed?',
    subject: 'study',
    section: { id: 'balance', title: 'Mass and balance', order: 10 },
    load: () => import('./mass/mass-closure.question.ts'),
  },
  {
    id: 'mass-roll-up',
    title: 'Mass and centre of gravity from the parts',
    wording: 'What do the parts weigh together, and where is their centre of gravity?',
    subject: 'study',
    section: { id: 'balance', title: 'Mass and balance', order: 10 },
    load: () => import('./mass/mass-roll-up.question.ts'),
  },
  {
    id: 'pack-energy-density',
    title: 'Energy of the pack by mass and by volume',
    wording: 'How much energy does the pack hold for its mass and its volume?',
    subject: 'assembly',
    section: { id: 'energy', title: 'Energy', order: 30 },
    load: () => import('./energy/pack-energy-density.question.ts'),
  },
  {
    id: 'part-cost',
    title: 'Should-cost of the parts by mass and process',
    wording: 'What should the parts cost to make, and how much of it rests on assumptions?',
    subject: 'study',
    section: { id: 'cost', title: 'Should-cost', order: 40 },
    load: () => import('./cost/part-cost.question.ts'),
  },
];
