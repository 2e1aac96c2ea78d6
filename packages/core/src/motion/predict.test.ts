import { describe, expect, test } from 'vitest';
import { accelerationLasts, handAccelerations } from './limits.js';
import { coast, type MotionState, newPrediction, predict } from './predict.js';

/** At rest at the middle, with the spread of acceleration that a hand has at any time. */
function inHand(): MotionState {
  return { ...newPrediction(), level: 0.5, accelerationVariance: handAccelerations.hand ** 2 };
}

function after(seconds: number, steps: number): MotionState {
  let state = inHand();
  for (let i = 0; i < steps; i++) {
    const next = newPrediction();
    predict(state, 'hand', seconds / steps, next);
    state = next;
  }
  return state;
}

describe('predict', () => {
  test.each([0.25e-3, 0.99e-3, 1.01e-3, 5e-3, 0.04, 0.3])(
    'two steps of half of %d s come to the same as one',
    (seconds) => {
      const [one, two] = [after(seconds, 1), after(seconds, 2)];
      for (const key of ['levelVariance', 'covariance', 'speedVariance'] as const)
        expect(two[key] / one[key]).toBeCloseTo(1, 3);
      expect(one.accelerationVariance / handAccelerations.hand ** 2).toBeCloseTo(1, 6);
    },
  );

  test('an acceleration fades, and carries level and speed along until then', () => {
    const state = { ...inHand(), acceleration: 10 };
    const next = newPrediction();
    predict(state, 'hand', 1, next);
    expect(next.acceleration).toBeCloseTo(0, 6);
    expect(next.speed).toBeCloseTo(10 * accelerationLasts, 4);
  });

  test('what no spring threw goes on as it was, or stands: it is nowhere ahead of that', () => {
    const next = newPrediction();
    const rising = { ...inHand(), speed: 10 };
    predict(rising, 'plunge', 1e-3, next);
    expect(next.level).toBeLessThan(next.unthrown);
    coast(rising, 1e-3, next);
    expect(next).toMatchObject({ level: 0.51, speed: 10, speedVariance: 0 });
    const falling = { ...inHand(), speed: -10 };
    predict(falling, 'plunge', 1e-3, next);
    coast(falling, 1e-3, next);
    expect(next).toMatchObject({ level: 0.5, speed: 0 });
    predict(falling, 'flick', 1e-3, next);
    coast(falling, 1e-3, next);
    expect(next).toMatchObject({ level: 0.49, speed: -10 });
  });

  test('what was predicted before makes no difference', () => {
    const seconds = 0.005;
    const [fresh, again] = [newPrediction(), newPrediction()];
    predict(inHand(), 'hand', seconds, fresh);
    predict(inHand(), 'hand', seconds * (1 - 4e-8), newPrediction());
    predict(inHand(), 'hand', 0.04, newPrediction());
    predict(inHand(), 'hand', seconds, again);
    expect(again).toEqual(fresh);
  });
});
