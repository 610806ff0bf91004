import type { MeasurementPlan } from '../engine/index.ts';
import { numberText, shownNumber } from './wording.ts';

/** The plan of readings and the burn-down for a terminal. */
export function measurementPlanText(plan: MeasurementPlan): string {
  const { weighed, gap, open, daysLeft, minutes, notReceived } = plan;
  const share = weighed.of === 0 ? 0 : Math.floor((100 * weighed.parts) / weighed.of);
  const lines = [
    `weighed: ${weighed.parts} of ${weighed.of} parts, ${share} %`,
    `balance due: ${gap ? numberText(shownNumber({ ...gap, how: 'calculated' })) : 'not known'}`,
    `open questions and claims: ${open}`,
    `days left: ${daysLeft ?? 'no day due is recorded (plan.due)'}`,
    `work planned: ${Math.round(minutes)} min`,
    ...(notReceived.length > 0 ? [`as received, not recorded: ${notReceived.join('; ')}`] : []),
    '',
    ...plan.readings.flatMap((r) => [
      `${r.before === undefined ? '' : `before ${r.before}: `}${r.label}`,
      `    ${r.instrument ?? 'no instrument at hand'}${r.minutes === undefined ? '' : `, ${r.minutes} min`}; for ${r.needs.map((n) => `“${n}”`).join(', ')}`,
    ]),
  ];
  return `${lines.join('\n')}\n`;
}
