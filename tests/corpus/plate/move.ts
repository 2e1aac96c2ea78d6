import type { Seconds, Travel } from '@truesweep/core';
import type { RandomStream } from '../simulator/randomStream.js';
import type { Deed, Manner } from './deed.js';
import { advance, noArm, type Plate, type Throttle } from './throttle.js';

/** The way of an arm: its coupling to the plate, and how steady it is. */
export interface ArmTraits {
  readonly stiffness: number;
  readonly damping: number;
  readonly most: number;
  readonly tremor: { readonly hertz: number; readonly size: Travel };
  /** How much the pace of a turn wanders. */
  readonly unevenness: number;
}

/** What the plate did, on an even grid. */
export interface Motion {
  readonly step: Seconds;
  readonly travel: Float64Array;
  /** Bits of `falling` and `bouncing`. */
  readonly state: Uint8Array;
  readonly rests: readonly EndRest[];
}

/** The plate lay at a stop from one place of the grid to another. */
export interface EndRest {
  readonly at: 'closed' | 'open';
  readonly way: 'start' | 'hand' | 'spring';
  readonly from: number;
  readonly to: number;
}

/** Moves without a hand. */
export const falling = 1;
/** Has met a stop and is not yet still. */
export const bouncing = 2;

const tick: Seconds = 1e-3;
/** An arm's hold on the plate comes and goes within this time. */
const gripTime: Seconds = 0.012;
/** No finger throws the plate faster, travel/s. */
const fastestFlick = 40;

/** The arm of a person, or of a motor. */
export function drawArm(throttle: Throttle, isMotor: boolean, random: RandomStream): ArmTraits {
  const { preload, stiction, friction } = throttle;
  const stiffness = Math.max(
    preload * random.logBetween(8, 40),
    (2 * Math.PI * random.between(6, 15)) ** 2,
    // Stick and slip of at most a percent of travel.
    (2 * (stiction - friction)) / 0.011,
  );
  return {
    stiffness: isMotor ? 2 * stiffness : stiffness,
    damping: 2 * random.between(0.4, 1) * Math.sqrt(stiffness),
    most: random.between(4, 8) * (preload + friction) + 0.04 * stiffness,
    tremor: {
      hertz: random.between(8, 12),
      size: isMotor ? 0 : random.logBetween(0.0004, 0.004),
    },
    unevenness: isMotor ? 0 : random.between(0.05, 0.6),
  };
}

/**
 * Plays deeds one after another.
 *
 * @param closedAt Where the closed stop is for each next return.
 */
export function move(
  throttle: Throttle,
  traits: ArmTraits,
  deeds: readonly Deed[],
  longest: Seconds,
  step: Seconds,
  closedAt: () => Travel,
  random: RandomStream,
): Motion {
  const capacity = Math.ceil(longest / step);
  const travel = new Float64Array(capacity);
  const state = new Uint8Array(capacity);
  const perTick = Math.round(tick / step);
  const first = closedAt();
  const plate: Plate = { travel: first, speed: 0, stop: first, impact: 0 };
  const arm = noArm();
  let length = 0;
  let grip = 0;
  let goal = first;
  let phase = 0;
  let size = 1;
  let wander = 0;
  let still = 0;
  let bounced = 0;
  let isBouncing = false;
  let wasAbove = false;
  let way: EndRest['way'] = 'start';
  let restWay: EndRest['way'] = way;
  let restFrom = 0;
  const rests: EndRest[] = [];

  /** One tick with the hand on its way to a place, or off the plate. */
  const run = (to: Travel, gripping: boolean, byCable = false): void => {
    if (grip === 0) arm.place = plate.travel;
    goal = to;
    grip = gripping ? Math.min(1, grip + tick / gripTime) : 0;
    phase += 2 * Math.PI * traits.tremor.hertz * tick * random.between(0.8, 1.2);
    size += (1 - size) * 0.005 + random.between(-0.05, 0.05);
    const place = to + grip * traits.tremor.size * size * Math.sin(phase);
    arm.speed = (place - arm.place) / tick;
    arm.stiffness = traits.stiffness * grip;
    arm.damping = traits.damping * grip;
    arm.carry = grip * (throttle.preload + throttle.stiffness * plate.travel);
    arm.most = traits.most;
    arm.least = byCable ? 0 : -traits.most;
    for (let i = 0; i < perTick && length < capacity; i++) {
      arm.place += arm.speed * step;
      if (grip > 0 || plate.speed !== 0 || plate.travel > plate.stop || arm.push !== 0)
        advance(throttle, arm, plate, step);
      note();
    }
  };
  const endRest = (to: number): void => {
    if ((to - restFrom) * step < 0.08) return;
    const at = travel[restFrom]! > 0.5 ? 'open' : 'closed';
    rests.push({ at, way: restWay, from: restFrom, to });
  };
  const note = (): void => {
    if (plate.impact > 0.1) {
      isBouncing = true;
      bounced = length;
    }
    plate.impact = 0;
    still = Math.abs(plate.speed) < 1e-3 ? still + 1 : 0;
    if (isBouncing && (still * step > 0.004 || (grip > 0 && (length - bounced) * step > 0.08)))
      isBouncing = false;
    travel[length] = plate.travel;
    state[length] = (grip === 0 && still === 0 ? falling : 0) | (isBouncing ? bouncing : 0);
    if (grip > 0) way = 'hand';
    else if (plate.speed < 0 && plate.travel > plate.stop + 0.03) way = 'spring';
    const isEnd = plate.travel < plate.stop + 0.014 || plate.travel > 0.985;
    if (!isEnd || Math.abs(plate.speed) > 0.03) {
      endRest(length);
      restFrom = length + 1;
    } else if (restFrom === length) restWay = way;
    length++;
    // A return comes to where the stop is by then.
    if (plate.travel > 0.25 && !wasAbove) plate.stop = closedAt();
    wasAbove = plate.travel > 0.25 || (wasAbove && plate.travel > plate.stop + 0.05);
  };
  const settle = (seconds: Seconds): void => {
    const from = length;
    still = 0;
    while (still * step < 0.05 && (length - from) * step < 4 && length < capacity) run(0, false);
    for (let t = 0; t < seconds && length < capacity; t += tick) run(0, false);
  };
  const place = (): Travel => (grip > 0 ? goal : plate.travel);

  for (const deed of deeds) {
    if (length >= capacity) break;
    switch (deed.do) {
      case 'turn': {
        const from = place();
        let part = 0;
        while (part < 1 && length < capacity) {
          wander +=
            -wander * (tick / 0.3) + traits.unevenness * Math.sqrt(tick / 0.15) * random.normal();
          const pace =
            deed.manner === 'even'
              ? 1
              : Math.min(2, deed.seconds / 0.15, Math.max(0.15, 1 + wander));
          part = Math.min(1, part + (tick / deed.seconds) * pace);
          run(from + (deed.to - from) * along(part, deed.manner), true, deed.byCable);
        }
        break;
      }
      case 'hold': {
        let at = place();
        for (let t = 0; t < deed.seconds && length < capacity; t += tick) {
          at += 2e-5 * random.normal();
          run(at, true);
        }
        break;
      }
      case 'release': {
        const rub = (deed.brake ?? 0) * throttle.preload;
        const from = length;
        while (length < capacity && (length - from) * step < 6 * (deed.fade ?? 0)) {
          arm.brake = rub * Math.exp((-(length - from) * step) / deed.fade!);
          run(0, false);
          if (still * step > 0.2) break;
        }
        arm.brake = 0;
        settle(deed.seconds);
        break;
      }
      case 'catch': {
        // Nobody catches a plate that falls by its spring alone in some tens of ms: it slips between the fingers.
        const pull = throttle.preload + throttle.stiffness * plate.travel - throttle.friction;
        const slide = Math.max(0, pull - slipping(random));
        for (let n = 0; plate.travel > deed.below && n < 2000; n++) {
          arm.brake = slide;
          run(0, false);
          if (still * step > 0.1 && n > 100) break;
        }
        // Fingers close until it stands, then hold it there.
        for (let n = 1; plate.speed !== 0 && n < 300; n++) {
          arm.brake = slide + Math.min(1, n / 10) * 4 * (pull + 200);
          run(0, false);
        }
        const at = plate.travel;
        for (let t = 0; t < deed.seconds && length < capacity; t += tick) {
          run(at, true);
          if (grip === 1) arm.brake = 0;
        }
        arm.brake = 0;
        break;
      }
      case 'flick': {
        const { preload, friction, stiffness } = throttle;
        const reach = Math.min(deed.reach, fastestFlick ** 2 / 2 / (preload + friction));
        const up = Math.sqrt(2 * reach * (preload + friction + (stiffness * reach) / 2));
        const ticks = Math.max(2, Math.round(deed.push / tick));
        // A plate too light to fly goes with the hand.
        const follows = reach < 0.3 && deed.reach > 0.3;
        for (let n = 1; follows && n <= 180; n++)
          run(0.9 * Math.min(1, deed.reach) * along(n / 180, 'smooth'), true);
        for (let i = 0; !follows && i < ticks; i++) {
          const rise = Math.sin((Math.PI * (i + 0.5)) / ticks);
          arm.push = rise * ((Math.PI / 2) * (up / (ticks * tick)) + 1.5 * (preload + friction));
          run(0, false);
        }
        arm.push = 0;
        settle(deed.seconds);
        break;
      }
      case 'tap': {
        for (let i = 0; i < deed.times; i++) {
          const weight = 2 * (throttle.preload + throttle.friction) * deed.hop;
          plate.speed = Math.sqrt(weight * random.between(0.3, 1));
          for (let t = 0; t < deed.every && length < capacity; t += tick) run(0, false);
        }
        break;
      }
    }
  }
  endRest(length);
  return { step, travel: travel.subarray(0, length), state: state.subarray(0, length), rests };
}

/** What pulls on a plate that slips between fingers, travel/s². */
const slipping = (random: RandomStream): number => random.logBetween(20, 120);

/** How far a turn has come; speed and acceleration bounded, but for the corners of the even one, which the arm rounds. */
function along(part: number, manner: Manner): number {
  if (manner === 'even') return part;
  if (manner === 'plain') return blended(part, 0.2);
  if (manner === 'smooth') return part ** 3 * (10 + part * (6 * part - 15));
  const steps = 7;
  const done = Math.min(steps - 1, Math.floor(part * steps));
  const within = Math.min(1, (part * steps - done) / 0.6);
  return (done + within ** 3 * (10 + within * (6 * within - 15))) / steps;
}

/** Constant speed with a share of the time at each end to reach it. */
function blended(part: number, share: number): number {
  const speed = 1 / (1 - share);
  if (part < share) return (speed * part ** 2) / (2 * share);
  if (part > 1 - share) return 1 - (speed * (1 - part) ** 2) / (2 * share);
  return speed * (part - share / 2);
}
