import type {
  Cause,
  Expectation,
  Finding,
  Fraction,
  Recorder,
  Seconds,
  Sweep,
  Travel,
  Verdict,
} from '@truesweep/core';

/** A departure that a fault made, as far as it was recorded. */
export interface WorldEvent {
  readonly kinds: readonly Finding['kind'][];
  readonly start: Seconds;
  readonly end: Seconds;
  readonly from: Travel;
  readonly to: Travel;
  /** The most of |faulty − sound| over the samples that were recorded (of a step: the jump), over the visible departure. */
  readonly ratio: number;
  /** Within a fall by the spring or its rebounds. */
  readonly fast: boolean;
  /** Travel per second when it was crossed. */
  readonly speed: number;
}

/** A recording of a modelled world, with what is true of it. */
export interface WorldCase {
  readonly seed: number;
  readonly family: string;
  /** What was varied, by name: recorder, stamps, stroke, noise, bits, habit, … */
  readonly factors: Readonly<Record<string, string>>;
  /** Whether the sensor and its hook-up are. */
  readonly sound: boolean;
  /** Whether the recording could show what it must; absent where that is a matter of opinion. */
  readonly adequate?: boolean;
  readonly expected: Expectation;
  readonly told: Recorder;
  readonly sweep: Sweep;
  /** What a fair judge may say. */
  readonly verdicts: readonly Verdict[];
  /** The causes that count as right; absent where it can't be decided. */
  readonly causes?: readonly Cause[];
  readonly events: readonly WorldEvent[];
  /** Normal rebounds: nothing in there is a fault. */
  readonly bounces: readonly { readonly start: Seconds; readonly end: Seconds }[];
  /** The smallest visible departure over the span. */
  readonly visible: Fraction;
}
