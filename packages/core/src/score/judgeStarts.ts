import { startAcceleration } from '../motion/limits.js';
import { firstAt } from '../movement/firstAt.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import type { Stroke } from '../movement/movement.js';
import type { Seconds } from '../units.js';
import type { Check } from './score.js';

/** A stroke over this much of the span is looked at, one that is sampled so often over its beginning. */
export const longStroke = 0.5;
const fewestSamples = 4;
/** Its speed is taken over parts of it so long, from this one on beyond what is visible, the next, and one behind its middle. */
const part = 0.12;
const begin = 0.03;
const behind = 0.55;
/** It gains no speed where the first part takes no longer than this many times the next, and loses it where that behind takes so much longer. */
const gains = 1.1;
const loses = 1.6;
/** It begins at rest where the throttle stood for so long before. */
const stood: Seconds = 0.03;
/** More of the strokes than this, of two or more either way, are no chance. */
const most = 0.5;
const fewestStrokes = 2;
/** A slower hand is uneven, spans per second. */
const uneven = 1;

/**
 * Whether what was recorded started as a throttle does: it has mass, so that a hand or a spring moves it ever faster from standstill on.
 * Most strokes, opening and closing, that begin at full speed are those of no throttle, or of a recorder that hid how they began.
 */
export function judgeStarts(
  time: Float64Array,
  path: Float64Array,
  { strokes }: Pick<Movement, 'strokes'>,
  { visible }: Pick<Levels, 'visible'>,
): Check {
  const share = (direction: Stroke['direction']): number => {
    const long = strokes.filter(
      (one) => one.direction === direction && Math.abs(one.to - one.from) >= longStroke,
    );
    return (
      long.filter((one) => startsAtOnce(time, path, one, visible)).length /
      Math.max(fewestStrokes, long.length)
    );
  };
  const measured = Math.min(share('opening'), share('closing'));
  return {
    check: 'starts',
    outcome: measured > most ? 'cannot-tell' : 'conforms',
    unit: '1',
    measured,
    highLimit: most,
    margin: most - measured,
    limitFrom: 'criteria',
  };
}

/** Whether a stroke begins at a speed that it doesn't gain on, and that no hand reaches so soon, or that it loses all along. */
export function startsAtOnce(
  time: Float64Array,
  path: Float64Array,
  { start, end, from, to }: Stroke,
  visible: number,
): boolean {
  const height = to - from;
  let bin = firstAt(time, start);
  /** When the stroke got so far. */
  const when = (far: number): Seconds => {
    const beyond = (i: number): number => (path[i]! - from) / height - far;
    while (bin + 1 < time.length && time[bin]! < end && beyond(bin) < 0) bin++;
    const [after, before] = [beyond(bin), beyond(Math.max(0, bin - 1))];
    const back = after > before ? after / (after - before) : 0;
    return bin > 0
      ? time[bin]! - Math.max(0, Math.min(1, back)) * (time[bin]! - time[bin - 1]!)
      : time[0]!;
  };
  const least = begin + visible;
  const one = when(least);
  const first = bin;
  const two = when(least + part);
  const three = when(least + 2 * part);
  if (bin - first < fewestSamples) return false;
  // A stroke that the recording's beginning cuts may have begun before.
  if (one - time[0]! <= stood) return false;
  for (let i = first - 1; i >= 0 && one - time[i]! <= stood; i--)
    if (Math.abs(path[i]! - from) > least * Math.abs(height)) return false;
  const four = when(behind);
  const five = when(behind + part);
  const takes = two - one;
  const speed = (part * Math.abs(height)) / takes;
  if (takes > gains * (three - two)) return false;
  const isLosing = speed >= uneven && five - four >= loses * takes;
  return isLosing || speed ** 2 >= 2 * startAcceleration * least;
}
