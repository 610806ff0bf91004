import type { StudyView } from '../../study/index.ts';
import type { Questions } from '../registry.ts';
import { instrumentsAtHand } from './at-hand.ts';
import { betteringReadings } from './bettering.ts';
import { lackingReadings } from './lacking.ts';
import type { MeasureNext, MeasureNextOptions } from './measure-next-types.ts';
import { openThings } from './open-things.ts';

const LIMIT = 20;

/**
 * What to measure next: for everything open, the readings whose taking would settle or narrow
 * it. Missing readings and unknown spreads come first, for they keep answers incomplete; then
 * whatever narrows most a minute with the instruments at hand, as foretold by the contributions
 * that each answer keeps: no reading is tried by calculating anew.
 */
export function measureNext(
  view: StudyView,
  questions: Questions,
  options: MeasureNextOptions = {},
): MeasureNext {
  const open = openThings(view, questions, options);
  const instruments = options.instruments ?? instrumentsAtHand(view);
  const limit = options.limit ?? LIMIT;
  const lacking = lackingReadings(open, view, instruments);
  const bettering = betteringReadings(open, view, instruments, options);
  const readings = [...lacking.slice(0, limit), ...bettering.slice(0, limit)];
  return {
    open: open.map((o) => o.thing),
    readings,
    leftOut: lacking.length + bettering.length - readings.length,
  };
}
