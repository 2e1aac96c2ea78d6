import { bisection } from '../bisection.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, finiteBetween } from '../guard.js';
import type { Fraction, Seconds } from '../units.js';

/** A needle's movement as a second-order system. */
export interface NeedleMovement {
  /** Undamped natural frequency, rad/s, above 0. */
  readonly naturalFrequency: number;
  /** Damping ratio, a number from 0 to 1000: below 1 it overshoots, at 1 it is critically damped. */
  readonly damping: number;
}

/** Where a needle stands and how fast it moves, in units of its deflection and in units per second. */
export interface NeedleState {
  /** Where it stands, in units of its deflection; any finite number. */
  readonly deflection: number;
  /** How fast it moves, in those units per second; any finite number. */
  readonly speed: number;
}

export const movementRules: FieldRules = {
  naturalFrequency: between(1e-9, 1e9, 'rad/s'),
  damping: between(0, 1e3),
};

const most = 1e12;
const stateRules: FieldRules = { deflection: between(-most, most), speed: between(-most, most) };

/**
 * The way of a needle after a time, for an input that changes at a constant rate meanwhile: the exact solution of
 * y″ + 2ζω₀y′ + ω₀²y = ω₀²u, whatever the damping.
 *
 * @param state At the beginning.
 * @param input The deflection that the input stands for, at the beginning and at the end.
 * @param seconds How long, 0 s or more.
 *
 * @example
 * const movement = { naturalFrequency: 10, damping: 1 };
 * const rest = { deflection: 0, speed: 0 };
 * moveNeedle(movement, rest, [1, 1], 0.1).deflection.toFixed(6) // => '0.264241'
 */
export function moveNeedle(
  movement: NeedleMovement,
  state: NeedleState,
  ramp: readonly [from: number, to: number],
  seconds: Seconds,
): NeedleState {
  checkFields(movement, 'movement', movementRules);
  checkFields(state, 'state', stateRules);
  listOf(between(-most, most), 2, 2)(ramp, 'ramp');
  finiteBetween(seconds, 0, most, 'seconds', 's');
  return movedNeedle(movement, state, ramp, seconds);
}

/** As {@link moveNeedle}, of what was checked already. */
function movedNeedle(
  movement: NeedleMovement,
  { deflection, speed }: NeedleState,
  [from, to]: readonly [from: number, to: number],
  seconds: Seconds,
): NeedleState {
  if (seconds === 0) return { deflection, speed };
  const { lag, kept, gained, slowed, pulled } = needleStep(movement, seconds);
  const slope = (to - from) / seconds;
  const offset = deflection - (from - lag * slope);
  const drift = speed - slope;
  return {
    deflection: to - lag * slope + offset * kept + drift * gained,
    speed: slope + drift * slowed - offset * pulled,
  };
}

/** What a stretch of time makes of a needle's offset from the ramp that it follows, and of its speed against it. */
export interface NeedleStep {
  readonly seconds: Seconds;
  /** By how much a needle lags behind a ramp, s. */
  readonly lag: Seconds;
  /** Of an offset what is left, and what speed it loses; of a speed what way it makes, and what is left. */
  readonly kept: number;
  readonly pulled: number;
  readonly gained: number;
  readonly slowed: number;
}

/** The coefficients of {@link moveNeedle} for a stretch of time. */
export function needleStep(
  { naturalFrequency: w, damping }: NeedleMovement,
  seconds: Seconds,
): NeedleStep {
  const [even, odd] = freely(w, damping, seconds);
  return {
    seconds,
    lag: (2 * damping) / w,
    kept: even + damping * w * odd,
    pulled: w * w * odd,
    gained: odd,
    slowed: even - damping * w * odd,
  };
}

/** e^(−ζω₀t)·cos(ωt) and e^(−ζω₀t)·sin(ωt)/ω, with their like beyond critical damping. */
function freely(w: number, damping: number, t: Seconds): readonly [even: number, odd: number] {
  const squared = 1 - damping * damping;
  if (squared > 0) {
    const own = w * Math.sqrt(squared);
    const decay = Math.exp(-damping * w * t);
    return [decay * Math.cos(own * t), (decay * Math.sin(own * t)) / own];
  }
  const own = w * Math.sqrt(-squared);
  const slow = Math.exp((own - damping * w) * t);
  if (own === 0) return [slow, slow * t];
  // The difference of the slow and the fast part, without cancellation near critical damping.
  const gap = Math.expm1(-2 * own * t);
  return [slow * (1 + gap / 2), (-slow * gap) / (2 * own)];
}

/**
 * The movement that reaches 99 % of a step at a time and then overshoots by a given part: the dynamics by which IEC 60268-17 describes
 * volume indicators (300 ms, 1 to 1.5 %), which are no multimeter's.
 *
 * @param seconds When the needle first stands at 99 % of the step, above 0 s.
 * @param overshoot Above the step, from 0.01 % to 50 % of it.
 *
 * @example
 * const { naturalFrequency, damping } = movementOf(0.3, 0.0125);
 * [naturalFrequency.toFixed(6), damping.toFixed(6)] // => ['13.511913', '0.812717']
 */
export function movementOf(seconds: Seconds, overshoot: Fraction): NeedleMovement {
  finiteBetween(seconds, 1e-9, 1e9, 'seconds', 's');
  const depth = Math.log(finiteBetween(overshoot, 1e-4, 0.5, 'overshoot'));
  const damping = -depth / Math.hypot(Math.PI, depth);
  const rest = { deflection: 0, speed: 0 };
  const stands = (w: number): number =>
    movedNeedle({ naturalFrequency: w, damping }, rest, [1, 1], seconds).deflection;
  // Up to the first crossing of the step itself the needle only rises.
  const crossing = (Math.PI - Math.acos(damping)) / Math.sqrt(1 - damping ** 2) / seconds;
  const [, naturalFrequency] = bisection((w) => stands(w) < 0.99, 0, crossing);
  return { naturalFrequency, damping };
}
