import { finiteBetween, yesOrNo } from '../guard.js';
import type { Seconds, Travel } from '../units.js';
import { checkInstrument } from './checkInstrument.js';
import type { DigitalMeter } from './instrument.js';

/** What a digital meter alone cannot prove, however it is used. */
export type Unproved = 'short-dropouts' | 'while-moving' | 'snap-closing' | 'scatter-of-closed';

/** How to look for a worn spot with a digital meter alone. */
export interface StepByStep {
  /** How far to turn at a time: half the spot's width, so that no spot is stepped over. */
  readonly step: Travel;
  /** How many steps there are one way, 1 or more. */
  readonly steps: number;
  /** How long to wait at each step until the display has settled: the conversion that the turn disturbed, a whole one, and a change of the display, s. */
  readonly wait: Seconds;
  /** For all steps one way, s, above 0. */
  readonly total: Seconds;
  /** The same with the finest steps that a hand sets, where those above are finer; left out where a hand can set them. */
  readonly byHand?: {
    /** How far to turn at a time, a part of the travel. */
    readonly step: Travel;
    /** How many steps there are one way, 1 or more. */
    readonly steps: number;
    /** For all steps one way, s, above 0. */
    readonly total: Seconds;
    /** The narrowest spot that is surely met, a part of the travel: a narrower one may lie between two steps. */
    readonly narrowest: Travel;
  };
  /** Whether to let the meter keep its extremes during a slow sweep as well. */
  readonly keepExtremes: boolean;
  /** Whether to add a load, for without one nothing pulls the signal of a lifted wiper away. */
  readonly addLoad: boolean;
  /** What stays unproved even so, as codes. */
  readonly unproved: readonly Unproved[];
}

/**
 * The finest steps of the travel that a hand sets and holds against the spring: some two degrees of a plate's 80; common practice, no source.
 */
const finestByHand: Travel = 0.025;

/**
 * The way to find a worn spot where only a digital meter is at hand: turn in small steps and wait at each. Steady faults show; what lasts no longer
 * than a conversion, or comes only while the wiper moves, stays unproved.
 *
 * @param width The narrowest spot to be found, a part of the travel.
 * @param hasLoad Whether a deliberate load pulls the signal.
 *
 * @example
 * const meter = { kind: 'digital-meter', name: 'meter', inputOhms: 10e6, ranges: [1.999, 19.99], counts: 1999, aperture: 0.1, displayInterval: 0.4 } as const;
 * const { steps, wait } = stepByStep(meter, 0.02, true);
 * [steps, wait.toFixed(1)] // => [100, '0.6']
 */
export function stepByStep(meter: DigitalMeter, width: Travel, hasLoad: boolean): StepByStep {
  checkInstrument(meter, ['digital-meter']);
  yesOrNo(hasLoad, 'hasLoad');
  const step = finiteBetween(width, 1e-6, 1, 'width') / 2;
  const { aperture, deadTime = 0, rangeChange } = meter;
  const { displayInterval = aperture + deadTime, keepsExtremes = false } = meter;
  const wait = 2 * (aperture + deadTime) + displayInterval + (rangeChange?.blank ?? 0);
  const steps = stepsOf(step);
  return {
    step,
    steps,
    wait,
    total: steps * wait,
    ...(step < finestByHand && {
      byHand: {
        step: finestByHand,
        steps: stepsOf(finestByHand),
        total: stepsOf(finestByHand) * wait,
        narrowest: 2 * finestByHand,
      },
    }),
    keepExtremes: keepsExtremes,
    addLoad: !hasLoad,
    unproved: ['short-dropouts', 'while-moving', 'snap-closing', 'scatter-of-closed'],
  };
}

function stepsOf(step: Travel): number {
  return Math.ceil(1 / step - 1e-9);
}
