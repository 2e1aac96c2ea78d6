import { type ContactLevels, decode, evidenceOf, type RawEvent } from '../path/decode.js';
import type { Departure, Excursion } from './departure.js';
import { type FastMove, findFastMoves } from './fastMoves.js';
import { joined } from './joined.js';
import { kindByPlace } from './kindByPlace.js';
import { runningMedian } from '../statistics/runningMedian.js';
import { unseenHand } from './mechanics.js';
import { allowance } from './departures.js';
import { findExcursions } from './excursions.js';
import { withoutLoneOutliers } from './withoutLoneOutliers.js';
import { kindOfJump } from './kindOfDeparture.js';
import { softEdge } from './softEdge.js';
import { findStandstills } from './standstills.js';
import type { Levels } from './levels.js';

export function decodedDepartures(
  levels: Levels,
  closed: number,
  draft: Float64Array,
  contact: ContactLevels,
): { path: Float64Array; fastMoves: readonly FastMove[]; departures: readonly Departure[] } {
  const { mean, low, high, time, visible } = levels;
  const open = levels.still.length ? Math.max(...levels.still) : Infinity;
  const stops = { closed: levels.still.some((level) => level < 0.25) ? Math.min(...levels.still) : -Infinity, open: open > 0.8 ? open : Infinity };
  const decoded = decode(levels, contact, stops);
  const events = withoutPairs(decoded.events, levels);
  (globalThis as any).DUMP?.({ levels, contact, stops, decoded });
  const path = mean.slice();
  const n = mean.length;
  const excursions: Excursion[] = [];
  const jumps: Departure[] = [];
  for (const e of events) {
    if (e.kind === 'jump') continue;
    const a = e.from - 1;
    const b = e.to + 1;
    const start = a >= 0 ? mean[a]! : mean[Math.min(n - 1, b)]!;
    const end = b < n ? mean[b]! : start;
    const t0 = time[Math.max(0, a)]!;
    const D = time[Math.min(n - 1, b)]! - t0 || 1;
    const bridge = hermite(start, end, slopeAt(levels, a, -1) * D, slopeAt(levels, b, 1) * D);
    let below = 0;
    let above = 0;
    let swings = 0;
    let side = 0;
    let deepest = e.from;
    let most = 0;
    for (let i = e.from; i <= e.to; i++) {
      path[i] = bridge((time[i]! - t0) / D);
      const dn = low[i]! - path[i]!;
      const up = high[i]! - path[i]!;
      if (dn < below) below = dn;
      if (up > above) above = up;
      const far = Math.max(-dn, up);
      if (far > most) { most = far; deepest = i; }
      const s = dn < -0.7 * visible ? -1 : up > 0.7 * visible ? 1 : 0;
      if (s && side && s !== side) swings++;
      if (s) side = s;
    }
    const evidence = evidenceOf(e, levels, contact, stops);
    excursions.push({ from: e.from, to: e.to, below, above, level: path[deepest]!, swings, evidence });
  }
  for (const e of events) {
    if (e.kind !== 'jump') continue;
    const own = { ...levels, mean: path };
    const { kind, start, stands } = kindOfJump(own, e.from, e.to);
    const soft = kind === 'step' ? softEdge(own, e.from, e.to) : undefined;
    if (soft) {
      excursions.push(soft);
      continue;
    }
    jumps.push({ kind, from: start, to: e.to, depth: mean[e.to]! - mean[e.from]!, stands, evidence: evidenceOf(e, levels, contact, stops) });
  }
  const fastMoves = findFastMoves({ ...levels, mean: path });
  const fast = new Uint8Array(n);
  const half = Math.max(1, Math.floor(unseenHand(visible) / levels.interval));
  for (const { start, settled } of fastMoves) fast.fill(1, Math.max(0, start - 1), settled + 1);
  const thrown = Uint8Array.from(fast);
  for (const [from, to] of decoded.thrown) thrown.fill(1, Math.max(0, from - half), Math.min(n, to + half + 1));
  const smoothed = half > 1 ? runningMedian(path, half) : path;
  const bridged = { ...levels, mean: path, low: levels.low === levels.mean ? path : low, high: levels.high === levels.mean ? path : high };
  const taken = new Uint8Array(n);
  for (const one of [...excursions, ...jumps]) taken.fill(1, Math.max(0, one.from - half), Math.min(n, one.to + half + 1));
  const smooth = half > 1 ? smoothed : withoutLoneOutliers(time, path);
  const gradual = findExcursions(bridged, smooth, allowance(levels, smooth, thrown)).filter(({ from, to }) => { for (let i = from; i <= to; i++) if (thrown[i] || fast[i] || taken[i]) return false; return true; }).filter((one) => !turnsRound(levels, path, one));
  excursions.push(...gradual);
  excursions.sort((p, q) => p.from - q.from);
  const skip = Uint8Array.from(fast);
  for (const one of excursions) if (Math.max(-one.below, one.above) >= visible) skip.fill(1, one.from, one.to + 1);
  const stands = findStandstills(levels, path, skip).map((one): Departure => ({ kind: 'dead-spot', from: one.from, to: one.to, depth: one.depth, stands: true }));
  const isApart = (one: { from: number; to: number }) => !stands.some(({ from, to }) => one.from <= to && one.to >= from);
  for (const list of [jumps, excursions] as { from: number; to: number }[][]) { const kept = list.filter(isApart); list.length = 0; list.push(...kept); }
  jumps.push(...stands);
  const departures = [...joined(levels, path, excursions), ...jumps].sort((p, q) => p.from - q.from);
  const named = kindByPlace(levels, path, departures, fast);
  const least = levels.interval < slowSampling ? leastEvidence : leastEvidenceOfSlow;
  const isSure = ({ kind, depth, evidence = Infinity }: Departure): boolean => kind === 'rough' || (Math.abs(depth) >= visible * 1.05 && evidence >= least);
  for (let i = 0; i < n; i++) if (!fast[i]) path[i] = smoothed[i]!;
  return { path, fastMoves, departures: named.filter(isSure) };
}

/** A departure is told where it is so much likelier than what mechanics can do, nats; twenty to one. */
const leastEvidence = 3;
/** From this interval on a turn of the throttle between samples looks like one: three thousand to one. */
const slowSampling = 4e-3;
const leastEvidenceOfSlow = 8;

/** What goes away and comes back this much faster than it moves beside it is no turn of the throttle. */
const ofTurn = 0.35;

/** Whether an excursion is where the throttle turns round, at a stop or in a hand: it comes and goes as fast as it moves beside it. */
function turnsRound({ time }: Levels, path: Float64Array, { from, to, below, above }: Excursion): boolean {
  const seconds = time[to]! - time[from]!;
  const reach = Math.max(3, to - from);
  const speed = (a: number, b: number): number => {
    const [i, k] = [Math.max(0, a), Math.min(path.length - 1, b)];
    return k > i ? (path[k]! - path[i]!) / (time[k]! - time[i]!) : 0;
  };
  const before = speed(from - reach, from);
  const after = speed(to, to + reach);
  return before * after < 0 && (Math.abs(before - after) / 2) * seconds > ofTurn * Math.max(-below, above);
}

const slopeOver = 0.005;

/** Speed of the recording beside a bin, before it or after it. */
function slopeAt({ time, mean }: Levels, bin: number, side: 1 | -1): number {
  let other = bin;
  while (other + side >= 0 && other + side < mean.length && (Math.abs(time[other]! - time[bin]!) < slopeOver || Math.abs(other - bin) < 3)) other += side;
  if (bin < 0 || bin >= mean.length || other === bin) return 0;
  return (mean[other]! - mean[bin]!) / (time[other]! - time[bin]!);
}

function hermite(start: number, end: number, s0: number, s1: number): (x: number) => number {
  const slack = 0.25 * Math.abs(end - start) + 0.02;
  const [low, high] = [Math.min(start, end) - slack, Math.max(start, end) + slack];
  return (x) => {
    const x2 = x * x;
    const x3 = x2 * x;
    const y = (2 * x3 - 3 * x2 + 1) * start + (x3 - 2 * x2 + x) * s0 + (3 * x2 - 2 * x3) * end + (x3 - x2) * s1;
    return Math.min(high, Math.max(low, y));
  };
}

/** Jumps that lead away and back soon are one excursion. */
function withoutPairs(events: readonly RawEvent[], { mean, time, visible }: Levels): RawEvent[] {
  const out: RawEvent[] = [];
  for (let i = 0; i < events.length; i++) {
    const one = events[i]!;
    out.push(one);
    if (one.kind !== 'jump') continue;
    let sum = 0;
    let most = 0;
    for (let k = i; k < events.length; k++) {
      const next = events[k]!;
      if (k > i && (time[next.from]! - time[events[k - 1]!.to]! > 0.06 || time[next.to]! - time[one.from]! > 0.25)) break;
      if (next.kind !== 'jump') continue;
      sum += mean[next.to]! - mean[next.from]!;
      most = Math.max(most, Math.abs(sum));
      if (k === i || Math.abs(sum) > Math.max(0.25 * most, 0.7 * visible)) continue;
      out.pop();
      out.push({ kind: 'excursion', state: 'lifted', from: one.from + 1, to: next.to - 1 });
      i = k;
      break;
    }
  }
  return out;
}
