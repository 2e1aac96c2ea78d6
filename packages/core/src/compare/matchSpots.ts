import type { Travel } from '../units.js';
import type { SpotTraits } from './spotTraits.js';

/** Spots no farther apart than this are one place. */
const onePlace: Travel = 0.03;

/** A spot of either recording, or of both. */
export interface SpotMatch {
  readonly before?: SpotTraits;
  readonly after?: SpotTraits;
}

/** Pairs spots of one kind at one travel, the nearest first; what finds no partner stays alone. */
export function matchSpots(
  before: readonly SpotTraits[],
  after: readonly SpotTraits[],
): readonly SpotMatch[] {
  const pairs = before
    .flatMap((one) => after.map((other) => ({ before: one, after: other })))
    .filter((pair) => pair.before.kind === pair.after.kind && apart(pair) <= onePlace)
    .sort((a, b) => apart(a) - apart(b));
  const matched: SpotMatch[] = [];
  const taken = new Set<SpotTraits>();
  for (const pair of pairs) {
    if (taken.has(pair.before) || taken.has(pair.after)) continue;
    taken.add(pair.before).add(pair.after);
    matched.push(pair);
  }
  const alone = (spots: readonly SpotTraits[]) => spots.filter((spot) => !taken.has(spot));
  return [
    ...matched,
    ...alone(before).map((spot) => ({ before: spot })),
    ...alone(after).map((spot) => ({ after: spot })),
  ];
}

function apart({ before, after }: Required<SpotMatch>): Travel {
  return Math.abs(before.travel - after.travel);
}
