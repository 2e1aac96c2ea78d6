import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { operatingPoint } from '../circuit/operatingPoint.js';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { type Shape, type ShapeEvidence, shapeOf } from './shapeOf.js';

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10_000 },
};

/** The wiper's place for a travel: bowed by 0.01 of the track at the middle. */
const bowedAt = (travel: number) =>
  positionAt(circuit.sensor, travel) + 0.04 * travel * (1 - travel);

/** Twice there and back, 1 kHz, 12 s, recorded with the supply across the track. */
function recorded(placeAt: (travel: number) => number, noise = 0) {
  const time = Float64Array.from({ length: 12_001 }, (_, i) => i / 1000);
  const shaft = time.map((at) => 1 - Math.abs(((at / 3) % 2) - 1));
  const table = Array.from({ length: 1001 }, (_, i) => {
    const { output, nodes } = operatingPoint(circuit, placeAt(i / 1000));
    return [output as number, (nodes.top as number) - (nodes.bottom as number)] as const;
  });
  const { normal } = randomNumbers(9);
  const at = (travel: number, column: 0 | 1) => table[Math.round(1000 * travel)]![column];
  const signal = shaft.map((travel) => at(travel, 0) + noise * normal());
  return { sweep: { time, signal, supply: shaft.map((travel) => at(travel, 1)) }, shaft };
}

function judged(sweep: Parameters<typeof shapeOf>[0], evidence: ShapeEvidence): Shape {
  const shape = shapeOf(sweep, evidence);
  if (shape.kind !== 'judged') throw new Error(shape.reason);
  return shape;
}

describe('a straight track under a load', () => {
  const { sweep, shaft } = recorded((travel) => positionAt(circuit.sensor, travel));
  const { time, signal } = sweep;

  test('is straight once the load is taken out, whether the supply was recorded or not', () => {
    for (const shape of [
      judged(sweep, { shaft, circuit }),
      judged({ time, signal }, { shaft, circuit }),
    ]) {
      expect(shape.noLoad).toBe(true);
      expect(shape.independent.value).toBeLessThan(3e-4);
      expect(shape.zeroBased.value).toBeLessThan(6e-4);
      expect(shape.terminalBased.value).toBeLessThan(6e-4);
      expect(shape.independent.line.slope).toBeCloseTo(0.8, 3);
      expect(shape.independent.line.intercept).toBeCloseTo(0.1, 3);
      expect(shape.conformity).toMatchObject({ kind: 'judged' });
      expect((shape.conformity as { value: number }).value).toBeLessThan(3e-4);
    }
    expect(judged(sweep, { shaft, circuit }).supply).toBe('recorded');
    expect(judged({ time, signal }, { shaft, circuit }).supply).toBe('circuit');
  });

  test('and shows the load’s bow where that is not known', () => {
    const shape = judged(sweep, { shaft });
    expect(shape.noLoad).toBe(false);
    expect(shape.conformity).toEqual({ kind: 'not-judged', reason: 'no-circuit' });
    expect(shape.independent.value).toBeGreaterThan(0.015);
  });

  test('absolute linearity follows from index point and electrical travel alone', () => {
    const theory = { index: { shaft: 0.5, ratio: 0.51 }, electricalTravel: 1.25 };
    const { absolute } = judged(sweep, { shaft, circuit, ...theory });
    expect(absolute).toMatchObject({ kind: 'judged' });
    expect((absolute as { value: number }).value).toBeCloseTo(0.01, 3);
    expect(judged(sweep, { shaft, circuit }).absolute).toEqual({
      kind: 'not-judged',
      reason: 'no-index-point',
    });
  });

  test('a range leaves out what lies beyond it', () => {
    const odd = signal.map((volts, i) => (shaft[i]! > 0.95 ? 0 : volts));
    const range = { from: 0, to: 0.95 };
    expect(
      judged({ ...sweep, signal: odd }, { shaft, circuit, range }).independent.value,
    ).toBeLessThan(3e-4);
    expect(judged({ ...sweep, signal: odd }, { shaft, circuit }).independent.value).toBeGreaterThan(
      0.1,
    );
  });

  test('a supply that fails for a moment says nothing of the track', () => {
    const away = (volts: number, i: number) => (i > 4000 && i < 4050 ? 0 : volts);
    const failed = { time, signal: signal.map(away), supply: sweep.supply.map(away) };
    expect(judged(failed, { shaft, circuit }).smoothness).toMatchObject({ kind: 'judged' });
    expect(judged(failed, { shaft, circuit }).independent.value).toBeLessThan(3e-4);
  });
});

test('a bowed track under load and noise: half the bow, and noise widens only smoothness', () => {
  const { sweep, shaft } = recorded(bowedAt, 0.002);
  const shape = judged(sweep, { shaft, circuit, uncertainty: 0.002 });
  expect(shape.independent.value).toBeCloseTo(0.005, 3);
  expect(shape.terminalBased.value).toBeCloseTo(0.01, 2);
  expect(shape.hysteresis).toMatchObject({ kind: 'judged' });
  expect((shape.hysteresis as { value: number }).value).toBeLessThan(0.001);
  expect((shape.smoothness as { value: number }).value).toBeGreaterThan(0.002);
  expect(shape.independent.uncertainty).toBeGreaterThan(0.002 / 5 / 2);
  expect(shape.independent.uncertainty).toBeLessThan(0.002);
});

describe('what the evidence does not give', () => {
  const { sweep, shaft } = recorded(bowedAt);
  const { time, signal } = sweep;
  const coarse = shaft.map((travel) => Math.round(5 * travel) / 5);
  const pullUp = { ohms: 1000, volts: 12 };
  test.each([
    [sweep, { circuit }, 'no-shaft'],
    [sweep, { circuit, shaft: new Float64Array(shaft.length) }, 'no-movement'],
    [{ time, signal }, { shaft }, 'no-supply'],
    [{ ...sweep, supply: new Float64Array(shaft.length) }, { shaft }, 'no-supply'],
    [sweep, { shaft: coarse, circuit }, 'places-too-far-apart'],
    [{ ...sweep, signal: time.map(() => 0) }, { shaft }, 'output-does-not-follow'],
    [{ ...sweep, signal: time.map((_, i) => (i * 7919) % 5) }, { shaft }, 'output-does-not-follow'],
    [{ time, signal }, { shaft, circuit: { ...circuit, load: { pullUp } } }, 'ambiguous-output'],
  ] as const)('%#', (recording, evidence, reason) => {
    expect(shapeOf(recording, evidence)).toEqual({ kind: 'not-judged', reason });
  });

  test.each([
    [{ shaft: shaft.subarray(1) }, 'length-mismatch', 'evidence.shaft'],
    [{ shaft: shaft.with(3, Number.NaN) }, 'not-finite', 'evidence.shaft[3]'],
    [{ shaft, supply: 0 }, 'zero', 'evidence.supply'],
    [{ shaft, uncertainty: -1 }, 'negative', 'evidence.uncertainty'],
    [{ shaft, range: { from: 1, to: 0 } }, 'out-of-range', 'evidence.range.to'],
    [{ shaft, suply: 5 }, 'unknown-field', 'evidence.suply'],
  ] as const)('wrong evidence is refused (%#)', (evidence, code, path) => {
    expect(() => shapeOf(sweep, evidence)).toThrow(
      expect.objectContaining({ name: 'InputError', code, path }),
    );
  });
});

test('whatever is recorded, nothing but an InputError is thrown and no number is NaN or infinite', () => {
  const value = fc.oneof(
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.constantFrom(0, 1, 5, 5e-324, 1e-300, -1e-300, 1e12, -1e12, 1e300, Number.NaN, Infinity),
  );
  const row = fc.tuple(fc.nat(9), value, value, value);
  const allNumbers = (of: unknown): number[] =>
    typeof of === 'number'
      ? [of]
      : typeof of === 'object' && of
        ? Object.values(of).flatMap(allNumbers)
        : [];
  const kinds = { judged: 0, 'not-judged': 0, refused: 0 };
  fc.assert(
    fc.property(
      fc.array(row, { minLength: 2, maxLength: 60 }),
      fc.tuple(fc.boolean(), fc.boolean(), fc.boolean(), fc.boolean()),
      (rows, [isTame, hasSupply, hasCircuit, isSwept]) => {
        let now = 0;
        const time = Float64Array.from(rows, ([after]) => {
          now += after;
          return now;
        });
        const of = (at: 1 | 2 | 3) =>
          Float64Array.from(rows, (one) =>
            isTame ? Math.min(9, Math.max(-9, one[at] || 0)) : one[at],
          );
        const shaft = isSwept ? Float64Array.from(rows, (_, i) => i) : of(2);
        const signal = isSwept ? of(1).map((volts, i) => i / 10 + volts / 50) : of(1);
        const evidence = {
          shaft,
          uncertainty: 0.01,
          ...(hasCircuit && { circuit }),
          ...(!hasSupply && { supply: 5 }),
        };
        try {
          const shape = shapeOf({ time, signal, ...(hasSupply && { supply: of(3) }) }, evidence);
          kinds[shape.kind]++;
          expect(allNumbers(shape).every(Number.isFinite), JSON.stringify(shape)).toBe(true);
        } catch (error) {
          expect(error).toMatchObject({ name: 'InputError' });
          kinds.refused++;
        }
      },
    ),
    { numRuns: 150 * soak },
  );
  expect(Math.min(...Object.values(kinds))).toBeGreaterThan(5);
}, 240_000);
