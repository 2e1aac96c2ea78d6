import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../../../../tests/counts.js';
import { drawingEnvelope } from './drawingEnvelope.js';
import { envelopeColumns } from './envelopeColumns.js';

/** Column by column, sample by sample. */
function byHand(
  time: Float64Array,
  values: Float64Array,
  start: number,
  end: number,
  columns: number,
) {
  const edge = (k: number) => start + (end - start) * (k / columns);
  const found: { column: number; low: number; high: number }[] = [];
  for (let k = 0; k < columns; k++) {
    const inside = Array.from(values).filter((_, i) => {
      const at = time[i]!;
      return at >= edge(k) && (k + 1 < columns ? at < edge(k + 1) : at <= end);
    });
    if (inside.length === 0) continue;
    found.push({ column: k, low: Math.min(...inside), high: Math.max(...inside) });
  }
  return found;
}

/** Uneven steps, repeated stamps and gaps. */
const step = fc.oneof(
  { weight: 8, arbitrary: fc.constantFrom(0.001, 0.002) },
  fc.constant(0),
  fc.double({ min: 0, max: 1, noNaN: true }),
);
const recording = fc
  .array(fc.tuple(step, fc.double({ min: -9, max: 9, noNaN: true })), {
    minLength: 1,
    maxLength: 1500,
    size: 'max',
  })
  .map((list) => {
    let at = 0;
    const time = Float64Array.from(list, ([after]) => (at += after));
    return { time, values: Float64Array.from(list, ([, value]) => value) };
  });

test('every column holds what a search through its samples finds, for any stretch', () => {
  const share = fc.double({ min: -0.2, max: 1.2, noNaN: true });
  fc.assert(
    fc.property(recording, share, share, fc.integer({ min: 1, max: 60 }), (data, a, b, columns) => {
      const { time, values } = data;
      const length = time.at(-1)! + 1e-3;
      const [start, end] = [Math.min(a, b) * length, Math.max(a, b) * length];
      fc.pre(start < end);
      const drawn = envelopeColumns(drawingEnvelope(time, values), start, end, columns);
      const list = Array.from(drawn.column, (column, i) => ({
        column,
        low: drawn.low[i]!,
        high: drawn.high[i]!,
      }));
      expect(list).toEqual(byHand(time, values, start, end, columns));
    }),
    { numRuns: 300 * soak },
  );
});

describe('a million samples', () => {
  const count = 1_000_000;
  const time = Float64Array.from({ length: count }, (_, i) => i / 1000);
  const values = time.map((at) => Math.sin(at));
  const spikes = [0, 1, 63, 64, 123_456, 500_000, 999_999];
  for (const at of spikes) values[at] = 7;
  const envelope = drawingEnvelope(time, values);

  test('every spike of one sample stands in its column, and nowhere else, at any number of columns', () => {
    for (const columns of [1, 7, 640, 1920, 100_000]) {
      const { column, high } = envelopeColumns(envelope, 0, 1000, columns);
      const shown = Array.from(column).filter((_, i) => high[i] === 7);
      const wanted = spikes.map((at) => Math.floor((time[at]! * columns) / 1000));
      expect(shown).toEqual([...new Set(wanted)]);
    }
  });

  test('memory: no more than two numbers per shortest block for either bound', () => {
    expect(envelope.low.length).toBeLessThan(2 * Math.ceil(count / 64) + 20);
    expect(envelope.high.length).toBe(envelope.low.length);
    expect(envelope.time).toBe(time);
    expect(envelope.values).toBe(values);
  });

  test('a column costs two blocks of samples and two blocks a level at most', () => {
    let reads = 0;
    const counted = <T extends Float64Array>(of: T): T =>
      new Proxy(of, {
        get(target, key) {
          if (key === 'length') return target.length;
          reads++;
          return Reflect.get(target, key);
        },
      });
    const watched = {
      ...envelope,
      values: counted(values),
      low: counted(envelope.low),
    };
    // Looked through once, when it first comes by.
    envelopeColumns(watched, 0, 1, 1);
    reads = 0;
    envelopeColumns(watched, 0.0101, 999.9, 500);
    expect(reads).toBeLessThan(500 * (2 * 2 * 64 + 2 * 2 * 14 + 20));
  });
});

test('a recording as short as one sample, and a stretch beside it', () => {
  const envelope = drawingEnvelope(Float64Array.of(2), Float64Array.of(5));
  expect(envelopeColumns(envelope, 0, 2, 3)).toEqual({
    column: Uint32Array.of(2),
    low: Float64Array.of(5),
    high: Float64Array.of(5),
  });
  expect(envelopeColumns(envelope, 3, 4, 3).column).toHaveLength(0);
  expect(envelopeColumns(envelope, 0, 1, 3).column).toHaveLength(0);
});

test.each([
  [() => drawingEnvelope(Float64Array.of(0, 1), Float64Array.of(1)), 'length-mismatch', 'values'],
  [
    () => drawingEnvelope(Float64Array.of(0), Float64Array.of(Number.NaN)),
    'not-finite',
    'values[0]',
  ],
  [
    () => drawingEnvelope(Float64Array.of(1, 0), Float64Array.of(1, 1)),
    'time-backwards',
    'time[1]',
  ],
  [() => columnsOf(Number.NaN, 1, 1), 'not-finite', 'start'],
  [() => columnsOf(1, 1, 1), 'out-of-range', 'end'],
  [() => columnsOf(0, 1, 0), 'out-of-range', 'columns'],
])('what is no recording or no stretch is refused (%#)', (act, code, path) => {
  expect(act).toThrow(expect.objectContaining({ name: 'InputError', code, path }));
});

function columnsOf(start: number, end: number, columns: number) {
  const envelope = drawingEnvelope(Float64Array.of(0), Float64Array.of(0));
  return envelopeColumns(envelope, start, end, columns);
}
