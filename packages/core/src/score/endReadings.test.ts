import { describe, expect, test } from 'vitest';
import type { Rest } from '../movement/movement.js';
import { closedReturns, type EndEvidence, endReading, worstReturn } from './endReadings.js';

const rest = (start: number, end: number, level: number): Rest => ({ start, end, level });

/** A signal of 1 V closed and 5 V open, of which only rests and strokes are looked at. */
function evidence(
  rests: readonly Rest[],
  strokes: EndEvidence['movement']['strokes'] = [],
  clip: EndEvidence['quality']['clip'] = {},
): EndEvidence {
  const quality = { interval: 1e-3, resolution: 1e-3, noise: 1e-3, visible: 0.06, clip };
  return {
    quality: quality as EndEvidence['quality'],
    scale: { closed: 1, span: 4 } as EndEvidence['scale'],
    path: Float64Array.of(0, 1),
    movement: { strokes, rests, snaps: [] },
    instrument: 0.01,
  };
}

describe('endReading', () => {
  const rests = [rest(0, 1, 1), rest(3, 4, 1), rest(4.1, 4.2, 0.96)];

  test('is the mean of the outermost rests by their length', () => {
    const reading = endReading('open', { nominal: 5, low: 4.9, high: 5.1 }, evidence(rests));
    expect(reading?.volts).toBeCloseTo(1 + 4 * ((2 * 1 + 0.1 * 0.96) / 2.1), 9);
  });

  test('is a stop where the throttle came back to where it lay at first, or three times to one level', () => {
    const window = { nominal: 1.2, low: 1.1, high: 1.3 };
    const opening = (start: number) =>
      ({ direction: 'opening', start, end: start + 0.5, from: 0, to: 1 }) as const;
    const closing = (start: number) =>
      ({ direction: 'closing', start, end: start + 0.5, from: 1, to: 0 }) as const;
    const strokes = [opening(1), closing(2), opening(3)];
    const isStop = (...found: readonly Rest[]) =>
      endReading('closed', window, evidence(found, strokes))?.atStop;
    expect(isStop(rest(0, 1, 0), rest(2.5, 3, 0.001))).toBe(true);
    expect(isStop(rest(0, 1, 0.03), rest(2.5, 3, 0))).toBe(false);
    expect(isStop(rest(2.5, 3, 0))).toBe(false);
    const thrice = [...strokes, closing(4), opening(5), closing(6)];
    const arrived = [rest(2.5, 3, 0), rest(4.5, 5, 0.001), rest(6.5, 7, 0)];
    expect(endReading('closed', window, evidence(arrived, thrice))?.atStop).toBe(true);
  });

  test('readings of one stop may differ by a step of a quiet recorder', () => {
    const stroke = (direction: 'opening' | 'closing', start: number) =>
      ({ direction, start, end: start + 0.5, from: 0, to: 1 }) as const;
    const strokes = [1, 3, 5].flatMap((at) => [stroke('opening', at), stroke('closing', at + 1)]);
    const rests = [rest(2.5, 3, 0), rest(4.5, 5, 0.01), rest(6.5, 7, 0.01)];
    const of = (resolution: number) => {
      const whole = evidence(rests, strokes);
      const quality = { ...whole.quality, resolution };
      return endReading('closed', { low: 0.5, nominal: 0.6, high: 0.7 }, { ...whole, quality });
    };
    expect(of(0.04)?.atStop).toBe(true);
    expect(of(0.004)?.atStop).toBe(false);
  });

  test('is none where the outermost rests lie at the end of the range, whatever a short one beside them says', () => {
    const clipped = evidence(rests, [], { high: 5 });
    expect(endReading('open', { nominal: 6, low: 5.9, high: 6.1 }, clipped)).toBeUndefined();
    expect(endReading('open', { nominal: 4.9, low: 4.8, high: 5 }, clipped)).toBeDefined();
  });
});

describe('closedReturns', () => {
  const closing = { direction: 'closing', start: 1, end: 2, from: 1, to: 0.02 } as const;
  const window = { low: 0.9, nominal: 1, high: 1.2 };

  test('takes the longest rest of a return, a hanging one too', () => {
    const rests = [rest(2, 2.2, 0.1), rest(2.25, 3, 0.02)];
    const { ways, hanging } = closedReturns(evidence(rests, [closing]), window);
    expect(ways).toEqual([[1.08], []]);
    expect(hanging).toBe(0);
  });

  test('are none where the recorder’s range ends above the closed stop: a hand may have held it anywhere', () => {
    const rests = [rest(2, 2.5, 0.4), rest(4, 4.5, 0.49)];
    const strokes = [closing, { ...closing, start: 3, end: 4, to: 0.49 }];
    const ways = (low: number) => closedReturns(evidence(rests, strokes, { low }), window).ways;
    expect(ways(2.6)).toEqual([[], []]);
    expect(ways(0)[0]).toHaveLength(1);
  });

  test('leaves a rest out that the next opening reached, however long', () => {
    const rests = [rest(1.9, 2.1, 0.02), rest(2.2, 3, 0.13)];
    expect(closedReturns(evidence(rests, [closing]), window).ways).toEqual([[1.08], []]);
  });

  test('counts no rest at which it was held before it closed', () => {
    const rests = [rest(0.5, 1.98, 0.14)];
    const released = { ...closing, start: 1.97, from: 0.142, to: 0.01 };
    expect(closedReturns(evidence(rests, [released]), window).ways).toEqual([[], []]);
  });

  test('counts no step of a hand that closes it in steps, where the recording ends on the way', () => {
    const first = { direction: 'closing', start: 1, end: 2, from: 1, to: 0 } as const;
    const again = { direction: 'closing', start: 4, end: 6, from: 1, to: 0.12 } as const;
    const steps = [rest(4.6, 4.9, 0.5), rest(6, 6.5, 0.12)];
    const returns = (more: readonly Rest[]) =>
      closedReturns(evidence([rest(2, 3, 0), ...more], [first, again]), window).ways[0].length;
    expect(returns(steps)).toBe(1);
    expect(returns(steps.slice(1))).toBe(2);
  });

  test('counts no short rest of a hand that turns round, nor one that the stroke went on from', () => {
    const turned = [rest(1.95, 2.04, 0.08)];
    expect(closedReturns(evidence(turned, [{ ...closing, to: 0.08 }]), window).ways).toEqual([
      [],
      [],
    ]);
    const cut = [rest(1.8, 1.96, 0.074)];
    expect(closedReturns(evidence(cut, [{ ...closing, to: 0 }]), window).ways).toEqual([[], []]);
  });

  test('tells where it lay before it was opened, where that is nearer to the stop than its returns', () => {
    const opening = { direction: 'opening', start: 0.5, end: 1, from: 0, to: 1 } as const;
    const before = (level: number) =>
      closedReturns(evidence([rest(0, 0.5, level), rest(2, 3, 0.04)], [opening, closing]), window)
        .before;
    expect(before(0)).toBeCloseTo(1, 9);
    expect(before(0.05)).toBeUndefined();
  });
});

describe('worstReturn', () => {
  const reading = { volts: 1.02, instrument: 0.003, uncertainty: 0.01, atStop: true };
  const window = { low: 0.9, nominal: 1, high: 1.1 };
  const worst = (bySpring: readonly number[], inner = 1) =>
    worstReturn(reading, { ways: [[1.9], bySpring], hanging: 0 }, window, inner, 0.004);

  test('is that of the spring’s returns that lies farthest beyond the window, with what one reading is known to', () => {
    expect(worst([1.02, 1.3, 1.2])).toEqual({ ...reading, volts: 1.3, uncertainty: 0.005 });
    expect(worst([0.7, 0.8, 1.2], -1)?.volts).toBe(0.7);
  });

  test('is the reading at the stop where each return lies within the window or beyond the stop', () => {
    expect(worst([])).toBe(reading);
    expect(worst([1.09, 0.5])).toBe(reading);
  });
});
