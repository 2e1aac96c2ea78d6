import type { Volts } from '@truesweep/core';
import { erf } from 'mathjs';
import type { RecorderPlan } from './simulator/plan.js';

/** Φ⁻¹(1 − p) by bisection on the error function of mathjs. */
function upperQuantile(probability: number): number {
  let [low, high] = [0, 8];
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2;
    if ((1 - erf(middle / Math.SQRT2)) / 2 > probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** The smallest visible departure, V, by design.md's rule from the recorder's true noise, steps and hum. */
export function visibleLimit(recorder: RecorderPlan, span: Volts, samples: number): Volts {
  const { noise, step } = recorder;
  const k = upperQuantile(0.005 / (2 * samples));
  return Math.max(
    k * Math.hypot(noise, step / Math.sqrt(12)),
    3 * step,
    0.015 * Math.abs(span),
    2.5 * humAmplitude(recorder),
  );
}

/** √2 times the effective value of the recorded hum with its harmonics. */
function humAmplitude({ hum, aperture }: RecorderPlan): Volts {
  if (!hum) return 0;
  return Math.hypot(
    ...[1, ...hum.harmonics].map((share, i) => {
      const half = Math.PI * hum.hertz * (i + 1) * aperture;
      return hum.volts * share * (half === 0 ? 1 : Math.sin(half) / half);
    }),
  );
}
