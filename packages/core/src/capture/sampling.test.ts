import { describe, expect, test } from 'vitest';
import { checkRecorder } from './checkRecorder.js';
import { sampleTimes } from './sampleTimes.js';
import { chanceToLeave, type Sampling, samplesOver, takenEvery } from './sampling.js';

const interval = 1e-3;

/** How many samples in full a dropout leaves that begins at a moment, counted one by one. */
function left(sampling: Sampling, begins: number, seconds: number): number {
  let count = 0;
  for (let k = -20; k < 40; k++) {
    const [from, to] = [(k - 1) * interval, k * interval];
    const isIn = {
      picked: begins <= to && to < begins + seconds,
      averaged: begins <= from && to <= begins + seconds,
      'peak-kept': from < begins + seconds && begins < to,
      interpolated: k % 4 === 0 && begins <= to && to < begins + seconds,
    }[sampling];
    if (isIn) count++;
  }
  return count;
}

const phases = Array.from({ length: 400 }, (_, i) => (i + 0.5) * 1e-5);

describe.each(['picked', 'averaged', 'peak-kept', 'interpolated'] as const)(
  '%s samples',
  (sampling) => {
    const recorder = { sampling, sampledEvery: 4 * interval };
    const every = takenEvery(interval, recorder);
    const shortest = samplesOver(2, sampling) * every;

    test('the shortest dropout leaves two in full in every phase, a shorter one does not', () => {
      const least = (seconds: number) =>
        Math.min(...phases.map((begins) => left(sampling, begins, seconds)));
      expect(least(shortest * (1 + 1e-9))).toBe(2);
      expect(least(shortest * 0.98)).toBe(1);
    });

    test('the chance is the part of the phases that leave so many', () => {
      const time = Float64Array.from({ length: 5000 }, (_, i) => i * interval);
      for (const part of [0.6, 0.85, 1.2]) {
        const seconds = part * shortest;
        const counted = phases.filter((begins) => left(sampling, begins, seconds) >= 2).length;
        const chance = chanceToLeave(
          samplesOver(2, sampling),
          seconds,
          time,
          sampleTimes(time),
          every,
        );
        expect(chance).toBeCloseTo(counted / phases.length, 1);
      }
    });
  },
);

test('a recorder that interpolates says how often it sampled, and any other word is refused', () => {
  const wrong = (recorder: object) => {
    try {
      checkRecorder(recorder);
    } catch (error) {
      return error;
    }
    return undefined;
  };
  expect(wrong({ sampling: 'interpolated' })).toMatchObject({
    code: 'missing',
    path: 'recorder.sampledEvery',
  });
  expect(wrong({ sampling: 'interpolated', sampledEvery: 0 })).toMatchObject({ code: 'zero' });
  expect(wrong({ sampling: 'held' })).toMatchObject({ path: 'recorder.sampling' });
  expect(wrong({ sampling: 'interpolated', sampledEvery: 0.01 })).toBeUndefined();
});
