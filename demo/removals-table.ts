import { formatTable, type TextRow } from './csv.ts';
import { partsWhere } from './modules-table.ts';
import { HOIST, REMOVALS, type Removal } from './source/removals.ts';
import { VAN_27 } from './source/van-27.ts';
import { VEHICLE_HEADINGS } from './vehicle-table.ts';

const takenBy = ({ takes, ahead = [], behind = [], named = [] }: Removal): string[] => [
  ...takes,
  ...ahead.flatMap(({ assembly, xMm }) => partsWhere(assembly, ({ x }) => x < xMm)),
  ...behind.flatMap(({ assembly, xMm }) => partsWhere(assembly, ({ x }) => x > xMm)),
  ...named.flatMap(({ assembly, begins }) =>
    partsWhere(assembly, ({ name }) => name.startsWith(begins)),
  ),
];

/** removals.csv: the steps of the removal plan, in order. */
export const removalsTable = (removals: readonly Removal[] = REMOVALS): string =>
  formatTable(
    ['step', 'name', 'takes', 'without', 'after', 'gates', 'destroys', 'order'],
    removals.map((removal, i) => ({
      step: removal.number,
      name: removal.name,
      takes: takenBy(removal).join(';'),
      without: (removal.without ?? []).join(';'),
      after: (removal.after ?? []).join(';'),
      gates: (removal.gates ?? []).join(';'),
      destroys: (removal.destroys ?? []).join(';'),
      order: String(i),
    })),
  );

/** hoist.csv: where the pads stand, what the lift may carry, and the pull that is reckoned with. */
export function hoistTable(): string {
  const [front = 0, rear = 0] = VAN_27.hoistPads.xMm;
  const [left = 0, right = 0] = VAN_27.hoistPads.yMm;
  const row = (property: string, value: string, unit: string, how: string, u = ''): TextRow => ({
    ...{ subject: 'VAN-27', kind: '', parent: '', name: '', property, value, unit, u },
    ...{ u_unit: u === '' ? '' : unit, how, condition: 'kerb', note: '' },
    instrument: how === 'measured' ? 'tape' : '',
  });
  const pad = (property: string, mm: number) =>
    row(property, String(mm), 'mm', 'measured', String(HOIST.padUMm));
  const { pull } = HOIST;
  return formatTable(VEHICLE_HEADINGS, [
    pad('pad.front', front),
    pad('pad.rear', rear),
    pad('pad.left', left),
    pad('pad.right', right),
    row('lift.rating', String(HOIST.ratingKg), 'kg', 'supplied', '0'),
    row('lift.armRating', String(HOIST.armRatingKg), 'kg', 'supplied', '0'),
    row('pull.words', pull.words, '', 'supplied'),
    row('pull.force', String(pull.newton), 'N', 'supplied', '0'),
    row('pull.x', String(pull.xMm), 'mm', 'supplied', '0'),
    row('pull.y', String(pull.yMm), 'mm', 'supplied', '0'),
  ]);
}
