import type { SimulatedSweep, SweepPlan } from '@truesweep/core';
import { erf } from 'mathjs';

/** Φ⁻¹(1 − p) by bisection on the error function of mathjs. */
function quantile(probability: number): number {
  let [low, high] = [0, 8];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if ((1 - erf(middle / Math.SQRT2)) / 2 > probability) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export interface Truth {
  /** The smallest visible departure from the simulation's true noise, V. */
  readonly visible: number;
  /** Depth of the deepest recorded passage of the fault over the visible departure; 0 without one. */
  readonly visibility: number;
  /** Whether a dropout of 15 ms leaves two samples and departures of 5 % of the span are visible. */
  readonly fineEnough: boolean;
}

/** What is true of a simulated sweep, by the definitions of a visible departure and of a fine enough recording. */
export function truthOf(plan: SweepPlan, simulated: SimulatedSweep): Truth {
  const { noise = 0, resolution = 0, hum, interval } = plan.recorder;
  const { sound, events } = simulated;
  const samples = sound.length;
  const span = Math.max(...bounds(sound)) - Math.min(...bounds(sound));
  const k = quantile(0.005 / (2 * samples));
  const visible = Math.max(
    k * Math.hypot(noise, resolution / Math.sqrt(12)),
    3 * resolution,
    0.015 * span,
    2.5 * (hum?.volts ?? 0),
  );
  const deepest = events.reduce((most, { depth }) => Math.max(most, depth), 0);
  return {
    visible,
    visibility: deepest / visible,
    fineEnough: Math.floor(0.015 / interval + 1e-9) >= 2 && visible <= 0.05 * span,
  };
}

function bounds(values: Float64Array): [number, number] {
  let [low, high] = [values[0]!, values[0]!];
  for (const value of values) {
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return [low, high];
}
