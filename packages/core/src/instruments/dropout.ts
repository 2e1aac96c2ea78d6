import type { Seconds, Volts } from '../units.js';

/** A dropout as an instrument meets it: the signal leaves its level for the rest level and comes back, each as capacitance lets it. */
export interface ModelledDropout {
  /** How long the contact is open, s, 0 or more. */
  readonly seconds: Seconds;
  /** Where the signal stands without it, V, from −10⁹ to 10⁹. */
  readonly from: Volts;
  /** Where the signal goes, V, from −10⁹ to 10⁹, other than `from`. */
  readonly to: Volts;
  /** Time constant of leaving, s, 0 or more; 0 when left out. */
  readonly fall?: Seconds;
  /** Time constant of coming back, s, 0 or more; 0 when left out. */
  readonly recovery?: Seconds;
  /** How fast the sound signal moves meanwhile, V/s, without sign, 0 or more; 0 (at rest) when left out. */
  readonly slope?: number;
  /** The lowest and highest sound reading of the sweep, V, below and above `from`; those of a signal at rest when left out. */
  readonly sound?: { readonly low: Volts; readonly high: Volts };
}

/**
 * How long a dropout departs by at least a part of its depth: 0 where it never does. It leaves as 1 − e^(−t/τ₁) and, from what it reached,
 * comes back as e^(−t/τ₂).
 *
 * @param share The part, above 0 and up to 1.
 */
export function timeBeyond(
  { seconds, fall = 0, recovery = 0 }: ModelledDropout,
  share: number,
): Seconds {
  if (share > 1 || seconds === 0) return 0;
  const reached = fall === 0 ? 1 : -Math.expm1(-seconds / fall);
  if (reached < share) return 0;
  const reaching = fall === 0 ? 0 : -fall * Math.log1p(-share);
  return seconds - reaching + recovery * Math.log(reached / share);
}

/** The part of its depth that a dropout's departure reaches at most. */
export function deepest({ seconds, fall = 0 }: ModelledDropout): number {
  return fall === 0 ? (seconds > 0 ? 1 : 0) : -Math.expm1(-seconds / fall);
}
