import { firstAt } from '../movement/firstAt.js';
import type { Levels } from '../movement/levels.js';
import type { Seconds } from '../units.js';

/** The throttle's movement is taken over this time before and after a jump. */
const beside: Seconds = 0.03;

/** How far the throttle moved just before and just after a departure, together; positive toward open. */
export function movementBeside({ time, mean }: Levels, from: number, to: number): number {
  const before = mean[from]! - mean[firstAt(time, time[from]! - beside)]!;
  const after = mean[firstAt(time, time[to]! + beside)]! - mean[to]!;
  return before + after;
}
