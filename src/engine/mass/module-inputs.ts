import { type Id, listedBy, partsOfAll, type StudyView } from '../../study/index.ts';
import type { TableInput } from '../method.ts';

/** Parts of a module by node: those listed, an assembly standing for all below it, less those taken out. */
export function partsInModule(view: StudyView, module: Id): readonly Id[] {
  const { inside, out } = listedBy(view, 'weighed-with', module);
  const isWhole = inside.length === 0 && view.node(module)?.kind === 'assembly';
  return partsOfAll(view, isWhole ? [module] : inside, out);
}

/** Assemblies and trials that were weighed in one piece. */
export const modulesIn = (view: StudyView, under: Id): readonly Id[] =>
  (['assembly', 'trial'] as const)
    .flatMap((kind) => view.nodes(kind, under))
    .filter((n) => view.properties(n.id).includes('moduleMass'))
    .map((n) => n.id);

/** Modules weighed in one piece, each with what was in it. */
export const MODULES: TableInput = {
  in: 'table',
  name: 'modules',
  meaning: 'one module that was weighed in one piece',
  where: 'assemblies and trials of the vehicle with a mass as lowered',
  rows: (at) => modulesIn(at.view, at.subject),
  columns: [
    {
      in: 'scalar',
      name: 'moduleMass',
      symbol: 'mₘ',
      kind: 'mass',
      unit: 'kg',
      meaning: 'mass of the module as lowered',
      range: [0.5, 2000],
      bounds: { above: 0 },
      where: 'mass of the module',
      find: (at, row) => at.number(row, 'moduleMass'),
    },
    {
      in: 'term',
      name: 'holds',
      meaning: 'numbers of the parts in it, parted by semicolons',
      where: 'what was weighed with the module; of an assembly without a list all below it',
      find: (at, row) =>
        at.word(
          partsInModule(at.view, row)
            .map((id) => at.view.node(id)?.label ?? id)
            .join(';'),
        ),
    },
  ],
};
