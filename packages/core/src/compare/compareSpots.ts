import type { Fraction } from '../units.js';
import { cannotShow } from './cannotShow.js';
import { chanceAllMissed } from './chanceAllMissed.js';
import type { SpotChange, SpotState } from './comparison.js';
import type { SpotMatch } from './matchSpots.js';
import { passesOver, type RecordingLimits } from './recordingLimits.js';
import type { SpotTraits } from './spotTraits.js';

/** What became of one spot. */
export function compareSpots(
  { before, after }: SpotMatch,
  limits: { readonly before: RecordingLimits; readonly after: RecordingLimits },
): SpotChange {
  const scatter = pooledVariance([before?.depths ?? [], after?.depths ?? []]);
  const earlier = before && spotState(before, scatter, limits.before);
  const later = after && spotState(after, scatter, limits.after);
  const states = { ...(earlier && { before: earlier }), ...(later && { after: later }) };
  if (earlier && later) {
    const change = later.depth - earlier.depth;
    const uncertainty = Math.hypot(earlier.uncertainty, later.uncertainty);
    const least = Math.max(2 * uncertainty, limits.before.visible, limits.after.visible);
    const outcome = Math.abs(change) <= least ? 'stayed' : change > 0 ? 'grew' : 'shrank';
    return { outcome, kind: before.kind, ...states, change, uncertainty };
  }
  const shown = (before ?? after)!;
  const other = before ? limits.after : limits.before;
  const because = cannotShow(shown, (earlier ?? later)!.uncertainty, other);
  if (because) return { outcome: 'could-not-show', kind: shown.kind, ...states, because };
  return {
    outcome: before ? 'vanished' : 'appeared',
    kind: shown.kind,
    ...states,
    missedByChance: chanceAllMissed(shown.seen, shown.passes, passesOver(shown.travel, other)),
  };
}

/** The depth's uncertainty: the scatter from pass to pass or, where that is more, the noise, in the mean of all. */
function spotState(
  { spot, travel, passes, seen, depth, depths }: SpotTraits,
  scatter: Fraction,
  { noise }: RecordingLimits,
): SpotState {
  const uncertainty = Math.sqrt(Math.max(scatter, noise * noise) / depths.length);
  return { spot, travel, passes, seen, depth, uncertainty };
}

/** Variance of depths around the mean of their own recording; 0 where no recording has two of them. */
function pooledVariance(recordings: readonly (readonly Fraction[])[]): number {
  let squares = 0;
  let degrees = 0;
  for (const depths of recordings) {
    if (depths.length < 2) continue;
    const mean = depths.reduce((sum, depth) => sum + depth, 0) / depths.length;
    squares += depths.reduce((sum, depth) => sum + (depth - mean) ** 2, 0);
    degrees += depths.length - 1;
  }
  return degrees > 0 ? squares / degrees : 0;
}
