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

/** What makes one explanation of the departures more probable than another, factor by factor. */
export interface CauseFactors {
  /** The causes that are taken together: each departure comes from one of them. */
  readonly sources: readonly ('track' | 'connection' | 'interference')[];
  /** How common that is taken to be before anything was recorded, above 0 and below 1 (common practice, no source). */
  readonly before: Fraction;
  /** How well the departures' forms, lengths and sizes fit: a logarithm of a likelihood, nats, any; tempered, so that the weights hold. */
  readonly form: number;
  /** How well their times, places and repetition fit: a logarithm too, nats, any. */
  readonly place: number;
}

/** A departure of the signal from smooth movement. */
export interface Finding {
  /** A loss of contact, a leap to elsewhere and back, a leap that stays, a stretch without change, or scatter while moving. */
  readonly kind: 'dropout' | 'spike' | 'step' | 'dead-spot' | 'rough';
  /** When it begins, s, on the recording's clock; any. */
  readonly start: Seconds;
  /** When it ends, s; not before `start`. */
  readonly end: Seconds;
  /** Where the throttle stood, by the expected curve, 0 closed to 1 open; a dead spot's middle. */
  readonly travel: Travel;
  /** Set where the readings tell no place, as of an open track, whose signal knows two levels only; `travel` is then 0.5. */
  readonly unplaced?: true;
  /** Largest departure from the path, V, any; its sign is that of the departure. */
  readonly depth: Volts;
  /** The depth as a fraction of the span between the closed and the open reading, without sign, 0 or more. */
  readonly depthOfSpan: Fraction;
  /** The depth as a fraction of the source's voltage, without sign, 0 or more. */
  readonly depthOfSource: Fraction;
  /**
   * Where the signal went: to the level that the load pulls a lifted wiper to, toward it, to the level of a broken
   * supply or ground lead, or elsewhere.
   */
  readonly went: 'to-rest-level' | 'toward-rest-level' | 'to-broken-lead-level' | 'elsewhere';
  /**
   * How much likelier the recording is with it than with the best explanation by movement alone: the logarithm of the odds, nats, at most
   * 1000. Left out for a bump without edges that stands out by its place alone.
   */
  readonly evidence?: number;
  /** What the throttle did. */
  readonly during: 'opening' | 'closing' | 'rest';
}

/** A stretch of one direction between two turning points. */
export interface Stroke {
  /** Which way the throttle went. */
  readonly direction: 'opening' | 'closing';
  /** When it leaves the turning point, s, on the recording's clock; any. */
  readonly start: Seconds;
  /** When it reaches the next one, s; after `start`. */
  readonly end: Seconds;
  /** Travel at its beginning, 0 closed to 1 open. */
  readonly from: Travel;
  /** Travel at its end, 0 closed to 1 open: above `from` opening, below it closing. */
  readonly to: Travel;
}

/** A stretch in which the throttle stood still. */
export interface Rest {
  /** When it begins, s, on the recording's clock; any. */
  readonly start: Seconds;
  /** When it ends, s; after `start`. */
  readonly end: Seconds;
  /** Where it stood still: travel, 0 closed to 1 open. */
  readonly travel: Travel;
  /** Mean reading, V, any; where a supply was recorded, as it would have been with the stated one. */
  readonly volts: Volts;
}

/** The spring closed the throttle; what follows until `settled` may be its rebounds on the stop. */
export interface SnapClosing {
  /** When it was let go, s, on the recording's clock; any. */
  readonly start: Seconds;
  /** First touch of the stop, s; after `start`. */
  readonly touch: Seconds;
  /** When it lies still on the stop, s; not before `touch`. */
  readonly settled: Seconds;
  /** Travel that it was let go at, above 0 and up to 1 open. */
  readonly from: Travel;
  /** How far above the closed stop each rebound went, in order: travel, above 0. */
  readonly rebounds: readonly Travel[];
}

/** Departures at one travel. */
export interface Spot {
  /** Where it lies: travel, 0 closed to 1 open. */
  readonly travel: Travel;
  /** Positions in the list of findings, from 0. */
  readonly findings: readonly number[];
  /** How many passes went over it, 1 or more; snap closings count only where they showed it. */
  readonly passes: number;
  /** How many of those passes showed it, from 1 to `passes`. */
  readonly seen: number;
}

/** What a check compares. */
export type CheckCode =
  | 'possible-readings'
  | 'stroke-time'
  | 'duration'
  | 'live-output'
  | 'sample-interval'
  | 'smoothing'
  | 'visible-departure'
  | 'clipping'
  | 'unread'
  | 'supply'
  | 'coupling'
  | 'whole-strokes'
  | 'starts'
  | 'coverage'
  | 'departures'
  | 'closed-end'
  | 'open-end'
  | 'closed-rest'
  | 'criteria';

/** How a check came out; `not-judged` does not weigh on the verdict. */
export type CheckOutcome = 'conforms' | 'marginal' | 'fails' | 'cannot-tell' | 'not-judged';

/** Where a limit came from. */
export type LimitSource = 'criteria' | 'expected-window' | 'recorder';

/** One comparison with all that it rests on. `measured`, limits and margin bear one unit; `1` is a fraction, of the span unless said otherwise. */
export interface Check {
  /** Which comparison it is. */
  readonly check: CheckCode;
  /** What came of it. */
  readonly outcome: CheckOutcome;
  /** The unit of `measured`, the limits, the uncertainty and the margin; `1` is a fraction. */
  readonly unit: 'V' | 's' | '1' | 'count';
  /** What was measured, in `unit`, any; left out where nothing could be. */
  readonly measured?: number;
  /** The lowest value that is right, in `unit`; left out where there is no limit below. */
  readonly lowLimit?: number;
  /** The highest value that is right, in `unit`; left out where there is no limit above. */
  readonly highLimit?: number;
  /** Standard uncertainty of the measured value, in `unit`, 0 or more; left out where none is known. */
  readonly uncertainty?: number;
  /** Distance to the nearer limit, in `unit`, negative outside, from 0 on inside; left out where nothing was measured. */
  readonly margin?: number;
  /**
   * Probability, 0 to 1, that the true value lies within the limits, were the measured one's error normal with the stated standard
   * uncertainty and nothing known of the value beforehand (JCGM 106:2012, 7.2; from memory). Left out where no uncertainty is known.
   */
  readonly conformance?: Fraction;
  /** Where the limit comes from. */
  readonly limitFrom: LimitSource;
}

/** The closed readings that the returns of one way came back to. */
export interface Returns {
  /** How many returns there were, 1 or more. */
  readonly count: number;
  /** Mean of the readings, V, any. */
  readonly mean: Volts;
  /** Highest less lowest reading, V, 0 or more. */
  readonly range: Volts;
  /** Standard deviation of the readings, V, 0 or more; left out for a single return. */
  readonly deviation?: Volts;
}

/** How well the throttle came back to closed. */
export interface ClosedReadings {
  /** After returns by hand; left out where there were none. */
  readonly byHand?: Returns;
  /** After returns by the spring; left out where there were none. */
  readonly bySpring?: Returns;
  /** Mean reading after returns by hand less that after returns by the spring, V, any; left out where one of them is missing. */
  readonly hysteresis?: Volts;
}

/** What this recording could have shown of a fault. */
export interface CouldShow {
  /** Stretches of travel in which the output lies so near the load's rest level that no dropout can show. */
  readonly blind: readonly (readonly [Travel, Travel])[];
  /**
   * The narrowest worn spot that surely leaves the wanted number of samples on some pass, wherever it lies: travel, above 0; left out
   * where no width is sure to.
   */
  readonly narrowestSpot?: Travel;
}

/**
 * How many clean looks each tenth of the travel had in each direction, from the closed stop on: passes that were sampled so closely that
 * a dropout of the criteria's length would have shown. Zero throughout where travel can't be told.
 */
export interface Coverage {
  /** Looks at each tenth of the travel while opening, from the closed stop on; 0 or more each. */
  readonly opening: readonly number[];
  /** Looks at each tenth of the travel while closing, from the closed stop on; 0 or more each. */
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
  | 'record-every-reading'
  | 'tell-units'
  | 'complete-recording'
  | 'tighten-criteria'
  | 'finer-instrument'
  | 'couple-directly';

/** How often a recording looked, beside what is asked of one: three slow sweeps from stop to stop and back, and three snaps. */
export interface RestsOn {
  /** Fewest clean looks that a tenth of the travel had, either way: a count, 0 or more. */
  readonly looks: number;
  /** How many are asked for: a count, 1 or more. */
  readonly looksAskedFor: number;
  /** Closings by the spring: a count, 0 or more. */
  readonly snaps: number;
  /** How many are asked for: a count, 1 or more. */
  readonly snapsAskedFor: number;
  /** The chance that a spot that lifts on half of its passes showed on none of the looks, 0 to 1. */
  readonly missedChance: Fraction;
}

/** A unit that a column's numbers may have where they can't be volts of the hook-up, or seconds of a hand's strokes. */
export interface UnitThatFits {
  /** Which column. */
  readonly column: 'signal' | 'time';
  /** What its numbers may be. */
  readonly unit: 'mV' | 'counts' | '%' | 'ms' | 'µs';
  /** Bits of the converter, 8 to 16; left out where the unit is no count. */
  readonly bits?: number;
  /** Volts that one of the signal's would be, were the converter fed as the sensor is; above 0; left out for times. */
  readonly voltsPerUnit?: number;
}

/** A judged sweep: the verdict with everything that led to it. */
export interface Score {
  /** What the recording says of the sensor as hooked up and recorded. */
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
   * The best supported cause first, with its weight, 0 to 1. Of departures each has the probability that they are real and come from it,
   * at most 0.99: what is left of 1 is that they are none, and causes that are not worth a sentence. All other weights add up to 1.
   */
  readonly causes: readonly { readonly cause: Cause; readonly weight: Fraction }[];
  /**
   * Of departures every explanation that was weighed, with its factors and its weight among all of them, 0 to 1: `before`·e^(`form` + `place`) over
   * the sum of these. Left out where there are none.
   */
  readonly explanations?: readonly (CauseFactors & { readonly weight: Fraction })[];
  /** What to do next, as codes, the first first. */
  readonly advice: readonly Advice[];
  /** Every comparison that says something of the sensor or the recording, in the order of judging: of the units only where they can't be right, of rows without a reading only where there are some. */
  readonly checks: readonly Check[];
  /** Where a column is in another unit than it was taken for, those that fit, the likeliest first; left out elsewhere. Nothing else is found then. */
  readonly unitsThatFit?: readonly UnitThatFits[];
  /** Departures of the signal from smooth movement, by time. */
  readonly findings: readonly Finding[];
  /** Of a recorder that is coupled through a capacitor, and only of such, in the place of findings: departures without travel and level. */
  readonly abrupt?: readonly AbruptDeparture[];
  /** Where departures came at one travel, the most often seen first. */
  readonly spots: readonly Spot[];
  /**
   * How many more passes would settle with a probability of 90 % whether track or connection (one 20 times as probable as the other): 0
   * where it is settled, left out where there is nothing to settle or 30 passes would not.
   */
  readonly morePasses?: number;
  /** What the throttle did: its strokes, by time. */
  readonly strokes: readonly Stroke[];
  /** Where it stood still, by time. */
  readonly rests: readonly Rest[];
  /** Closings by the spring, by time. */
  readonly snaps: readonly SnapClosing[];
  /** How well the recording can show what happened. */
  readonly quality: CaptureQuality;
  /** How much a verdict rests on. */
  readonly restsOn: RestsOn;
  /** What it could have shown of a fault. */
  readonly couldShow: CouldShow;
  /** How often each part of the travel was seen. */
  readonly coverage: Coverage;
  /** How well the throttle came back to closed. */
  readonly closedReadings: ClosedReadings;
  /** The deliberate tests that no stretch of the recording is labelled with. */
  readonly testsNotDone: readonly DeliberateTest[];
  /** True: neither a supply channel nor readings of source and zero were given, so the source was taken to hold its voltage. */
  readonly supplyAssumed: boolean;
  /**
   * True: nothing was told of how true the instrument reads, so it was taken for one of its kind: for true to 3 % of the reading where it resolves 8
   * bits or fewer, else to 1 %, and to a step of its own (twice the standard uncertainty).
   */
  readonly uncertaintyAssumed: boolean;
}
