import type { Change, RefusalError } from '../study/index.ts';
import { refusal } from './refuse.ts';
import { changePlace } from './stored-text.ts';

const NEXT =
  'Nothing of this call was stored. A stored change is never rewritten: send what is new as a change of its own, with a fresh id and the next seq.';

/** The id is taken by a change with other bytes. */
export const idConflict = (study: string, change: Change): RefusalError =>
  refusal(
    'conflict',
    changePlace(study, change),
    'another change with this id and other content is stored already',
    NEXT,
    change.id,
  );

/** The device's order number is taken by a change with another id. */
export const seqConflict = (study: string, change: Change): RefusalError =>
  refusal(
    'conflict',
    changePlace(study, change),
    `device ${change.device} has used this seq for another change of the study`,
    `${NEXT} Two copies of one device's folder may be in use.`,
    `seq ${change.seq}`,
  );
