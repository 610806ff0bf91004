import type { Id } from '../../study/index.ts';
import type { Finder, ScalarInput } from '../method.ts';

/** What the line load of a lid rests on, each a reading of its joint; in the order of `lidOf`. */
export function lidInputs(jointOf: (at: Finder) => Id): readonly ScalarInput[] {
  const ofJoint = (
    name: string,
    symbol: string,
    kind: ScalarInput['kind'],
    unit: string,
    property: string,
    meaning: string,
    range: ScalarInput['range'],
  ): ScalarInput => ({
    in: 'scalar',
    ...{ name, symbol, kind, unit, meaning, range },
    bounds: { above: 0 },
    where: `${meaning}, of the joint`,
    find: (at) => at.number(jointOf(at), property),
  });
  const mm = (
    name: string,
    symbol: string,
    property: string,
    meaning: string,
    range: ScalarInput['range'],
  ): ScalarInput => ofJoint(name, symbol, 'length', 'mm', property, meaning, range);
  const perLength = (name: string, symbol: string, property: string, meaning: string) =>
    ofJoint(name, symbol, 'lineLoad', 'N/mm', property, meaning, [0.02, 200]);
  return [
    mm('pitch', 's', 'seal.pitch', 'pitch of the fasteners', [10, 400]),
    mm(
      'cornerPitch',
      's_c',
      'seal.cornerPitch',
      'distance of the fasteners around a corner',
      [10, 500],
    ),
    ofJoint('perimeter', 'U', 'length', 'm', 'seal.perimeter', 'length of the seal', [0.05, 30]),
    ofJoint('area', 'A', 'area', 'm2', 'seal.area', 'area within the seal', [0.001, 10]),
    mm('width', 'b', 'flange.width', 'width of the flange', [3, 200]),
    mm('thickness', 't', 'flange.thickness', 'thickness of the flange', [0.3, 40]),
    ofJoint('modulus', 'E', 'stress', 'GPa', 'flange.modulus', 'modulus of the flange', [0.5, 220]),
    mm('free', 'h₀', 'gasket.free', 'height of the gasket as it lies free', [0.3, 40]),
    mm('squeezed', 'h₁', 'gasket.squeezed', 'height to which it is squeezed', [0.2, 40]),
    perLength('rest', 'q₀', 'gasket.lineLoad', 'line load of the gasket at that height'),
    perLength('demand', 'q_d', 'gasket.demand', 'line load that the gasket needs to seal'),
    {
      ...ofJoint(
        'pressure',
        'p',
        'pressureDiff',
        'kPa',
        'seal.pressure',
        'pressure inside',
        [0, 100],
      ),
      bounds: { atLeast: 0 },
      meaning: 'pressure inside: at most that at which the vents open',
    },
    {
      ...ofJoint('force', 'F', 'force', 'N', 'seal.force', 'force of one fastener', [1, 50000]),
      where: 'force of one fastener of the joint, else its preload by torque',
      find: (at) =>
        at.view.properties(jointOf(at)).includes('seal.force')
          ? at.number(jointOf(at), 'seal.force')
          : at.ask('bolt-preload', jointOf(at), 'F'),
    },
  ];
}
