import type { ContactLevels } from '../contact/contactLevels.js';
import type { Levels } from '../movement/levels.js';
import type { Stops } from '../movement/stopsOf.js';
import type { Seconds } from '../units.js';
import { type BadPlace, decode, type RawEvent } from './decode.js';

/** What is decoded again to weigh an event reaches this far beyond it. */
const seconds: Seconds = 0.04;
const bins = 12;
/** More is certainty, and no more than this is told where no movement explains the recording at all. */
const most = 1000;

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
  let from = Math.max(0, event.from - bins);
  while (from > 0 && time[event.from]! - time[from]! < seconds) from--;
  let until = Math.min(mean.length, event.to + 1 + bins);
  while (until < mean.length && time[until]! - time[event.to]! < seconds) until++;
  const cost = (soundFrom: number, soundTo: number): number =>
    decode(levels, contact, stops, places, { from, until, soundFrom, soundTo }).cost;
  // What was caught up is no jump either.
  const last = event.state === 'stuck' ? event.to + 1 : event.to;
  return Math.min(most, cost(event.from, last) - cost(until, until));
}
