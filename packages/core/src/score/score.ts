import type { AbruptDeparture } from '../acCoupled/abruptDepartures.js';
import type { CaptureQuality } from '../capture/captureQuality.js';
import type { Fraction, Seconds, Travel, Volts } from '../units.js';

/** May the sensor, as hooked up and recorded, go back on the engine? */
export type Verdict = 'pass' | 'marginal' | 'fail' | 'inconclusive';

/** What the evidence points to. */
export type Cause =
  | 'none'
  | 'track'
  | 'connection'
  | 'interference'
  | 'ends'
  | 'closed-rest'
  | 'wiring'
  | 'recording';

/** A departure of the signal from smooth movement. */
export interface Finding {
  readonly kind: 'dropout' | 'spike' | 'step' | 'dead-spot' | 'rough';
  readonly start: Seconds;
  readonly end: Seconds;
  /** Where the throttle stood, by the expected curve; a dead spot's middle. */
  readonly travel: Travel;
  /** Largest departure from the path, V; its sign is that of the departure. */
  readonly depth: Volts;
  /** The depth as a fraction of the span between the closed and the open reading, without sign. */
  readonly depthOfSpan: Fraction;
  /** The depth as a fraction of the source's voltage, without sign. */
  readonly depthOfSource: Fraction;
  /**
   * Where the signal went: to the level that the load pulls a lifted wiper to, toward it, to the level of a broken
   * supply or ground lead, or elsewhere.
   */
  readonly went: 'to-rest-level' | 'toward-rest-level' | 'to-broken-lead-level' | 'elsewhere';
  /**
   * How much likelier the recording is with it than with the best explanation by movement alone: the logarithm of the odds, nats, 1000 at
   * the most. Left out for a bump without edges that stands out by its place alone.
   */
  readonly evidence?: number;
  /** What the throttle did. */
  readonly during: 'opening' | 'closing' | 'rest';
}

/** A stretch of one direction between two turning points. */
export interface Stroke {
  readonly direction: 'opening' | 'closing';
  readonly start: Seconds;
  readonly end: Seconds;
  readonly from: Travel;
  readonly to: Travel;
}

/** A stretch in which the throttle stood still. */
export interface Rest {
  readonly start: Seconds;
  readonly end: Seconds;
  readonly travel: Travel;
  /** Mean reading, V; where a supply was recorded, as it would have been with the stated one. */
  readonly volts: Volts;
}

/** The spring closed the throttle; what follows until `settled` may be its rebounds on the stop. */
export interface SnapClosing {
  readonly start: Seconds;
  /** First touch of the stop. */
  readonly touch: Seconds;
  readonly settled: Seconds;
  readonly from: Travel;
  /** How far above the closed stop each rebound went, in order. */
  readonly rebounds: readonly Travel[];
}

/** Departures at one travel. */
export interface Spot {
  readonly travel: Travel;
  /** Positions in the list of findings. */
  readonly findings: readonly number[];
  /** How many passes went over it, and how many of them showed it; snap closings count only where they did. */
  readonly passes: number;
  readonly seen: number;
}

/** What a check compares. */
export type CheckCode =
  | 'duration'
  | 'live-output'
  | 'sample-interval'
  | 'smoothing'
  | 'visible-departure'
  | 'clipping'
  | 'supply'
  | 'coupling'
  | 'whole-strokes'
  | 'starts'
  | 'coverage'
  | 'departures'
  | 'closed-end'
  | 'open-end'
  | 'closed-rest';

/** How a check came out; `not-judged` does not weigh on the verdict. */
export type CheckOutcome = 'conforms' | 'marginal' | 'fails' | 'cannot-tell' | 'not-judged';

/** Where a limit came from. */
export type LimitSource = 'criteria' | 'expected-window' | 'recorder';

/** One comparison with all that it rests on. `measured`, limits and margin bear one unit; `1` is a fraction, of the span unless said otherwise. */
export interface Check {
  readonly check: CheckCode;
  readonly outcome: CheckOutcome;
  readonly unit: 'V' | 's' | '1' | 'count';
  /** Left out where nothing could be measured. */
  readonly measured?: number;
  readonly lowLimit?: number;
  readonly highLimit?: number;
  /** Standard uncertainty of the measured value. */
  readonly uncertainty?: number;
  /** Distance to the nearer limit, negative when outside. */
  readonly margin?: number;
  /**
   * Probability that the true value lies within the limits, were the measured one's error normal with the stated
   * standard uncertainty and nothing known of the value beforehand (JCGM 106:2012, 7.2; from memory).
   */
  readonly conformance?: Fraction;
  readonly limitFrom: LimitSource;
}

/** The closed readings that the returns of one way came back to. */
export interface Returns {
  readonly count: number;
  readonly mean: Volts;
  readonly range: Volts;
  /** Standard deviation of the readings, V; left out for a single return. */
  readonly deviation?: Volts;
}

/** How well the throttle came back to closed. */
export interface ClosedReadings {
  readonly byHand?: Returns;
  readonly bySpring?: Returns;
  /** Mean reading after returns by hand less that after returns by the spring, V. */
  readonly hysteresis?: Volts;
}

/** What this recording could have shown of a fault. */
export interface CouldShow {
  /** Stretches of travel in which the output lies so near the load's rest level that no dropout can show. */
  readonly blind: readonly (readonly [Travel, Travel])[];
  /** The narrowest worn spot that surely leaves the wanted number of samples on some pass, wherever it lies. */
  readonly narrowestSpot?: Travel;
}

/**
 * How many clean looks each tenth of the travel had in each direction, from the closed stop on: passes that were sampled so closely that
 * a dropout of the criteria's length would have shown. Zero throughout where travel can't be told.
 */
export interface Coverage {
  readonly opening: readonly number[];
  readonly closing: readonly number[];
}

/** A test that a recording can hold to tell connection from track. */
export type DeliberateTest = 'harness-flexed' | 'housing-tapped' | 'warmed';

/** What to do next. */
export type Advice =
  | 'refit'
  | 'replace-sensor'
  | 'prove-connection'
  | 'remove-interference'
  | 'check-wiring'
  | 'check-adjustment'
  | 'state-tolerances'
  | 'record-more-returns'
  | 'record-again'
  | 'record-faster'
  | 'record-without-smoothing'
  | 'record-quieter'
  | 'record-whole-strokes'
  | 'change-range'
  | 'couple-directly';

/** A judged sweep: the verdict with everything that led to it. */
export interface Score {
  readonly verdict: Verdict;
  /**
   * The probability that the verdict is one that the sensor deserves, as a judge would say who knew the sensor and the recorder: 0.5 to 0.99.
   * Of a pass that no visible fault was missed; of a failing or a marginal verdict that at least one of its reasons is real. It takes the
   * criteria, the expectation and what was told of the recorder for granted, and sensors and recordings for such as were modelled.
   *
   * Method: for each reason a logistic regression on what the score says of it (evidence, repetition, gaps, the odds of interference; of a
   * pass the width of a spot that may hide, the clean looks, and the closed readings), fitted to modelled recordings. Left out where the verdict is
   * inconclusive, and for a recorder that is coupled through a capacitor.
   */
  readonly confidence?: Fraction;
  /**
   * The best supported cause first. Of departures each has the probability that they are real and come from it, at most 0.99: what is left
   * of 1 is that they are none, and causes that are not worth a sentence. All other weights add up to 1.
   */
  readonly causes: readonly { readonly cause: Cause; readonly weight: Fraction }[];
  readonly advice: readonly Advice[];
  readonly checks: readonly Check[];
  readonly findings: readonly Finding[];
  /** Of a recorder that is coupled through a capacitor, in the place of findings: departures without travel and level. */
  readonly abrupt?: readonly AbruptDeparture[];
  /** Where departures came at one travel, the most often seen first. */
  readonly spots: readonly Spot[];
  /**
   * How many more passes would settle with a probability of 90 % whether track or connection (one 20 times as probable as the other): 0
   * where it is settled, left out where there is nothing to settle or 30 passes would not.
   */
  readonly morePasses?: number;
  readonly strokes: readonly Stroke[];
  readonly rests: readonly Rest[];
  readonly snaps: readonly SnapClosing[];
  readonly quality: CaptureQuality;
  readonly couldShow: CouldShow;
  readonly coverage: Coverage;
  readonly closedReadings: ClosedReadings;
  /** The deliberate tests that no stretch of the recording is labelled with. */
  readonly testsNotDone: readonly DeliberateTest[];
  /** True: neither a supply channel nor readings of source and zero were given, so the source was taken to hold its voltage. */
  readonly supplyAssumed: boolean;
}
