import type { Ohms, Position } from '../units.js';
import type { Estimate, Stop, TerminalPair, TrackPins } from './pinFinding.js';
import { changeOf, type OhmsRange, type PinTable, stops } from './pinTable.js';

/** A track's resistance and the sum of both resistances at the wiper, track + 2 × what is in series with the wiper. */
interface TrackAndSum {
  readonly track: Ohms;
  readonly sum: Ohms;
}

/** Keeps the points where track × a + sum × b is at least c. */
type HalfPlane = readonly [a: number, b: number, c: number];

const anything: OhmsRange = { low: 0, high: Number.POSITIVE_INFINITY };

/**
 * The track that the readings show if a given terminal is the wiper; undefined where no potentiometer with that wiper
 * could give them within the meter's error.
 *
 * Method: with the track T between the ends a and b, the wiper's place u and a resistance s in series with it, an
 * ohmmeter reads R_ab = T, R_aw = u + s, R_wb = T − u + s, so R_aw + R_wb = T + 2s stays and R_aw − R_wb = 2u − T moves.
 * Eliminating u leaves straight bounds on T and T + 2s: a convex polygon, empty where the wiper is another.
 */
export function trackIfWiper(
  table: PinTable,
  wiper: string,
  ends: TerminalPair,
): TrackPins | undefined {
  const polygon = possible(table, wiper, ends);
  if (polygon.length === 0) return undefined;
  const leaves = endLeft(table, wiper, ends);
  const [a, b] = leaves === ends[1] ? [ends[1], ends[0]] : ends;
  const track = estimate(
    polygon.map((at) => at.track),
    mean(stops.map((at) => table.ohms(a, b, at))),
  );
  const sums = stops.map((at) => add(table.ohms(a, wiper, at), table.ohms(b, wiper, at)));
  const sum = mean(sums);
  const series = estimate(
    polygon.map((at) => (at.sum - at.track) / 2),
    sum === undefined ? undefined : (sum - track.value) / 2,
  );
  return {
    wiper,
    ends: [a, b],
    ...(leaves !== undefined && { closedEnd: leaves }),
    track,
    series,
    closedPosition: positionOf(table, wiper, [a, b], track, 'closed'),
    openPosition: positionOf(table, wiper, [a, b], track, 'open'),
  };
}

/** The end that the wiper leaves as the throttle opens: its resistance rises or the other's falls. */
function endLeft(table: PinTable, wiper: string, [a, b]: TerminalPair): string | undefined {
  const toA = changeOf(table, [a, wiper]);
  const toB = changeOf(table, [b, wiper]);
  if (toA === 'rises' || toB === 'falls') return a;
  if (toB === 'rises' || toA === 'falls') return b;
  return undefined;
}

/**
 * Where a wiper stands between two ends: ½ + (R_aw − R_wb) / 2R_ab, whatever is in series with it and also where a
 * second track lies on the same ends. The bounds take the errors as independent, so they are never too narrow.
 */
export function positionOf(
  table: PinTable,
  wiper: string,
  [a, b]: TerminalPair,
  track: Estimate<Ohms>,
  at: Stop,
): Estimate<Position> {
  const toA = table.range(a, wiper, at) ?? anything;
  const toB = table.range(b, wiper, at) ?? anything;
  const low = share(toA.low - toB.high, track.high, track.low);
  const high = share(toA.high - toB.low, track.low, track.high);
  const readA = table.ohms(a, wiper, at);
  const readB = table.ohms(b, wiper, at);
  if (readA === undefined || readB === undefined) return { value: (low + high) / 2, low, high };
  const value = share(readA - readB, track.value, track.value);
  return { value: Math.min(high, Math.max(low, value)), low, high };
}

/** A difference as a place on the track; the divisor by the difference's sign. */
function share(difference: number, ifPositive: Ohms, ifNegative: Ohms): Position {
  const divisor = difference > 0 ? ifPositive : ifNegative;
  if (divisor === 0) return difference > 0 ? 1 : 0;
  return Math.min(1, Math.max(0, 0.5 + difference / (2 * divisor)));
}

function possible(table: PinTable, wiper: string, [a, b]: TerminalPair): readonly TrackAndSum[] {
  const bounds: HalfPlane[] = [[-1, 1, 0]];
  let largest = 1;
  for (const at of stops) {
    const between = table.range(a, b, at) ?? anything;
    const toA = table.range(a, wiper, at) ?? anything;
    const toB = table.range(b, wiper, at) ?? anything;
    bounds.push(
      [1, 0, between.low],
      [-1, 0, -between.high],
      [0, 1, toA.low + toB.low],
      [0, -1, -(toA.high + toB.high)],
      [1, 1, 2 * toA.low],
      [1, 1, 2 * toB.low],
      [1, -1, -2 * toA.high],
      [1, -1, -2 * toB.high],
    );
    for (const { high } of [between, toA, toB]) if (high !== anything.high) largest += high;
  }
  // No corner of the polygon lies farther out than a few of the readings' sums.
  const far = 10 * largest;
  const square = [
    { track: 0, sum: 0 },
    { track: far, sum: 0 },
    { track: far, sum: far },
    { track: 0, sum: far },
  ];
  return bounds.filter(([, , c]) => c !== -anything.high).reduce(clip, square);
}

/** Cuts a convex polygon along a line. */
function clip(polygon: readonly TrackAndSum[], [a, b, c]: HalfPlane): TrackAndSum[] {
  const inside = (at: TrackAndSum): number => a * at.track + b * at.sum - c;
  return polygon.flatMap((at, i) => {
    const before = polygon.at(i - 1)!;
    const [here, there] = [inside(at), inside(before)];
    const part = there / (there - here);
    const crossing = {
      track: before.track + part * (at.track - before.track),
      sum: before.sum + part * (at.sum - before.sum),
    };
    const kept = here >= 0 ? [at] : [];
    return here >= 0 === there >= 0 ? kept : [crossing, ...kept];
  });
}

function estimate(values: readonly Ohms[], read: Ohms | undefined): Estimate<Ohms> {
  const low = Math.max(0, Math.min(...values));
  const high = Math.max(low, ...values);
  return { value: Math.min(high, Math.max(low, read ?? (low + high) / 2)), low, high };
}

function add(a: Ohms | undefined, b: Ohms | undefined): Ohms | undefined {
  return a === undefined || b === undefined ? undefined : a + b;
}

function mean(values: readonly (Ohms | undefined)[]): Ohms | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0
    ? undefined
    : known.reduce((sum, value) => sum + value, 0) / known.length;
}
