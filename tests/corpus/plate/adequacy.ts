import type { Fraction } from '@truesweep/core';
import { falling, type Motion } from './move.js';
import type { RecorderSet } from './recorder.js';

/** A part of the motion's grid. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Whether the recording could show what it must; nothing where that is a matter of opinion. */
export function isAdequate(
  set: RecorderSet,
  visible: Fraction,
  motion: Motion,
  kept: Stretch,
): boolean | undefined {
  const judged = [isFine(set), among(visible), isWhole(set, motion, kept)];
  if (judged.includes(false)) return false;
  return judged.includes(undefined) ? undefined : true;
}

const among = (visible: Fraction): boolean | undefined =>
  visible > 0.053 ? false : visible > 0.047 ? undefined : true;

/** A dropout of 15 ms leaves two samples; an average needs its whole interval, and jitter widens some. */
function isFine({ interval, averaged, stamps }: RecorderSet): boolean | undefined {
  const samples = Math.floor(0.015 / interval + 1e-9);
  if (samples < 2) return false;
  const isUnsure = samples < 4 && (averaged || stamps !== 'even');
  return isUnsure ? undefined : true;
}

/** An opening from a closed rest to a rest at the open stop, and a closing back, slow enough to be seen. */
function isWhole(
  set: RecorderSet,
  { step, travel, state, rests }: Motion,
  kept: Stretch,
): boolean | undefined {
  const least = Math.max(0.1, 8 * set.interval) / step;
  const lain = rests
    .map(({ at, from, to }) => ({ at, from: Math.max(from, kept.from), to: Math.min(to, kept.to) }))
    .filter(({ from, to }) => to - from >= least);
  const sides = { opening: false, closing: false };
  for (const [i, rest] of lain.entries()) {
    const next = lain[i + 1];
    if (next && next.at !== rest.at && isSlow(set, step, state, rest.to, next.from))
      sides[rest.at === 'closed' ? 'opening' : 'closing'] = true;
  }
  if (sides.opening && sides.closing) return true;
  let [high, low] = [-1, 2];
  for (let i = kept.from; i < kept.to; i++) {
    high = Math.max(high, travel[i]!);
    low = Math.min(low, travel[i]!);
  }
  return high < 0.93 || low > 0.07 ? false : undefined;
}

/** Shut by the spring counts where it left a dozen samples. */
function isSlow(
  set: RecorderSet,
  step: number,
  state: Uint8Array,
  from: number,
  to: number,
): boolean {
  let fallen = 0;
  for (let i = from; i < to; i++) if (state[i]! & falling) fallen++;
  return fallen === 0 || (fallen * step) / set.interval >= 12;
}
