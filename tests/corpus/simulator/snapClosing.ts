import type { Move } from './plan.js';

type Snap = Extract<Move, { kind: 'snap' }>;

const substep = 5e-6;

/**
 * Lets a released throttle fall onto its closed stop, writing its travel from an index on: a preloaded spring and drag until the
 * stop, then the stop's own stiff spring and damper, which only push. Returns the index after which it lies still.
 */
export function snapClosing(
  travel: Float64Array,
  from: number,
  to: number,
  step: number,
  snap: Snap,
): number {
  const { acceleration, stiffening, drag, stopHertz, stopDamping, closedAt } = snap;
  const omega = 2 * Math.PI * stopHertz;
  const stiff = omega * omega;
  const damp = 2 * stopDamping * omega;
  const substeps = Math.max(1, Math.round(step / substep));
  const dt = step / substeps;
  let x = travel[from]! - closedAt;
  let v = 0;
  let moving = from;
  for (let i = from; i < to; i++) {
    travel[i] = x + closedAt;
    if (Math.abs(x) > 0.003) moving = i;
    for (let s = 0; s < substeps; s++) {
      const push = x < 0 ? Math.max(0, -stiff * x - damp * v) : 0;
      v += (push - acceleration * (1 + stiffening * x) - drag * v) * dt;
      x += v * dt;
    }
  }
  return moving;
}
