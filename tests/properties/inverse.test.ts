import { type Circuit, isDetermined, operatingPoint, positionAtOutput } from '@truesweep/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sensitivities } from '../../packages/core/src/circuit/sensitivities.js';
import { soak } from '../counts.js';
import { ohms, position } from './circuits.js';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const zeroOr = (arbitrary: fc.Arbitrary<number>) => fc.oneof(fc.constant(0), arbitrary);

const lead = zeroOr(between(1e-3, 5));

const plain = { volts: between(1, 24), ohms: zeroOr(between(0.01, 50)) };
/** Rarer than the plain one: the search goes through the general solver, which takes its time. */
const limited = fc.record({ ...plain, currentLimit: ohms(1e-3, 1) });

/** Benches with and without a limiter, a pull-down, a pull-up to any voltage and a current limit. */
const bench: fc.Arbitrary<Circuit> = fc.record({
  source: fc.oneof({ weight: 5, arbitrary: fc.record(plain) }, { weight: 1, arbitrary: limited }),
  limiter: zeroOr(between(10, 10_000)),
  leads: fc.record({ supply: lead, ground: lead, signal: lead }),
  sensor: fc.record({
    track: between(300, 50_000),
    bottomResidual: zeroOr(between(1, 200)),
    topResidual: zeroOr(between(1, 200)),
    contact: zeroOr(between(1, 5000)),
  }),
  load: fc.record(
    {
      pullDown: ohms(1e3, 1e8),
      pullUp: fc.record({ ohms: ohms(1e3, 1e7), volts: between(0, 15) }),
    },
    { requiredKeys: [] },
  ),
});

/** The largest voltage that entered the sum which made the output: its rounding is the reading's. */
function scaleOf({ source, load }: Circuit): number {
  const pullUp = load.pullUp && 'volts' in load.pullUp ? load.pullUp.volts : 0;
  return Math.max(source.volts, pullUp);
}

interface Counts {
  position: number;
  ambiguous: number;
  insensitive: number;
}

/** Goes forward and back again at one place; the place found may differ by what the reading's rounding allows. */
function expectRoundTrip(circuit: Circuit, at: number, counts: Counts) {
  const { output } = operatingPoint(circuit, at);
  if (!isDetermined(output)) return;
  const found = positionAtOutput(circuit, { volts: output });
  if (found.kind === 'impossible') throw new Error(`impossible at ${at}: ${output} V`);
  counts[found.kind]++;
  if (found.kind !== 'position') return;
  const slope = Math.abs(sensitivities(circuit, at)?.perPosition ?? 0);
  const rounding = Number.EPSILON * scaleOf(circuit);
  const allowed = Math.max(1e-9, (10 * rounding) / slope);
  const error = Math.abs(found.position - at);
  expect(error, `at ${at} of ${JSON.stringify(circuit)}`).toBeLessThanOrEqual(allowed);
}

describe('inverse of the forward model', () => {
  test('is the identity over the whole travel of any bench wherever one place fits', () => {
    const counts: Counts = { position: 0, ambiguous: 0, insensitive: 0 };
    fc.assert(
      fc.property(bench, fc.array(position, { minLength: 3, maxLength: 8 }), (circuit, places) => {
        for (const at of [0, 1, ...places]) expectRoundTrip(circuit, at, counts);
      }),
      { numRuns: 800 * soak, endOnFailure: true },
    );
    expect(counts.position).toBeGreaterThan(3000 * soak);
    expect(counts.ambiguous).toBeGreaterThan(0);
  }, 240_000);

  test('a reading beyond what the hook-up gives anywhere is told impossible, with what it gives', () => {
    fc.assert(
      fc.property(bench, between(1e-6, 10), fc.boolean(), (circuit, beyond, above) => {
        const outputs = Array.from(
          { length: 65 },
          (_, i) => operatingPoint(circuit, i / 64).output,
        );
        fc.pre(outputs.every((output) => isDetermined(output)));
        const far = positionAtOutput(circuit, { volts: above ? 1e5 : -1e5 });
        if (far.kind !== 'impossible') throw new Error(far.kind);
        const slack = 1e-12 * scaleOf(circuit);
        expect(far.lowest).toBeLessThanOrEqual(Math.min(...outputs) + slack);
        expect(far.highest).toBeGreaterThanOrEqual(Math.max(...outputs) - slack);
        const volts = above ? far.highest + beyond : far.lowest - beyond;
        expect(positionAtOutput(circuit, { volts }).kind).toBe('impossible');
        expect(positionAtOutput(circuit, { volts, uncertainty: beyond / 2 }).kind).toBe(
          'impossible',
        );
        expect(positionAtOutput(circuit, { volts, uncertainty: 1.01 * beyond }).kind).not.toBe(
          'impossible',
        );
      }),
      { numRuns: 200 * soak, endOnFailure: true },
    );
  }, 240_000);
});
