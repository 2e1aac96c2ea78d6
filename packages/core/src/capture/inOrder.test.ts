import { describe, expect, test } from 'vitest';
import { inOrder } from './inOrder.js';

describe('inOrder', () => {
  const signal = Float64Array.of(1, 2, 3, 4);

  test('leaves an ordered sweep as it is', () => {
    const sweep = { time: Float64Array.of(0, 1, 1, 3), signal };
    expect(inOrder(sweep)).toEqual({
      sweep,
      disordered: 0,
      strayed: 0,
      restarts: 0,
    });
    expect(inOrder(sweep).sweep).toBe(sweep);
  });

  test('sorts what was written a little late, all columns alike', () => {
    const { sweep, disordered } = inOrder({
      time: Float64Array.of(0, 2, 1, 3),
      signal,
      supply: signal,
    });
    expect(disordered).toBe(1);
    expect([...sweep.time]).toEqual([0, 1, 2, 3]);
    expect([...sweep.signal]).toEqual([1, 3, 2, 4]);
    expect([...sweep.supply!]).toEqual([1, 3, 2, 4]);
  });

  test('tells which stamps it mended', () => {
    const slow = Float64Array.from({ length: 400 }, (_, i) => Math.sin(i / 40));
    const strays = slow.map((_, i) => (i === 200 ? 3 : i * 0.1));
    expect(inOrder({ time: strays, signal: slow })).toMatchObject({ strayed: 1, restarts: 0 });
    const anew = slow.map((_, i) => (i % 200) * 0.1);
    expect(inOrder({ time: anew, signal: slow })).toMatchObject({ strayed: 0, restarts: 1 });
  });

  test('refuses time that begins anew', () => {
    const time = Float64Array.from({ length: 20 }, (_, i) => i % 10);
    expect(() => inOrder({ time, signal: time })).toThrow(
      expect.objectContaining({ code: 'time-backwards', path: 'sweep.time[10]' }),
    );
  });
});
