import { firstAt } from '../movement/firstAt.js';
import type { Levels } from '../movement/levels.js';
import { findStrokes, type Stroke } from '../movement/movement.js';
import type { Seconds } from '../units.js';
import { clearPasses, fewestClear } from './clearPasses.js';
import type { Departure } from './departure.js';
import { levelsApart } from './levelsApart.js';
import { passesOf } from './passesOf.js';
import { placesOf } from './placesOf.js';
import { isRough, majority, wideRoughPlace } from './roughPlaces.js';

/** In a fast move a place is found less closely. */
const onePlaceFast = 0.06;
/** A departure belongs to a place only where the throttle moves so far from this long before to this long after it. */
const nearby: Seconds = 0.03;
const leastMovement = 0.002;

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
  const { time } = levels;
  const isMoving = ({ from, to }: Departure): boolean =>
    Math.abs(path[after(time, to)]! - path[before(time, from)]!) >= leastMovement;
  const slow = departures.filter((one) => !fast[one.from] && isMoving(one));
  const kinds = new Map<Departure, Departure['kind']>();
  let strokes: readonly Stroke[] | undefined;
  for (const place of [...wideRoughPlace(path, time, slow), ...placesOf(path, slow)]) {
    const passes = passesOf(place, time);
    let kind = isRough(place, passes.length) ? 'rough' : commonKind(passes);
    if (passes.length === 1 && place.every((one) => one.kind === 'rough')) {
      strokes ??= findStrokes(time, path);
      if (clearPasses(place[0]!, slow, strokes, time, path, fast) >= fewestClear) kind = 'spike';
    }
    if (kind) for (const one of place) if (!kinds.has(one)) kinds.set(one, kind);
  }
  const named = departures.map((one): Departure => ({ ...one, kind: kinds.get(one) ?? one.kind }));
  const inSlow = named.filter((one) => !fast[one.from]);
  const interferes = inSlow.some(({ kind }) => kind === 'spike');
  return named.map((one) => {
    if (!fast[one.from]) return one;
    const same = inSlow.filter((other) => levelsApart(path, one, other) <= onePlaceFast);
    const shown = new Set(same.map(({ kind }) => kind));
    if (shown.size === 1) return { ...one, kind: same[0]!.kind };
    // Interference that spares all slow moves would have to wait for the fast ones: the contact is likelier.
    return one.kind === 'spike' && !interferes ? { ...one, kind: 'dropout' } : one;
  });
}

function before(time: Float64Array, bin: number): number {
  return firstAt(time, time[bin]! - nearby);
}

function after(time: Float64Array, bin: number): number {
  return firstAt(time, time[bin]! + nearby);
}

/** The kind that most departures of most passes over a place have, where several passes show it. */
function commonKind(passes: readonly (readonly Departure[])[]): Departure['kind'] | undefined {
  return (['dead-spot', 'step', 'dropout'] as const).find((kind) => {
    const isKind = (pass: readonly Departure[]): boolean =>
      pass.filter((one) => one.kind === kind).length >= majority * pass.length;
    const alike = passes.filter(isKind).length;
    return alike >= 2 && alike >= majority * passes.length;
  });
}
