import type { ContactLevels } from '../contact/contactLevels.js';
import { surely } from '../contact/limits.js';
import { accelerationLasts } from '../motion/limits.js';
import type { Levels } from '../movement/levels.js';
import type { Stops } from '../movement/stopsOf.js';
import { type BadPlace, decode, type RawEvent } from './decode.js';

/**
 * How much cheaper a recording is with an event than with the best explanation that leaves the contact sound meanwhile, nats: the
 * logarithm of their odds.
 */
export function evidenceOf(
  event: RawEvent,
  levels: Levels,
  contact: ContactLevels,
  stops: Stops,
  places: readonly BadPlace[] = [],
): number {
  const { time, mean } = levels;
  // As far to either side as a hand's acceleration lasts.
  let from = Math.max(0, event.from - 1);
  while (from > 0 && time[event.from]! - time[from]! < accelerationLasts) from--;
  let until = Math.min(mean.length, event.to + 2);
  while (until < mean.length && time[until]! - time[event.to]! < accelerationLasts) until++;
  const cost = (soundFrom: number, soundTo: number): number =>
    decode(levels, contact, stops, places, { from, until, soundFrom, soundTo }).cost;
  // What was caught up is no jump either.
  const last = event.state === 'stuck' ? event.to + 1 : event.to;
  return Math.min(surely, cost(event.from, last) - cost(until, until));
}
