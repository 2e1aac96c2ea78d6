import { describe, expect, test } from 'vitest';
import type { ContactLevels } from '../contact/contactLevels.js';
import { plainLevels } from '../movement/plainLevels.js';
import { decode } from '../path/decode.js';
import { badPlaces, everyPlace } from './badPlaces.js';

const contact: ContactLevels = { rest: -0.1, supply: undefined, ground: undefined, range: 1.5 };
const stops = { closed: 0, open: 1 };
const noise = 3e-3;

/** Eight strokes of 1 s at 200 samples a second, each with a single sample 0.05 low where it is asked for. */
function placesOf(dips: readonly (readonly [stroke: number, level: number])[]) {
  const time = Float64Array.from({ length: 1600 }, (_, i) => i * 5e-3);
  const mean = time.map((at) => 0.02 + 0.96 * (1 - Math.abs((at % 2) - 1)));
  for (const [stroke, level] of dips) {
    const part = (level - 0.02) / 0.96;
    mean[Math.round(200 * (stroke + (stroke % 2 === 0 ? part : 1 - part)))]! -= 0.05;
  }
  const levels = { ...plainLevels(time, mean), noise, sampleNoise: noise, visible: 0.03 };
  const { events } = decode(levels, contact, stops, everyPlace);
  return badPlaces(events, levels, contact, stops);
}

describe('badPlaces', () => {
  test('a place that shows in one way on several passes is bad, whichever way it is gone over', () => {
    const [place, ...others] = placesOf([0, 1, 3, 4, 6].map((stroke) => [stroke, 0.2]));
    expect(others).toEqual([]);
    expect(place).toMatchObject({ state: 'lifted' });
    expect(place!.low).toBeLessThan(0.2);
    expect(place!.high).toBeGreaterThan(0.2);
  });

  test('what lies here and there makes no place bad, nor does a single pass', () => {
    expect(placesOf([[0, 0.2]])).toEqual([]);
    const scattered = [0.2, 0.3, 0.42, 0.55, 0.2, 0.68, 0.8].map((level, i) => [i, level] as const);
    expect(placesOf(scattered)).toEqual([]);
  });

  /** The same strokes, each a fifth lower below a level of its own. */
  function jumpsOf(below: (stroke: number) => number) {
    const time = Float64Array.from({ length: 1600 }, (_, i) => i * 5e-3);
    const mean = time.map((at) => {
      const level = 0.02 + 0.96 * (1 - Math.abs((at % 2) - 1));
      return level < below(Math.floor(at)) ? 0.8 * level : level;
    });
    const levels = { ...plainLevels(time, mean), noise, sampleNoise: noise, visible: 0.03 };
    return badPlaces(
      decode(levels, contact, stops, everyPlace).events,
      levels,
      contact,
      stops,
    ).filter(({ state, low, high }) => state === 'shifting' && low < 0.5 && high > 0.4);
  }

  test('a crack shows whichever way it is gone over; what goes one way alone was thrown', () => {
    expect(jumpsOf(() => 0.5)).toHaveLength(1);
    expect(jumpsOf((stroke) => (stroke % 2) * 0.5)).toEqual([]);
  });

  test('jumps that begin all over a stretch are of no crack', () => {
    expect(jumpsOf((stroke) => 0.42 + 0.018 * stroke)).toEqual([]);
  });

  test('a recording without events has none', () => {
    expect(placesOf([])).toEqual([]);
  });
});
