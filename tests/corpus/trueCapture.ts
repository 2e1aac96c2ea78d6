import type { Fraction } from '@truesweep/core';
import type { CorpusPlan } from './simulator/plan.js';
import type { Simulated } from './simulator/simulate.js';

export interface TrueCapture {
  /** Whether the recording is adequate; both where that is a matter of opinion. */
  readonly adequate: readonly boolean[];
  readonly clipped: boolean;
  readonly reasons: readonly string[];
}

/** How near to 5 % of span the visible limit leaves open whether the recording is fine enough. */
const openShare = 0.12;

/** Whether a recording is fine enough, whole, not clipped and without gaps where it matters. */
export function trueCapture(
  plan: CorpusPlan,
  simulated: Simulated,
  visible: Fraction,
): TrueCapture {
  const { interval, gaps } = plan.recorder;
  const reasons: string[] = [];
  let open = false;
  if (Math.floor(0.015 / interval + 1e-9) < 2) reasons.push('too slow');
  if (visible > 0.05 * (1 + openShare)) reasons.push('too coarse');
  else if (visible > 0.05 * (1 - openShare)) open = true;
  if (!simulated.motion.stages.some(({ kind, to }) => kind === 'opening' && to === 1))
    reasons.push('never at the open stop');
  const clipped = plan.className === 'sound, clipped';
  if (clipped) reasons.push('clipped');
  const moving = simulated.motion.stages.filter(({ kind }) => kind !== 'rest');
  const inMovement = gaps.filter((gap) =>
    moving.some((stage) => stage.start < gap.time + gap.seconds && stage.end > gap.time),
  );
  if (inMovement.some(({ seconds }) => seconds > 0.015 - interval)) open = true;
  const adequate = reasons.length > 0 ? [false] : open ? [true, false] : [true];
  return { adequate, clipped, reasons };
}
