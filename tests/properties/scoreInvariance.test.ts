import {
  type Circuit,
  expectation,
  type Recorder,
  type Sweep,
  type SweepPlan,
  scoreSweep,
  simulateSweep,
  type Verdict,
} from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { soak } from '../counts.js';
import { anyPlan, between, soundPlan, tolerances } from './sweeps.js';

/** What is known of the plan's recorder. */
function recorderOf({ circuit, recorder: { resolution = 0 } }: SweepPlan): Recorder {
  const { volts } = circuit.source;
  return {
    resolution,
    uncertainty: 0.001 * volts,
    range: { low: -0.1 * volts, high: 1.1 * volts },
  };
}

function verdictOf(sweep: Sweep, circuit: Circuit, recorder: Recorder): Verdict {
  return scoreSweep(sweep, expectation(circuit, tolerances), recorder).verdict;
}

/** Whether anything is known of the recorder. */
const known = fc.boolean();

test('shifting time does not change the verdict', () => {
  fc.assert(
    fc.property(anyPlan, between(-1000, 1000), (plan, shift) => {
      const { sweep } = simulateSweep(plan);
      const shifted = { ...sweep, time: sweep.time.map((at) => at + shift) };
      expect(verdictOf(shifted, plan.circuit, {})).toBe(verdictOf(sweep, plan.circuit, {}));
    }),
    { numRuns: 60 * soak },
  );
});

/** The closed throttle left alone, recorded by the same recorder. */
function restOf(plan: SweepPlan, seconds: number): Float64Array {
  const rest = { ...plan, movements: [{ kind: 'hold' as const, seconds }], faults: [] };
  return simulateSweep({ ...rest, seed: plan.seed + 1 }).sweep.signal;
}

test('appending rest at either end does not change the verdict', () => {
  fc.assert(
    fc.property(anyPlan, between(0.05, 2), between(0.05, 2), (plan, before, after) => {
      const { sweep } = simulateSweep(plan);
      const signal = Float64Array.of(
        ...restOf(plan, before),
        ...sweep.signal,
        ...restOf(plan, after),
      );
      const time = signal.map((_, i) => i * plan.recorder.interval);
      expect(verdictOf({ time, signal }, plan.circuit, {})).toBe(
        verdictOf(sweep, plan.circuit, {}),
      );
    }),
    { numRuns: 60 * soak },
  );
});

test('scaling every voltage does not change the verdict', () => {
  fc.assert(
    fc.property(
      anyPlan,
      fc.constantFrom(1e-3, 0.3, 2, 7.7, 1e3),
      known,
      (plan, factor, isKnown) => {
        const { sweep } = simulateSweep(plan);
        const recorder = isKnown ? recorderOf(plan) : {};
        const { circuit } = plan;
        const { resolution, uncertainty, range } = recorder;
        const scaled: Recorder = {
          ...(resolution !== undefined && { resolution: resolution * factor }),
          ...(uncertainty !== undefined && { uncertainty: uncertainty * factor }),
          ...(range && { range: { low: range.low * factor, high: range.high * factor } }),
        };
        const verdict = verdictOf(
          { ...sweep, signal: sweep.signal.map((volts) => volts * factor) },
          { ...circuit, source: { volts: circuit.source.volts * factor } },
          scaled,
        );
        expect(verdict).toBe(verdictOf(sweep, circuit, recorder));
      },
    ),
    { numRuns: 60 * soak },
  );
});

/** Top and bottom exchanged: what pulled down to common pulls up to the source, and the limiter feeds the bottom. */
function mirrored({ source, limiter, sensor, load }: Circuit): Circuit {
  return {
    source,
    limiter: 0,
    leads: { ground: limiter },
    sensor: {
      track: sensor.track,
      closedPosition: 1 - sensor.closedPosition!,
      openPosition: 1 - sensor.openPosition!,
    },
    load: load.pullUp
      ? { pullDown: load.pullUp.ohms }
      : { pullUp: { ohms: load.pullDown!, from: 'source' } },
  };
}

test('reversing the sensor with its load mirrored does not change the verdict', () => {
  fc.assert(
    fc.property(anyPlan, known, (plan, isKnown) => {
      const { sweep } = simulateSweep(plan);
      const recorder = isKnown ? recorderOf(plan) : {};
      const { volts } = plan.circuit.source;
      const { range } = recorder;
      const verdict = verdictOf(
        { ...sweep, signal: sweep.signal.map((at) => volts - at) },
        mirrored(plan.circuit),
        {
          ...recorder,
          ...(range && { range: { low: volts - range.high, high: volts - range.low } }),
        },
      );
      expect(verdict).toBe(verdictOf(sweep, plan.circuit, recorder));
    }),
    { numRuns: 60 * soak },
  );
});

/** Two samples in a dropout of 15 ms. */
const slowest = 0.0075;
/** Of decimated sound sweeps, what noise and turns between samples make look faulty; the criteria allow 0.5 % by noise. */
const unlucky = 0.005;

test('decimating a clean sweep turns pass into inconclusive once it is too coarse, and never into fail', () => {
  let [decimated, other, failed] = [0, 0, 0];
  for (const plan of fc.sample(soundPlan, 60 * soak)) {
    const { sweep } = simulateSweep(plan);
    if (verdictOf(sweep, plan.circuit, {}) !== 'pass') continue;
    for (const every of [2, 3, 4, 7, 11, 16, 32, 64, 128]) {
      const kept = (_: number, i: number) => i % every === 0;
      const coarse = { time: sweep.time.filter(kept), signal: sweep.signal.filter(kept) };
      const isFine = every * plan.recorder.interval <= slowest;
      decimated++;
      const verdict = verdictOf(coarse, plan.circuit, {});
      if (verdict === 'fail') failed++;
      if (verdict !== (isFine ? 'pass' : 'inconclusive')) other++;
    }
  }
  expect(decimated).toBeGreaterThan(400);
  expect(failed).toBe(0);
  expect(other / decimated).toBeLessThanOrEqual(unlucky);
});
