import type { CaptureQuality } from '../capture/captureQuality.js';
import { samplesOver } from '../capture/sampling.js';
import type { Criteria } from '../criteria.js';
import type { Departure } from '../departures/departure.js';
import { isJump } from '../departures/isJump.js';
import type { Expectation } from '../expectation/expectation.js';
import type { Curve } from '../expectation/expectedCurve.js';
import { stopScatter } from '../motion/limits.js';
import { firstAt } from '../movement/firstAt.js';
import type { Movement } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import { onScale, type ThrottleScale } from '../movement/throttleScale.js';
import type { Seconds, Travel, Volts } from '../units.js';
import { fallOf } from './fallOf.js';
import type { Coverage, Stroke } from './score.js';

/** The travel is told in so many equal parts. */
export const tenths = 10;

/** No hand turns a throttle over a tenth of its travel sooner: what does was thrown both ways, or is no throttle. */
export const shortestTenth: Seconds = 8e-3;

/** Sums of rounded times may miss a limit that they reach. */
const rounding = 1 + 1e-9;

/** Whether a stroke went over the whole of a tenth, within what a stop gives way. */
export function goesOver({ from, to }: Pick<Stroke, 'from' | 'to'>, tenth: number): boolean {
  const [low, high] = [Math.min(from, to), Math.max(from, to)];
  return low <= tenth / tenths + stopScatter && high >= (tenth + 1) / tenths - stopScatter;
}

/**
 * How many clean looks each tenth of the travel had. A stroke over a tenth is one where enough samples fell into it, so close
 * together that a dropout of the criteria's length leaves as many as wanted, and where no gap longer than that dropout lay in it. A gap at
 * rest hides no travel, nor does a jump that was found: it leaps over levels, and is what was seen there. A fall by the spring must
 * also have taken as long over the tenth as that dropout lasts, any other stroke as long as a quick hand.
 *
 * @param strokes Those of the movement, in travel.
 */
export function coverage(
  { time, perBin }: Pick<Levels, 'time' | 'perBin'>,
  movement: Pick<Movement, 'path' | 'rests' | 'snaps' | 'stops'>,
  strokes: readonly Stroke[],
  departures: readonly Departure[],
  expected: Expectation,
  scale: ThrottleScale,
  quality: Pick<CaptureQuality, 'interval' | 'sampledEvery' | 'smoothedOver' | 'sampling'>,
  criteria: Pick<Criteria, 'dropout' | 'samplesInDropout'>,
): Coverage {
  const { path, rests, snaps } = movement;
  const borders = bordersOf(expected, scale, movement.stops);
  const wanted = Math.max(1, samplesOver(criteria.samplesInDropout, quality.sampling));
  // What was drawn between fewer samples, or smoothed over several, counts as fewer.
  const ofStamps = Math.min(
    1,
    quality.interval / Math.max(quality.sampledEvery, quality.smoothedOver),
  );
  const longest = criteria.dropout * rounding;
  const looks = { opening: noLooks(), closing: noLooks() };
  const samples = new Float64Array(tenths);
  const spent = new Float64Array(tenths);
  const fallen = new Float64Array(tenths);
  const isHidden = new Uint8Array(tenths);
  const isLeapt = new Uint8Array(tenths);
  const jumps = departures.filter(({ kind }) => isJump(kind));
  const mark = (which: Uint8Array, one: number, other: number): Uint8Array =>
    which.fill(1, Math.min(one, other), Math.max(one, other) + 1);
  let rest = 0;
  for (const stroke of strokes) {
    samples.fill(0);
    spent.fill(0);
    fallen.fill(0);
    const fall = fallOf(stroke, snaps);
    isHidden.fill(0);
    isLeapt.fill(0);
    const first = firstAt(time, stroke.start);
    let before = tenthOf(path[first]!, borders);
    samples[before]! += perBin * ofStamps;
    for (let bin = first + 1; bin < time.length && time[bin]! <= stroke.end; bin++) {
      const here = tenthOf(path[bin]!, borders);
      const since = time[bin]! - time[bin - 1]!;
      samples[here]! += perBin * ofStamps;
      if (fall && time[bin]! > fall.start && time[bin]! <= fall.touch) fallen[here]! += since;
      if (since <= longest) spent[here]! += since;
      else {
        while (rest < rests.length && rests[rest]!.end < time[bin]!) rest++;
        const isResting = rest < rests.length && rests[rest]!.start <= time[bin - 1]!;
        if (!isResting) mark(isHidden, before, here);
      }
      before = here;
    }
    for (const { from, to } of jumps) {
      if (time[to]! < stroke.start || time[from]! > stroke.end) continue;
      mark(isLeapt, tenthOf(path[from]!, borders), tenthOf(path[to]!, borders));
    }
    for (let tenth = 0; tenth < tenths; tenth++) {
      // So many samples may take one interval more than they part.
      const isClose = spent[tenth]! * wanted <= longest * (samples[tenth]! + 1);
      const isEnough = samples[tenth]! >= wanted;
      const isFall = fallen[tenth]! > 0 && fallen[tenth]! * rounding < criteria.dropout;
      const isTooFast = isFall || spent[tenth]! * rounding < shortestTenth;
      const isShown = (isClose && isEnough && !isTooFast) || isLeapt[tenth] === 1;
      if (isShown && isHidden[tenth] === 0 && goesOver(stroke, tenth))
        looks[stroke.direction][tenth]! += 1;
    }
  }
  return looks;
}

/** Of a recording that tells no travel. */
export function nothingSeen(): Coverage {
  return { opening: noLooks(), closing: noLooks() };
}

function noLooks(): number[] {
  return Array.from({ length: tenths }, () => 0);
}

/** The levels that part the tenths, from the lowest on. */
function bordersOf(
  { curve }: Expectation,
  scale: ThrottleScale,
  { closed, open }: Movement['stops'],
): Float64Array {
  return Float64Array.from({ length: tenths - 1 }, (_, i) => {
    const level = onScale(scale, voltsAt(curve, (i + 1) / tenths));
    return closed + level * (open - closed);
  });
}

function voltsAt({ travel, volts }: Curve, at: Travel): Volts {
  const next = Math.max(
    1,
    travel.findIndex((one) => one >= at),
  );
  const [from, to] = [travel[next - 1]!, travel[next]!];
  return volts[next - 1]! + ((volts[next]! - volts[next - 1]!) * (at - from)) / (to - from);
}

function tenthOf(level: number, borders: Float64Array): number {
  let tenth = 0;
  while (tenth < borders.length && level >= borders[tenth]!) tenth++;
  return tenth;
}
