import type { Travel } from '../units.js';
import type { ContactEvent, ContactEvidence, Pass } from './contactEvent.js';

/** Events at one travel, one for each pass that showed it. */
export interface SpotEvidence {
  readonly travel: Travel;
  readonly events: readonly ContactEvent[];
  /** Passes over the spot, and those of them that showed it; closings by the spring count only where they did. */
  readonly passes: number;
  readonly seen: number;
}

/** Takes the events that happened in movement together by their travel. */
export function findSpots({
  events,
  passes,
  sameTravel,
}: Pick<ContactEvidence, 'events' | 'passes' | 'sameTravel'>): readonly SpotEvidence[] {
  const moving = events
    .filter(({ pass }) => pass !== undefined)
    .toSorted((a, b) => a.travel - b.travel);
  const spots: SpotEvidence[] = [];
  let first = 0;
  for (let i = 1; i <= moving.length; i++) {
    const next = moving[i];
    const last = moving[i - 1]!;
    if (
      next &&
      next.travel - moving[first]!.travel <= 2 * sameTravel + next.extent &&
      next.travel - last.travel <= sameTravel + (next.extent + last.extent) / 2
    ) {
      continue;
    }
    spots.push(spot(moving.slice(first, i), passes));
    first = i;
  }
  return spots;
}

function spot(events: readonly ContactEvent[], passes: readonly Pass[]): SpotEvidence {
  const shown = new Map<number, ContactEvent>();
  for (const event of events) if (!shown.has(event.pass!)) shown.set(event.pass!, event);
  const travel = events.reduce((sum, one) => sum + one.travel, 0) / events.length;
  const over = passes.filter(
    ({ low, high, snap }, i) => shown.has(i) || (!snap && low < travel && travel < high),
  );
  return { travel, events: [...shown.values()], passes: over.length, seen: shown.size };
}
