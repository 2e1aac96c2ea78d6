import { sameStop } from '../motion/limits.js';
import type { Seconds } from '../units.js';

/** A stretch of one direction between two turning points. Levels are fractions of the span above closed. */
export interface Stroke {
  readonly direction: 'opening' | 'closing';
  readonly start: Seconds;
  readonly end: Seconds;
  readonly from: number;
  readonly to: number;
}

/** A stretch in which the throttle stood still. */
export interface Rest {
  readonly start: Seconds;
  readonly end: Seconds;
  /** Mean level as a fraction of the span above closed. */
  readonly level: number;
}

/** The spring closed the throttle; what follows until `settled` may be its rebounds on the stop. */
export interface SnapClosing {
  readonly start: Seconds;
  /** First touch of the stop. */
  readonly touch: Seconds;
  readonly settled: Seconds;
  readonly from: number;
  /** Levels of the rebounds' tops above the closed level, in order. */
  readonly rebounds: readonly number[];
}

const shortestRest: Seconds = 0.06;

/** A resting level varies within half the visible departure, or this part of the span. */
const leastBand = 0.01;

export function restBand(visible: number): number {
  return Math.max(visible / 2, leastBand);
}

/** The rests: stretches of at least 0.06 s in which the level stays within a band. */
export function findRests(time: Float64Array, level: Float64Array, band: number): readonly Rest[] {
  const rests: Rest[] = [];
  let from = 0;
  let low = level[0]!;
  let high = low;
  const close = (to: number): void => {
    if (time[to]! - time[from]! < shortestRest) return;
    let sum = 0;
    for (let i = from; i <= to; i++) sum += level[i]!;
    rests.push({ start: time[from]!, end: time[to]!, level: sum / (to - from + 1) });
  };
  for (let i = 1; i < level.length; i++) {
    low = Math.min(low, level[i]!);
    high = Math.max(high, level[i]!);
    if (high - low <= band) continue;
    close(i - 1);
    from = i - 1;
    low = Math.min(level[i]!, level[from]!);
    high = Math.max(level[i]!, level[from]!);
    if (high - low > band) {
      from = i;
      low = high = level[i]!;
    }
  }
  close(level.length - 1);
  return rests;
}

/** The strokes between turning points; a reversal of less than 5 % of the span does not end a stroke. */
export function findStrokes(time: Float64Array, level: Float64Array): readonly Stroke[] {
  const turns = turningPoints(level);
  const strokes: Stroke[] = [];
  for (let i = 1; i < turns.length; i++) {
    const [a, b] = [turns[i - 1]!, turns[i]!];
    const [from, to] = [level[a]!, level[b]!];
    const direction = to > from ? 'opening' : 'closing';
    strokes.push({ direction, start: time[a]!, end: time[b]!, from, to });
  }
  return strokes;
}

function turningPoints(level: Float64Array): readonly number[] {
  const turns: number[] = [];
  let lowest = 0;
  let highest = 0;
  let direction = 0;
  for (let i = 1; i < level.length; i++) {
    if (level[i]! > level[highest]!) highest = i;
    if (level[i]! < level[lowest]!) lowest = i;
    if (direction >= 0 && level[highest]! - level[i]! > sameStop) {
      if (direction > 0 || highest > lowest)
        turns.push(...(direction === 0 ? [lowest] : []), highest);
      else turns.push(highest);
      direction = -1;
      lowest = i;
    } else if (direction <= 0 && level[i]! - level[lowest]! > sameStop) {
      turns.push(lowest);
      direction = 1;
      highest = i;
    }
  }
  if (direction !== 0) turns.push(direction > 0 ? highest : lowest);
  return turns;
}
