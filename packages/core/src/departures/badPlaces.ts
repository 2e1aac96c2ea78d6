import type { ContactLevels } from '../contact/contactLevels.js';
import { rates } from '../contact/limits.js';
import { stopScatter } from '../motion/limits.js';
import { firstAt } from '../movement/firstAt.js';
import type { Levels } from '../movement/levels.js';
import { findStrokes, type Stroke } from '../movement/movement.js';
import type { Stops } from '../movement/stopsOf.js';
import { type BadPlace, beginning, type RawEvent } from '../path/decode.js';
import { evidenceOf } from '../path/evidenceOf.js';
import { bridge } from './bridge.js';
import { chainsOf } from './chainsOf.js';
import { fewestClear } from './clearPasses.js';
import type { Span } from './departure.js';
import { passesOf } from './passesOf.js';
import { onePlace } from './placesOf.js';

/** −ln of the chance that a place of the track is bad: one in ten thousand. */
const placeIsBad = 9;
/** −ln of the chance that a bad place shows on a pass: on one in three. */
const showsOnPass = 1;

/** Every place of the track, as bad as any: with these the decoder tells all that a contact may have done. */
export const everyPlace: readonly BadPlace[] = (Object.keys(rates) as BadPlace['state'][]).map(
  (state) => ({ low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY, state }),
);

/** An event with the levels between which it lies. */
interface Shown extends Span {
  readonly event: RawEvent;
  readonly low: number;
  readonly high: number;
}

/**
 * Finds the places at which contacts break in one way on several passes. What one pass shows may be a hand's doing, and to break is
 * seldom; that it comes to pass at one place again and again is neither, the less the fewer events lie elsewhere.
 *
 * @param events All that a contact may have done.
 */
export function badPlaces(
  events: readonly RawEvent[],
  levels: Levels,
  contact: ContactLevels,
  stops: Stops,
): readonly BadPlace[] {
  const path = levels.mean.slice();
  const shown = events.flatMap((event) => shownOf(event, levels, path) ?? []);
  const strokes = findStrokes(levels.time, path);
  const travelled = strokes.reduce((sum, { from, to }) => sum + Math.abs(to - from), 0);
  /** How much likelier the recording is with an event, where that is as usual as to be without. */
  const likelihood = ({ event }: Shown): number => {
    const seldom = beginning(rates[event.state], levels.interval);
    return Math.max(0, evidenceOf(event, levels, contact, stops) + seldom);
  };
  return everyPlace.flatMap(({ state }) => {
    const alike = shown.filter(({ event }) => event.state === state);
    return chainsOf(alike, ({ low }) => low, onePlace).flatMap((place): BadPlace[] => {
      const passes = passesOf(place, levels.time);
      if (passes.length < 2) return [];
      const low = Math.min(...place.map((one) => one.low)) - onePlace / 2;
      const high = Math.max(...place.map((one) => one.high)) + onePlace / 2;
      const there = shown.filter((one) => one.low < high && one.high > low);
      const isOdd =
        isLine(state) &&
        (isWide(place) ||
          isAtStop(place, stops) ||
          isScatter(there, levels.time) ||
          goesOneWay(place, { low, high }, strokes, levels, path));
      if (isOdd) return [];
      const elsewhere = passesOf(
        alike.filter((one) => !place.includes(one)),
        levels.time,
      );
      // What lies elsewhere is spread over all that was gone over.
      const byChance = ((elsewhere.length + 1) * Math.max(2 * onePlace, high - low)) / travelled;
      const odds = passes.reduce((sum, pass) => {
        const ofPass = Math.max(...pass.map(likelihood));
        return sum + Math.min(ofPass, Math.max(0, -Math.log(byChance))) - showsOnPass;
      }, -placeIsBad);
      return odds >= 0 ? [{ low, high, state }] : [];
    });
  });
}

/** Whether a contact in a state is on another line of the track, or on its way there. */
function isLine(state: BadPlace['state']): boolean {
  return state === 'shifting' || state === 'stuck';
}

/** A crack is one place; what begins all over a stretch of the track is not. */
function isWide(place: readonly Shown[]): boolean {
  return place[place.length - 1]!.low - place[0]!.low > 2 * onePlace;
}

/** A hand sets off from a stop, and comes to it, on every pass: jumps and standstills there are its own. */
function isAtStop(place: readonly Shown[], { closed, open }: Stops): boolean {
  return place.some(({ low, high }) => low < closed + stopScatter || high > open - stopScatter);
}

/** A crack and a dead spot are gone over once on each pass; what shows again and again is scatter. */
function isScatter(there: readonly Shown[], time: Float64Array): boolean {
  const passes = passesOf(there, time);
  return 2 * passes.filter(({ length }) => length === 1).length < passes.length;
}

/** A track's lines part whichever way it is gone over; what moves one way alone, while others go back over it and show nothing, was thrown. */
function goesOneWay(
  place: readonly Shown[],
  { low, high }: Pick<Shown, 'low' | 'high'>,
  strokes: readonly Stroke[],
  { time, visible }: Levels,
  path: Float64Array,
): boolean {
  const directionOf = ({ from, to }: Shown): Stroke['direction'] | undefined =>
    strokes.find(({ start, end }) => start <= time[to]! && end >= time[from]!)?.direction;
  const ways = new Set(place.map(directionOf));
  const isClear = ({ direction, start, end, from, to }: Stroke): boolean => {
    if (ways.has(direction) || Math.min(from, to) > low || Math.max(from, to) < high) return false;
    const last = firstAt(time, end);
    for (let i = firstAt(time, start) + 1; i <= last; i++) {
      const [one, other] = [path[i - 1]!, path[i]!];
      const isThere = Math.max(one, other) >= low && Math.min(one, other) <= high;
      if (isThere && Math.abs(other - one) > visible) return false;
    }
    return true;
  };
  return ways.size === 1 && strokes.filter(isClear).length >= fewestClear;
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
