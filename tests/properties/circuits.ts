import type { Circuit, CircuitFault, Connection, Lead, Terminal } from '@truesweep/core';
import fc from 'fast-check';

/** A resistance from `low` to `high`, evenly spread over the decades. */
export function ohms(low: number, high: number): fc.Arbitrary<number> {
  return fc
    .double({ min: Math.log10(low), max: Math.log10(high), noNaN: true })
    .map((exponent) => 10 ** exponent);
}

const zeroOr = (arbitrary: fc.Arbitrary<number>): fc.Arbitrary<number> =>
  fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 2, arbitrary });

const brokenOr = (arbitrary: fc.Arbitrary<number>): fc.Arbitrary<number> =>
  fc.oneof(
    { weight: 1, arbitrary: fc.constant(Number.POSITIVE_INFINITY) },
    { weight: 12, arbitrary },
  );

export const position = fc.oneof(
  fc.constantFrom(0, 1, 0.5, 1e-9, 1 - 1e-9),
  fc.integer({ min: 0, max: 2 ** 30 }).map((steps) => steps / 2 ** 30),
);

const lead = brokenOr(zeroOr(ohms(1e-3, 100)));

const volts = fc.double({ min: 0.1, max: 30, noNaN: true });

const ownPullUp = fc.record({
  ohms: ohms(1, 1e8),
  volts: zeroOr(fc.double({ min: 1e-3, max: 15, noNaN: true })),
});

/** Sound circuits of every size, with the extremes that a bench can meet: 0 Ω, broken leads, 1 Ω to 100 MΩ loads. */
export const circuit: fc.Arbitrary<Circuit> = fc.record({
  source: fc.record({ volts, ohms: zeroOr(ohms(1e-3, 1e3)) }, { requiredKeys: ['volts'] }),
  limiter: zeroOr(ohms(1, 1e5)),
  leads: fc.record({ supply: lead, ground: lead, signal: lead }, { requiredKeys: [] }),
  sensor: fc.record(
    {
      track: ohms(100, 1e6),
      bottomResidual: zeroOr(ohms(0.1, 1e3)),
      topResidual: zeroOr(ohms(0.1, 1e3)),
      contact: brokenOr(zeroOr(ohms(0.01, 1e6))),
    },
    { requiredKeys: ['track'] },
  ),
  load: fc.record({ pullDown: ohms(1, 1e8), pullUp: ownPullUp }, { requiredKeys: [] }),
});

const leads: readonly Lead[] = ['supply', 'ground', 'signal'];
const terminals: readonly Terminal[] = ['bottom', 'wiper', 'top'];

export const connections: readonly Connection[] = terminals.flatMap((supply) =>
  terminals
    .filter((ground) => ground !== supply)
    .map((ground) => ({
      supply,
      ground,
      signal: terminals.find((it) => it !== supply && it !== ground)!,
    })),
);

function two<Name>(of: readonly Name[]): fc.Arbitrary<readonly [Name, Name]> {
  return fc
    .shuffledSubarray([...of], { minLength: 2, maxLength: 2 })
    .map(([a, b]) => [a!, b!] as const);
}

const place = fc.oneof(fc.constantFrom(0, 1, 0.5), position);

export const fault: fc.Arbitrary<CircuitFault> = fc.oneof(
  fc.record({ kind: fc.constant('broken-lead' as const), lead: fc.constantFrom(...leads) }),
  fc.record({ kind: fc.constant('shorted-leads' as const), leads: two(leads) }),
  fc.record({ kind: fc.constant('shorted-terminals' as const), terminals: two(terminals) }),
  fc.record({
    kind: fc.constant('shorted-signal' as const),
    to: fc.constantFrom('source' as const, 'supply' as const, 'ground' as const),
  }),
  fc.record({ kind: fc.constant('broken-track' as const), position: place }),
  fc.record({ kind: fc.constant('shorted-track' as const), from: place, to: place }),
  fc.constantFrom<CircuitFault>(
    { kind: 'lifted-wiper' },
    { kind: 'no-limiter' },
    { kind: 'reversed-source' },
  ),
  fc.record({ kind: fc.constant('wrong-source' as const), volts }),
);

/** Any hook-up: every permutation of the leads, faults, built-in resistors, current limits, shared returns. */
export const hookUp: fc.Arbitrary<Circuit> = fc
  .record({
    base: circuit,
    sourceLimit: fc.option(ohms(1e-4, 1), { nil: undefined }),
    connection: fc.constantFrom(...connections),
    terminalResistors: fc.record(
      { bottom: zeroOr(ohms(1, 1e4)), wiper: zeroOr(ohms(1, 1e4)), top: zeroOr(ohms(1, 1e4)) },
      { requiredKeys: [] },
    ),
    brokenTrack: fc.constantFrom(false, false, false, true),
    pullDown: fc.option(zeroOr(ohms(1, 1e8)), { nil: undefined, freq: 4 }),
    pullUp: fc.option(
      fc.oneof(
        fc.record({ ohms: zeroOr(ohms(1, 1e8)), volts: ownPullUp.map((it) => it.volts) }),
        fc.record({
          ohms: zeroOr(ohms(1, 1e8)),
          from: fc.constantFrom('source' as const, 'sensor' as const),
        }),
      ),
      { nil: undefined },
    ),
    common: fc.constantFrom('source' as const, 'sensor' as const),
    faults: fc.array(fault, { maxLength: 3 }),
  })
  .map(
    ({
      base,
      sourceLimit,
      connection,
      terminalResistors,
      brokenTrack,
      pullDown,
      pullUp,
      common,
      faults,
    }) => ({
      ...base,
      source: { ...base.source, ...(sourceLimit !== undefined && { currentLimit: sourceLimit }) },
      sensor: {
        ...base.sensor,
        terminalResistors,
        ...(brokenTrack && { track: Number.POSITIVE_INFINITY }),
      },
      load: { ...(pullDown !== undefined && { pullDown }), ...(pullUp && { pullUp }), common },
      connection,
      faults,
    }),
  );
