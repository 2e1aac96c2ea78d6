import type { Circuit } from '@truesweep/core';
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

/** Circuits of every size, with the extremes that a bench can meet: 0 Ω, broken leads, 1 Ω to 100 MΩ loads. */
export const circuit: fc.Arbitrary<Circuit> = fc.record({
  source: fc.record(
    { volts: fc.double({ min: 0.1, max: 30, noNaN: true }), ohms: zeroOr(ohms(1e-3, 1e3)) },
    { requiredKeys: ['volts'] },
  ),
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
  load: fc.record(
    {
      pullDown: ohms(1, 1e8),
      pullUp: fc.record({
        ohms: ohms(1, 1e8),
        volts: zeroOr(fc.double({ min: 1e-3, max: 15, noNaN: true })),
      }),
    },
    { requiredKeys: [] },
  ),
});
