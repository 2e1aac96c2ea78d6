import type { Finding } from '@truesweep/core';

/**
 * The kinds of findings.
 *
 * @example
 * findingLabels['dead-spot'] // => 'dead spot'
 */
export const findingLabels: Readonly<Record<Finding['kind'], string>> = {
  dropout: 'dropout',
  spike: 'spike',
  step: 'step',
  'dead-spot': 'dead spot',
  rough: 'rough patch',
};

/**
 * What is seen in the recording, and what it can be.
 *
 * @example
 * findingMeanings.step // => 'the signal jumped and stayed on another path: a cracked track or a slipped rotor.'
 */
export const findingMeanings: Readonly<Record<Finding['kind'], string>> = {
  dropout:
    'the signal left toward the level of a lifted wiper and came back to its path: the wiper lifted, crossed dirt, or a contact opened.',
  spike: 'the signal jumped off its path and back, not toward the level of a lifted wiper.',
  step: 'the signal jumped and stayed on another path: a cracked track or a slipped rotor.',
  'dead-spot': 'the signal stood still while the shaft moved, then jumped.',
  rough: 'the signal scatters over a stretch of the travel: a worn or dirty track.',
};

/**
 * What the throttle did during a finding.
 *
 * @example
 * duringLabels.opening // => 'opening'
 */
export const duringLabels: Readonly<Record<Finding['during'], string>> = {
  opening: 'opening',
  closing: 'closing',
  rest: 'rest',
};
