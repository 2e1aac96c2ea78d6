import { logFactorial } from '../statistics/logFactorial.js';
import type { ContactEvent, ContactEvidence } from './contactEvent.js';
import { findSpots } from './spots.js';
import { sharesOf, weighCauses } from './weighCauses.js';

/** One this many times as probable as the other settles the question; and the chance with which that shall be reached. */
const wantedRatio = 20;
const wantedChance = 0.9;
const mostPasses = 30;
/** More departures than this that settle nothing are no question of passes. */
const mostEvents = 12;
/** Places far from each other, in order (a golden-ratio sequence). */
const goldenRatio = 0.618033988749895;

/**
 * How many more passes would, with a probability of 90 %, make one of track and connection 20 times as probable as the other whichever
 * of the two it is, were they like those recorded.
 *
 * @returns 0 where it is so already, nothing where 30 passes would not do or a dozen departures have not done.
 */
export function morePasses(evidence: ContactEvidence): number | undefined {
  const { events, passes } = evidence;
  if (passes.length === 0 || events.length === 0) return undefined;
  const now = ratio(evidence);
  if (now >= wantedRatio || now <= 1 / wantedRatio) return 0;
  if (events.length > mostEvents) return undefined;
  const enough = leastFrom(
    1,
    mostPasses,
    (more) =>
      chanceIfTrack(more, evidence) >= wantedChance &&
      chanceIfConnection(more, evidence) >= wantedChance,
  );
  return enough <= mostPasses ? enough : undefined;
}

/** The least whole number from which on something holds, by bisection; the one after the last where it never does. */
function leastFrom(first: number, last: number, holds: (number: number) => boolean): number {
  let [low, high] = [first, last + 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (holds(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** How many times as probable as the connection the track is. */
function ratio(evidence: ContactEvidence): number {
  const { track, connection } = sharesOf(weighCauses(evidence));
  return track / Math.max(connection, 1e-300);
}

/** If a spot is worn: the chance that enough of the further passes show it again. */
function chanceIfTrack(more: number, evidence: ContactEvidence): number {
  const spot = findSpots(evidence).toSorted((a, b) => b.seen - a.seen)[0];
  if (!spot) return 0;
  const showing = (spot.seen + 1) / (spot.passes + 2);
  const again = (seen: number) => Array.from({ length: seen }, () => spot.travel);
  const least = leastFrom(
    0,
    more,
    (seen) => furtherRatio(more, again(seen), evidence) >= wantedRatio,
  );
  let chance = 0;
  for (let seen = least; seen <= more; seen++)
    chance += Math.exp(
      logFactorial(more) -
        logFactorial(seen) -
        logFactorial(more - seen) +
        seen * Math.log(showing) +
        (more - seen) * Math.log(1 - showing),
    );
  return chance;
}

/** If a connection breaks off at random: the chance that what the further passes show is spread enough. */
function chanceIfConnection(more: number, evidence: ContactEvidence): number {
  const { events, passes } = evidence;
  const expected = (events.length / passes.length) * more;
  const spread = (count: number) =>
    Array.from({ length: count }, (_, i) => ((i + 1) * goldenRatio) % 1);
  const least = leastFrom(
    0,
    3 * more + 10,
    (count) => furtherRatio(more, spread(count), evidence) <= 1 / wantedRatio,
  );
  let chance = 1;
  for (let count = 0; count < least; count++)
    chance -= Math.exp(count * Math.log(expected) - expected - logFactorial(count));
  return chance;
}

/** The ratio if further passes, like those recorded, had brought departures at these travels. */
function furtherRatio(more: number, travels: readonly number[], evidence: ContactEvidence): number {
  const { events, passes, spent } = evidence;
  const grown = 1 + more / passes.length;
  const model = events[0]!;
  const added = travels.map(
    (travel, i): ContactEvent => ({
      finding: -1 - i,
      time: 0,
      travel,
      speed: Math.max(model.speed, passes.length / spent.whole),
      pass: passes.length + (i % more),
      jump: model.jump,
      ...(model.scatter && { scatter: true }),
      extent: model.extent,
      depth: model.depth,
      goals: model.goals,
      ...(model.long !== undefined && { long: model.long }),
    }),
  );
  const whole = { low: 0, high: 1, snap: false };
  return ratio({
    ...evidence,
    events: [...events, ...added],
    passes: [...passes, ...Array.from({ length: more }, () => whole)],
    spent: { ...spent, whole: spent.whole * grown, resting: spent.resting * grown },
  });
}
