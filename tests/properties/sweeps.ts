import type { Circuit, SimulatedFault, SimulatedMovement, SweepPlan } from '@truesweep/core';
import fc from 'fast-check';

/** Tolerances of the sensors below: so wide that a sound one conforms. */
export const tolerances = { track: 0.2, closedPosition: 0.03, openPosition: 0.03 };

/** Evenly spread; the library's own doubles are mostly tiny. */
export const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 2 ** 20 }).map((part) => min + (max - min) * (part / 2 ** 20));

/** Rising and falling sensors with a pull-down, or a pull-up to the source. */
const circuit: fc.Arbitrary<Circuit> = fc
  .record({
    volts: fc.constantFrom(3.3, 5, 12),
    limiter: fc.constantFrom(0, 1000),
    track: fc.constantFrom(1000, 5000, 10e3),
    near: between(0.08, 0.15),
    far: between(0.85, 0.92),
    falling: fc.boolean(),
    loadOhms: fc.constantFrom(10e6, 1e6, 100e3),
    up: fc.boolean(),
  })
  .map(({ volts, limiter, track, near, far, falling, loadOhms, up }) => ({
    source: { volts },
    limiter,
    sensor: {
      track,
      closedPosition: falling ? far : near,
      openPosition: falling ? near : far,
    },
    load: up ? { pullUp: { ohms: loadOhms, from: 'source' as const } } : { pullDown: loadOhms },
  }));

const hold = between(0.3, 0.6).map((seconds) => ({ kind: 'hold' as const, seconds }));
const turnTo = (to: number) =>
  fc
    .record({ seconds: between(0.8, 1.6), unevenness: between(0, 0.008) })
    .map((turn) => ({ kind: 'turn' as const, to, ...turn }));
const snap = fc
  .record({ seconds: between(0.025, 0.06), restitution: between(0, 0.4) })
  .map((one) => ({ kind: 'snap' as const, ...one }));

const movements: fc.Arbitrary<readonly SimulatedMovement[]> = fc
  .tuple(
    hold,
    fc.array(fc.tuple(turnTo(1), hold, turnTo(0), hold), { minLength: 1, maxLength: 2 }),
    fc.array(fc.tuple(turnTo(1), hold, snap, hold), { minLength: 1, maxLength: 2 }),
  )
  .map(([first, byHand, bySpring]) => [first, ...byHand.flat(), ...bySpring.flat()]);

const times = fc.array(fc.record({ time: between(0, 8), seconds: between(1e-3, 0.03) }), {
  minLength: 1,
  maxLength: 6,
});

/** Faults of the track lie beside the closed stop, so that it keeps its level. */
const fault: fc.Arbitrary<SimulatedFault> = fc.oneof(
  fc.record({
    kind: fc.constant('worn-spot' as const),
    travel: between(0.05, 1),
    width: between(0.002, 0.06),
    ohms: fc.constantFrom(1e3, 20e3, 500e3, Number.POSITIVE_INFINITY),
    chance: between(0.2, 1),
  }),
  fc.record({ kind: fc.constant('loose-connection' as const), at: times }),
  times.chain((at) =>
    fc.array(between(-2, 2), { minLength: at.length, maxLength: at.length }).map((volts) => ({
      kind: 'interference' as const,
      at: at.map((one, i) => ({ ...one, volts: volts[i]! })),
    })),
  ),
  fc.record({
    kind: fc.constant('shifted-track' as const),
    travel: between(0.05, 0.95),
    shift: between(-0.3, 0.3),
  }),
  fc.record({ from: between(0.02, 0.9), width: between(0.02, 0.2) }).map(({ from, width }) => ({
    kind: 'dead-spot' as const,
    from,
    to: from + width,
  })),
  fc
    .record({ from: between(0.02, 0.8), width: between(0.05, 0.3), volts: between(0.02, 0.5) })
    .map(({ from, width, volts }) => ({
      kind: 'rough-track' as const,
      from,
      to: from + width,
      volts,
    })),
);

/** A plan with so many of the faults. */
function planWith(faults: fc.Arbitrary<readonly SimulatedFault[]>): fc.Arbitrary<SweepPlan> {
  return fc
    .record({
      circuit,
      movements,
      interval: fc.constantFrom(0.5e-3, 1e-3, 2e-3),
      noise: between(0.0002, 0.002),
      resolution: fc.constantFrom(0, 0.0002, 0.001),
      faults,
      seed: fc.integer({ min: 0 }),
    })
    .map(({ interval, noise, resolution, ...plan }) => ({
      ...plan,
      recorder: {
        interval,
        noise: noise * plan.circuit.source.volts,
        resolution: resolution * plan.circuit.source.volts,
      },
    }));
}

/** Recordings of a sound sensor by a recorder that is good enough. */
export const soundPlan = planWith(fc.constant([]));

/** Recordings of a sensor with up to two faults. */
export const anyPlan = planWith(fc.array(fault, { maxLength: 2 }));
