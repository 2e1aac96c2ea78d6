import { expect, test } from 'vitest';
import type { Levels } from '../movement/levels.js';
import type { Departure } from './departure.js';
import { liftsThere } from './liftsThere.js';

/** Eight seconds at 1 kHz up and down through the travel, two seconds each way. */
const time = Float64Array.from({ length: 8000 }, (_, i) => i / 1000);
const track = time.map((at) => 1 - Math.abs(((at / 2) % 2) - 1));
const [low, high] = [0.4, 0.45];
const passes = [0.8, 3.1, 4.8, 7.1];

/** A recording of the place, with what leaves the track there bin by bin, and its path drawn down to a part of that. */
const recorded = (off: (bin: number) => number) => {
  const isThere = (level: number): boolean => level > low && level < high;
  const mean = track.map((level, i) => (isThere(level) ? level + off(i) : level));
  const levels = { time, interval: 1e-3, mean, visible: 0.02, rest: -0.1 } as Levels;
  const path = track.map((level, i) => (isThere(level) ? level + off(i - (i % 10)) / 2 : level));
  const place = passes.flatMap((start): Departure[] => {
    const from = Math.round(start * 1000) + 40;
    return [
      { kind: 'spike', from, to: from + 1, depth: 0.02 },
      { kind: 'dropout', from: from + 30, to: from + 31, depth: -0.02 },
    ];
  });
  return { levels, path, place };
};

test('a contact lifted most of the time leaves the line over the place to one side alone', () => {
  const { levels, path, place } = recorded((bin) => (bin % 7 === 0 ? 0 : -0.03));
  expect(liftsThere(levels, path, place)).toBe(true);
  expect(liftsThere({ ...levels, rest: undefined }, path, place)).toBe(true);
});

test('nothing lifts a contact away from the rest level', () => {
  const { levels, path, place } = recorded((bin) => (bin % 7 === 0 ? 0 : 0.03));
  expect(liftsThere(levels, path, place)).toBe(false);
  expect(liftsThere({ ...levels, rest: 1.2 }, path, place)).toBe(true);
});

test('the rest level may lie among those of the place, as the path follows it there', () => {
  const { levels, path, place } = recorded((bin) => (bin % 7 === 0 ? 0 : -0.03));
  expect(liftsThere({ ...levels, rest: 0.4 }, path, place)).toBe(true);
});

test('scatter goes to both sides', () => {
  const { levels, path, place } = recorded((bin) => (bin % 3 === 0 ? 0.03 : -0.03));
  expect(liftsThere(levels, path, place)).toBe(false);
});

test('two passes do not tell, nor does a recording without a visible departure', () => {
  const { levels, path, place } = recorded((bin) => (bin % 7 === 0 ? 0 : -0.03));
  expect(liftsThere(levels, path, place.slice(0, 4))).toBe(false);
  expect(liftsThere({ ...levels, mean: track }, path, place)).toBe(false);
});
