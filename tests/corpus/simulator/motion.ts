import type { Seconds, Travel } from '@truesweep/core';
import { filteredNoise } from './filteredNoise.js';
import type { Hand, Move, Submovement } from './plan.js';
import type { RandomStream } from './randomStream.js';
import { snapClosing } from './snapClosing.js';

/** What the throttle truly did in one stretch of time. */
export interface Stage {
  readonly kind: 'rest' | 'opening' | 'closing' | 'snap';
  readonly start: Seconds;
  readonly end: Seconds;
  readonly from: Travel;
  readonly to: Travel;
  /** How a rest was reached. */
  readonly reached: 'start' | 'hand' | 'spring';
}

export interface Motion {
  readonly step: Seconds;
  readonly travel: Float64Array;
  readonly stages: readonly Stage[];
}

const coarse = 1e-3;
const closedPress = 0.06;
const longestSnap = 0.4;

/** The throttle's travel on a fine grid: minimum-jerk strokes (T. Flash and N. Hogan, 1985) with hand noise and tremor, and snaps. */
export function motion(
  moves: readonly Move[],
  hand: Hand,
  step: Seconds,
  random: RandomStream,
): Motion {
  const duration = durationOf(moves);
  const points = Math.ceil(duration / coarse) + 2;
  const target = new Float64Array(points);
  const stop = new Float64Array(points);
  const stages: Stage[] = [];
  const snaps: {
    readonly stage: number;
    readonly start: Seconds;
    readonly snap: Extract<Move, { kind: 'snap' }>;
  }[] = [];
  let now = 0;
  let at = 0;
  let closedAt = 0;
  let reached: Stage['reached'] = 'start';
  let aim = -closedPress;
  for (const move of moves) {
    const first = Math.round(now / coarse);
    const seconds = move.kind === 'snap' ? longestSnap : move.seconds;
    const last = Math.min(points - 1, Math.round((now + seconds) / coarse));
    const end = now + seconds;
    if (move.kind === 'rest') {
      target.fill(aim, first, last + 1);
      stages.push({ kind: 'rest', start: now, end, from: at, to: at, reached });
    } else if (move.kind === 'stroke') {
      const next = move.to === 0 ? -closedPress : move.to === 1 ? 1 + hand.press : move.to;
      for (let i = first; i <= last; i++)
        target[i] = aim + (next - aim) * shareDone(move.parts, i * coarse - now);
      const kind = move.to > at ? 'opening' : 'closing';
      if (kind === 'closing') closedAt = move.closedAt;
      const to = move.to === 0 ? closedAt : move.to;
      stages.push({ kind, start: now, end, from: at, to, reached: 'hand' });
      aim = next;
      at = to;
      reached = 'hand';
    } else {
      aim = -closedPress;
      closedAt = move.closedAt;
      target.fill(aim, first + 1, last + 1);
      snaps.push({ stage: stages.length, start: first * coarse, snap: move });
      stages.push({ kind: 'snap', start: now, end, from: at, to: closedAt, reached: 'spring' });
      at = closedAt;
      reached = 'spring';
    }
    stop.fill(closedAt, first, points);
    now = end;
  }
  target.fill(aim, Math.round(now / coarse), points);
  const noise = filteredNoise(random, points, coarse, hand.hertz, 0.75);
  const tremor = filteredNoise(random, points, coarse, hand.tremorHertz, 0.06);
  for (let i = 0; i < points; i++) {
    const raw = target[i]! + hand.noise * noise[i]! + hand.tremor * tremor[i]!;
    target[i] = Math.min(1, Math.max(stop[i]!, raw));
  }
  const travel = refined(target, Math.floor(duration / step) + 1, step);
  for (const { stage, start, snap } of snaps) {
    const from = Math.round(start / step);
    const to = Math.min(travel.length, Math.round((start + longestSnap) / step));
    const settled = snapClosing(travel, from, to, step, snap) * step;
    stages[stage] = { ...stages[stage]!, end: settled };
    const next = stages[stage + 1];
    if (next?.kind === 'rest') stages[stage + 1] = { ...next, start: settled };
  }
  return { step, travel, stages };
}

/** How long the moves take together. */
export function durationOf(moves: readonly Move[]): Seconds {
  return moves.reduce((sum, move) => sum + (move.kind === 'snap' ? longestSnap : move.seconds), 0);
}

function shareDone(parts: readonly Submovement[], elapsed: Seconds): number {
  let share = 0;
  for (const part of parts) {
    const at = Math.min(1, Math.max(0, (elapsed - part.start) / part.seconds));
    share += part.share * at * at * at * (10 + at * (6 * at - 15));
  }
  return share;
}

/** Straight lines between the points of the coarse grid. */
function refined(coarsely: Float64Array, length: number, step: Seconds): Float64Array {
  const finely = new Float64Array(length);
  for (let i = 0; i < length; i++) {
    const at = (i * step) / coarse;
    const below = Math.min(coarsely.length - 2, Math.floor(at));
    finely[i] = coarsely[below]! + (at - below) * (coarsely[below + 1]! - coarsely[below]!);
  }
  return finely;
}
