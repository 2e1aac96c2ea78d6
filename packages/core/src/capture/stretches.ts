import { longestAsked } from './limits.js';

/** First row of each stretch that was recorded without a pause, and the row after its last. */
export function stretchesOf(time: Float64Array): readonly (readonly [number, number])[] {
  const usual = (time[time.length - 1]! - time[0]!) / (time.length - 1);
  const longest = longestAsked(usual);
  const stretches: [number, number][] = [];
  let from = 0;
  for (let i = 1; i <= time.length; i++) {
    if (i < time.length && time[i]! - time[i - 1]! <= longest) continue;
    stretches.push([from, i]);
    from = i;
  }
  return stretches;
}
