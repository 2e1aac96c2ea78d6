import type { Seconds } from '../units.js';

/**
 * A host that asks its recorder ten times a second leaves no more than this between stamps; what paused for longer, and for so many
 * intervals, ticks on from anywhere. Common practice, no source.
 */
export const asked: Seconds = 0.1;
const pauseIntervals = 8;

/** First row of each stretch that was recorded without a pause, and the row after its last. */
export function stretchesOf(time: Float64Array): readonly (readonly [number, number])[] {
  const usual = (time[time.length - 1]! - time[0]!) / (time.length - 1);
  const longest = Math.max(asked, pauseIntervals * usual);
  const stretches: [number, number][] = [];
  let from = 0;
  for (let i = 1; i <= time.length; i++) {
    if (i < time.length && time[i]! - time[i - 1]! <= longest) continue;
    stretches.push([from, i]);
    from = i;
  }
  return stretches;
}
