import type { CheckOutcome } from '../score/score.js';
import type { Fraction } from '../units.js';

/** A reading beside its limits, with all that the comparison rests on. Measured value, limits, uncertainty and margin bear one unit. */
export interface ReadingCheck<
  Code extends string = string,
  Unit extends string = string,
  Source extends string = string,
> {
  /** Which comparison it is. */
  readonly check: Code;
  /** What came of it. */
  readonly outcome: CheckOutcome;
  /** Which reading it is of, its place in the list of readings from 0; left out where it is of several, or of none. */
  readonly reading?: number;
  /** The unit of `measured`, the limits, the uncertainty and the margin; `1` is a fraction. */
  readonly unit: Unit;
  /** What was measured, in `unit`, any; left out where nothing was. */
  readonly measured?: number;
  /** The lowest value that is right, in `unit`; left out where there is no limit below. */
  readonly lowLimit?: number;
  /** The highest value that is right, in `unit`; left out where there is no limit above. */
  readonly highLimit?: number;
  /** Standard uncertainty of the measured value, in `unit`, 0 or more; left out where nothing was measured. */
  readonly uncertainty?: number;
  /** Distance to the nearer limit, in `unit`, negative outside, from 0 on inside; left out where nothing was measured. */
  readonly margin?: number;
  /**
   * Probability, 0 to 1, that the true value lies within the limits, were the measured one's error normal with the stated standard
   * uncertainty and nothing known of the value beforehand (JCGM 106:2012, 7.2; from memory). Left out where nothing was measured.
   */
  readonly conformance?: Fraction;
  /** What adds most to the uncertainty; left out where nothing is uncertain. */
  readonly mostUncertain?: Source;
}

/** What several readings say together. */
export interface Judgement<
  Check extends ReadingCheck,
  Advice extends string,
  Unsaid extends string,
> {
  /** What the readings say of the sensor. */
  readonly verdict: 'pass' | 'marginal' | 'fail' | 'inconclusive';
  /** Every comparison, in the order of the readings. */
  readonly checks: readonly Check[];
  /** What to do next, as codes, the first first; empty where nothing is to do. */
  readonly advice: readonly Advice[];
  /** What a pass does not say of the sensor, as codes. */
  readonly unsaid: readonly Unsaid[];
}
