import type { Seconds } from '../units.js';
import {
  briskWander,
  fallAcceleration,
  flickAcceleration,
  handWander,
  knockSpeed,
  plungeAcceleration,
} from './limits.js';

/** What moves the throttle: a hand, a quick hand, its spring, the spring of a light plate, a finger that throws it open. */
export type Motion = 'hand' | 'brisk' | 'fall' | 'plunge' | 'flick';

/** Where a throttle is and how fast it moves, spans and spans per second, with the variances of both and their covariance. */
export interface MotionState {
  level: number;
  speed: number;
  levelVariance: number;
  covariance: number;
  speedVariance: number;
}

export function isThrown(motion: Motion): boolean {
  return motion === 'fall' || motion === 'plunge' || motion === 'flick';
}

/**
 * Moves a state on by a time. A hand's acceleration is white noise (an integrated Wiener process); a thrown throttle's lies between none
 * and the most that throws it, one and the same between two readings. Written to `to`.
 *
 * Method: Kalman filter, prediction step (R. E. Kálmán, Trans. ASME J. Basic Eng. 82 (1960); from memory).
 */
export function predict(
  from: MotionState,
  motion: Motion,
  seconds: Seconds,
  to: MotionState,
): void {
  let acceleration = 0;
  let levelAdded: number;
  let speedAdded: number;
  if (motion === 'hand' || motion === 'brisk') {
    speedAdded = (motion === 'hand' ? handWander : briskWander) * seconds;
    levelAdded = (speedAdded * seconds * seconds) / 3;
  } else {
    acceleration = middleAcceleration(motion);
    speedAdded = (acceleration * seconds) ** 2;
    levelAdded = (speedAdded * seconds * seconds) / 4;
  }
  const { level, speed, levelVariance, covariance, speedVariance } = from;
  to.level = level + speed * seconds + (acceleration * seconds * seconds) / 2;
  to.speed = speed + acceleration * seconds;
  to.levelVariance =
    levelVariance + 2 * seconds * covariance + seconds * seconds * speedVariance + levelAdded;
  to.covariance = covariance + seconds * speedVariance + (speedAdded * seconds) / 2;
  to.speedVariance = speedVariance + speedAdded;
}

function middleAcceleration(motion: 'fall' | 'plunge' | 'flick'): number {
  if (motion === 'flick') return flickAcceleration / 2;
  return -(motion === 'fall' ? fallAcceleration : plungeAcceleration) / 2;
}

/** Adds a knock at some moment within a time to a state that was predicted over it. */
export function knock(state: MotionState, seconds: Seconds): void {
  const variance = knockSpeed * knockSpeed;
  state.levelVariance += (variance * seconds * seconds) / 3;
  state.covariance += (variance * seconds) / 2;
  state.speedVariance += variance;
}
