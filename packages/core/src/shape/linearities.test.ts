import { describe, expect, test } from 'vitest';
import { absoluteLinearity } from './absoluteLinearity.js';
import { independentLinearity } from './independentLinearity.js';
import type { Linearity, NotJudged } from './shape.js';
import { terminalBasedLinearity } from './terminalBasedLinearity.js';
import { zeroBasedLinearity } from './zeroBasedLinearity.js';

function judged(linearity: Linearity | NotJudged): Linearity {
  if (linearity.kind !== 'judged') throw new Error(linearity.reason);
  return linearity;
}

/** An output that bows by a tenth at the middle: 4·0.1·x(1 − x) above the straight line, over 90 degrees. */
const shaft = Float64Array.from({ length: 91 }, (_, i) => i);
const ratio = shaft.map((at) => at / 90 + 0.4 * (at / 90) * (1 - at / 90));
const bowed = { shaft, ratio, uncertainty: 0.001 };

describe('a bowed output', () => {
  test('independent: the line goes through the middle of the bow', () => {
    const { value, at, line, uncertainty } = judged(independentLinearity(bowed));
    expect(value).toBeCloseTo(0.05, 14);
    expect(at).toBe(45);
    expect(line.slope).toBeCloseTo(1 / 90, 14);
    expect(line.intercept).toBeCloseTo(0.05, 14);
    // A half of the middle, a quarter of each end.
    expect(uncertainty).toBeCloseTo(0.001 * Math.sqrt(0.25 + 2 * 0.0625), 12);
  });

  test('terminal-based: the whole bow, with the reading and both ends in its uncertainty', () => {
    const { value, at, line, uncertainty } = judged(terminalBasedLinearity(bowed));
    expect(value).toBeCloseTo(0.1, 14);
    expect(at).toBe(45);
    expect(line).toEqual({ intercept: 0, slope: 1 / 90 });
    expect(uncertainty).toBeCloseTo(0.001 * Math.sqrt(1.5), 12);
  });

  test('zero-based: better than terminal-based, worse than independent; the line starts at the zero end', () => {
    const { value, line, uncertainty } = judged(zeroBasedLinearity(bowed));
    // By calculus for x + 0.4x(1 − x) and a line s·x: the top of the bow, (1.4 − s)²/1.6, equals the lack at the end, s − 1.
    const slope = 2.2 - Math.sqrt(1.28);
    expect(value).toBeCloseTo(slope - 1, 4);
    expect(line.intercept).toBeCloseTo(0, 15);
    expect(line.slope * 90).toBeCloseTo(slope, 4);
    expect(uncertainty).toBeGreaterThan(0.0005);
    expect(uncertainty).toBeLessThan(0.0012);
  });

  test('zero-based of a falling output: the zero end is where the output is lower', () => {
    const falling = { shaft: shaft.map((at) => 90 - at), ratio };
    const { value, line } = judged(zeroBasedLinearity(falling));
    expect(value).toBeCloseTo(judged(zeroBasedLinearity(bowed)).value, 14);
    expect(line.intercept + 90 * line.slope).toBeCloseTo(0, 14);
    expect(line.slope).toBeLessThan(0);
  });

  test('absolute: against the theoretical line alone, over its travel alone', () => {
    const theory = { index: { shaft: 45, ratio: 0.5 }, electricalTravel: 90 };
    const { value, at, line, uncertainty } = judged(absoluteLinearity(bowed, theory));
    expect(value).toBeCloseTo(0.1, 14);
    expect(at).toBe(45);
    expect(line.slope).toBe(1 / 90);
    expect(uncertainty).toBe(0.001);
    const short = { index: { shaft: 45, ratio: 0.5 }, electricalTravel: 30 };
    const { at: shortAt } = judged(absoluteLinearity(bowed, short));
    expect(shortAt).toBeGreaterThanOrEqual(30);
    expect(shortAt).toBeLessThanOrEqual(60);
    const falling = { index: { shaft: 45, ratio: 0.5 }, electricalTravel: -90 };
    expect(judged(absoluteLinearity(bowed, falling)).value).toBeCloseTo(1, 12);
  });
});

test('the uncertainties are what a small change of single readings makes of the values', () => {
  const step = 1e-7;
  for (const linearity of [independentLinearity, zeroBasedLinearity, terminalBasedLinearity]) {
    const { value, uncertainty } = judged(linearity(bowed));
    let squares = 0;
    for (let i = 0; i < ratio.length; i++) {
      const moved = ratio.with(i, ratio[i]! + step);
      const down = ratio.with(i, ratio[i]! - step);
      const change =
        judged(linearity({ shaft, ratio: moved })).value -
        judged(linearity({ shaft, ratio: down })).value;
      squares += (change / step / 2) ** 2;
    }
    expect(value).toBeGreaterThan(0);
    expect(0.001 * Math.sqrt(squares)).toBeCloseTo(uncertainty!, 5);
  }
});

describe('what can not be judged says why', () => {
  const still = { shaft: Float64Array.of(1, 1), ratio: Float64Array.of(0.1, 0.2) };
  test.each([
    [() => independentLinearity(still), 'no-movement'],
    [() => zeroBasedLinearity(still), 'no-movement'],
    [() => terminalBasedLinearity(still), 'no-movement'],
    [() => absoluteLinearity(bowed, { electricalTravel: 90 }), 'no-index-point'],
    [() => absoluteLinearity(bowed, { index: { shaft: 0, ratio: 0 } }), 'no-electrical-travel'],
    [
      () => absoluteLinearity(bowed, { index: { shaft: 200, ratio: 0 }, electricalTravel: 9 }),
      'no-readings',
    ],
  ] as const)('%#', (judge, reason) => {
    expect(judge()).toEqual({ kind: 'not-judged', reason });
  });

  test('wrong input is refused with its path', () => {
    const refused = (act: () => unknown, code: string, path: string) =>
      expect(act).toThrow(expect.objectContaining({ name: 'InputError', code, path }));
    refused(() => independentLinearity(undefined as never), 'missing', 'readings');
    refused(
      () => independentLinearity({ shaft, ratio: new Float64Array(3) }),
      'length-mismatch',
      'readings.ratio',
    );
    refused(
      () => zeroBasedLinearity({ shaft, ratio: ratio.with(7, Number.NaN) }),
      'not-finite',
      'readings.ratio[7]',
    );
    refused(
      () => terminalBasedLinearity({ ...bowed, uncertainty: -1 }),
      'negative',
      'readings.uncertainty',
    );
    refused(
      () => absoluteLinearity(bowed, { index: { shaft: 0, ratio: 0 }, electricalTravel: 0 }),
      'zero',
      'theory.electricalTravel',
    );
  });
});
