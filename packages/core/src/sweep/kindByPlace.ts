import type { Seconds } from '../units.js';
import type { Departure } from './departure.js';
import type { Levels } from './levels.js';

/** Departures this close in level are at one place of the track. */
const onePlace = 0.02;
/** In a fast move a place is found less closely. */
const onePlaceFast = 0.06;
/** Departures this far apart in time were on different passes. */
const nextPass: Seconds = 0.3;
/** So many departures make a rough place, this part of them to the rarer side. */
const fewestRough = 4;
const rarerSide = 0.25;

/**
 * Names departures by what others at the same place of the track are: a place that scatters both ways on several
 * passes is rough, and what shows of a place in a fast move is what it showed in slow ones.
 *
 * @param fast Marks the bins of fast moves.
 */
export function kindByPlace(
  { time }: Levels,
  path: Float64Array,
  departures: readonly Departure[],
  fast: Uint8Array,
): readonly Departure[] {
  const slow = departures.filter(({ from }) => !fast[from]);
  const places = placesOf(path, slow);
  const rough = new Set(places.filter((place) => isRough(place, time)).flat());
  const named = departures.map(
    (one): Departure => (rough.has(one) ? { ...one, kind: 'rough' } : one),
  );
  return named.map((one) => {
    if (!fast[one.from]) return one;
    const level = path[one.from]!;
    const same = named.filter(
      (other) => !fast[other.from] && Math.abs(path[other.from]! - level) <= onePlaceFast,
    );
    const kinds = new Set(same.map(({ kind }) => kind));
    return kinds.size === 1 ? { ...one, kind: same[0]!.kind } : one;
  });
}

/** Departures in chains by their level. */
function placesOf(path: Float64Array, departures: readonly Departure[]): readonly Departure[][] {
  const sorted = departures.toSorted((a, b) => path[a.from]! - path[b.from]!);
  const places: Departure[][] = [];
  for (const one of sorted) {
    const place = places[places.length - 1];
    const last = place?.[place.length - 1];
    if (place && last && path[one.from]! - path[last.from]! <= onePlace) place.push(one);
    else places.push([one]);
  }
  return places;
}

function isRough(place: readonly Departure[], time: Float64Array): boolean {
  if (place.some(({ kind }) => kind === 'dead-spot')) return false;
  const passes = passesOf(place, time);
  if (place.filter(({ kind }) => kind === 'rough').length >= 2) return passes > 1;
  if (place.length < fewestRough || passes < 2) return false;
  const below = place.filter(({ depth }) => depth < 0).length;
  return Math.min(below, place.length - below) >= rarerSide * place.length;
}

function passesOf(place: readonly Departure[], time: Float64Array): number {
  const starts = place.map(({ from }) => time[from]!).sort((a, b) => a - b);
  return starts.filter((start, i) => i === 0 || start - starts[i - 1]! > nextPass).length;
}
