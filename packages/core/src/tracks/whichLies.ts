import { upperQuantile } from '../statistics/normalDistribution.js';
import type { Seconds, Volts } from '../units.js';
import type { AlignedTracks, Liar } from './twoTracks.js';

/** A hand bends a signal by nothing much within this time, a contact opens within it. */
const abrupt: Seconds = 4e-3;
/** Chance that noise alone looks like an abrupt departure. */
const falseDepartures = 0.005;

/**
 * Which of two tracks departed where they begin or cease to disagree: the one that bends abruptly, by half the limit and
 * more than noise can, while the other bends by no more than half as much. Bends are second differences over 4 ms and
 * less (two samples either way at least), in which steady movement cancels.
 *
 * @param from First and last sample of the disagreement.
 * @param gain What a volt of the first track is in volts of the second.
 */
export function whichLies(
  tracks: AlignedTracks,
  [from, to]: readonly [number, number],
  gain: number,
  limit: Volts,
  scatter: Volts,
): Liar {
  const { time, first, second } = tracks;
  const interval = (time[time.length - 1]! - time[0]!) / Math.max(1, time.length - 1);
  const reach = Math.max(2, Math.min(time.length, Math.floor(abrupt / 2 / interval)));
  const edges = [from, to + 1];
  const bend = (values: Float64Array): Volts => largestBend(values, edges, reach);
  const [one, other] = [Math.abs(gain) * bend(first), bend(second)];
  // At 2 edges of 2 tracks each lag is tried at twice as many places and a few more; all lags together reach twice.
  const chances = 20 * reach;
  const byNoise = Math.sqrt(6) * scatter * upperQuantile(falseDepartures / chances);
  const larger = Math.max(one, other);
  if (larger < Math.max(limit / 2, byNoise) || Math.min(one, other) > larger / 2)
    return 'undecided';
  return one > other ? 'first' : 'second';
}

/** The largest second difference near the edges, over lags of 1, 2, 4 … samples up to the reach. */
function largestBend(values: Float64Array, edges: readonly number[], reach: number): number {
  let largest = 0;
  for (const edge of edges) {
    for (let lag = 1; lag <= reach; lag *= 2) {
      const last = Math.min(values.length - 1 - lag, edge + lag);
      for (let i = Math.max(lag, edge - lag - 1); i <= last; i++) {
        const bend = Math.abs(values[i - lag]! - 2 * values[i]! + values[i + lag]!);
        if (bend > largest) largest = bend;
      }
    }
  }
  return largest;
}
