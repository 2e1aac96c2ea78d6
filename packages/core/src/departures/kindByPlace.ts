import { firstAt } from '../movement/firstAt.js';
import type { Levels } from '../movement/levels.js';
import { findStrokes, type Stroke } from '../movement/movement.js';
import type { Seconds } from '../units.js';
import { clearPasses } from './clearPasses.js';
import type { Departure } from './departure.js';
import { isJump } from './isJump.js';
import { liftsThere } from './liftsThere.js';
import { movesStops } from './movesStops.js';
import { passesOf } from './passesOf.js';
import { onePlace, placesOf } from './placesOf.js';
import { isRough, jumpsWithin, majority, wideRoughPlace } from './roughPlaces.js';

/** In a fast move a place is found less closely. */
const onePlaceFast = 0.06;
/** A departure belongs to a place only where the throttle moves so far from this long before to this long after it. */
const nearby: Seconds = 0.03;
const leastMovement = 0.002;
/** So many other passes over a place without a sign of it say that a standstill there was the hand's. */
const fewestClear = 2;
/** A departure of so many visible ones would have shown on each of them. */
const sureToShow = 2;

/**
 * Names departures by what others at the same place of the track are: a place that scatters both ways on several
 * passes is rough, and what shows of a place in a fast move is what it showed in slow ones.
 *
 * @param fast Marks the bins of fast moves.
 */
export function kindByPlace(
  levels: Levels,
  path: Float64Array,
  departures: readonly Departure[],
  fast: Uint8Array,
): readonly Departure[] {
  const { time, still, visible } = levels;
  const isMoving = ({ from, to }: Departure): boolean =>
    Math.abs(path[after(time, to)]! - path[before(time, from)]!) >= leastMovement;
  // A hand that lingers at a place that it rests at nowhere else is on its way over it.
  const isOnWay = ({ from }: Departure): boolean =>
    still.every((level) => Math.abs(level - path[from]!) > onePlace);
  const slow = departures.filter((one) => !fast[one.from] && (isMoving(one) || isOnWay(one)));
  const places = [...wideRoughPlace(path, time, slow), ...placesOf(path, slow)];
  const kinds = new Map<Departure, Departure['kind']>();
  let strokes: readonly Stroke[] | undefined;
  for (const place of places) {
    const passes = passesOf(place, time);
    let kind = isRough(place, passes.length) ? 'rough' : commonKind(passes);
    if (kind === 'rough' && liftsThere(levels, path, place)) kind = 'dropout';
    const lone = passes.length === 1 ? loneKind(place) : undefined;
    if (lone) {
      strokes ??= findStrokes(time, path);
      const [first] = place as [Departure];
      const isSure = Math.abs(first.depth) >= sureToShow * visible;
      const isSlip = lone === 'step' && movesStops(strokes, time[first.to]!, first.depth, visible);
      if (isSlip || (isSure && clearPasses(first, slow, strokes, time, path, fast) >= fewestClear))
        kind = lone;
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

/** A throttle has no reason to stand still before a crack on so many of its passes, of this many at the least. */
const mostStand = 0.8;
const fewestStand = 3;

/** What a dead spot or scatter that shows on one pass alone is: the hand's standstill before a step, or interference. */
function loneKind(place: readonly Departure[]): Departure['kind'] | undefined {
  if (place.every(({ kind }) => kind === 'dead-spot')) return 'step';
  return place.every(({ kind }) => kind === 'rough') ? 'spike' : undefined;
}

/** The kind that most departures of most passes over a place have, where several passes show it. */
function commonKind(passes: readonly (readonly Departure[])[]): Departure['kind'] | undefined {
  const where = (is: (one: Departure) => boolean): readonly (readonly Departure[])[] =>
    passes.filter((pass) => pass.filter(is).length >= majority * pass.length);
  const jumping = where(({ kind }) => isJump(kind));
  const standing = jumping.filter((pass) => pass.some(({ stands }) => stands)).length;
  if (
    jumping.length >= majority * passes.length &&
    standing >= Math.max(fewestStand, mostStand * jumping.length)
  )
    return 'dead-spot';
  return (['dead-spot', 'step', 'dropout'] as const).find((kind) => {
    const alike = where((one) => one.kind === kind).length;
    return alike >= 2 && alike >= majority * passes.length;
  });
}
