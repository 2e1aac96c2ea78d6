import type { ContactLevels } from '../contact/contactLevels.js';
import { unseenHand } from '../motion/limits.js';
import type { Levels } from '../movement/levels.js';
import type { Stops } from '../movement/stopsOf.js';
import { findThrows, type Throw } from '../movement/throws.js';
import { type BadPlace, decode, type RawEvent } from '../path/decode.js';
import { evidenceOf } from '../path/evidenceOf.js';
import { runningMedian } from '../statistics/runningMedian.js';
import { badPlaces, everyPlace } from './badPlaces.js';
import { bridge } from './bridge.js';
import type { Departure, Excursion, Span } from './departure.js';
import { findDips } from './dips.js';
import { joined } from './joined.js';
import { kindByPlace } from './kindByPlace.js';
import { kindOfJump } from './kindOfDeparture.js';
import { levelsApart } from './levelsApart.js';
import { passesOf } from './passesOf.js';
import { softEdge } from './softEdge.js';
import { withoutPairs } from './withoutPairs.js';

/** The path that the throttle drew, what threw it, and what left its path. */
export interface PathAndDepartures {
  /** Level bin by bin, with a bridge over what left the path. */
  readonly path: Float64Array;
  readonly throws: readonly Throw[];
  readonly departures: readonly Departure[];
  /** What is rather a departure than none, and not surely. */
  readonly doubtful: readonly Departure[];
}

/**
 * A departure goes beyond the visible one by this part: rounding to whole steps may add one of the three that are visible to it,
 * or take it off. Halfway between what 0.7 of three becomes at the most and what 1.4 of them is at the least. Scatter is many, of which
 * the largest counts from this part of it on.
 */
const margin = 0.05;
const ofRough = 0.9;

/** A departure is told from eighty to one on, nats; where another is three thousand times likelier than anything without it, from even odds. */
const leastEvidence = 4.4;
const sureEvidence = 8;
/** A hand may stop and go on: a dead spot is told from three million to one on. */
const leastOfStand = 15;
/** What is at one place, this near to each other in level, speaks for each other. */
const onePlace = 0.03;

/**
 * Finds what left the throttle's path: the cheapest explanation of the recording, its events with what speaks for each, and beside
 * them what stands out only over longer than a few samples (smooth dips at one place).
 */
export function findDepartures(
  levels: Levels,
  contact: ContactLevels,
  stops: Stops,
): PathAndDepartures {
  const { mean, visible, interval } = levels;
  const path = mean.slice();
  const own = { ...levels, mean: path };
  const excursions: Excursion[] = [];
  const jumps: Departure[] = [];
  const { places, events } = decodeWithPlaces(levels, contact, stops);
  for (const event of events)
    if (event.state === 'stuck') {
      const { below, above } = bridge(levels, path, event);
      const depth = -below > above ? below : above;
      const evidence = evidenceOf(event, levels, contact, stops, places);
      const { from, to } = event;
      jumps.push({ kind: 'dead-spot', from, to, depth, evidence });
    } else if (event.kind === 'excursion')
      excursions.push({
        ...bridge(levels, path, event),
        evidence: evidenceOf(event, levels, contact, stops, places),
      });
  for (const event of events) {
    if (event.kind !== 'jump') continue;
    const { kind, start } = kindOfJump(own, event.from, event.to);
    const soft = kind === 'step' ? softEdge(own, event.from, event.to) : undefined;
    const evidence = evidenceOf(event, levels, contact, stops, places);
    if (soft) excursions.push({ ...soft, evidence });
    else {
      const depth = mean[event.to]! - mean[event.from]!;
      jumps.push({ kind, from: start, to: event.to, depth, evidence });
    }
  }
  const throws = findThrows(levels, path);
  const fast = new Uint8Array(mean.length);
  for (const { start, settled } of throws) fast.fill(1, Math.max(0, start - 1), settled + 1);
  const half = Math.max(1, Math.floor(unseenHand(visible) / interval));
  const smooth = half > 1 ? runningMedian(path, half) : path;
  const skip = fast.slice();
  for (const { from, to, below, above } of excursions)
    if (Math.max(-below, above) >= visible) skip.fill(1, from, to + 1);
  for (const { from, to } of jumps) skip.fill(1, Math.max(0, from - half), to + half + 1);
  excursions.push(...findDips(own, path, stops, skip));
  const inOrder = (a: Span, b: Span): number => a.from - b.from;
  const departures = [...joined(levels, path, excursions.sort(inOrder)), ...jumps].sort(inOrder);
  const named = kindByPlace(levels, path, departures, fast);
  const isSure = isSureAmong(named, path, fast, levels);
  // Whatever its place makes of it, what seemed to stand may be a hand that did.
  const sure = named.filter((one, i) => isSure(one, departures[i]!.kind === 'dead-spot'));
  for (let i = 0; i < path.length; i++) if (!fast[i]) path[i] = smooth[i]!;
  const isDoubtful = (one: Departure, i: number): boolean =>
    !sure.includes(one) && departures[i]!.kind !== 'dead-spot' && ownEvidence(one) > 0;
  return { path, throws, departures: sure, doubtful: named.filter(isDoubtful) };
}

/** Places known to be bad from what all passes show, and the events of the cheapest explanation with them known. */
function decodeWithPlaces(
  levels: Levels,
  contact: ContactLevels,
  stops: Stops,
): { readonly places: readonly BadPlace[]; readonly events: readonly RawEvent[] } {
  const possible = withoutPairs(decode(levels, contact, stops, everyPlace).events, levels);
  if (possible.length === 0) return { places: [], events: [] };
  const places = badPlaces(possible, levels, contact, stops);
  return { places, events: withoutPairs(decode(levels, contact, stops, places).events, levels) };
}

/** Whether a departure is surely one: by itself, or by what all passes over its place show together. */
function isSureAmong(
  departures: readonly Departure[],
  path: Float64Array,
  fast: Uint8Array,
  { time, visible }: Levels,
): (one: Departure, seemsToStand: boolean) => boolean {
  const isVisible = ({ depth }: Departure): boolean => Math.abs(depth) >= visible * (1 + margin);
  const pooled = (one: Departure): number => {
    const isThere = (other: Departure): boolean =>
      other.kind === one.kind && levelsApart(path, other, one) <= onePlace;
    const passes = passesOf(departures.filter(isThere).filter(isVisible), time);
    if (passes.length < 2) return 0;
    return passes.reduce((sum, pass) => sum + Math.max(0, ...pass.map(ownEvidence)), 0);
  };
  const isSettled = departures.some((one) => ownEvidence(one) >= sureEvidence);
  return (one, seemsToStand) => {
    if (one.kind === 'rough') return Math.abs(one.depth) >= visible * ofRough;
    if (!isVisible(one)) return false;
    const least = seemsToStand ? leastOfStand : isSettled ? 0 : leastEvidence;
    if (ownEvidence(one) >= least) return true;
    // A rebound near a bad place is a rebound still, unless it is as sure itself.
    return (!fast[one.from] || ownEvidence(one) >= sureEvidence) && pooled(one) >= sureEvidence;
  };
}

function ownEvidence({ evidence = Number.POSITIVE_INFINITY }: Departure): number {
  return evidence;
}
