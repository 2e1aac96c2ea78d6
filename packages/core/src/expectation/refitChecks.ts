import { checkFields, type FieldRules } from '../fields.js';
import { between, positive, yesOrNo } from '../guard.js';
import type { Fraction, Volts } from '../units.js';
import { checkWindow } from './checkExpectation.js';
import type { ReadingWindow } from './expectedWindows.js';

/** The signal at the refitted sensor's connector with the throttle closed, and the reference read beside it. */
export interface ConnectorReading {
  /** Signal above the sensor's ground, V. */
  readonly volts: Volts;
  /** Reference at the connector above the sensor's ground, as measured, V; above 0. */
  readonly reference: Volts;
}

/** What is known after refitting; what is left out stays to be done. */
export interface RefitReadings {
  /** Closed, engine cold; not read yet when left out. */
  readonly cold?: ConnectorReading;
  /** Closed, engine warm; not read yet when left out. */
  readonly warm?: ConnectorReading;
  /**
   * The signal that the control unit had learned as closed before the work, as a fraction of the reference, 0 to 1; not known when left
   * out.
   */
  readonly learnedClosed?: Fraction;
  /** Whether the control unit has learned the closed position anew; not known when left out. */
  readonly relearned?: boolean;
  /** Whether the throttle snaps fully shut by itself, at every position of the handlebar or pedal; not tried when left out. */
  readonly snapsShut?: boolean;
}

const connectorRules: FieldRules = {
  volts: between(-1e6, 1e6, 'V'),
  reference: between(1e-3, 1e6, 'V'),
};

const readingsRules: FieldRules = {
  'cold?': connectorRules,
  'warm?': connectorRules,
  'learnedClosed?': between(0, 1),
  'relearned?': yesOrNo,
  'snapsShut?': yesOrNo,
};

/** How a check stands. */
export type RefitOutcome = 'met' | 'not-met' | 'to-do';

/** A check after refitting with its numbers: ratios of the measured reference. */
export type RefitCheck =
  | {
      /** Which check it is. */
      readonly code: 'closed-ratio' | 'closed-ratio-warm';
      /** What came of it, or that it is still to be done. */
      readonly outcome: RefitOutcome;
      /** The lowest ratio that is right, fraction of the reference. */
      readonly low: Fraction;
      /** The highest ratio that is right, fraction of the reference. */
      readonly high: Fraction;
      /** The ratio that was read, fraction of the reference; left out where it was not read. */
      readonly measured?: Fraction;
    }
  | {
      readonly code: 'relearn-closed';
      /** What came of it, or that it is still to be done. */
      readonly outcome: RefitOutcome;
      /** New closed reading less what was learned; left out where one of them isn't known. */
      readonly shift?: Fraction;
    }
  | {
      readonly code: 'snaps-shut';
      /** What came of it, or that it is still to be done. */
      readonly outcome: RefitOutcome;
    };

/**
 * The checks after a sensor was refitted, in the order in which they are made: the closed reading at the connector as
 * a ratio of the *measured* reference, the same when warm, the closed position learned anew where the machine's service
 * manual asks for it, and the throttle that snaps shut by itself.
 *
 * A ratio, because the reference of one machine is never quite another's. What wasn't done yet is `to-do`, never `met`.
 * The list is common practice without a source; the machine's service manual goes before it.
 *
 * @param closed The window for the closed reading on the vehicle, V at `reference`.
 * @param reference The voltage that the window is stated for, V; above 0.
 * @param asksRelearn Whether the service manual asks for a closed-position relearn.
 * @param readings What was found so far.
 * @throws InputError at `closed…`, `reference`, `asksRelearn` or `readings…`.
 *
 * @example
 * const closed = { low: 0.4, nominal: 0.5, high: 0.6 };
 * const checks = refitChecks(closed, 5, false, { cold: { volts: 0.49, reference: 4.9 } });
 * checks.map(({ code }) => code) // => ['closed-ratio', 'closed-ratio-warm', 'snaps-shut']
 * checks.map(({ outcome }) => outcome) // => ['met', 'to-do', 'to-do']
 */
export function refitChecks(
  closed: ReadingWindow,
  reference: Volts,
  asksRelearn: boolean,
  readings: RefitReadings = {},
): readonly RefitCheck[] {
  checkWindow(closed, 'closed');
  positive(reference, 'reference', 'V');
  yesOrNo(asksRelearn, 'asksRelearn');
  checkFields(readings, 'readings', readingsRules);
  const { relearned, snapsShut } = readings;
  const low = closed.low / reference;
  const high = closed.high / reference;
  const cold = ratioOf(readings.cold);
  const warm = ratioOf(readings.warm);
  const shift = shiftOf(warm ?? cold, readings.learnedClosed);
  return [
    closedRatio('closed-ratio', cold, low, high),
    closedRatio('closed-ratio-warm', warm, low, high),
    ...(asksRelearn
      ? [
          {
            code: 'relearn-closed' as const,
            outcome: relearned ? ('met' as const) : ('to-do' as const),
            ...(shift !== undefined && { shift }),
          },
        ]
      : []),
    {
      code: 'snaps-shut',
      outcome: snapsShut === undefined ? 'to-do' : snapsShut ? 'met' : 'not-met',
    },
  ];
}

function closedRatio(
  code: 'closed-ratio' | 'closed-ratio-warm',
  measured: Fraction | undefined,
  low: Fraction,
  high: Fraction,
): RefitCheck {
  if (measured === undefined) return { code, outcome: 'to-do', low, high };
  const met = measured >= low && measured <= high;
  return { code, outcome: met ? 'met' : 'not-met', low, high, measured };
}

function ratioOf(reading: ConnectorReading | undefined): Fraction | undefined {
  if (reading === undefined) return undefined;
  return reading.volts / reading.reference;
}

function shiftOf(measured: Fraction | undefined, learned: Fraction | undefined) {
  if (learned === undefined) return undefined;
  return measured === undefined ? undefined : measured - learned;
}
