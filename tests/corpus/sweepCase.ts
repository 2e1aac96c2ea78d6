import type { SimulatedFault, SimulatedMovement, SweepPlan, Tolerances } from '@truesweep/core';
import fc from 'fast-check';

/** What is done to the sensor or the recording of a case. */
export const kinds = [
  'sound',
  'sound, partial strokes',
  'sound, slow recorder',
  'worn spot',
  'dirty spot',
  'loose connection',
  'interference',
  'shifted track',
  'dead spot',
  'rough track',
] as const;

export type Kind = (typeof kinds)[number];

export interface SweepCase {
  readonly kind: Kind;
  readonly plan: SweepPlan;
  readonly tolerances: Tolerances;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const circuit = fc.record({
  source: fc.record({ volts: between(3.3, 14) }),
  limiter: fc.constantFrom(0, 470, 1000, 2200),
  sensor: fc.oneof(
    fc.record({
      track: between(1000, 20_000),
      closedPosition: between(0.06, 0.15),
      openPosition: between(0.8, 0.95),
    }),
    fc.record({
      track: between(1000, 20_000),
      closedPosition: between(0.8, 0.95),
      openPosition: between(0.06, 0.15),
    }),
  ),
  load: fc.oneof(
    fc.record({ pullDown: fc.constantFrom(10e6, 1e6, 100e3, 47e3) }),
    fc.record({
      pullDown: fc.constantFrom(10e6, 1e6),
      pullUp: fc.record({ ohms: fc.constantFrom(47e3, 100e3), volts: fc.constant(5) }),
    }),
  ),
});

const movements: fc.Arbitrary<readonly SimulatedMovement[]> = fc
  .record({
    opening: between(0.6, 3),
    closing: between(0.6, 3),
    hold: between(0.25, 0.6),
    unevenness: between(0, 0.012),
    snaps: fc.array(fc.record({ seconds: between(0.02, 0.06), restitution: between(0.05, 0.4) }), {
      minLength: 3,
      maxLength: 3,
    }),
  })
  .map(({ opening, closing, hold, unevenness, snaps }) => [
    { kind: 'hold', seconds: hold },
    { kind: 'turn', to: 1, seconds: opening, unevenness },
    { kind: 'hold', seconds: hold },
    { kind: 'turn', to: 0, seconds: closing, unevenness },
    { kind: 'hold', seconds: hold },
    ...snaps.flatMap((snap): SimulatedMovement[] => [
      { kind: 'turn', to: 1, seconds: opening, unevenness },
      { kind: 'hold', seconds: hold },
      { kind: 'snap', ...snap },
      { kind: 'hold', seconds: hold },
    ]),
  ]);

const partial: fc.Arbitrary<readonly SimulatedMovement[]> = fc
  .array(between(0.3, 0.7), { minLength: 2, maxLength: 4 })
  .map((tops) =>
    tops.flatMap((to): SimulatedMovement[] => [
      { kind: 'hold', seconds: 0.3 },
      { kind: 'turn', to, seconds: 1, unevenness: 0.005 },
      { kind: 'hold', seconds: 0.3 },
      { kind: 'turn', to: 0, seconds: 1, unevenness: 0.005 },
    ]),
  );

const when = fc.array(fc.record({ time: between(0.5, 6), seconds: between(0.004, 0.05) }), {
  minLength: 1,
  maxLength: 5,
});

function faults(kind: Kind, span: number): fc.Arbitrary<readonly SimulatedFault[]> {
  const one = (fault: fc.Arbitrary<SimulatedFault>) => fault.map((it) => [it]);
  const travel = between(0.05, 0.9);
  switch (kind) {
    case 'worn spot':
      return one(
        fc.record({
          kind: fc.constant('worn-spot' as const),
          travel: fc.oneof(between(0.03, 0.2), travel),
          width: between(0.01, 0.05),
          ohms: fc.constant(Number.POSITIVE_INFINITY),
          chance: fc.constantFrom(1, 0.7),
        }),
      );
    case 'dirty spot':
      return one(
        fc.record({
          kind: fc.constant('worn-spot' as const),
          travel,
          width: between(0.01, 0.05),
          ohms: fc.constantFrom(1e3, 10e3, 100e3, 1e6),
        }),
      );
    case 'loose connection':
      return one(fc.record({ kind: fc.constant('loose-connection' as const), at: when }));
    case 'interference':
      return one(
        fc.record({
          kind: fc.constant('interference' as const),
          at: fc.array(
            fc.record({
              time: between(0.5, 6),
              seconds: between(0.002, 0.01),
              volts: fc.oneof(between(-0.3, -0.05), between(0.05, 0.3)).map((part) => part * span),
            }),
            { minLength: 1, maxLength: 5 },
          ),
        }),
      );
    case 'shifted track':
      return one(
        fc.record({
          kind: fc.constant('shifted-track' as const),
          travel: between(0.2, 0.8),
          shift: fc.oneof(between(-0.12, -0.04), between(0.04, 0.12)),
        }),
      );
    case 'dead spot':
      return one(
        fc
          .tuple(between(0.1, 0.8), between(0.05, 0.1))
          .map(([from, width]) => ({ kind: 'dead-spot' as const, from, to: from + width })),
      );
    case 'rough track':
      return one(
        fc
          .tuple(between(0.1, 0.7), between(0.1, 0.3), between(0.03, 0.08))
          .map(([from, width, part]) => ({
            kind: 'rough-track' as const,
            from,
            to: from + width,
            volts: part * span,
          })),
      );
    default:
      return fc.constant([]);
  }
}

/** Cases of one kind: any sensor and hook-up, any of the recorders, every movement a technician makes. */
export function sweepCase(kind: Kind): fc.Arbitrary<SweepCase> {
  const evenly = circuit.chain((at) => {
    const span = 0.7 * at.source.volts * (at.sensor.track / (at.sensor.track + at.limiter));
    const interval =
      kind === 'sound, slow recorder'
        ? fc.constantFrom(0.02, 0.05, 0.25)
        : fc.constantFrom(0.005, 0.002, 1e-3, 1e-4);
    const recorder = fc.record(
      {
        interval,
        noise: between(0.0002, 0.002).map((part) => part * span),
        resolution: fc.constantFrom(0.001, 0.01),
        hum: fc.record({
          volts: between(0.0005, 0.005).map((part) => part * span),
          hertz: fc.constantFrom(50, 60),
        }),
      },
      { requiredKeys: ['interval', 'noise', 'resolution'] },
    );
    return fc
      .record({
        recorder,
        movements: kind === 'sound, partial strokes' ? partial : movements,
        faults: faults(kind, span),
        seed: fc.integer({ min: 0, max: 2 ** 31 }),
      })
      .map((plan) => ({
        kind,
        plan: { circuit: at, ...plan },
        tolerances: { source: 0.01, track: 0.2, closedPosition: 0.02, openPosition: 0.03 },
      }));
  });
  return fc.noBias(evenly);
}
