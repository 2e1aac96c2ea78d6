import type { Fraction, ReadingWindow, Volts } from '@truesweep/core';
import type { CorpusPlan } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';
import type { TrueWindows } from './trueWindows.js';

export interface TrueCapture {
  /** Whether the recording is adequate; both where that is a matter of opinion. */
  readonly adequate: readonly boolean[];
  /** Nothing but its flatness tells that a flat top is the recorder's limit and not a stop. */
  readonly clippedUnknown: boolean;
  readonly reasons: readonly string[];
}

/** The reason of a recording of partial strokes. */
export const neverOpen = 'never at the open stop';

/** How near to 5 % of span the visible limit leaves open whether the recording is fine enough. */
const openShare = 0.06;

/** Whether a recording is fine enough, whole, not clipped and without gaps where it matters. */
export function trueCapture(
  plan: CorpusPlan,
  simulated: Simulated,
  visible: Fraction,
  windows: TrueWindows,
): TrueCapture {
  const { interval, gaps } = plan.recorder;
  const reasons: string[] = [];
  let open = false;
  if (Math.floor(0.015 / interval + 1e-9) < 2) reasons.push('too slow');
  if (visible > 0.05 * (1 + openShare)) reasons.push('too coarse');
  else if (visible > 0.05 * (1 - openShare)) open = true;
  if (!simulated.motion.stages.some(({ kind, to }) => kind === 'opening' && to === 1)) {
    // Where the window is so wide that half a stroke ends in it, the recording looks like a whole one.
    if (simulated.recording.noiseFree.some((volts) => isWithin(volts, windows.open))) open = true;
    else reasons.push(neverOpen);
  }
  const clipped = plan.className === 'sound, clipped';
  const { noise, step, high } = plan.recorder;
  const clippedUnknown = clipped && !plan.told.range && noise < step;
  // A flat top inside a stop's window looks just like that stop.
  if (clippedUnknown && [windows.closed, windows.open].some((window) => isWithin(high, window)))
    open = true;
  else if (clipped) reasons.push('clipped');
  const moving = simulated.motion.stages.filter(({ kind }) => kind !== 'rest');
  const inMovement = gaps.filter((gap) =>
    moving.some((stage) => stage.start < gap.time + gap.seconds && stage.end > gap.time),
  );
  if (inMovement.some(({ seconds }) => seconds > 0.015 - interval)) open = true;
  const adequate = reasons.length > 0 ? [false] : open ? [true, false] : [true];
  return { adequate, clippedUnknown, reasons };
}

/** Inside a window, or outside by no more than would be marginal in the narrowest of them. */
function isWithin(volts: Volts, { low, high }: ReadingWindow): boolean {
  const near = (high - low) / 4;
  return volts > low - near && volts < high + near;
}
