import { describe, expect, test } from 'vitest';
import type { Departure } from '../departures/departure.js';
import { expectation } from '../expectation/expectation.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import { throttleScale } from '../movement/throttleScale.js';
import { crossingsOf, stepTravel } from './stepTravel.js';

const expected = expectation(
  {
    source: { volts: 5 },
    limiter: 0,
    sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
    load: {},
  },
  { openPosition: 0.04 },
);
const scale = throttleScale(expected);

/** Opens in a second, rests, closes in a second, again and again, a bin each millisecond; what it reads, and its steps. */
function recording(read: (travel: number, second: number) => number, steps: readonly number[]) {
  const time = Float64Array.from({ length: 8000 }, (_, i) => i / 1000);
  const travelAt = (at: number) => Math.min(1, Math.max(0, 1.5 - Math.abs((at % 4) - 2)));
  const mean = time.map((at) => read(travelAt(at), at));
  const departures = steps.map((at): Departure => {
    const from = Math.round(at * 1000) - 2;
    return { kind: 'step', from, to: from + 3, depth: mean[from + 3]! - mean[from]! };
  });
  const rests = [0, 1.5, 3.5, 5.5, 7.5].map((start) => ({
    start,
    end: start + 0.4,
    level: mean[Math.round(start * 1000) + 200]!,
  }));
  const levels = { time, mean, visible: 0.015 } as Levels;
  const stops = { closed: 0, open: 1 };
  const movement = { rests, stops } as unknown as Movement;
  const crossings = crossingsOf(departures, levels);
  return departures.map((one) => stepTravel(one, crossings, levels, movement, expected, scale));
}

describe('stepTravel', () => {
  test('before a crack the track is what it was, and the open stop is read beyond it', () => {
    // The open stop itself lies 3 % above where it is expected; at 0.6 of the travel the readings rise by 0.06.
    const travels = recording((x) => 1.03 * x + (x > 0.6 ? 0.06 : 0), [1.1, 2.9, 5.1, 6.9]);
    for (const travel of travels) expect(travel).toBeCloseTo(0.6, 2);
  });

  test('where the shift ends at the track’s end the open stop is taken to be where it is expected', () => {
    const travels = recording(
      (x) => Math.min(1.125, x + (x > 0.6 ? 0.3 : 0)),
      [1.1, 2.9, 5.1, 6.9],
    );
    for (const travel of travels) expect(travel).toBeCloseTo(0.6, 2);
  });

  test('a rotor that slipped once shifts both stops from then on', () => {
    const [travel] = recording((x, at) => 1.03 * x + (at >= 5 ? 0.2 : 0), [5]);
    expect(travel).toBeCloseTo(0.5, 2);
  });
});
