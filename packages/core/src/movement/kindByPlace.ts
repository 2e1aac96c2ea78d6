import type { Seconds } from '../units.js';
import type { Departure } from './departure.js';
import { firstAt } from './firstAt.js';
import type { Levels } from './levels.js';
import { findStrokes, type Stroke } from './movement.js';

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
const fewestOnLesserSide = 2;
const lesserSide = 0.12;
const lesserSideOfDropouts = 0.3;
/** Pulses of one wide place lie no farther apart, are this part of all, and by chance together this rarely at the most. */
const withinWide = 0.08;
const mostOfAll = 0.8;
const rare = 0.01;
/** Pulses at one place on so many passes are none of interference. */
const fewestOfContact = 3;
/** So many other passes over a place without a sign of it say that a standstill there was the hand's. */
const fewestClear = 2;
/** A departure of so many visible ones would have shown on each of them. */
const sureToShow = 2;
/** A place is what this part of its departures are. */
const majority = 0.6;

/**
 * Names departures by what others at the same place of the track are: a place that scatters both ways on several
 * passes is rough, and what shows of a place in a fast move is what it showed in slow ones.
 *
 * @param fast Marks the bins of fast moves.
 */
export function kindByPlace(
  { time, still, visible }: Levels,
  path: Float64Array,
  departures: readonly Departure[],
  fast: Uint8Array,
): readonly Departure[] {
  const isMoving = ({ from, to }: Departure): boolean =>
    Math.abs(path[after(time, to)]! - path[before(time, from)]!) >= leastMovement;
  // A hand that lingers at a place that it rests at nowhere else is on its way over it.
  const isOnWay = ({ from }: Departure): boolean =>
    still.every((level) => Math.abs(level - path[from]!) > onePlace);
  const slow = departures.filter((one) => !fast[one.from] && (isMoving(one) || isOnWay(one)));
  const places = [...wideRoughPlace(path, time, slow), ...placesOf(path, slow, onePlace)];
  const kinds = new Map<Departure, Departure['kind']>();
  const spikes = slow.filter(({ kind }) => kind === 'spike').length;
  let strokes: readonly Stroke[] | undefined;
  for (const place of places) {
    const passes = passesOf(place, time);
    let kind = isRough(place, passes.length) ? 'rough' : commonKind(passes);
    if (isContact(place, passes.length, spikes))
      kind = lesserPart(place) >= lesserSide ? 'rough' : 'dropout';
    const isLone = passes.length === 1 && place.every((one) => one.kind === 'dead-spot');
    if (isLone && Math.abs(place[0]!.depth) >= sureToShow * visible) {
      strokes ??= findStrokes(time, path);
      if (clearPasses(place[0]!, slow, strokes, time, path, fast) >= fewestClear) kind = 'step';
    }
    const alike = kind === 'rough' ? [...place, ...jumpsWithin(path, place, slow)] : place;
    if (kind) for (const one of alike) if (!kinds.has(one)) kinds.set(one, kind);
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

/** How many slow strokes go over the levels that a departure leads between, and on, and show nothing there. */
function clearPasses(
  place: Departure,
  departures: readonly Departure[],
  strokes: readonly Stroke[],
  time: Float64Array,
  path: Float64Array,
  fast: Uint8Array,
): number {
  const ends = ({ from, to }: Departure): readonly [number, number] =>
    path[from]! < path[to]! ? [path[from]!, path[to]!] : [path[to]!, path[from]!];
  const [low, high] = [ends(place)[0] - onePlace, ends(place)[1] + onePlace];
  const there = departures.filter((one) => ends(one)[0] < high && ends(one)[1] > low);
  return strokes.filter(({ start, end, from, to }) => {
    if (Math.min(from, to) > low || Math.max(from, to) < high) return false;
    if (there.some((one) => start <= time[one.to]! && end >= time[one.from]!)) return false;
    return !fast.subarray(firstAt(time, start), firstAt(time, end)).includes(1);
  }).length;
}

/** Departures in chains by their level; a jump's is its lower one, whichever way it was gone over. */
function placesOf(
  path: Float64Array,
  departures: readonly Departure[],
  gap: number,
): readonly Departure[][] {
  const levelOf = ({ kind, from, to }: Departure): number =>
    isJump(kind) ? Math.min(path[from]!, path[to]!) : path[from]!;
  const sorted = departures.toSorted((a, b) => levelOf(a) - levelOf(b));
  const places: Departure[][] = [];
  for (const one of sorted) {
    const place = places[places.length - 1];
    const last = place?.[place.length - 1];
    if (place && last && levelOf(one) - levelOf(last) <= gap) place.push(one);
    else places.push([one]);
  }
  return places;
}

/**
 * A place that scatters so little that only some of it is visible shows as pulses here and there over its whole width: those
 * of all passes together tell it, where they are too many for chance and most of a recording's.
 */
function wideRoughPlace(
  path: Float64Array,
  time: Float64Array,
  departures: readonly Departure[],
): readonly Departure[][] {
  const pulses = departures.filter(({ kind }) => !isJump(kind));
  return placesOf(path, pulses, withinWide).filter((place) => {
    const [first, last] = [place[0]!, place[place.length - 1]!];
    const width = path[last.from]! - path[first.from]!;
    // That all lie so close together: the chance of it for each to be the lowest.
    const byChance = place.length * width ** (place.length - 1);
    return (
      place.length >= mostOfAll * pulses.length &&
      byChance < rare &&
      isRough(place, passesOf(place, time).length)
    );
  });
}

/** The jumps that lead from level to level of a rough place and no farther than its scatter. */
function jumpsWithin(
  path: Float64Array,
  place: readonly Departure[],
  departures: readonly Departure[],
): readonly Departure[] {
  const levels = place.map(({ from }) => path[from]!);
  const low = Math.min(...levels) - onePlace;
  const high = Math.max(...levels) + onePlace;
  const farthest = Math.max(...place.map(({ depth }) => Math.abs(depth)));
  return departures.filter(
    ({ kind, from, to, depth }) =>
      isJump(kind) &&
      Math.abs(depth) <= farthest &&
      [from, to].every((at) => low <= path[at]! && path[at]! <= high),
  );
}

function isRough(place: readonly Departure[], passes: number): boolean {
  if (passes < 2) return false;
  const jumps = place.filter(({ kind }) => isJump(kind));
  if (2 * jumps.length > place.length) return false;
  const mostDropouts =
    place.filter(({ kind }) => kind === 'dropout').length >= majority * place.length;
  if (!mostDropouts && place.filter(({ kind }) => kind === 'rough').length >= 2) return true;
  const up = place.filter(({ depth }) => depth > 0).length;
  const onLesserSide = Math.min(up, place.length - up);
  if (place.length < fewestRough || onLesserSide < fewestOnLesserSide) return false;
  return lesserPart(place) >= (mostDropouts ? lesserSideOfDropouts : lesserSide);
}

/**
 * Interference knows no place: where most of a recording's pulses lie at one place of several passes, they are a
 * contact's, which comes back for moments where it is lifted most of the time.
 */
function isContact(place: readonly Departure[], passes: number, spikes: number): boolean {
  const here = place.filter(({ kind }) => kind === 'spike').length;
  return passes >= fewestOfContact && here >= majority * Math.max(spikes, place.length);
}

/** What goes to the lesser side, as a part of the other. */
function lesserPart(place: readonly Departure[]): number {
  let [above, below] = [0, 0];
  for (const { depth } of place) {
    if (depth > 0) above += depth;
    else below -= depth;
  }
  return Math.min(above, below) / Math.max(above, below);
}

/** The kind that most departures of most passes over a place have, where several passes show it. */
function commonKind(passes: readonly (readonly Departure[])[]): Departure['kind'] | undefined {
  return (['dead-spot', 'step', 'dropout'] as const).find((kind) => {
    const alike = passes.filter(
      (pass) => pass.filter((one) => one.kind === kind).length >= majority * pass.length,
    );
    return alike.length >= 2 && alike.length >= majority * passes.length;
  });
}

/** The departures of each pass. */
function passesOf(
  place: readonly Departure[],
  time: Float64Array,
): readonly (readonly Departure[])[] {
  const passes: Departure[][] = [];
  let last = -Infinity;
  for (const one of place.toSorted((a, b) => a.from - b.from)) {
    if (time[one.from]! - last > nextPass) passes.push([]);
    passes[passes.length - 1]!.push(one);
    last = time[one.from]!;
  }
  return passes;
}
