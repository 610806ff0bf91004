/**
 * What a step destroys by its kind: the readings that can not be taken any more once it is done.
 * Properties by their beginnings; of anything, or only of what the step takes or opens.
 */
export interface Destruction {
  readonly word: string;
  readonly properties: readonly string[];
  readonly of: 'anything' | 'what it takes' | 'joints it opens';
  /** As said in a hold. */
  readonly words: string;
}

const POSTURE = ['cornerLoad.', 'tyreRadius', 'frontLoadGain', 'liftAngle', 'wheelbase', 'track.'];
const RECEIVED = ['received.rideHeight', 'received.alignment', 'received.gaps'];

/** Common practice, no source. */
export const DESTRUCTIONS: readonly Destruction[] = [
  {
    word: 'kerb posture',
    properties: [...POSTURE, ...RECEIVED],
    of: 'anything',
    words: 'once the wheels are off the ground the kerb posture is gone',
  },
  {
    word: 'drained',
    properties: ['fillVolume'],
    of: 'anything',
    words: 'once drained, the fill can not be read any more',
  },
  {
    word: 'unsealed',
    properties: ['leak.', 'zone.', 'seam.', 'adhesive.'],
    of: 'anything',
    words: 'once the seal is opened, its bead and its tightness can not be measured any more',
  },
  {
    word: 'cut',
    properties: ['mass', 'position', 'envelope.', 'seam.', 'thickness'],
    of: 'what it takes',
    words: 'once cut, the part can not be measured whole any more',
  },
  {
    word: 'opened',
    properties: ['torque.residual', 'torque.breakaway'],
    of: 'joints it opens',
    words: 'once opened, the joint has lost its torque',
  },
];
