import { type PropertyDef, scalar, signed, text } from './property-def.ts';

/** What is recorded of the hoist, of the margin asked for on it, and of the steps of the removal plan. */
export const HOIST_PROPERTIES: readonly PropertyDef[] = [
  signed('pad.front', 'hoist pads, front, X', 'length', 'mm', 'vehicle'),
  signed('pad.rear', 'hoist pads, rear, X', 'length', 'mm', 'vehicle'),
  signed('pad.left', 'hoist pads, left, Y', 'length', 'mm', 'vehicle'),
  signed('pad.right', 'hoist pads, right, Y', 'length', 'mm', 'vehicle'),
  scalar('lift.rating', 'rating of the lift', 'mass', 'kg', 'vehicle'),
  scalar('lift.armRating', 'rating of one arm of the lift', 'mass', 'kg', 'vehicle'),
  scalar('margin.shareX', 'margin in X asked for, share of the pad span', 'ratio', '%', 'vehicle'),
  scalar('margin.leastX', 'margin in X asked for, at least', 'length', 'mm', 'vehicle'),
  scalar('margin.shareY', 'margin in Y asked for, share of the pad span', 'ratio', '%', 'vehicle'),
  signed('pull.force', 'extra pull downward', 'force', 'N', 'vehicle'),
  signed('pull.x', 'extra pull, X', 'length', 'mm', 'vehicle'),
  signed('pull.y', 'extra pull, Y', 'length', 'mm', 'vehicle'),
  text('pull.words', 'what the extra pull is', 'vehicle'),

  scalar('removal.order', 'place in the removal plan', 'count', '1', 'removal'),
  text('gates', 'gates of the step, parted by ;', 'removal', 'step'),
  text('destroys', 'what the step destroys, parted by ;', 'removal', 'step'),
];
