import type { Seconds } from '../units.js';
import type { Departure } from './departure.js';
import { firstAt } from './firstAt.js';
import type { Levels } from './levels.js';

/** Departures this close in level are at one place of the track. */
const onePlace = 0.02;
/** In a fast move a place is found less closely. */
const onePlaceFast = 0.06;
/** Departures this far apart in time were on different passes. */
const nextPass: Seconds = 0.3;
/** A departure belongs to a place only where the throttle moves so far from this long before to this long after it. */
const nearby: Seconds = 0.03;
const leastMovement = 0.002;
/** So many departures make a rough place, this part of their depths together to the lesser side. */
const fewestRough = 4;
const lesserSide = 0.12;
const lesserSideOfDropouts = 0.3;
/** A place is what this part of its departures are. */
const majority = 0.6;

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
  const slow = departures.filter(
    ({ from, to }) =>
      !fast[from] && Math.abs(path[after(time, to)]! - path[before(time, from)]!) >= leastMovement,
  );
  const places = placesOf(path, slow);
  const kinds = new Map<Departure, Departure['kind']>();
  for (const place of places) {
    const kind = isRough(place, time) ? 'rough' : commonKind(place, time);
    if (kind) for (const one of place) kinds.set(one, kind);
  }
  const named = departures.map((one): Departure => ({ ...one, kind: kinds.get(one) ?? one.kind }));
  const inSlow = named.filter((one) => !fast[one.from]);
  const interferes = inSlow.some(({ kind }) => kind === 'spike');
  return named.map((one) => {
    if (!fast[one.from]) return one;
    const same = inSlow.filter((other) => apart(path, one, other) <= onePlaceFast);
    const shown = new Set(same.map(({ kind }) => kind));
    if (shown.size === 1) return { ...one, kind: same[0]!.kind };
    // Interference that spares all slow moves would have to wait for the fast ones: the contact is likelier.
    return one.kind === 'spike' && !interferes ? { ...one, kind: 'dropout' } : one;
  });
}

/** How far the levels that two departures go over lie apart: a jump leads from one level to another. */
function apart(path: Float64Array, inFast: Departure, inSlow: Departure): number {
  const [a, b] = [path[inFast.from - 1] ?? path[0]!, path[inFast.to + 1] ?? path[inFast.to]!];
  const [c, d] = [path[inSlow.from]!, path[inSlow.to]!];
  return Math.max(0, Math.min(a, b) - Math.max(c, d), Math.min(c, d) - Math.max(a, b));
}

function before(time: Float64Array, bin: number): number {
  return firstAt(time, time[bin]! - nearby);
}

function after(time: Float64Array, bin: number): number {
  return firstAt(time, time[bin]! + nearby);
}

function isJump(kind: Departure['kind']): boolean {
  return kind === 'dead-spot' || kind === 'step';
}

/** Departures in chains by their level; a jump's is its lower one, whichever way it was gone over. */
function placesOf(path: Float64Array, departures: readonly Departure[]): readonly Departure[][] {
  const levelOf = ({ kind, from, to }: Departure): number =>
    isJump(kind) ? Math.min(path[from]!, path[to]!) : path[from]!;
  const sorted = departures.toSorted((a, b) => levelOf(a) - levelOf(b));
  const places: Departure[][] = [];
  for (const one of sorted) {
    const place = places[places.length - 1];
    const last = place?.[place.length - 1];
    if (place && last && levelOf(one) - levelOf(last) <= onePlace) place.push(one);
    else places.push([one]);
  }
  return places;
}

function isRough(place: readonly Departure[], time: Float64Array): boolean {
  if (passesOf(place, time) < 2) return false;
  const jumps = place.filter(({ kind }) => isJump(kind));
  if (2 * jumps.length > place.length) return false;
  if (place.filter(({ kind }) => kind === 'rough').length >= 2) return true;
  if (place.length < fewestRough) return false;
  const below = place.reduce((sum, { depth }) => sum - Math.min(0, depth), 0);
  const above = place.reduce((sum, { depth }) => sum + Math.max(0, depth), 0);
  const dropouts = place.filter(({ kind }) => kind === 'dropout').length;
  const least = dropouts >= majority * place.length ? lesserSideOfDropouts : lesserSide;
  return Math.min(below, above) >= least * Math.max(below, above);
}

/** The kind that most of a place's departures have, where several passes show it. */
function commonKind(
  place: readonly Departure[],
  time: Float64Array,
): Departure['kind'] | undefined {
  for (const kind of ['dead-spot', 'step', 'dropout'] as const) {
    const alike = place.filter((one) => one.kind === kind);
    if (alike.length < majority * place.length || passesOf(alike, time) < 2) continue;
    return kind;
  }
  return undefined;
}

function passesOf(place: readonly Departure[], time: Float64Array): number {
  const starts = place.map(({ from }) => time[from]!).sort((a, b) => a - b);
  return starts.filter((start, i) => i === 0 || start - starts[i - 1]! > nextPass).length;
}
