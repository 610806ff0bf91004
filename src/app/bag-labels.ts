import { hasLooseFasteners, jointKind } from '../engine/index.ts';
import { type BagLabel, bagCode, type LabelSheet } from '../report/index.ts';
import { type Id, isMissing, type NodeSpec, RefusalError, type StudyView } from '../study/index.ts';

/**
 * Labels of all bags of a study, and of bags to come for joints with loose fasteners that have
 * none yet. `date` is the ISO 8601 date of print.
 * @throws RefusalError `no-answer` when there is neither a bag nor a joint with loose fasteners.
 */
export function labelSheet(view: StudyView, date: string): LabelSheet {
  const bags = view.nodes('bag');
  const kept = new Set(bags.flatMap((bag) => jointOf(view, bag)?.id ?? []));
  const bare = view
    .nodes('joint')
    .filter(({ id }) => !kept.has(id) && hasLooseFasteners(jointKind(word(view, id, 'type'))));
  const labels = [
    ...bags.map((bag) => labelOf(view, bag.label, bag, jointOf(view, bag))),
    ...bare.map((joint) => labelOf(view, `B-${joint.label}`, undefined, joint)),
  ].sort((a, b) => (a.bag < b.bag ? -1 : 1));
  if (labels.length === 0) throw nothingToLabel(view);
  const { title, invented } = view.header;
  return {
    title: `Bag labels: ${title}`,
    study: title,
    revision: view.revision,
    date,
    invented,
    labels,
  };
}

const jointOf = (view: StudyView, bag: NodeSpec): NodeSpec | undefined =>
  view
    .links('keeps', bag.id)
    .flatMap(({ to }) => (to === null ? [] : (view.find(to) ?? [])))
    .find((node) => node.kind === 'joint');

function labelOf(
  view: StudyView,
  label: string,
  bag: NodeSpec | undefined,
  joint: NodeSpec | undefined,
): BagLabel {
  const of = (id: Id | undefined, property: string): string =>
    id === undefined ? '' : word(view, id, property);
  const counts = [
    [of(joint?.id, 'count.holes'), 'holes'],
    [of(bag?.id, 'count.bag'), 'in the bag'],
  ].flatMap(([n, words]) => (n === '' ? [] : [`${n} ${words}`]));
  const sides = [of(joint?.id, 'words.from'), of(joint?.id, 'words.to')].filter((t) => t !== '');
  return {
    bag: label,
    joint: joint?.label ?? '',
    holds: sides.join(' to '),
    spec: of(bag?.id, 'spec') || of(joint?.id, 'spec'),
    counts: counts.join(', '),
    code: bagCode(view.study, label),
  };
}

/** A word or a count in force; empty where there is none. */
function word(view: StudyView, id: Id, property: string): string {
  const cell = view.cell(id, property);
  if (isMissing(cell)) return '';
  const { value } = cell;
  if (value.t === 'count') return String(value.n);
  return value.t === 'text' ? value.text : '';
}

const nothingToLabel = (view: StudyView): RefusalError =>
  new RefusalError({
    code: 'no-answer',
    place: { study: view.header.title },
    value: '',
    why: 'the study has neither bags nor joints with loose fasteners',
    next: 'Import bags or joints first.',
  });
