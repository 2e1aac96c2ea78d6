import type { Seconds, Volts } from '@truesweep/core';
import type { TrueEvent } from './trueEvents.js';
import type { Outcome } from './truth.js';

/** From this ratio on an event is surely visible, and from this one on it may be. */
export const surely = 1.4;
export const maybe = 0.7;

/** How near to 10 % of span the depth of a departure leaves open whether it is deep. */
const deep = 0.1;
const openShare = 0.2;

/** Events closer than this, s, may count as one. */
const mayBeOne: Seconds = 0.1;

/** What the departures rule says for every way to take what is a matter of opinion. */
export function eventOutcomes(events: readonly TrueEvent[], span: Volts): readonly Outcome[] {
  const sure = events.filter(({ ratio, counted }) => ratio >= surely && counted);
  const possible = events.filter(({ ratio }) => ratio >= maybe);
  const outcomes = new Set<Outcome>();
  for (const seen of [sure, possible])
    for (const depth of [deep * (1 - openShare), deep * (1 + openShare)])
      for (const joined of [false, true])
        outcomes.add(outcomeOf(joined ? joinNear(seen) : seen, depth * span));
  if (isOnlyInterference(possible) && !isPlainInterference(sure) && possible.length > 0)
    outcomes.add('fails');
  // Between seeing none of the doubtful ones and seeing all lies seeing one.
  if (outcomes.has('conforms') && outcomes.has('fails')) outcomes.add('marginal');
  return [...outcomes];
}

function outcomeOf(seen: readonly TrueEvent[], deepFrom: Volts): Outcome {
  const sensors = seen.filter(({ cause }) => cause !== 'interference');
  if (sensors.some(({ depth }) => Math.abs(depth) >= deepFrom)) return 'fails';
  if (sensors.some(({ fault }, i) => sensors.some((other, j) => j !== i && other.fault === fault)))
    return 'fails';
  return seen.length > 0 ? 'marginal' : 'conforms';
}

function joinNear(events: readonly TrueEvent[]): readonly TrueEvent[] {
  return events.filter((event, i) => i === 0 || event.start - events[i - 1]!.end > mayBeOne);
}

function isOnlyInterference(events: readonly TrueEvent[]): boolean {
  return events.every(({ cause }) => cause === 'interference');
}

/** Enough of it, both ways, for anyone to know it for what it is. */
export function isPlainInterference(sure: readonly TrueEvent[]): boolean {
  const pulses = sure.filter(({ cause }) => cause === 'interference');
  return (
    pulses.length >= 3 &&
    pulses.some(({ depth }) => depth > 0) &&
    pulses.some(({ depth }) => depth < 0)
  );
}
