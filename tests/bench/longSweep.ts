import { type Circuit, expectation, type SimulatedMovement, simulateSweep } from '@truesweep/core';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 4000, closedPosition: 0.12, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};

export const expected = expectation(circuit, {
  source: 0.01,
  track: 0.2,
  closedPosition: 0.02,
  openPosition: 0.03,
});

/** One opening and closing: 5 s. */
const byHand: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 0.5 },
  { kind: 'turn', to: 1, seconds: 1.8, unevenness: 0.008 },
  { kind: 'hold', seconds: 0.5 },
  { kind: 'turn', to: 0, seconds: 1.7, unevenness: 0.008 },
  { kind: 'hold', seconds: 0.5 },
];
const bySpring: readonly SimulatedMovement[] = [
  { kind: 'hold', seconds: 1 },
  { kind: 'turn', to: 1, seconds: 2.5, unevenness: 0.008 },
  { kind: 'hold', seconds: 0.5 },
  { kind: 'snap', seconds: 0.035, restitution: 0.3 },
  { kind: 'hold', seconds: 0.9 },
];

/** Simulated this finely; between these points the wiper moves evenly. */
const interval = 1e-4;
const step = 5 / 4096;

/**
 * A recording of so many seconds, at 12 bits with noise, of a sensor with a few dropouts. Ten seconds are simulated at
 * 10 kS/s; it is drawn out from them again and again, so that making it takes no memory to speak of beyond its own.
 */
export function longSweep(
  samples: number,
  seconds = 20,
): { readonly time: Float64Array; readonly signal: Float64Array } {
  const { sound, travel } = simulateSweep({
    circuit,
    movements: [...byHand, ...bySpring],
    recorder: { interval },
    seed: 5,
  });
  const time = new Float64Array(samples);
  const signal = new Float64Array(samples);
  let state = 1;
  const uniform = () => {
    state = (Math.imul(state, 1664525) + 1013904223) | 0;
    return state / 2 ** 32;
  };
  const last = sound.length - 1;
  for (let i = 0; i < samples; i++) {
    const at = (i / samples) * seconds;
    const place = Math.min(last - 1e-6, (at % 10) / interval);
    const left = Math.floor(place);
    const volts = sound[left]! + (sound[left + 1]! - sound[left]!) * (place - left);
    const lifted = at % 10 < 5 && Math.abs(travel[left]! - 0.3) < 0.006;
    const noise = 0.006 * (uniform() + uniform() + uniform() + uniform());
    time[i] = at;
    signal[i] = Math.round(((lifted ? 0 : volts) + noise) / step) * step;
  }
  return { time, signal };
}
