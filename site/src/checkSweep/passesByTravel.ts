import type { Expectation, Score, Stroke } from '@truesweep/core';
import type { DrawnPass } from '@truesweep/drawings';

/** Into how many equal parts the travel is parted. */
const parts = 240;
/** The readings at a stroke's end are the median of so many samples. */
const atEnd = 5;

/**
 * The lowest and the highest reading of each pass over the travel. Where the throttle stood is told by the reading that is farthest on its
 * way so far, on the expected curve between the stroke's own ends; within a finding it is drawn straight through, since what is read there tells no place.
 *
 * Time linear in the number of samples.
 */
export function passesByTravel(
  time: Float64Array,
  signal: Float64Array,
  { strokes, findings }: Pick<Score, 'strokes' | 'findings'>,
  { curve }: Expectation,
): readonly DrawnPass[] {
  return strokes.map((stroke) => {
    const first = firstAt(time, stroke.start);
    const end = firstAt(time, stroke.end) + 1;
    const travel = travelOf(time, signal, first, Math.min(end, time.length), stroke);
    return binned(stroke.direction, travel, signal.subarray(first, first + travel.length));
  });

  function travelOf(
    time: Float64Array,
    signal: Float64Array,
    first: number,
    end: number,
    stroke: Stroke,
  ): Float64Array {
    const travel = new Float64Array(end - first);
    const [from, to] = [expectedAt(stroke.from), expectedAt(stroke.to)];
    const begun = median(signal.subarray(first, first + atEnd));
    const ended = median(signal.subarray(Math.max(first, end - atEnd), end));
    const within = findings.filter((one) => one.end >= stroke.start && one.start <= stroke.end);
    let farthest = 0;
    let unknownFrom = -1;
    for (let i = 0; i < travel.length; i++) {
      const now = time[first + i]!;
      if (within.some(({ start, end }) => now >= start && now <= end)) {
        if (unknownFrom < 0) unknownFrom = i;
        continue;
      }
      const part = (signal[first + i]! - begun) / (ended - begun || 1);
      farthest = Math.min(1, Math.max(farthest, part));
      travel[i] = travelAtVolts(from + (to - from) * farthest);
      if (unknownFrom >= 0) drawThrough(travel, unknownFrom, i, stroke.from);
      unknownFrom = -1;
    }
    if (unknownFrom >= 0) {
      travel[travel.length - 1] = stroke.to;
      drawThrough(travel, unknownFrom, travel.length - 1, stroke.from);
    }
    return travel;
  }

  function expectedAt(travel: number): number {
    const at = Math.min(1, Math.max(0, travel)) * (curve.travel.length - 1);
    const left = Math.min(curve.travel.length - 2, Math.floor(at));
    const [low, high] = [curve.volts[left]!, curve.volts[left + 1]!];
    return low + (high - low) * (at - left);
  }

  function travelAtVolts(volts: number): number {
    const rising = curve.volts.at(-1)! > curve.volts[0]! ? 1 : -1;
    let [low, high] = [0, curve.volts.length - 1];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (rising * curve.volts[middle]! <= rising * volts) low = middle;
      else high = middle;
    }
    const [below, above] = [curve.volts[low]!, curve.volts[high]!];
    const part = above === below ? 0 : (volts - below) / (above - below);
    return Math.min(1, Math.max(0, (low + part) / (curve.volts.length - 1)));
  }
}

/** Fills what is unknown, evenly from the place before it to the one at `end`. */
function drawThrough(travel: Float64Array, from: number, end: number, first: number): void {
  const [before, after] = [from > 0 ? travel[from - 1]! : first, travel[end]!];
  for (let i = from; i < end; i++)
    travel[i] = before + ((after - before) * (i - from + 1)) / (end - from + 1);
}

function binned(
  direction: DrawnPass['direction'],
  travel: Float64Array,
  signal: Float64Array,
): DrawnPass {
  const low = new Map<number, number>();
  const high = new Map<number, number>();
  for (let i = 0; i < travel.length; i++) {
    const part = Math.round(travel[i]! * parts);
    low.set(part, Math.min(low.get(part) ?? Number.POSITIVE_INFINITY, signal[i]!));
    high.set(part, Math.max(high.get(part) ?? Number.NEGATIVE_INFINITY, signal[i]!));
  }
  const places = [...low.keys()].sort((one, other) => one - other);
  return {
    direction,
    travel: places.map((part) => part / parts),
    low: places.map((part) => low.get(part)!),
    high: places.map((part) => high.get(part)!),
  };
}

function median(values: Float64Array): number {
  return values.slice().sort()[values.length >> 1]!;
}

/** Where the first stamp at or after a moment stands. */
function firstAt(time: Float64Array, moment: number): number {
  let [low, high] = [0, time.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle]! < moment) low = middle + 1;
    else high = middle;
  }
  return Math.min(low, time.length - 1);
}
