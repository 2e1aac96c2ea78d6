import { gapIntervals } from '../capture/limits.js';
import type { ContactLevels } from '../contact/contactLevels.js';
import {
  rates as breakRates,
  crackWidth,
  dwell,
  edgeTime,
  longestShift,
  longestStuck,
  texture,
} from '../contact/limits.js';
import { type BrokenState, readingCost } from '../contact/readingCost.js';
import {
  accelerationLasts,
  handAccelerations,
  handSpeed,
  impactCost,
  longestImpact,
  oddPlaceCost,
  plungeAcceleration,
  rates,
  restitution,
  sameStop,
  stopScatter,
  strikeSpeed,
  throwAcceleration,
  usualRestitution,
} from '../motion/limits.js';
import {
  coast,
  isThrown,
  type Motion,
  type MotionState,
  newPrediction,
  predict,
  strike,
} from '../motion/predict.js';
import type { Levels } from '../movement/levels.js';
import type { Stops } from '../movement/stopsOf.js';
import { beam, hopeless } from './beam.js';
import { type Change, type Hypothesis, newHypothesis } from './hypothesis.js';

/** Something that a contact did, as the cheapest explanation has it. */
export interface RawEvent {
  readonly kind: 'excursion' | 'jump';
  readonly state: BrokenState;
  /** First and last bin off the path; of a jump the last bin before it and the first one after it. */
  readonly from: number;
  readonly to: number;
}

/** The cheapest explanation of a recording. */
export interface Decoded {
  readonly events: readonly RawEvent[];
  /** First and last bin of each stretch in which a spring, a throw or a stop was at work. */
  readonly thrown: readonly (readonly [number, number])[];
  /** −ln of its likelihood, nats. */
  readonly cost: number;
}

/** Levels between which contacts break on most passes, in one way. */
export interface BadPlace {
  readonly low: number;
  readonly high: number;
  readonly state: BrokenState;
}

/** A part of a recording, and bins in it in which no contact may break. */
export interface Part {
  readonly from: number;
  readonly until: number;
  readonly soundFrom: number;
  readonly soundTo: number;
}

/** From this many variances on, squared, a reading makes other explanations worth a try; noise alone does so once in forty. */
const odd = 5;
/** A recording begins at rest or in movement, anywhere between the stops, and in a fall at half the speed at which a whole one ends, √(2·acceleration). */
const anywhere = { level: 1 / 2, variance: 1 / 12 };
const speedAtFirst = { hand: handSpeed, fall: Math.sqrt(throwAcceleration / 2) };
/** A recording begins in a fall, a contact is sound again, one throw or fault becomes another: as likely as not. A motion rather ends. */
const asLikely = Math.LN2;
const endsMotion = 0.5;
/** −ln of the chance that a contact breaks in a bin at a place where it does on most passes. */
const atBadPlace = 2;
const plungeOfFall = Math.log(rates.fall / rates.plunge);

const broken: readonly BrokenState[] = ['lifted', 'supply', 'ground', 'foreign'];
const motions: readonly Motion[] = ['brisk', 'fall', 'plunge', 'flick'];

/**
 * Finds the cheapest explanation of a recording. Explanations are followed side by side from bin to bin: what moves the throttle
 * (a hand, its spring, a throw, a stop), and whether its contact is sound, broken, or on another line of the track. Each bin costs
 * −ln of the reading's likelihood, each change −ln of its chance. Where a reading is as expected no new explanations are tried.
 *
 * Method: Viterbi's algorithm over switching Kalman filters, with a beam of the cheapest hypotheses (A. J. Viterbi, IEEE Trans. Inf.
 * Theory 13 (1967); multiple-hypothesis tracking, D. B. Reid, IEEE Trans. Autom. Control 24 (1979); from memory).
 *
 * @param stops Levels of the stops, infinite where unknown.
 * @param places Where contacts are known to break; all places are as good as any when left out.
 * @returns Infinite cost where no explanation is left without breaking a contact in the forbidden bins.
 */
export function decode(
  levels: Levels,
  contact: ContactLevels,
  stops: Stops,
  places: readonly BadPlace[] = [],
  part: Part = { from: 0, until: levels.mean.length, soundFrom: Infinity, soundTo: Infinity },
): Decoded {
  const { time, mean, low, high, visible, noise, interval, perBin, sampleNoise, clip } = levels;
  const variance = noise ** 2 + (texture * visible) ** 2;
  const ofSample = Math.hypot(sampleNoise, texture * visible);
  // What noise makes of as many samples.
  const usualExtreme = sampleNoise * Math.sqrt(2 * Math.log(perBin));
  const ahead = newPrediction();
  const hypotheses = beam();
  const { spare, offer, next, release } = hypotheses;
  let bin = part.from;
  let level = mean[bin]!;
  let seconds = interval;

  /** The reading of a bin that goes farthest from a path. */
  const farthest = (path: number): number => {
    if (perBin === 1) return level;
    return path - low[bin]! > high[bin]! - path ? low[bin]! : high[bin]!;
  };

  const isBeyondStops = (place: number): boolean => {
    const beyond = stopScatter + visible;
    return place < stops.closed - beyond || place > stops.open + beyond;
  };

  const isBeyondRange = (place: number): boolean =>
    place <= clip.low + 2 * noise || place >= clip.high - 2 * noise;

  /** What a bin costs besides its mean: samples far from it, and a place beyond the stops. */
  const besides = (speed: number): number => {
    const cost = isBeyondStops(level) ? oddPlaceCost : 0;
    if (perBin === 1) return cost;
    const usual = usualExtreme + (Math.abs(speed) * interval) / 2;
    const excess = Math.max(high[bin]! - level, level - low[bin]!) - usual;
    return excess > 0 ? cost + Math.min(hopeless, excess ** 2 / ofSample ** 2 / 2) : cost;
  };

  /** A new explanation that goes on from an older one. */
  const follow = (from: Hypothesis, cost: number, motion: Motion, change?: Change): Hypothesis => {
    const one = spare();
    one.cost = cost;
    one.motion = motion;
    one.contact = 'sound';
    one.last = level;
    one.beforeLast = Number.NaN;
    one.since = from.since;
    one.struck = false;
    one.thrown = from.thrown;
    one.turnedAt = from.turnedAt;
    one.history = from.history;
    one.change = change;
    return one;
  };

  /** Sets where the throttle is to a reading, with a speed that is known so well. */
  const setTo = (one: Hypothesis, speed: number, speedVariance: number): void =>
    setState(one, { level, variance }, speed, speedVariance, one.motion);

  /** Predicts where a throttle is that is seen. Where nothing threw it, a throw explains no better than one that did. */
  const foresee = (from: Hypothesis, motion: Motion): void => {
    predict(from, motion, seconds, ahead);
    if ((level - ahead.unthrown) * ahead.thrust >= 0) return;
    ahead.least = normalCost(level - ahead.level, ahead.levelVariance + variance);
    coast(from, seconds, ahead);
  };

  /** Sound contact: the state predicted in `ahead` meets the reading (Kalman filter, update step). */
  const meet = (from: Hypothesis, motion: Motion, extra: number, change?: Change): void => {
    const sum = ahead.levelVariance + variance;
    const error = level - ahead.level;
    const misses = Math.max(normalCost(error, sum), ahead.least);
    const cost = from.cost + extra + misses + besides(ahead.speed);
    if (cost >= hypotheses.limit) return;
    const one = follow(from, cost, motion, change);
    const [gain, speedGain] = [ahead.levelVariance / sum, ahead.covariance / sum];
    one.level = ahead.level + gain * error;
    one.speed = ahead.speed + speedGain * error;
    one.levelVariance = ahead.levelVariance * (1 - gain);
    one.covariance = ahead.covariance * (1 - gain);
    one.speedVariance = ahead.speedVariance - speedGain * ahead.covariance;
    if (isThrown(motion)) {
      one.acceleration = 0;
      one.levelAcceleration = 0;
      one.speedAcceleration = 0;
      one.accelerationVariance = 0;
    } else {
      const accelerationGain = ahead.levelAcceleration / sum;
      one.acceleration = ahead.acceleration + accelerationGain * error;
      one.levelAcceleration = ahead.levelAcceleration * (1 - gain);
      one.speedAcceleration = ahead.speedAcceleration - accelerationGain * ahead.covariance;
      one.accelerationVariance =
        ahead.accelerationVariance - accelerationGain * ahead.levelAcceleration;
    }
    offer(one);
  };

  const isOdd = (): boolean =>
    (level - ahead.level) ** 2 / (ahead.levelVariance + variance) + 2 * besides(ahead.speed) > odd;

  /** A thrown throttle meets a stop at some moment since the last bin, and rebounds or stays. */
  const hitStop = (from: Hypothesis): void => {
    const { speed } = ahead;
    const spread = ((speed ** 2 + from.speed ** 2) * seconds ** 2) / 6;
    const middle = ahead.level - (speed * seconds) / 2;
    const error = normalCost(level - middle, ahead.levelVariance + variance + spread);
    const cost = from.cost + impactCost + error + besides(speed);
    if (cost >= hypotheses.limit) return;
    const rebound = follow(from, cost, 'fall');
    rebound.struck = true;
    setTo(rebound, -usualRestitution * speed, 1 + (speed / 4) ** 2);
    offer(rebound);
    const stays = follow(from, cost, 'hand');
    stays.struck = true;
    setTo(stays, 0, 1 + (speed / 20) ** 2);
    offer(stays);
  };

  /** It fell within a time, unseen, and has landed on the closed stop, or rebounds from it. */
  const land = (from: Hypothesis, unseen: number, extra: number, change?: Change): void => {
    const drop = from.level - stops.closed;
    const within = unseen + interval;
    const reach =
      Math.max(0, -from.speed) * within +
      (plungeAcceleration * within ** 2) / 2 +
      3 * Math.sqrt(from.levelVariance);
    if (!(drop >= sameStop && reach >= drop)) return;
    const height = level - stops.closed;
    const highest = restitution ** 2 * drop;
    if (height > highest + stopScatter || height < -stopScatter - visible) return;
    const low = 2 * stopScatter + visible;
    const density = 0.5 / (highest + 2 * stopScatter) + (height < low ? 0.5 / low : 0);
    const cost = from.cost + extra + impactCost - Math.log(density) + besides(0);
    if (cost >= hypotheses.limit) return;
    for (const motion of ['fall', 'hand'] as const) {
      const one = follow(from, cost, motion, change);
      one.struck = true;
      setTo(one, 0, motion === 'hand' ? 1 : (40 * restitution) ** 2 * drop);
      offer(one);
    }
  };

  /** The throttle moves on as predicted, unseen. */
  const goOn = (one: Hypothesis): void => {
    one.level = ahead.level;
    one.speed = ahead.speed;
    one.levelVariance = ahead.levelVariance;
    one.covariance = ahead.covariance;
    one.speedVariance = ahead.speedVariance;
    one.acceleration = ahead.acceleration;
    one.levelAcceleration = ahead.levelAcceleration;
    one.speedAcceleration = ahead.speedAcceleration;
    one.accelerationVariance = ahead.accelerationVariance;
  };

  /** A broken contact: the throttle moves on unseen. Beyond its stops a lead's own level would be its path, and to be broken likelier than sound. */
  const breakOff = (from: Hypothesis, state: BrokenState, extra: number, isNew: boolean): void => {
    const isFeed = state === 'supply' || state === 'ground';
    if (isNew && isFeed && isBeyondStops(from.level)) return;
    const seen = farthest(ahead.level);
    const last = isNew ? Number.NaN : from.last;
    const onward = isNew ? Number.NaN : 2 * from.last - from.beforeLast;
    const reading = { seen, last, ahead: onward, path: ahead.level, variance, visible };
    const cost = from.cost + extra + readingCost(state, reading, contact, seconds);
    if (!(cost < hypotheses.limit)) return;
    const one = follow(from, cost, from.motion, isNew ? state : undefined);
    goOn(one);
    one.contact = state;
    one.last = seen;
    one.beforeLast = from.last;
    if (isNew) one.since = bin;
    offer(one);
  };

  /** The signal stays where it was while the throttle moves on. */
  const stick = (from: Hypothesis, extra: number, isNew: boolean): void => {
    const last = isNew ? from.level : from.last;
    const isAtStop = last < stops.closed + stopScatter || last > stops.open - stopScatter;
    if (isNew && isAtStop) return;
    const own = isNew ? variance + from.levelVariance : variance;
    const reading = {
      seen: level,
      last,
      ahead: Number.NaN,
      path: ahead.level,
      variance: own,
      visible,
    };
    const cost = from.cost + extra + readingCost('stuck', reading, contact, seconds) + besides(0);
    if (!(cost < hypotheses.limit)) return;
    const one = follow(from, cost, from.motion, isNew ? 'stuck' : undefined);
    goOn(one);
    one.contact = 'stuck';
    const stays = Math.abs(level - last) < 3 * Math.sqrt(variance);
    one.last = stays ? (3 * last + level) / 4 : last;
    if (isNew) one.since = bin;
    offer(one);
  };

  /** The path goes on along another line. */
  const jump = (from: Hypothesis, extra: number): void => {
    if (Math.abs(level - ahead.level) < visible / 2) return;
    const cost = from.cost + extra + Math.log(contact.range) + besides(ahead.speed);
    if (cost >= hypotheses.limit) return;
    const one = follow(from, cost, isThrown(from.motion) ? 'hand' : from.motion, 'jump');
    setTo(one, ahead.speed, ahead.speedVariance + handSpeed ** 2);
    one.since = bin;
    offer(one);
  };

  /** After a gap the throttle may be anywhere, and move or not. */
  const resume = (from: Hypothesis): void => {
    for (const motion of ['hand', 'fall'] as const) {
      setState(ahead, anywhere, 0, speedAtFirst[motion] ** 2, motion);
      ahead.least = Number.NEGATIVE_INFINITY;
      const change = from.contact === 'sound' ? undefined : 'sound';
      meet(from, motion, motion === 'hand' ? 0 : asLikely, change);
    }
  };

  /** Beyond its range a recorder shows no speed: what comes back from there may be falling already. */
  const comeBack = (from: Hypothesis): void => {
    const { speed, speedVariance } = from;
    from.speed = 0;
    for (const motion of ['hand', 'fall'] as const) {
      from.speedVariance = speedAtFirst[motion] ** 2;
      predict(from, motion, seconds, ahead);
      meet(from, motion, motion === 'hand' ? 0 : asLikely);
    }
    from.speed = speed;
    from.speedVariance = speedVariance;
  };

  const beginningOf = (motion: Motion, after: Motion): number => {
    if (motion === 'brisk') return after === 'hand' ? beginning(rates.brisk, seconds) : asLikely;
    if (motion === 'fall') return isThrown(after) ? asLikely : beginning(rates.fall, seconds);
    if (motion === 'plunge')
      return after === 'fall' ? plungeOfFall : beginning(rates.plunge, seconds);
    return beginning(rates.flick, seconds);
  };

  /** Predicts with a motion that begins now: its acceleration may be any of its own. */
  const predictNew = (from: Hypothesis, motion: Motion): void => {
    const { accelerationVariance } = from;
    if (motion !== from.motion && (isThrown(from.motion) || motion === 'brisk'))
      from.accelerationVariance += accelerationOf(motion);
    foresee(from, motion);
    from.accelerationVariance = accelerationVariance;
  };

  /** A stop, a hand that catches it, or a stop that lets it go again changes the speed at once. */
  const meetStop = (from: Hypothesis): void => {
    const isFast = Math.abs(from.speed) > handSpeed;
    const thrown = isThrown(from.motion);
    if (isFast) {
      predict(from, from.speed < 0 && !thrown ? 'fall' : from.motion, seconds, ahead);
      const height = from.speed < 0 ? ahead.level - stops.closed : stops.open - ahead.level;
      if (height < sameStop + Math.abs(ahead.speed) * seconds) hitStop(from);
    }
    const since = from.turnedAt < 0 ? Infinity : time[bin]! - time[from.turnedAt]!;
    if (isFast && from.thrown && since >= longestImpact) {
      predictNew(from, 'hand');
      ahead.level -= (from.speed * seconds) / 4;
      ahead.speed /= 2;
      strike(ahead, seconds, from.speed / 2);
      meet(from, 'fall', oddPlaceCost);
      meet(from, 'hand', oddPlaceCost);
    }
    const lies = from.level < stops.closed + sameStop || from.level > stops.open - sameStop;
    if (lies && !from.thrown && since <= longestImpact) {
      predictNew(from, 'hand');
      strike(ahead, seconds, strikeSpeed);
      meet(from, 'fall', impactCost);
    }
    land(from, seconds, thrown ? 0 : beginning(rates.fall, seconds));
  };

  /** −ln of the chance that a contact breaks: seldom, but for a place that is known to be bad. */
  const breaking = (state: BrokenState): number => {
    const seldom = beginning(breakRates[state], seconds);
    for (const { low, high, state: known } of places)
      if (known === state && ahead.level >= low && ahead.level <= high)
        return Math.min(seldom, atBadPlace);
    return seldom;
  };

  const followSound = (from: Hypothesis, mayBreak: boolean): void => {
    const thrown = isThrown(from.motion);
    foresee(from, from.motion);
    const tryOthers = isOdd();
    meet(from, from.motion, 0);
    if (from.motion !== 'hand') {
      predictNew(from, 'hand');
      meet(from, 'hand', endsMotion);
    }
    // Between far samples nothing that a fall may have done is odd, a landing neither.
    if (tryOthers || thrown) meetStop(from);
    if (!tryOthers) return;
    for (const motion of motions) {
      if (motion === from.motion) continue;
      predictNew(from, motion);
      meet(from, motion, beginningOf(motion, from.motion));
    }
    if (!thrown) {
      predict(from, from.motion, seconds, ahead);
      strike(ahead, seconds, handSpeed);
      meet(from, from.motion, beginning(rates.bend, seconds));
      if (from.level < stops.closed + sameStop && level > ahead.level) {
        predict(from, 'hand', seconds, ahead);
        strike(ahead, seconds, strikeSpeed);
        meet(from, 'fall', beginning(rates.flick, seconds));
      }
    }
    if (!mayBreak) return;
    predict(from, from.motion, seconds, ahead);
    for (const state of broken) breakOff(from, state, breaking(state), true);
    if (!thrown) {
      stick(from, breaking('stuck'), true);
      predictNew(from, 'hand');
    }
    jump(from, breaking('shifting'));
    breakOff(from, 'shifting', breaking('shifting'), true);
  };

  const followBroken = (from: Hypothesis, state: BrokenState, mayBreak: boolean): void => {
    predict(from, from.motion, seconds, ahead);
    const since = time[from.since]!;
    const unseen = time[bin]! - time[Math.max(0, from.since - 1)]!;
    if (state === 'shifting') {
      if (mayBreak && time[bin]! - since <= Math.max(longestShift, 2 * interval))
        breakOff(from, state, 0, false);
      else if (mayBreak) for (const other of broken) breakOff(from, other, asLikely, true);
      const isEdge = unseen <= Math.max(edgeTime, 2 * interval);
      if (isEdge || Math.abs(from.speed) * unseen <= crackWidth) jump(from, 0);
      return;
    }
    if (state === 'stuck' && time[bin]! - since > Math.max(longestStuck, 2 * interval)) {
      const one = follow(
        from,
        from.cost + asLikely + normalCost(level - from.last, 2 * variance),
        'hand',
        'stood',
      );
      setTo(one, 0, 1);
      offer(one);
      return;
    }
    if (mayBreak && state === 'stuck') stick(from, 0, false);
    else if (mayBreak) breakOff(from, state, 0, false);
    // What was caught up would have been seen.
    if (state === 'stuck' && Math.abs(level - from.last) < visible / 2) return;
    meet(from, from.motion, asLikely, 'sound');
    if (from.motion === 'hand') {
      predictNew(from, 'brisk');
      const begins = beginning(rates.brisk, time[bin]! - since);
      meet(from, 'brisk', begins + asLikely, 'sound');
    }
    land(from, unseen, beginning(rates.fall, unseen), 'sound');
  };

  const begin = (): void => {
    for (const motion of ['hand', 'fall'] as const) {
      const one = follow(newHypothesis(), motion === 'hand' ? 0 : asLikely, motion);
      setTo(one, 0, speedAtFirst[motion] ** 2);
      offer(one);
    }
    if (part.soundFrom <= part.from) return;
    for (const state of broken) {
      const reading = {
        seen: level,
        last: level,
        ahead: Number.NaN,
        path: anywhere.level,
        variance,
        visible,
      };
      const lasts = state === 'foreign' ? dwell.brief : dwell.open;
      const begins = -Math.log(breakRates[state] * lasts);
      const cost = begins + readingCost(state, reading, contact, 0);
      const one = follow(newHypothesis(), cost, 'hand');
      setState(one, anywhere, 0, speedAtFirst.hand ** 2, 'hand');
      one.contact = state;
      one.since = part.from;
      one.history = { before: undefined, bin: part.from, change: state };
      offer(one);
    }
  };

  begin();
  for (bin = part.from + 1; bin < part.until; bin++) {
    level = mean[bin]!;
    seconds = Math.max(1e-9, time[bin]! - time[bin - 1]!);
    const now = next();

    const most = (now[0]?.cost ?? 0) + hopeless;
    const mayBreak = bin < part.soundFrom || bin > part.soundTo;
    const comesBack = isBeyondRange(mean[bin - 1]!) && !isBeyondRange(level);
    const isGap = seconds > Math.max(accelerationLasts, gapIntervals * interval);
    for (const one of now) {
      if (one.cost > most) break;
      const { contact: state } = one;
      if (isGap) {
        resume(one);
        if (!mayBreak || state === 'sound' || state === 'shifting' || state === 'stuck') continue;
        predict(one, one.motion, seconds, ahead);
        breakOff(one, state, 0, false);
      } else if (state === 'sound') {
        if (comesBack) comeBack(one);
        followSound(one, mayBreak);
      } else followBroken(one, state, mayBreak);
    }
    release(now);
    for (const one of hypotheses.kept) remember(one, bin);
  }
  const best = next()[0];
  if (!best) return { events: [], thrown: [], cost: Number.POSITIVE_INFINITY };
  return { ...told(best, part.until), cost: best.cost };
}

/** Adds what a bin changed to the history of an explanation that was kept. */
function remember(one: Hypothesis, bin: number): void {
  if (one.change !== undefined) {
    one.history = { before: one.history, bin, change: one.change };
    one.change = undefined;
  }
  const thrown = one.contact === 'sound' && (isThrown(one.motion) || one.struck);
  one.struck = false;
  if (thrown === one.thrown) return;
  one.thrown = thrown;
  one.turnedAt = bin;
  one.history = { before: one.history, bin, change: thrown ? 'thrown' : 'in-hand' };
}

/** What an explanation's history says, in order of time. */
function told({ history }: Hypothesis, until: number): Omit<Decoded, 'cost'> {
  const events: RawEvent[] = [];
  const thrown: [number, number][] = [];
  let inHand = until;
  let sound = until;
  let stood = false;
  for (let node = history; node; node = node.before) {
    const { change, bin } = node;
    if (change === 'thrown') thrown.push([bin, inHand - 1]);
    else if (change === 'in-hand') inHand = bin;
    else {
      if (change === 'jump')
        events.push({ kind: 'jump', state: 'shifting', from: shiftsFrom(node) - 1, to: bin });
      else if (
        change !== 'sound' &&
        change !== 'shifting' &&
        change !== 'stood' &&
        !(change === 'stuck' && stood)
      )
        events.push({ kind: 'excursion', state: change, from: shiftsFrom(node), to: sound - 1 });
      sound = bin;
      stood = change === 'stood';
    }
  }
  return { events: events.reverse(), thrown: thrown.reverse() };
}

/** The bin from which on a jump was under way. */
function shiftsFrom({ before, bin }: NonNullable<Hypothesis['history']>): number {
  let node = before;
  while (node && (node.change === 'thrown' || node.change === 'in-hand')) node = node.before;
  return node?.change === 'shifting' ? node.bin : bin;
}

/** Places a state within a variance, with a speed that is known so well and any acceleration of its motion. */
function setState(
  state: MotionState,
  { level, variance }: { readonly level: number; readonly variance: number },
  speed: number,
  speedVariance: number,
  motion: Motion,
): void {
  state.level = level;
  state.speed = speed;
  state.acceleration = 0;
  state.levelVariance = variance;
  state.covariance = 0;
  state.speedVariance = speedVariance;
  state.levelAcceleration = 0;
  state.speedAcceleration = 0;
  state.accelerationVariance = accelerationOf(motion);
}

/** Variance of the acceleration of what was just taken in hand. */
function accelerationOf(motion: Motion): number {
  return motion === 'hand' || motion === 'brisk' ? handAccelerations[motion] ** 2 : 0;
}

/** −ln of the density of a normal deviate. */
function normalCost(error: number, variance: number): number {
  return error ** 2 / (2 * variance) + Math.log(2 * Math.PI * variance) / 2;
}

/** −ln of the chance that something of a rate begins within a time, even odds at the most. */
export function beginning(rate: number, seconds: number): number {
  return -Math.log(Math.min(0.5, rate * seconds));
}
