import type { Seconds } from '../units.js';
import {
  accelerationLasts,
  handAccelerations,
  plungeAcceleration,
  throwAcceleration,
} from './limits.js';

/** What moves the throttle: a hand, a quick hand, its spring, the spring of a light plate, a finger that throws it open. */
export type Motion = 'hand' | 'brisk' | 'fall' | 'plunge' | 'flick';

/**
 * Where a throttle is, how fast it moves and how that changes, spans and seconds, with the variances and covariances of the three. A
 * thrown throttle's acceleration is not followed.
 */
export interface MotionState {
  level: number;
  speed: number;
  acceleration: number;
  levelVariance: number;
  covariance: number;
  speedVariance: number;
  levelAcceleration: number;
  speedAcceleration: number;
  accelerationVariance: number;
}

/** A state that is to be. */
export interface Prediction extends MotionState {
  /** Which way it is thrown, 0 in a hand; and the level that it is behind, thrown or not. */
  thrust: -1 | 0 | 1;
  unthrown: number;
  /** What a reading there costs at the least, nats. */
  least: number;
}

/** At the closed stop, at rest, and known to be. */
export function newMotionState(): MotionState {
  return {
    level: 0,
    speed: 0,
    acceleration: 0,
    levelVariance: 0,
    covariance: 0,
    speedVariance: 0,
    levelAcceleration: 0,
    speedAcceleration: 0,
    accelerationVariance: 0,
  };
}

export function newPrediction(): Prediction {
  return { ...newMotionState(), thrust: 0, unthrown: 0, least: Number.NEGATIVE_INFINITY };
}

export function isThrown(motion: Motion): boolean {
  return motion === 'fall' || motion === 'plunge' || motion === 'flick';
}

/**
 * Moves a state on by a time. A hand's acceleration fades and comes anew (Singer's model); a thrown throttle's lies between none
 * and the most that throws it, one and the same between two readings. Written to `to`.
 *
 * Method: Kalman filter, prediction step (R. E. Kálmán, Trans. ASME J. Basic Eng. 82 (1960)); R. A. Singer, IEEE Trans. Aerosp.
 * Electron. Syst. 6 (1970); both from memory.
 */
export function predict(from: MotionState, motion: Motion, seconds: Seconds, to: Prediction): void {
  to.least = Number.NEGATIVE_INFINITY;
  if (motion === 'hand' || motion === 'brisk') predictHand(from, motion, seconds, to);
  else predictThrown(from, motion, seconds, to);
}

function predictHand(
  from: MotionState,
  motion: 'hand' | 'brisk',
  seconds: Seconds,
  to: Prediction,
): void {
  const { level, speed, acceleration, levelVariance: ll, covariance: lv, speedVariance: vv } = from;
  const { levelAcceleration: la, speedAcceleration: va } = from;
  const own = handAccelerations[motion] ** 2;
  const aa = from.accelerationVariance;
  const t = seconds;
  const step = stepOver(t);
  const { fade, toSpeed: g, toLevel: h } = step;
  to.level = level + speed * t + acceleration * h;
  to.speed = speed + acceleration * g;
  to.acceleration = acceleration * fade;
  const lv1 = lv + t * vv + h * va;
  const la1 = la + t * va + h * aa;
  const va1 = va + g * aa;
  to.levelVariance =
    ll + 2 * t * lv + t * t * vv + 2 * h * (la + t * va) + h * h * aa + own * step.ll;
  to.covariance = lv1 + g * la1 + own * step.lv;
  to.speedVariance = vv + 2 * g * va + g * g * aa + own * step.vv;
  to.levelAcceleration = fade * la1 + own * step.la;
  to.speedAcceleration = fade * va1 + own * step.va;
  to.accelerationVariance = fade * fade * aa + own * step.aa;
  to.thrust = 0;
}

/** What a time does to a state, and adds to its variances for an acceleration of one. */
interface Step {
  readonly seconds: Seconds;
  readonly fade: number;
  readonly toSpeed: number;
  readonly toLevel: number;
  readonly ll: number;
  readonly lv: number;
  readonly la: number;
  readonly vv: number;
  readonly va: number;
  readonly aa: number;
}
/** The last one: bins follow each other evenly. Times are rounded, so that what differs by the clock's own rounding gives one step. */
let lastStep: Step | undefined;

/** Below this part of the time that an acceleration lasts, series of two terms: differences of nearly equal numbers say little there. */
const short = 0.02;

function stepOver(time: Seconds): Step {
  const seconds = Math.fround(time);
  if (lastStep?.seconds === seconds) return lastStep;
  const lasts = accelerationLasts;
  const x = seconds / lasts;
  const fade = Math.exp(-x);
  const square = fade * fade;
  const isShort = x < short;
  lastStep = {
    seconds,
    fade,
    toSpeed: -lasts * Math.expm1(-x),
    toLevel: lasts ** 2 * (isShort ? x ** 2 / 2 - x ** 3 / 6 : x - 1 + fade),
    ll:
      lasts ** 4 *
      (isShort
        ? x ** 5 / 10 - x ** 6 / 18
        : 1 - square + 2 * x + (2 * x ** 3) / 3 - 2 * x * x - 4 * x * fade),
    lv:
      lasts ** 3 *
      (isShort ? x ** 4 / 4 - x ** 5 / 6 : square + 1 - 2 * fade + 2 * x * fade - 2 * x + x * x),
    la: lasts ** 2 * (isShort ? x ** 3 / 3 - x ** 4 / 3 : 1 - square - 2 * x * fade),
    vv: lasts ** 2 * (isShort ? (2 * x ** 3) / 3 - x ** 4 / 2 : 4 * fade - 3 - square + 2 * x),
    va: lasts * (isShort ? x * x - x ** 3 : square + 1 - 2 * fade),
    aa: -Math.expm1(-2 * x),
  };
  return lastStep;
}

function predictThrown(
  from: MotionState,
  motion: 'fall' | 'plunge' | 'flick',
  seconds: Seconds,
  to: Prediction,
): void {
  const acceleration = middleAcceleration(motion);
  const speedAdded = (acceleration * seconds) ** 2;
  const levelAdded = (speedAdded * seconds * seconds) / 4;
  const { level, speed, levelVariance, covariance, speedVariance } = from;
  to.level = level + speed * seconds + (acceleration * seconds * seconds) / 2;
  to.speed = speed + acceleration * seconds;
  to.levelVariance =
    levelVariance + 2 * seconds * covariance + seconds * seconds * speedVariance + levelAdded;
  to.covariance = covariance + seconds * speedVariance + (speedAdded * seconds) / 2;
  to.speedVariance = speedVariance + speedAdded;
  to.acceleration = 0;
  to.levelAcceleration = 0;
  to.speedAcceleration = 0;
  to.accelerationVariance = 0;
  to.thrust = acceleration < 0 ? -1 : 1;
  // Friction and dashpots hold it up, and turn nothing round.
  to.unthrown = speed * acceleration < 0 ? level + speed * seconds : level;
}

/**
 * A thrown throttle that was seen where nothing throws it: a spring pulls one way and a finger pushes the other, so that it went on as it
 * was, or stood. Instead of what was predicted.
 */
export function coast(from: MotionState, seconds: Seconds, to: Prediction): void {
  const added = 2 * seconds * from.covariance + seconds * seconds * from.speedVariance;
  to.speed = to.unthrown === from.level ? 0 : from.speed;
  to.level = to.unthrown;
  to.levelVariance = from.levelVariance + added;
  to.covariance = from.covariance + seconds * from.speedVariance;
  to.speedVariance = from.speedVariance;
}

function middleAcceleration(motion: 'fall' | 'plunge' | 'flick'): number {
  if (motion === 'flick') return throwAcceleration / 2;
  return -(motion === 'fall' ? throwAcceleration : plungeAcceleration) / 2;
}

/** Adds a change of speed, at some moment within a time, to a state that was predicted over it. */
export function strike(state: MotionState, seconds: Seconds, change: number): void {
  const variance = change * change;
  state.levelVariance += (variance * seconds * seconds) / 3;
  state.covariance += (variance * seconds) / 2;
  state.speedVariance += variance;
}
