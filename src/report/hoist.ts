import type { Against, HoistSheets, Hold, StepSheet } from '../engine/index.ts';
import type { GateState } from '../study/index.ts';
import type { ReportGate, ReportHoist, ReportStepAt, ReportTable } from './model.ts';
import { numberText, shownNumber } from './wording.ts';

export const reportHoist = ({ steps, order }: HoistSheets): ReportHoist => ({
  steps: steps.map(stepAt),
  proposals: (order.further ?? []).map(proposal),
  order: order.findings
    .filter(
      (f) =>
        f.code === 'hoist-limit' || f.code.startsWith('removal-') || f.code === 'no-order-found',
    )
    .map((f) => [f.place.subject, f.what, f.value].filter(Boolean).join(': ')),
});

const proposal = ({
  title,
  rows,
}: NonNullable<HoistSheets['order']['further']>[number]): ReportTable => ({
  title,
  columns: ['place', 'step', 'what is done', 'after'].map((head) => ({
    head,
    numbers: head === 'place',
  })),
  rows: rows.map((row) => row.slice(0, 4).map(String)),
});

function stepAt(sheet: StepSheet): ReportStepAt {
  const { label, name, state, waitsFor, holds } = sheet;
  return {
    ...{ label, name, standing: standingOf(sheet), waitsFor, notShown: state.notShown },
    balance: balanceText(sheet),
    against: state.gates.some((g) => g.gate.id === 'hoist-limit')
      ? sheet.against.map(againstText)
      : [],
    gates: state.gates.map(gateAt),
    holds: holds.map(holdText),
  };
}

/** How a step stands, in a word or two. */
export function standingOf({ state, against }: StepSheet): string {
  if (state.done) return 'done';
  if (state.mark?.mark.done) return 'marked, not shown as done';
  const counts = state.gates.some((g) => g.gate.id === 'hoist-limit');
  return counts && against.length > 0 ? 'stopped' : 'to be done';
}

const shown = (out: Against['out']): string =>
  numberText(
    shownNumber({
      x: out.x,
      u: out.u,
      knownU: out.knownU,
      kind: out.kind,
      unit: out.unit,
      how: 'calculated',
    }),
  );

/** "left 1 093.4 ± 0.2 kg at X 1 216 ± 3 mm; margin 656 ± 6 mm, with the pull 517 ± 6 mm, asked for 273 mm". */
function balanceText({ balance: { outs } }: StepSheet): string {
  const text = (name: string) => (outs[name] ? shown(outs[name]) : 'not known');
  return `left ${text('mass')} at X ${text('x')}; margin ${text('marginX')}, with the pull ${text('pulledX')}, asked for ${text('limitX')}`;
}

const againstText = ({ out, word }: Against): string => `${out.meaning}: ${shown(out)}, ${word}`;

const gateAt = ({ gate, state, lacking, held }: GateState): ReportGate => ({
  ...{ id: gate.id, title: gate.title, lacking },
  says:
    state === 'override' && held?.override
      ? `override by ${held.override.who}: ${held.override.why}`
      : state,
});

export const holdText = ({ label, words, needs, instrument, minutes }: Hold): string =>
  `measure first: ${label}${instrument ? ` (${instrument}, ${minutes} min)` : ''}: ${words}; needed by ${needs.map((n) => `“${n.words}”`).join(', ')}`;

/** The hoist for a terminal. */
export function hoistText({ steps, proposals, order }: ReportHoist): string {
  const lines = steps.flatMap((s) => [
    `${s.label} ${s.name}: ${s.standing}`,
    `    ${s.balance}`,
    ...s.against.map((a) => `    stop: ${a}`),
    ...(s.standing === 'done' ? [] : s.waitsFor.map((w) => `    after ${w}`)),
    ...s.gates.map((g) => `    ${g.id}: ${g.says}`),
    ...s.notShown.map((w) => `    ${w}`),
    ...s.holds.map((h) => `    ${h}`),
  ]);
  const tables = proposals.flatMap((t) => [
    '',
    t.title,
    ...t.rows.map((r) => `  ${r.slice(0, 3).join('  ')}`),
  ]);
  return `${[...lines, ...(order.length > 0 ? ['', ...order] : []), ...tables].join('\n')}\n`;
}
