import { bagsOf, jointEnd } from '../../../src/engine/index.ts';
import { type Id, isMissing, type StudyView } from '../../../src/study/index.ts';
import { type ShownCell, shownCell } from './shown-cell.ts';

/** Properties that the table of joints shows, in the order of its columns. */
export const JOINT_COLUMNS = [
  'type',
  'spec',
  'count.holes',
  'torque.specified',
  'torque.breakaway',
  'torque.residual',
  'axis',
  'side',
  'tool',
  'onRemoval',
  'people',
] as const;
export type JointColumn = (typeof JOINT_COLUMNS)[number];

/** What a joint holds on one side. */
export interface EndShown {
  readonly nodes: readonly { readonly id: Id; readonly label: string }[];
  /** Words that name nothing in the study. */
  readonly lost: readonly string[];
  readonly spoken: string;
}

export interface JointRow {
  readonly id: Id;
  readonly label: string;
  readonly from: EndShown;
  readonly to: EndShown;
  readonly cells: Readonly<Record<JointColumn, ShownCell>>;
  /** Fasteners in its bags together; undefined where it has none, or one is not counted. */
  readonly bagged?: number;
  /** Labels of its bags; empty where its own count stands for them. */
  readonly bags: readonly string[];
  /** The bags hold another number than there are holes. */
  readonly isApart: boolean;
}

export const jointRows = (view: StudyView): JointRow[] =>
  view.nodes('joint').map(({ id, label }) => {
    const bags = bagsOf(view, id);
    const counted = bags.length > 0 ? bags : [id];
    const counts = counted.map((node) => countOf(view, node, 'count.bag'));
    const bagged = counts.reduce((sum, n) => sum + n, 0);
    const holes = countOf(view, id, 'count.holes');
    const isThere = Number.isFinite(bagged);
    return {
      ...{ id, label, from: endShown(view, id, 'from'), to: endShown(view, id, 'to') },
      cells: Object.fromEntries(
        JOINT_COLUMNS.map((c) => [c, shownCell(view.cell(id, c))]),
      ) as Record<JointColumn, ShownCell>,
      bags: bags.map((bag) => view.node(bag)?.label ?? bag),
      ...(isThere ? { bagged } : {}),
      isApart: isThere && Number.isFinite(holes) && bagged !== holes,
    };
  });

function endShown(view: StudyView, joint: Id, side: 'from' | 'to'): EndShown {
  const { nodes, lost } = jointEnd(view, joint, side);
  const spoken = view.cell(joint, `words.${side}`);
  return {
    nodes: nodes.map((id) => ({ id, label: view.node(id)?.label ?? id })),
    lost,
    spoken: !isMissing(spoken) && spoken.value.t === 'text' ? spoken.value.text : '',
  };
}

/** A count in force; NaN where there is none. */
function countOf(view: StudyView, id: Id, property: string): number {
  const cell = view.cell(id, property);
  if (isMissing(cell)) return Number.NaN;
  if (cell.value.t === 'count') return cell.value.n;
  return cell.value.t === 'scalar' ? cell.value.x : Number.NaN;
}
