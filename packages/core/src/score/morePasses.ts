import { logFactorial } from '../statistics/logFactorial.js';
import type { ContactEvent, ContactEvidence } from './contactEvent.js';
import { findSpots } from './spots.js';
import { sharesOf, weighCauses } from './weighCauses.js';

/** Evidence that settles the question, and the chance with which it shall be reached. */
const wantedRatio = 20;
const wantedChance = 0.9;
const mostPasses = 30;
/** More departures than this that settle nothing are no question of passes. */
const mostEvents = 12;
/** Places far from each other, in order (a golden-ratio sequence). */
const goldenRatio = 0.618033988749895;

/**
 * How many more passes would, with a probability of 90 %, bring a ratio of 20 between track and connection whichever
 * of the two it is, were they like those recorded.
 *
 * @returns 0 where the ratio is reached already, nothing where 30 passes would not do or a dozen departures have not done.
 */
export function morePasses(evidence: ContactEvidence): number | undefined {
  const { events, passes } = evidence;
  if (passes.length === 0 || events.length === 0) return undefined;
  const now = ratio(evidence);
  if (now >= wantedRatio || now <= 1 / wantedRatio) return 0;
  if (events.length > mostEvents) return undefined;
  for (let more = 1; more <= mostPasses; more++) {
    if (chanceIfTrack(more, evidence) < wantedChance) continue;
    if (chanceIfConnection(more, evidence) >= wantedChance) return more;
  }
  return undefined;
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
  let chance = 0;
  for (let seen = more; seen >= 0; seen--) {
    const travels = Array.from({ length: seen }, () => spot.travel);
    if (furtherRatio(more, travels, evidence) < wantedRatio) break;
    chance += Math.exp(
      logFactorial(more) -
        logFactorial(seen) -
        logFactorial(more - seen) +
        seen * Math.log(showing) +
        (more - seen) * Math.log(1 - showing),
    );
  }
  return chance;
}

/** If a connection breaks off at random: the chance that what the further passes show is spread enough. */
function chanceIfConnection(more: number, evidence: ContactEvidence): number {
  const { events, passes } = evidence;
  const expected = (events.length / passes.length) * more;
  let chance = 0;
  for (let count = 0; count <= 3 * more + 10; count++) {
    const travels = Array.from({ length: count }, (_, i) => ((i + 1) * goldenRatio) % 1);
    if (furtherRatio(more, travels, evidence) > 1 / wantedRatio) continue;
    chance += Math.exp(count * Math.log(expected) - expected - logFactorial(count));
  }
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
