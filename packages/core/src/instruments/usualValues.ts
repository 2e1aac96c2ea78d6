import type { DigitalMeter } from './instrument.js';
import type { NeedleMovement } from './needleMovement.js';

/** Common practice, no source: a needle that takes about half a second to come to rest. */
export const usualMovement: NeedleMovement = { naturalFrequency: 2 * Math.PI, damping: 0.7 };
/** Smallest movement of a needle that an eye notices, a part of full scale; common practice, no source. */
export const usualNoticed = 0.02;
/** A range goes up where its counts are used up, and down where a tenth of it would do; common practice, no source. */
export const usualRangeChange: NonNullable<DigitalMeter['rangeChange']> = {
  up: 1,
  down: 0.09,
  blank: 0,
};
/** So many steps of a display or a converter stand out from its flicker. */
export const noticedSteps = 3;
