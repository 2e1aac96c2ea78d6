import type { Levels } from '../movement/levels.js';

/** What the contact and the leads did to the output. */
export type ContactState = 'sound' | 'lifted' | 'supply' | 'ground' | 'foreign';

/** A departure as the decoder found it: bins of the excursion, or the jump between two bins. */
export interface RawEvent {
  readonly kind: 'excursion' | 'jump';
  readonly state: ContactState;
  /** First and last bin off the path; of a jump the last bin before it and the first after it. */
  readonly from: number;
  readonly to: number;
}

export interface Decoded {
  readonly events: readonly RawEvent[];
  /** Bins in which a spring, a throw or a stop was at work: first and last of each stretch. */
  readonly thrown: readonly (readonly [number, number])[];
  readonly cost: number;
}

export interface ContactLevels {
  readonly rest: number | undefined;
  readonly supply: ((level: number) => number) | undefined;
  readonly ground: ((level: number) => number) | undefined;
  /** All that the source and pull-ups can make, on the scale of the span. */
  readonly low: number;
  readonly high: number;
}

interface Node {
  readonly parent: Node | undefined;
  readonly bin: number;
  readonly what: number;
}

const HAND = 0;
const BRISK = 1;
const FALL = 2;
const PLUNGE = 3;
const FLICK = 4;

const SOUND = 0;
const LIFTED = 1;
const SUPPLY = 2;
const GROUND = 3;
const FOREIGN = 4;
const names: readonly ContactState[] = ['sound', 'lifted', 'supply', 'ground', 'foreign'];
/** Between two lines of a jump. */
const SHIFTING = 5;
const JUMP = 9;
/** A spring, a throw or a stop was at work in a bin; not any more. */
const THROWN = 10;
const IN_HAND = 11;

interface Hypothesis {
  l: number;
  s: number;
  a: number;
  b: number;
  c: number;
  cost: number;
  motion: number;
  contact: number;
  last: number;
  since: number;
  node: Node | undefined;
  thrown: number;
  struck: boolean;
  /** Pending history entry, made when it survives. */
  what: number;
}

const blank = (): Hypothesis => ({
  l: 0,
  s: 0,
  a: 0,
  b: 0,
  c: 0,
  cost: 0,
  motion: 0,
  contact: 0,
  last: 0,
  since: 0,
  node: undefined,
  thrown: 0,
  struck: false,
  what: -1,
});

export const P = {
  handQ: 12,
  briskQ: 1500,
  fall: 6000,
  plunge: 32000,
  flick: 5000,
  rateBrisk: 5,
  rateFall: 1,
  ratePlunge: 0.05,
  rateFlick: 0.2,
  rateLift: 0.1,
  rateLead: 0.02,
  rateForeign: 0.03,
  rateJump: 0.01,
  rateKnock: 0.05,
  after: 2,
  knock: 20,
  longestShift: 0.03,
  gap: 0.03,
  impact: 1,
  catch: 5,
  landing: 2,
  restitution: 0.6,
  width: 20,
  worst: 22,
  floor: 0.06,
  beyond: 4,
  stopTolerance: 0.02,
  dwell: 0.1,
  dwellPart: 0.02,
  dwellForeign: 0.005,
  dwellShift: 0.01,
  crackWidth: 0.015,
};

const ln2pi = Math.log(2 * Math.PI);
const lnRoot = ln2pi / 2;

function normalCost(e: number, v: number): number {
  return (e * e) / (2 * v) + Math.log(v) / 2 + lnRoot;
}

/** −ln of the chance that something of a rate begins within a time. */
function begin(rate: number, seconds: number): number {
  return -Math.log(Math.min(0.5, rate * seconds));
}

/** @param faultless Bins in which no contact may break. */
export function decode(
  levels: Levels,
  contact: ContactLevels,
  stops: { closed: number; open: number },
  begin_ = 0,
  n = levels.mean.length,
  faultless: readonly [number, number] = [n, n],
): Decoded {
  const { time, mean, low, high, visible, noise, interval, perBin } = levels;
  const floor = P.floor * visible;
  const R = noise * noise + floor * floor;
  const single = Math.hypot(levels.sampleNoise, floor);
  const expectedExtreme = perBin > 1 ? levels.sampleNoise * (Math.sqrt(2 * Math.log(perBin)) + 1.5) : 0;
  const range = contact.high - contact.low;
  const { rest } = contact;
  let now: Hypothesis[] = [];
  let next: Hypothesis[] = [];
  const pool: Hypothesis[] = [];
  let best = Infinity;
  let bestLast = Infinity;
  const child = (): Hypothesis => pool.pop() ?? blank();
  let bin = 0;
  let y = 0;
  let dt = 0;

  const offer = (h: Hypothesis): void => {
    if (!(h.cost < best + P.worst)) {
      pool.push(h);
      return;
    }
    if (h.contact === SOUND)
      for (let k = 0; k < next.length; k++) {
        const o = next[k]!;
        if (o.contact !== SOUND) continue;
        const near = Math.abs(o.l - h.l) < 0.7 * Math.sqrt(Math.max(o.a, h.a)) && Math.abs(o.s - h.s) < 0.7 * Math.sqrt(Math.max(o.c, h.c));
        if (!near) continue;
        if (o.motion === h.motion ? h.cost >= o.cost : h.cost >= o.cost + 3) {
          pool.push(h);
          return;
        }
        if (o.motion === h.motion ? h.cost < o.cost : h.cost + 3 <= o.cost) {
          pool.push(o);
          next[k] = next[next.length - 1]!;
          next.pop();
          k--;
        }
      }
    if (h.cost < best) best = h.cost;
    if (next.length < P.width) {
      next.push(h);
      return;
    }
    let worst = 0;
    for (let k = 1; k < next.length; k++) if (next[k]!.cost > next[worst]!.cost) worst = k;
    if (next[worst]!.cost > h.cost) {
      pool.push(next[worst]!);
      next[worst] = h;
    } else pool.push(h);
  };

  // Prediction of one hypothesis in one motion: written to these.
  let pl = 0;
  let ps = 0;
  let pa = 0;
  let pb = 0;
  let pc = 0;
  const predict = (h: Hypothesis, motion: number): void => {
    const D = dt;
    let mean_ = 0;
    let q0: number;
    let q1: number;
    let q2: number;
    if (motion <= BRISK) {
      const q = motion === HAND ? P.handQ : P.briskQ;
      q2 = q * D;
      q1 = (q2 * D) / 2;
      q0 = (q2 * D * D) / 3;
    } else {
      const A = motion === FALL ? -P.fall : motion === PLUNGE ? -P.plunge : P.flick;
      mean_ = A / 2;
      const v = (A * A) / 4;
      q2 = v * D * D;
      q1 = (q2 * D) / 2;
      q0 = (q2 * D * D) / 4;
    }
    pl = h.l + h.s * D + (mean_ * D * D) / 2;
    ps = h.s + mean_ * D;
    pa = h.a + 2 * D * h.b + D * D * h.c + q0;
    pb = h.b + D * h.c + q1;
    pc = h.c + q2;
  };

  /** Struck or caught: the speed is another at some moment since the last bin. */
  const knocked = (h: Hypothesis, extra: number): void => {
    predict(h, HAND);
    const v = P.knock * P.knock;
    pa += (v * dt * dt) / 3;
    pb += (v * dt) / 2;
    pc += v;
    sound(h, FALL, extra, -1);
    sound(h, HAND, extra, -1);
  };

  /** After a gap the throttle may be anywhere, and move or not. */
  const resumes = (h: Hypothesis): void => {
    for (const motion of [HAND, FALL]) {
      pl = 0.5;
      ps = 0;
      pa = 0.3;
      pb = 0;
      pc = motion === HAND ? 4 : 900;
      sound(h, motion, motion === HAND ? 0 : 2, h.contact === SOUND ? -1 : SOUND);
    }
  };

  const extremes = (l: number, s: number): number => {
    if (perBin === 1) return 0;
    const allowed = expectedExtreme + (Math.abs(s) * interval) / 2;
    const x = Math.max(high[bin]! - l, l - low[bin]!) - allowed;
    if (x <= 0) return 0;
    const z = x / single;
    return Math.min(30, (z * z) / 2);
  };
  const below = (l: number): number => (l < stops.closed - P.stopTolerance - visible || l > stops.open + P.stopTolerance + visible ? P.beyond : 0);

  /** A sound bin: the prediction above meets the reading. */
  const sound = (h: Hypothesis, motion: number, extra: number, what: number): void => {
    const S = pa + R;
    const e = y - pl;
    const cost = h.cost + extra + normalCost(e, S) + extremes(y, ps) + below(y);
    if (cost >= best + P.worst) return;
    const o = child();
    const ka = pa / S;
    const kb = pb / S;
    o.l = pl + ka * e;
    o.s = ps + kb * e;
    o.a = pa - ka * pa;
    o.b = pb - ka * pb;
    o.c = pc - kb * pb;
    o.cost = cost;
    o.motion = motion;
    o.contact = SOUND;
    o.since = h.since;
    o.last = y;
    o.node = h.node;
    o.thrown = h.thrown;
    o.struck = false;
    o.what = what;
    offer(o);
  };

  /** An abrupt end of a fast motion: the speed is another at some moment since the last bin. */
  const ends = (h: Hypothesis, extra: number, atStop: number, what: number): void => {
    const D = dt;
    const S = pa + R + ((ps * ps + h.s * h.s) * D * D) / 6;
    const middle = pl - (ps * D) / 2;
    const cost = h.cost + extra + normalCost(y - middle, S) + extremes(y, ps) + below(y);
    if (cost >= best + P.worst) return;
    const o = child();
    o.l = y;
    o.a = R;
    o.b = 0;
    const back = atStop ? -0.3 * ps : 0.1 * ps;
    o.s = back;
    o.c = (0.25 * ps) ** 2 + 1;
    o.cost = cost;
    o.motion = atStop ? FALL : HAND;
    o.contact = SOUND;
    o.since = h.since;
    o.last = y;
    o.node = h.node;
    o.thrown = h.thrown;
    o.struck = false;
    o.what = what;
    o.struck = true;
    offer({ ...o });
    if (atStop) {
      const p = child();
      Object.assign(p, o);
      p.motion = HAND;
      p.s = 0;
      p.c = 1 + (0.05 * ps) ** 2;
      offer(p);
    }
  };

  /** Fell unseen and landed, or rebounds, near a stop. */
  const lands = (h: Hypothesis, seconds: number, extra: number, what: number): void => {
    const drop = h.l - stops.closed;
    const reach = Math.max(0, -h.s) * seconds + (P.plunge * seconds * seconds) / 2 + 3 * Math.sqrt(h.a);
    if (drop < 0.05 || reach < drop || !Number.isFinite(stops.closed)) return;
    const height = y - stops.closed;
    const most = P.restitution * P.restitution * drop;
    if (height > most + 0.02 || height < -0.02 - visible) return;
    const scale = 0.02 + visible / 2;
    const density = height < 2 * scale ? 0.5 / (2 * scale) + 0.5 / (most + 0.04) : 0.5 / (most + 0.04);
    const cost = h.cost + extra - Math.log(density) + extremes(y, 0);
    if (cost >= best + P.worst) return;
    const o = child();
    o.l = y;
    o.a = R;
    o.b = 0;
    o.s = 0;
    o.c = (P.restitution * 40 * Math.sqrt(drop)) ** 2;
    o.cost = cost;
    o.motion = FALL;
    o.contact = SOUND;
    o.since = h.since;
    o.last = y;
    o.node = h.node;
    o.thrown = h.thrown;
    o.struck = false;
    o.what = what;
    o.struck = true;
    const p = child();
    Object.assign(p, o);
    p.motion = HAND;
    p.c = 1;
    offer(o);
    offer(p);
  };

  /** The reading of a contact that is not sound, given the path. */
  const offCost = (state: number, path: number, last: number): number => {
    const torn = perBin > 1;
    const seen = torn && Math.abs(low[bin]! - path) > Math.abs(high[bin]! - path) ? low[bin]! : torn ? high[bin]! : y;
    const sigma = 2 * Math.sqrt(R);
    const strange = 1e-3 / range;
    let density = strange;
    const nearLast = Number.isNaN(last) ? 0 : 0.5 * Math.exp(-normalCost(seen - last, 4e-4 + sigma * sigma)) + 0.5 * Math.exp(-normalCost(seen - last, 2.5 * R + 1e-6));
    if (state === SHIFTING) return -Math.log(0.3 / range + 0.5 * nearLast) + dt / P.dwellShift;
    if (state === FOREIGN) return -Math.log(0.5 / range + 0.5 * nearLast) + dt / P.dwellForeign;
    const goal = state === LIFTED ? rest : state === SUPPLY ? contact.supply?.(path) : contact.ground?.(path);
    if (goal === undefined) return Infinity;
    const way = Math.abs(goal - path);
    const s = 0.02 * way + sigma;
    const isFull = Math.abs(seen - goal) < 3 * s;
    if (isFull) return -Math.log(strange + 0.5 * Math.exp(-normalCost(seen - goal, s * s)) + 0.5 * nearLast) + dt / P.dwell;
    const [from, to] = goal < path ? [goal, path] : [path, goal];
    if (seen > from - sigma && seen < to + sigma && Math.abs(seen - path) > 0.4 * visible)
      density += (state === LIFTED ? 0.49 : 0.3) * (0.5 / (way + 2 * sigma) + 0.5 * nearLast);
    return -Math.log(density) + dt / P.dwellPart;
  };

  const leaves = (h: Hypothesis, state: number, extra: number, what: number): void => {
    const cost = h.cost + extra + offCost(state, pl, what >= 0 ? Number.NaN : h.last);
    if (!(cost < best + P.worst)) return;
    const o = child();
    o.l = pl;
    o.s = ps;
    o.a = pa;
    o.b = pb;
    o.c = pc;
    o.cost = cost;
    o.motion = h.motion > BRISK ? h.motion : h.motion;
    o.contact = state;
    o.since = what >= 0 ? bin : h.since;
    o.last = perBin === 1 ? y : Math.abs(low[bin]! - pl) > Math.abs(high[bin]! - pl) ? low[bin]! : high[bin]!;
    o.node = h.node;
    o.thrown = h.thrown;
    o.struck = false;
    o.what = what;
    offer(o);
  };

  const jump = (h: Hypothesis, extra: number): void => {
    if (Math.abs(y - pl) < 0.5 * visible) return;
    const cost = h.cost + extra + Math.log(2) + below(y);
    if (cost >= best + P.worst) return;
    const o = child();
    o.l = y;
    o.s = ps;
    o.a = R;
    o.b = 0;
    o.c = pc + P.after * P.after;
    o.cost = cost;
    o.motion = h.motion > BRISK ? HAND : h.motion;
    o.contact = SOUND;
    o.since = bin;
    o.last = y;
    o.node = h.node;
    o.thrown = h.thrown;
    o.struck = false;
    o.what = JUMP;
    offer(o);
  };

  // The beginning.
  {
    y = mean[begin_]!;
    bin = begin_;
    for (const motion of [HAND, FALL]) {
      const h = blank();
      h.l = y;
      h.a = R;
      h.c = motion === HAND ? 4 : 2500;
      h.motion = motion;
      h.last = y;
      h.cost = motion === HAND ? 0 : 3;
      now.push(h);
    }
    for (const state of [LIFTED, SUPPLY, GROUND, FOREIGN]) {
      const h = blank();
      h.l = 0.5;
      h.a = 0.2;
      h.c = 4;
      h.contact = state;
      h.last = y;
      h.since = begin_;
      h.cost = 7 + offCost(state, 0.5, y);
      h.node = { parent: undefined, bin: begin_, what: state };
      if (h.cost < 1e9 && faultless[0] > begin_) now.push(h);
    }
    best = 0;
  }

  for (bin = begin_ + 1; bin < n; bin++) {
    const mayBreak = bin < faultless[0] || bin > faultless[1];
    y = mean[bin]!;
    dt = Math.max(1e-9, time[bin]! - time[bin - 1]!);
    bestLast = best;
    best = Infinity;
    next.length = 0;
    const eBrisk = begin(P.rateBrisk, dt);
    const eFall = begin(P.rateFall, dt);
    const ePlunge = begin(P.ratePlunge, dt);
    const eFlick = begin(P.rateFlick, dt);
    const eLift = begin(P.rateLift, dt);
    const eLead = begin(P.rateLead, dt);
    const eForeign = begin(P.rateForeign, dt);
    const eKnock = begin(P.rateKnock, dt);
    const isGap = dt > Math.max(P.gap, 3 * interval);
    const eJump = begin(P.rateJump, dt);
    now.sort(byCost);
    for (const h of now) {
      if (h.cost > bestLast + P.worst) continue;
      if (isGap) {
        resumes(h);
        if (mayBreak && h.contact !== SOUND && h.contact !== SHIFTING) {
          predict(h, h.motion);
          leaves(h, h.contact, 0, -1);
        }
        continue;
      }
      if (h.contact === SOUND) {
        predict(h, h.motion);
        const z2 = (y - pl) ** 2 / (pa + R) + 2 * extremes(y, ps);
        sound(h, h.motion, 0, -1);
        const odd = z2 > 5;
        if (h.motion !== HAND) {
          predict(h, HAND);
          sound(h, HAND, 0.5, -1);
        }
        if (!odd) continue;
        if (h.motion !== BRISK) {
          predict(h, BRISK);
          sound(h, BRISK, h.motion === HAND ? eBrisk : 1, -1);
        }
        if (h.motion !== FALL) {
          predict(h, FALL);
          sound(h, FALL, h.motion >= FALL ? 1 : eFall, -1);
        }
        if (h.motion !== PLUNGE) {
          predict(h, PLUNGE);
          sound(h, PLUNGE, h.motion === FALL ? 4 : ePlunge, -1);
        }
        if (h.motion !== FLICK) {
          predict(h, FLICK);
          sound(h, FLICK, eFlick, -1);
        }
        if (h.s < -2) {
          predict(h, h.motion < FALL ? FALL : h.motion);
          const near = pl - stops.closed < 0.05 + Math.abs(ps) * dt;
          if (near) ends(h, P.impact, 1, -1);
        } else if (h.s > 2) {
          predict(h, h.motion);
          const near = stops.open - pl < 0.05 + Math.abs(ps) * dt;
          if (near) ends(h, P.impact, 1, -1);
        }
        knocked(h, Math.abs(h.s) > 2 ? P.catch : eKnock);
        lands(h, dt, (h.motion >= FALL ? 0 : eFall) + P.landing, -1);
        if (!mayBreak) continue;
        predict(h, h.motion);
        leaves(h, LIFTED, eLift, LIFTED);
        if (contact.supply) leaves(h, SUPPLY, eLead, SUPPLY);
        if (contact.ground) leaves(h, GROUND, eLead, GROUND);
        leaves(h, FOREIGN, eForeign, FOREIGN);
        predict(h, h.motion > BRISK ? h.motion : HAND);
        jump(h, eJump);
        leaves(h, SHIFTING, eJump, SHIFTING);
      } else {
        predict(h, h.motion);
        if (mayBreak && (h.contact !== SHIFTING || time[bin]! - time[h.since]! <= Math.max(P.longestShift, 2 * interval))) leaves(h, h.contact, 0, -1);
        if (h.contact === SHIFTING) {
          const unseen = time[bin]! - time[Math.max(0, h.since - 1)]!;
          if (unseen <= 2 * interval || unseen <= 0.004 || Math.abs(h.s) * unseen <= P.crackWidth) jump(h, 0);
          continue;
        }
        const S = pa + R;
        if ((y - pl) ** 2 < 30 * S) sound(h, h.motion, 0.7, SOUND);
        if (h.motion === HAND && h.since >= 0) {
          predict(h, BRISK);
          if ((y - pl) ** 2 < 30 * (pa + R)) sound(h, BRISK, begin(P.rateBrisk, time[bin]! - time[h.since]!) + 0.7, SOUND);
        }
        const unseen = time[bin]! - time[Math.max(0, h.since - 1)]!;
        lands(h, unseen, begin(P.rateFall, unseen) + P.landing, SOUND);
      }
    }
    for (const h of now) pool.push(h);
    now.length = 0;
    const swap = now;
    now = next;
    next = swap;
    for (const h of now) {
      if (h.what >= 0) {
        h.node = { parent: h.node, bin, what: h.what };
        h.what = -1;
      }
      const thrown = h.contact === SOUND && (h.motion >= FALL || h.struck) ? 1 : 0;
      h.struck = false;
      if (thrown !== h.thrown) {
        h.thrown = thrown;
        h.node = { parent: h.node, bin, what: thrown ? THROWN : IN_HAND };
      }
    }
    // Costs are kept small.
  }
  now.sort(byCost);
  const end = now[0];
  if (!end) return { events: [], thrown: [], cost: Number.POSITIVE_INFINITY };
  const events: RawEvent[] = [];
  const thrown: [number, number][] = [];
  let until = n;
  let to = n;
  for (let node = end.node; node; node = node.parent) {
    if (node.what === THROWN) {
      thrown.push([node.bin, until - 1]);
      continue;
    }
    if (node.what === IN_HAND) {
      until = node.bin;
      continue;
    }
    if (node.what === JUMP) {
      let before = node.parent;
      while (before && before.what >= THROWN) before = before.parent;
      const shifting = before?.what === SHIFTING ? before.bin : node.bin;
      events.push({ kind: 'jump', state: 'sound', from: shifting - 1, to: node.bin });
    } else if (node.what === SHIFTING) continue;
    else if (node.what !== SOUND) events.push({ kind: 'excursion', state: names[node.what]!, from: node.bin, to: to - 1 });
    to = node.bin;
  }
  events.reverse();
  thrown.reverse();
  return { events, thrown, cost: end.cost };
}

function byCost(a: Hypothesis, b: Hypothesis): number {
  return a.cost - b.cost;
}

/** What is decoded again to weigh an event reaches this far beyond it, in seconds and in bins at the least. */
const around = { seconds: 0.04, bins: 12 };

/**
 * How much likelier a recording is with an event than with the best explanation that leaves the contact sound meanwhile: the difference
 * of their costs, nats.
 */
export function evidenceOf(
  event: RawEvent,
  levels: Levels,
  contact: ContactLevels,
  stops: { closed: number; open: number },
): number {
  const { time, mean } = levels;
  let from = Math.max(0, event.from - around.bins);
  while (from > 0 && time[event.from]! - time[from]! < around.seconds) from--;
  let to = Math.min(mean.length, event.to + 1 + around.bins);
  while (to < mean.length && time[to]! - time[event.to]! < around.seconds) to++;
  const found = decode(levels, contact, stops, from, to);
  const without = decode(levels, contact, stops, from, to, [event.from, event.to]);
  return without.cost - found.cost;
}
