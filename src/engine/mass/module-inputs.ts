import type { Id, StudyView } from '../../study/index.ts';
import type { TableInput } from '../method.ts';

/** Parts of a module by node: those listed, an assembly standing for all below it, less those taken out. */
export function partsInModule(view: StudyView, module: Id): readonly Id[] {
  const links = view.links('weighed-with', module).filter((l) => l.from === module);
  const below = (ids: readonly (Id | null)[]) =>
    ids.flatMap((id) => (id === null ? [] : view.nodes('part', id).map((n) => n.id)));
  const ends = (without: boolean) =>
    links.filter((l) => (l.role === 'without') === without).map((l) => l.to);
  const listed = ends(false);
  const isAssembly = view.node(module)?.kind === 'assembly';
  const inside = listed.length === 0 && isAssembly ? below([module]) : below(listed);
  const out = new Set(below(ends(true)));
  return [...new Set(inside)].filter((id) => !out.has(id));
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
