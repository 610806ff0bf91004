import { type PropertyDef, scalar, text } from './property-def.ts';

/** The vehicle as it came in, and the days set for the study. */
export const RECEIVED_PROPERTIES: readonly PropertyDef[] = [
  text('received.options', 'as received: options', 'vehicle'),
  text('received.fluids', 'as received: fluids', 'vehicle'),
  text('received.damage', 'as received: damage', 'vehicle'),
  text('received.alignment', 'as received: alignment', 'vehicle'),
  text('received.gaps', 'as received: gaps', 'vehicle'),
  scalar('received.odometer', 'as received: odometer', 'length', 'km', 'vehicle'),
  scalar(
    'received.tyrePressure.front',
    'as received: tyre pressure, front',
    'pressureDiff',
    'kPa',
    'vehicle',
  ),
  scalar(
    'received.tyrePressure.rear',
    'as received: tyre pressure, rear',
    'pressureDiff',
    'kPa',
    'vehicle',
  ),
  scalar('received.rideHeight.front', 'as received: ride height, front', 'length', 'mm', 'vehicle'),
  scalar('received.rideHeight.rear', 'as received: ride height, rear', 'length', 'mm', 'vehicle'),
  text('plan.due', 'day on which the study is due', 'vehicle'),
];
