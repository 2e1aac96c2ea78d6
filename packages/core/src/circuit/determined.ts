/** Why a quantity of a circuit has no single finite value. */
export type IndeterminateReason =
  /** Ideal sources are joined through 0 Ω and disagree: the current grows without limit. */
  | 'sources-joined-without-resistance'
  /** Some other part of the same circuit has no solution, so this quantity has none either. */
  | 'circuit-without-solution'
  /** Parts of 0 Ω stand in parallel: how they share the current depends on what the model leaves out. */
  | 'shared-between-zero-ohm-paths'
  /** Nothing connects this node to the common of the source. */
  | 'no-path-to-common';

/** The answer where a circuit has no solution (`unbounded`), no unique one (`undetermined`) or no tie to common (`floating`). */
export interface Indeterminate {
  /** Which of the three it is. */
  readonly kind: 'unbounded' | 'floating' | 'undetermined';
  /** Why, as a code. */
  readonly reason: IndeterminateReason;
}

/** A finite number, or the reason why there is none. Never NaN, never infinite. */
export type Determined<Unit extends number> = Unit | Indeterminate;

/**
 * Tells whether a quantity of a circuit has a single finite value.
 *
 * @param value The quantity, in whatever unit.
 * @returns `true` for a number, `false` for an {@link Indeterminate}.
 *
 * @example
 * isDetermined(2.5) // => true
 * isDetermined({ kind: 'floating', reason: 'no-path-to-common' }) // => false
 */
export function isDetermined<Unit extends number>(value: Determined<Unit>): value is Unit {
  return typeof value === 'number';
}
