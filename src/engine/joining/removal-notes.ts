import type { Finding, Id } from '../../study/index.ts';
import type { Finder } from '../method.ts';
import type { Dead } from './removal/closure.ts';
import { type Plan, planRemoval } from './removal/plan.ts';
import type { RemovalGraph } from './removal/removal-graph.ts';
import { factsOf, lockedIn, onRemoval } from './removal-facts.ts';
import { signed, wayIn } from './removal-plan.ts';

type Level = Finding['level'];

const finding = (
  code: string,
  level: Level,
  subject: string,
  value: string,
  what: string,
  next: string,
): Finding => ({ code, level, place: { subject }, value, what, next });

/** What is to be said of the way to the subject. */
export function wayFindings(at: Finder): Finding[] {
  const target = at.view.node(at.subject);
  if (target?.kind !== 'part' && target?.kind !== 'assembly')
    return [
      finding(
        'no-target',
        'gap',
        target?.label ?? at.subject,
        target?.kind ?? '',
        'a way leads to a part or an assembly',
        'Name what is to come off.',
      ),
    ];
  const { graph, planned } = wayIn(at);
  const label = target.label;
  return [
    ...lockedIn(at).lost.map(notThere),
    ...(planned.dead ? [noWay(graph, label, planned.dead)] : []),
    ...(planned.best ? planFindings(at, graph, label, planned.best) : []),
    ...planned.others.map((other) => otherWay(graph, label, other, planned.best?.seconds ?? 0)),
  ];
}

const notThere = (word: string): Finding =>
  finding(
    'locked-unknown',
    'doubt',
    word,
    word,
    'what is said to be locked is not in the study',
    'Correct its number.',
  );

const WHY: Readonly<Record<Dead['why'], string>> = {
  locked: 'it is locked, and what it holds to can not come along',
  stays: 'it stays on the hoist',
  'not there': 'it is not in the study any more',
  'no alternative':
    'it and each of its alternatives are locked or wait for what they are wanted for',
};

const noWay = (graph: RemovalGraph, label: string, { at, why }: Dead): Finding =>
  finding(
    'no-way',
    'gap',
    label,
    graph.label(at),
    `there is no way: ${graph.label(at)} stops it, since ${WHY[why]}`,
    'Free it, record another way in, or say what is to be cut.',
  );

function planFindings(at: Finder, graph: RemovalGraph, label: string, plan: Plan): Finding[] {
  const cut = plan.steps.filter(
    (s) => s.kind === 'joint' && onRemoval(at, s.id) === 'destroys part',
  );
  return [
    ...plan.circles.map((circle) => circleFinding(graph, circle)),
    ...around(at, graph, label, plan),
    ...(plan.along.length === 0
      ? []
      : [
          finding(
            'comes-along',
            'note',
            label,
            plan.along.map(graph.label).join(', '),
            'comes off in one piece with what hangs on by joints that are not opened',
            'Part it on the bench where that is wanted.',
          ),
        ]),
    ...plan.loose.map((id) =>
      finding(
        'nothing-else-holds',
        'doubt',
        label,
        graph.label(id),
        'comes along, and the record has nothing else that holds it',
        'Look what holds it at its other end, and add that joint.',
      ),
    ),
    ...cut.map((s) =>
      finding(
        'way-destroys',
        'doubt',
        label,
        graph.label(s.id),
        'the way cuts a joint that can not be opened: what it holds is not whole afterwards',
        'Take what has to be measured first.',
      ),
    ),
    ...(plan.offFirst === undefined
      ? []
      : [
          finding(
            'assembly-first',
            'note',
            label,
            graph.label(plan.offFirst),
            'quickest with the assembly around it taken off first',
            'Nothing to do.',
          ),
        ]),
  ];
}

/** What locking costs, where something is locked and there is another way. */
function around(at: Finder, graph: RemovalGraph, label: string, plan: Plan): Finding[] {
  const locked = lockedIn(at).ids;
  if (locked.length === 0) return [];
  const free = planRemoval(graph, at.subject, { ...factsOf(at), isLocked: () => false });
  if (!free.best) return [];
  const known = new Set(free.best.steps.map((s) => s.id));
  const added = plan.steps.filter((s) => !known.has(s.id)).map((s) => graph.label(s.id));
  return [
    finding(
      'way-around',
      'note',
      label,
      `${locked.map(graph.label).join(', ')} locked: ${signed(plan.seconds - free.best.seconds)} s${added.length > 0 ? `, by ${added.join(', ')}` : ''}`,
      'with this locked there is another way',
      'Nothing to do.',
    ),
  ];
}

export const circleFinding = (graph: RemovalGraph, circle: readonly Id[]): Finding => {
  const labels = circle.map(graph.label);
  return finding(
    'precedence-circle',
    'gap',
    labels[0] ?? '',
    [...labels, labels[0]].join(' waits for '),
    'things wait for each other in a ring: there is no order among them, and they stand last',
    'Take out the word on what is in the way that is wrong.',
  );
};

const otherWay = (graph: RemovalGraph, label: string, plan: Plan, best: number): Finding =>
  finding(
    'other-way',
    'note',
    label,
    `${plan.offFirst === undefined ? 'where it stands' : `with ${graph.label(plan.offFirst)} off first`}: ${signed(plan.seconds - best)} s`,
    'there is another way, which takes longer',
    'Nothing to do.',
  );
