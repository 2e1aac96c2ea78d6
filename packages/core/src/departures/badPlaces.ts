import type { ContactLevels } from '../contact/contactLevels.js';
import { rates } from '../contact/limits.js';
import type { Levels } from '../movement/levels.js';
import type { Stops } from '../movement/stopsOf.js';
import type { BadPlace, RawEvent } from '../path/decode.js';
import { evidenceOf } from '../path/evidenceOf.js';
import { bridge } from './bridge.js';
import type { Span } from './departure.js';
import { passesOf } from './passesOf.js';
import { onePlace } from './placesOf.js';

/** −ln of the chance that a place of the track is bad, of all the places that there are: one in a million. */
const placeIsBad = 14;
/** −ln of the chance that a bad place shows on a pass: on one in three. */
const showsOnPass = 1;

/** An event with the levels between which it lies. */
interface Shown extends Span {
  readonly event: RawEvent;
  readonly low: number;
  readonly high: number;
}

/**
 * Finds the places at which contacts break in one way on several passes. What one pass shows may be a hand's doing, and to break is
 * seldom; that it comes to pass at one place again and again is neither.
 *
 * @param events What the cheapest explanation has, where every place is as good as any.
 */
export function badPlaces(
  events: readonly RawEvent[],
  levels: Levels,
  contact: ContactLevels,
  stops: Stops,
): readonly BadPlace[] {
  const path = levels.mean.slice();
  const shown = events.flatMap((event) => shownOf(event, levels, path) ?? []);
  /** How much likelier the recording is with an event, where that is as usual as to be without. */
  const likelihood = ({ event }: Shown): number => {
    const seldom = -Math.log(Math.min(0.5, rates[event.state] * levels.interval));
    return Math.max(0, evidenceOf(event, levels, contact, stops) + seldom);
  };
  const states = new Set(events.map(({ state }) => state));
  return [...states].flatMap((state) =>
    chainsOf(shown.filter(({ event }) => event.state === state)).flatMap((place) => {
      const passes = passesOf(place, levels.time);
      if (passes.length < 2) return [];
      const odds = passes.reduce(
        (sum, pass) => sum + Math.max(...pass.map(likelihood)) - showsOnPass,
        -placeIsBad,
      );
      if (odds < 0) return [];
      const low = Math.min(...place.map((one) => one.low)) - onePlace / 2;
      const high = Math.max(...place.map((one) => one.high)) + onePlace / 2;
      return [{ low, high, state }];
    }),
  );
}

/** Where an event lies; nothing where it is too small to be seen. */
function shownOf(event: RawEvent, levels: Levels, path: Float64Array): Shown | undefined {
  const { mean, visible } = levels;
  const { kind, from, to } = event;
  if (kind === 'jump') {
    const [one, other] = [mean[from]!, mean[to]!];
    if (Math.abs(other - one) < visible) return undefined;
    return { event, from, to, low: Math.min(one, other), high: Math.max(one, other) };
  }
  const { below, above } = bridge(levels, path, event);
  if (Math.max(-below, above) < visible) return undefined;
  const ends = [path[from]!, path[to]!];
  return { event, from, to, low: Math.min(...ends), high: Math.max(...ends) };
}

/** Chains of events that lie close to each other. */
function chainsOf(events: readonly Shown[]): readonly Shown[][] {
  const chains: Shown[][] = [];
  for (const one of events.toSorted((a, b) => a.low - b.low)) {
    const chain = chains[chains.length - 1];
    if (chain && one.low - chain[chain.length - 1]!.low <= onePlace) chain.push(one);
    else chains.push([one]);
  }
  return chains;
}
