import type { Seconds } from '../units.js';
import { extent } from './extent.js';
import type { AlignedTracks, TwoTracks } from './twoTracks.js';

/**
 * Both signals at the instants of the first: the second one, taken `skew` later than its stamps say, is read between its
 * neighbours by straight lines. Where a supply was recorded both are scaled to its largest value, and samples
 * with less than half of that are left out; so are those before or behind the other channel.
 */
export function alignTracks(tracks: TwoTracks, skew: Seconds): AlignedTracks {
  const { time, first, second, supply, travel } = tracks;
  const count = time.length;
  const most = supply ? extent(supply.map(Math.abs))[1] : 1;
  const kept = {
    time: new Float64Array(count),
    first: new Float64Array(count),
    second: new Float64Array(count),
  };
  const places = travel && new Float64Array(count);
  let size = 0;
  let next = 0;
  for (let i = 0; i < count; i++) {
    const at = time[i]! - skew;
    while (next < count && time[next]! < at) next++;
    const before = time[next]! === at ? next : next - 1;
    if (before < 0 || next === count) continue;
    const scale = supply ? most / supply[i]! : 1;
    if (!(Math.abs(scale) < 2)) continue;
    const part = next === before ? 0 : (at - time[before]!) / (time[next]! - time[before]!);
    const here = skew === 0 ? second[i]! : second[before]! * (1 - part) + second[next]! * part;
    kept.time[size] = time[i]!;
    kept.first[size] = scale * first[i]!;
    kept.second[size] = scale * here;
    if (places) places[size] = travel![i]!;
    size++;
  }
  return {
    time: kept.time.subarray(0, size),
    first: kept.first.subarray(0, size),
    second: kept.second.subarray(0, size),
    ...(places && { travel: places.subarray(0, size) }),
  };
}
