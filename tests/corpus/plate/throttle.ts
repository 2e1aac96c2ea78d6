import type { Seconds } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';

/**
 * A plate on its shaft, every torque over its inertia and the angle of its whole travel: accelerations in travel/s². Ranges: small
 * plates, from memory; motor-driven ones about Loh, Thanom, Pyko and Lee, Engineering 5 (2013) 587–600.
 */
export interface Throttle {
  readonly preload: number;
  /** Of the return spring, 1/s². */
  readonly stiffness: number;
  /** Viscous damping, 1/s. */
  readonly viscous: number;
  readonly friction: number;
  /** What must be overcome to break away. */
  readonly stiction: number;
  /** More friction against closing, toward the stop: a slow return may end a little above it. */
  readonly seat: { readonly below: number; readonly friction: number };
  /** Damps only closing, below a travel. */
  readonly dashpot: { readonly below: number; readonly viscous: number };
  readonly closedStop: Stop;
  readonly openStop: Stop;
}

/** A rigid stop has no frequency; a soft one is a spring and damper on the plate, rad/s. */
export interface Stop {
  readonly restitution: number;
  readonly frequency: number;
}

/** What the arm does to the plate at an instant. */
export interface Arm {
  /** Of the coupling between hand and plate, 1/s² and 1/s; 0 when it has let go. */
  stiffness: number;
  damping: number;
  place: number;
  speed: number;
  /** Held against the spring without any lag. */
  carry: number;
  least: number;
  most: number;
  /** Friction of fingers on the shaft. */
  brake: number;
  /** A push of its own, as of a flick. */
  push: number;
}

export interface Plate {
  travel: number;
  speed: number;
  /** Where the closed stop is just now. */
  stop: number;
  /** Speed of the last impact; 0 once it was noted. */
  impact: number;
}

export const noArm = (): Arm => ({
  stiffness: 0,
  damping: 0,
  place: 0,
  speed: 0,
  carry: 0,
  least: Number.NEGATIVE_INFINITY,
  most: Number.POSITIVE_INFINITY,
  brake: 0,
  push: 0,
});

/** One step of J·θ″ = −T₀ − k·θ − B·θ′ − T_f·sign θ′ + arm + stops, semi-implicit, with friction that can hold. */
export function advance(throttle: Throttle, arm: Arm, plate: Plate, step: Seconds): void {
  const soft = Math.max(throttle.closedStop.frequency, throttle.openStop.frequency);
  const near = plate.travel < plate.stop + 0.01 || plate.travel > 0.99;
  const parts = soft > 0 && near ? Math.min(64, Math.ceil((soft * step) / 0.12)) : 1;
  for (let i = 0; i < parts; i++) advanceOnce(throttle, arm, plate, step / parts);
}

function advanceOnce(throttle: Throttle, arm: Arm, plate: Plate, step: Seconds): void {
  const { travel, speed, stop } = plate;
  let force = -throttle.preload - throttle.stiffness * travel;
  force += stopForce(throttle.closedStop, stop - travel, -speed, throttle.preload, plate);
  force -= stopForce(throttle.openStop, travel - 1, speed, 0, plate);
  if (arm.stiffness > 0) {
    const held =
      arm.carry + arm.stiffness * (arm.place - travel) + arm.damping * (arm.speed - speed);
    force += Math.min(arm.most, Math.max(arm.least, held));
  }
  force += arm.push;
  const { dashpot, seat } = throttle;
  const damping =
    throttle.viscous + (speed < 0 && travel < stop + dashpot.below ? dashpot.viscous : 0);
  const above = travel - stop;
  const closes = speed < 0 || (speed === 0 && force < 0);
  const seated =
    closes && above < seat.below ? seat.friction * Math.min(1, 1 - above / seat.below) : 0;
  const sliding = throttle.friction + seated + arm.brake;
  const holding = throttle.stiction + seated + arm.brake;
  // A rigid stop bears whatever presses the plate onto it.
  const borne =
    (throttle.closedStop.frequency === 0 && travel <= stop && force < 0) ||
    (throttle.openStop.frequency === 0 && travel >= 1 && force > 0);
  let next: number;
  if (speed === 0) {
    if (Math.abs(force) <= holding || borne) return;
    next = (force - Math.sign(force) * sliding) * step;
  } else {
    next = (speed + force * step) / (1 + damping * step) - Math.sign(speed) * sliding * step;
    if (next * speed <= 0 && Math.abs(force) <= holding) next = 0;
  }
  const to = travel + next * step;
  plate.travel = to;
  plate.speed = next;
  if (throttle.closedStop.frequency === 0 && to < stop && next < 0)
    rebound(plate, throttle.closedStop, stop, (travel - stop) / (travel - to), force, step);
  else if (throttle.openStop.frequency === 0 && to > 1 && next > 0)
    rebound(plate, throttle.openStop, 1, (1 - travel) / (to - travel), force, step);
}

/** Pushes only: a plate does not stick to its stop. Its spring presses it in to where travel is counted from. */
function stopForce(
  { frequency, restitution }: Stop,
  depth: number,
  inward: number,
  preload: number,
  plate: Plate,
): number {
  if (frequency === 0) return 0;
  const into = depth + preload / frequency ** 2;
  if (into <= 0) return 0;
  if (inward > plate.impact) plate.impact = inward;
  const log = -Math.log(restitution);
  const share = log / Math.hypot(Math.PI, log);
  return Math.max(0, frequency ** 2 * into + 2 * share * frequency * inward);
}

function rebound(
  plate: Plate,
  { restitution }: Stop,
  at: number,
  part: number,
  force: number,
  step: Seconds,
): void {
  plate.impact = Math.max(plate.impact, Math.abs(plate.speed));
  const back = -restitution * plate.speed;
  // Hops shorter than a step are a rest.
  const rests = Math.abs(back) < Math.abs(force) * step * 1.5;
  plate.speed = rests ? 0 : back;
  plate.travel = at + plate.speed * step * (1 - Math.min(1, Math.max(0, part)));
}

/** How long the plate falls shut by itself. */
export function fallTime(throttle: Throttle, from: number, step: Seconds): Seconds {
  const plate: Plate = { travel: from, speed: 0, stop: 0, impact: 0 };
  const arm = noArm();
  let steps = 0;
  while (plate.impact === 0 && plate.travel > 0 && steps * step < 2) {
    advance(throttle, arm, plate, step);
    steps++;
  }
  return steps * step;
}

/** Falls from 8 ms to 0.3 s, longer with a dashpot. */
export function drawThrottle(random: RandomStream): Throttle {
  for (;;) {
    const throttle = drawAny(random);
    const fall = fallTime({ ...throttle, dashpot: { below: 0, viscous: 0 } }, 1, 1e-4);
    if (fall >= 0.008 && fall <= 0.3 && fallTime(throttle, 1, 1e-4) < 0.9) return throttle;
  }
}

const angle = 1.4;

function drawAny(random: RandomStream): Throttle {
  const torque = random.logBetween(0.1, 0.45);
  const friction = random.logBetween(0.03, 0.55);
  const wanted = random.logBetween(0.008, 0.25);
  const ideal = (torque * (1 - friction) * wanted ** 2) / (2 * angle);
  const inertia = Math.min(2.2e-3, Math.max(8e-6, ideal));
  const preload = torque / (inertia * angle);
  const landing = Math.sqrt(2 * preload * (1 - friction));
  // A soft stop gives way by less than a percent of travel and pushes back within a millisecond or more.
  const frequency = landing / random.between(0.005, 0.01);
  const isSoft = frequency < 3000 && random.chance(0.7);
  const stop = (): Stop => ({
    restitution: isSoft ? random.between(0.2, 0.4) : random.between(0.2, 0.6),
    frequency: isSoft ? frequency : 0,
  });
  // A slow return ends at most so far above the stop.
  const short = random.chance(0.5) ? random.between(0.001, 0.008) : 0;
  const below = 0.02;
  return {
    preload,
    stiffness: preload * random.between(0, 0.7),
    viscous: random.logBetween(0.02, 1) / wanted,
    friction: preload * friction,
    stiction: preload * friction * random.between(1, 1.5),
    seat: {
      below,
      friction: short > 0 ? (preload * (1 - friction)) / (1 - short / below) : 0,
    },
    dashpot: random.chance(0.2)
      ? {
          below: random.between(0.05, 0.25),
          viscous: (preload * (1 - friction)) / random.between(0.4, 3),
        }
      : { below: 0, viscous: 0 },
    closedStop: stop(),
    openStop: stop(),
  };
}
