import type { Fraction } from '../units.js';
import type { CannotShow } from './comparison.js';
import { passesOver, type RecordingLimits } from './recordingLimits.js';
import type { SpotTraits } from './spotTraits.js';

/** A departure leaves a sample at least this often where a recording counts as fast enough for it. */
const surely: Fraction = 0.9;

/**
 * Why a recording could not have shown a spot that another one showed; nothing where it could have.
 *
 * @param uncertainty Standard uncertainty of the spot's depth, fraction of the span.
 */
export function cannotShow(
  { kind, travel, depth, seconds }: SpotTraits,
  uncertainty: Fraction,
  limits: RecordingLimits,
): CannotShow | undefined {
  const hidden = limits.blind.some(([from, to]) => from <= travel && travel <= to);
  if (kind === 'dropout' && hidden) return 'blind';
  if (passesOver(travel, limits) === 0) return 'not-passed';
  if (depth - 2 * Math.hypot(uncertainty, limits.noise) < limits.visible) return 'too-shallow';
  return kind !== 'step' && seconds < surely * limits.interval ? 'too-short' : undefined;
}
