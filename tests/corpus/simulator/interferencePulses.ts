import type { Fault } from './plan.js';

/** Adds bursts of interference at the recorder's input: one-sided decaying pulses or damped oscillations. */
export function addInterference(
  volts: Float64Array,
  step: number,
  { bursts }: Extract<Fault, { kind: 'interference' }>,
): void {
  for (const { time, volts: peak, hertz, decay } of bursts) {
    const first = Math.ceil(time / step);
    const last = Math.min(volts.length - 1, Math.floor((time + 6 * decay) / step));
    for (let i = first; i <= last; i++) {
      const since = i * step - time;
      volts[i]! += peak * Math.exp(-since / decay) * Math.cos(2 * Math.PI * hertz * since);
    }
  }
}
