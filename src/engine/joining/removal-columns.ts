import type { Kind } from '../../quantity/index.ts';
import type { Id } from '../../study/index.ts';
import type { Finder, Found, ScalarColumn, TermColumn } from '../method.ts';
import { elementsOf, onRemoval, refitTime, undoTime } from './removal-facts.ts';
import { ifLocked, shareOf, wayIn } from './removal-plan.ts';

const column = (
  name: string,
  symbol: string,
  kind: Kind,
  unit: string,
  meaning: string,
  range: readonly [number, number],
  where: string,
  find: (at: Finder, row: Id) => Found,
): ScalarColumn => ({
  in: 'scalar',
  name,
  symbol,
  kind,
  unit,
  meaning,
  range,
  bounds: { atLeast: 0 },
  where,
  find,
});

const flag = (
  name: string,
  symbol: string,
  meaning: string,
  where: string,
  isSet: (at: Finder, row: Id) => boolean,
): ScalarColumn =>
  column(name, symbol, 'ratio', '1', meaning, [0, 1], where, (at, row) =>
    at.exact(isSet(at, row) ? 1 : 0, meaning),
  );

const word = (
  name: string,
  meaning: string,
  where: string,
  text: (at: Finder, row: Id) => string,
): TermColumn => ({
  in: 'term',
  name,
  meaning,
  where,
  find: (at, row) => at.word(text(at, row)),
});

/** One where nothing else is recorded: the usual case, said among the assumptions. */
const peopleAt = (at: Finder, row: Id): Found =>
  at.view.properties(row).includes('people') ? at.number(row, 'people') : at.exact(1, 'one person');

/** Price of what is renewed: none where all is used again, and missing where that is not recorded. */
function renewalOf(at: Finder, row: Id): Found {
  const label = at.view.node(row)?.label ?? row;
  if (at.view.properties(row).includes('renewal.price')) return at.number(row, 'renewal.price');
  const what = onRemoval(at, row);
  if (what === 'reusable' || at.view.node(row)?.kind !== 'joint')
    return at.exact(0, 'nothing to renew is recorded');
  if (what === 'renew fastener') return fastenerPrice(at, row);
  return at.missing(
    label,
    what === 'destroys part'
      ? 'the price of the part that is cut is not recorded'
      : 'what is renewed on removal is not recorded',
  );
}

function fastenerPrice(at: Finder, row: Id): Found {
  const price = at.rate('fastener', at.text(row, 'spec').text);
  return 'missing' in price
    ? at.missing(price.label, 'no price of the fastener, neither recorded nor in the rate book')
    : price;
}

/** What is done at a step of the way, in words. */
function doing(at: Finder, row: Id): string {
  const { kind, label, name } = at.view.node(row) ?? { kind: 'part', label: row, name: '' };
  if (kind === 'joint')
    return [label, at.text(row, 'type').text, at.text(row, 'spec').text].filter(Boolean).join(' ');
  return kind === 'step' ? `${label} ${name}` : `take off ${label} ${name}`;
}

const labelsBefore = (at: Finder, row: Id): string =>
  (wayIn(at).steps.get(row)?.after ?? [])
    .map((id) => at.view.node(id)?.label ?? id)
    .sort()
    .join(', ');

/** Columns of the steps of a way to a part. */
export const STEP_COLUMNS: readonly (ScalarColumn | TermColumn)[] = [
  column(
    'count',
    'n',
    'count',
    '1',
    'elements',
    [1, 5000],
    'count by holes; one for a step',
    elementsOf,
  ),
  column(
    'share',
    's',
    'ratio',
    '1',
    'share of them that hold what comes off',
    [0, 1],
    'ends of the joint on what comes off',
    (at, row) => at.exact(shareOf(at, row), 'share of the elements'),
  ),
  column(
    'undo',
    't',
    'time',
    's',
    'time to undo one',
    [0, 7200],
    'time to undo; else time to reach and drive',
    undoTime,
  ),
  column(
    'refit',
    't′',
    'time',
    's',
    'time to do one up again',
    [0, 7200],
    'time to do up; else time to reach and drive',
    refitTime,
  ),
  column(
    'people',
    'p',
    'count',
    '1',
    'people at once',
    [1, 6],
    'people; one where none is recorded',
    peopleAt,
  ),
  flag('change', 'k', '1 where the tool changes', 'tools along the way', (at, row) =>
    wayIn(at).changes.has(row),
  ),
  flag('newTool', 'w', '1 where a tool is used first', 'tools along the way', (at, row) =>
    wayIn(at).firsts.has(row),
  ),
  flag(
    'renewed',
    'e',
    '1 where fasteners are renewed',
    'on removal of the joint',
    (at, row) => onRemoval(at, row) === 'renew fastener',
  ),
  column(
    'price',
    'q',
    'money',
    '{u}',
    'price of what is renewed, each',
    [0, 1000],
    'price of renewal of the joint, else the fastener in the rate book',
    renewalOf,
  ),
  word('doing', 'what is done', 'kind and specification of the joint, name of the step', doing),
  word('tool', 'tool', 'tool of the joint or step', (at, row) => at.text(row, 'tool').text),
  word('onRemoval', 'on removal', 'on removal of the joint', (at, row) => onRemoval(at, row)),
  word(
    'fluid',
    'fluid that comes out',
    'fluid of the joint or step',
    (at, row) => at.text(row, 'fluid').text,
  ),
  word(
    'after',
    'what must be done before',
    'what holds it and what stands in its way',
    labelsBefore,
  ),
  word('ifLocked', 'what if it is locked', 'the way without it', ifLocked),
];
