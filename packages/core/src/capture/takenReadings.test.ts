import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../statistics/randomNumbers.js';
import { takenReadings } from './takenReadings.js';

const rows = 1000;
const every = 5;

/** Rows drawn between readings of noise, one in so many rows. */
function drawn(apart: number, count = rows, off = 0) {
  const random = randomNumbers(5);
  const taken = Array.from({ length: Math.ceil(count / apart) + 1 }, () => random.uniform());
  const time = Float64Array.from({ length: count }, (_, i) => i * 1e-3);
  const signal = time.map((_, i) => {
    const [at, part] = [Math.floor(i / apart), (i % apart) / apart];
    return taken[at]! + part * (taken[at + 1]! - taken[at]!) + (i % 2) * off;
  });
  return { time, signal, taken };
}

describe('takenReadings', () => {
  test('keeps the readings that lines were drawn between, with their stamps and supply', () => {
    const { taken, ...sweep } = drawn(every);
    const found = takenReadings({ ...sweep, supply: sweep.signal })!;
    expect([...found.sweep.signal]).toEqual(taken.slice(0, rows / every));
    expect(found.sweep.time[10]).toBeCloseTo(0.05, 9);
    expect(found.sweep.supply).toEqual(found.sweep.signal);
    expect(found.sampledEvery).toBeCloseTo(5e-3, 9);
  });

  test('keeps the one at each end of a line where the signal rests between them', () => {
    const { time } = drawn(every);
    const signal = time.map((_, i) => Math.floor(i / 20) + Math.min(1, (i % 20) / every));
    const found = takenReadings({ time, signal })!;
    expect(found.sweep.signal).toHaveLength(rows / every);
  });

  test('begins anew where rows are missing', () => {
    const { time, signal } = drawn(every);
    const kept = (values: Float64Array) => values.filter((_, i) => i < 502 || i > 510);
    const found = takenReadings({ time: kept(time), signal: kept(signal) })!;
    expect(found.sweep.time).toContain(time[515]);
    expect(found.sweep.time).toContain(time[500]);
  });

  test('leaves alone what was sampled row by row, and what rests in steps', () => {
    expect(takenReadings(drawn(1))).toBeUndefined();
    const { time } = drawn(1);
    const steps = time.map((at) => Math.round(40 * Math.sin(9 * at)));
    expect(takenReadings({ time, signal: steps })).toBeUndefined();
  });

  test.each([
    ['so far apart that a hand turns between them', drawn(150, 9000)],
    ['so few that it may be chance', drawn(every, 140)],
    ['and rounded again', drawn(every, rows, 0.7e-6)],
  ])('leaves alone lines between readings %s', (_, { time, signal }) => {
    expect(takenReadings({ time, signal })).toBeUndefined();
  });

  test('takes lines that were written with enough digits', () => {
    expect(takenReadings(drawn(every, rows, 0.4e-6))).toBeDefined();
    expect(takenReadings(drawn(every, 220))).toBeDefined();
    expect(takenReadings(drawn(90, 9000))).toBeDefined();
  });
});
