import type { CaptureQuality } from '../capture/captureQuality.js';
import type { ClipLevels } from '../capture/clipLevels.js';
import type { ReadingWindow } from '../expectation/expectedWindows.js';
import { farthestStop, sameStop, stopScatter } from '../motion/limits.js';
import type { Rest, SnapClosing, Stroke } from '../movement/movement.js';
import type { ThrottleScale } from '../movement/throttleScale.js';
import { meanAndDeviation } from '../statistics/meanAndDeviation.js';
import type { Seconds, Volts } from '../units.js';
import type { EndReading } from './judgeEnd.js';

/** What the end readings are taken from. */
export interface EndEvidence {
  readonly quality: CaptureQuality;
  readonly scale: ThrottleScale;
  readonly path: Float64Array;
  readonly movement: {
    readonly strokes: readonly Stroke[];
    readonly rests: readonly Rest[];
    readonly snaps: readonly SnapClosing[];
  };
  /** Standard uncertainty that the instrument brings, V. */
  readonly instrument: Volts;
}

/** A stroke may seem to end this little after the rest that it led to. */
const slack: Seconds = 0.05;
/** A rest begins within this time of the movement that led to it. */
const arrival: Seconds = 0.3;
/** Rests this close to each other came from a stop and not from a hand; farther apart where a reading is less sure. */
const sameLevel = 0.003;

/** So many arrivals at one level are a stop's and no hand's; any is where it lay there before anything moved it. */
const fewestArrivals = 3;

/**
 * The reading at a stop: the mean of the rests at the outermost level; none where the end of the recorder's
 * range hides it. Its uncertainty combines the instrument's (type B) with the deviation of the mean of three or more
 * rests (type A; JCGM 100:2008, 4.2.3) and with what noise and rounding leave in one. The stop was surely reached
 * where the spring closed the throttle or where three arrivals agree, or one with where it lay at first.
 */
export function endReading(
  end: 'closed' | 'open',
  window: ReadingWindow,
  evidence: EndEvidence,
): EndReading | undefined {
  const { quality, scale, path, movement, instrument } = evidence;
  const rests = outermost(end, movement.rests);
  if (rests.length === 0) return undefined;
  const level = weighted(rests);
  const isHidden = (rest: Rest): boolean =>
    isClipped(scale.closed + rest.level * scale.span, window, evidence);
  if (rests.some(isHidden)) return undefined;
  const beyond = end === 'open' ? highest(path) - level : level - lowest(path);
  const { visible } = quality;
  const unsure = Math.max(quality.resolution, 2 * scatterOfReading(evidence));
  const apart = Math.max(sameLevel, unsure / Math.abs(scale.span));
  const agreeing = rests.filter((rest) => Math.abs(rest.level - level) <= apart);
  const bySpring = end === 'closed' && movement.snaps.length > 0;
  const layThere = end === 'closed' && agreeing.some((rest) => isBefore(rest, movement.strokes));
  const needed = layThere ? 1 : fewestArrivals;
  return {
    volts: scale.closed + level * scale.span,
    instrument,
    uncertainty: Math.hypot(
      instrument,
      repeatability(rests, scale.span),
      scatterOfReading(evidence),
    ),
    atStop:
      (arrivals(end, agreeing, movement.strokes) >= needed || bySpring) &&
      beyond * Math.abs(scale.span) <= 2 * visible,
  };
}

/** Standard deviation of the mean of at least three rests, V; samples of one rest are not independent. */
function repeatability(rests: readonly Rest[], span: Volts): Volts {
  if (rests.length < 3) return 0;
  const { deviation } = meanAndDeviation(rests.map(({ level }) => level));
  return (deviation / Math.sqrt(rests.length)) * Math.abs(span);
}

/** Whether a reading lies at an end of the recorder's range, and the true one may be in the window beyond it. */
function isClipped(volts: Volts, window: ReadingWindow, { quality }: EndEvidence): boolean {
  const { clip, resolution, noise, ripple } = quality;
  const near = resolution + noise + (ripple?.volts ?? 0);
  const isAt = ({ low = -Infinity, high = Infinity }: Omit<ClipLevels, 'perhaps'>): boolean =>
    (volts <= low + near && window.low < low) || (volts >= high - near && window.high > high);
  const isInside = volts >= window.low && volts <= window.high;
  return isAt(clip) || (!isInside && clip.perhaps !== undefined && isAt(clip.perhaps));
}

/** How many strokes led to one of the rests; a rest that noise cut in two is one arrival. */
function arrivals(
  end: 'closed' | 'open',
  rests: readonly Rest[],
  strokes: readonly Stroke[],
): number {
  const direction = end === 'open' ? 'opening' : 'closing';
  const led = strokes.filter(
    (stroke) => stroke.direction === direction && rests.some((rest) => leadsTo(stroke, rest)),
  );
  return led.length;
}

/** Whether a throttle lay at a rest before it was first opened. */
function isBefore({ start, end }: Rest, [first]: readonly Stroke[]): boolean {
  return first?.direction === 'opening' && end - start >= shortestReturn && end <= first.end;
}

function leadsTo(stroke: Stroke, rest: Rest): boolean {
  return stroke.end > rest.start - arrival && stroke.end <= rest.end;
}

/**
 * What rounding and noise leave in the mean of a rest of middling length, V. Noise of σ within a step q steadies
 * the rounding: at most (q/π)·exp(−2π²σ²/q²) is left of it in the mean.
 *
 * Method: quantization theory (B. Widrow and I. Kollár, Quantization Noise, 2008; from memory).
 */
export function scatterOfReading({ quality, movement }: EndEvidence): Volts {
  const { resolution, noise } = quality;
  const rounding = resolution / Math.sqrt(12);
  const own = noise * noise - rounding * rounding;
  const left =
    resolution > 0 && own > 0
      ? ((resolution / Math.PI) * Math.exp((-2 * Math.PI ** 2 * own) / resolution ** 2)) /
        Math.SQRT2
      : rounding;
  const resting = movement.rests.reduce((sum, { start, end }) => sum + end - start, 0);
  const effective = Math.max(1, resting / Math.max(1, movement.rests.length) / correlation);
  return Math.hypot(Math.min(rounding, left), noise / Math.sqrt(effective));
}

/** Noise and tremor of a rest are independent from this time on. */
const correlation: Seconds = 0.02;

/**
 * A throttle that returns comes to rest this near to the closed stop, as a fraction of the span; one that rests farther
 * up hung there or was held.
 */
export const farthestReturn = 0.15;

/** A hand that turns round near the stop lingers there for less than this. Common practice, no source. */
const shortestReturn: Seconds = 0.12;
/** A rest of fewer samples than this may have caught the movement too. */
const fewestSamples = 4;

/** The rests that closing movements led to. */
export interface ClosedReturns {
  /** Closed readings, V, of the returns by hand and of those by the spring; of each return its longest rest. */
  readonly ways: readonly [byHand: readonly Volts[], bySpring: readonly Volts[]];
  /** The reading that it lay at before its first opening, V, where that is nearer to the stop than any return. */
  readonly before?: Volts;
  /** How many more rested so far above the closed stop that they hung there or were held. */
  readonly hanging: number;
}

/** Finds the returns to the closed stop; none where the end of the recorder's range hides how far from it they came to rest. */
export function closedReturns(evidence: EndEvidence, window: ReadingWindow): ClosedReturns {
  const { quality, movement, scale } = evidence;
  const byHand: Volts[] = [];
  const bySpring: Volts[] = [];
  let hanging = 0;
  const band = quality.visible / Math.abs(scale.span) / 2;
  const { rests, snaps, strokes } = movement;
  const closed = rests.reduce((least, { level }) => Math.min(least, level), Infinity);
  if (isClipped(scale.closed + closed * scale.span, window, evidence))
    return { ways: [[], []], hanging: 0 };
  for (const stroke of strokes) {
    if (stroke.direction !== 'closing') continue;
    const near = rests.filter(
      ({ start, end, level }) =>
        end >= stroke.end - slack &&
        start <= stroke.end + arrival &&
        // Where it was held before it closed it has not returned to.
        level < (stroke.from + stroke.to) / 2,
    );
    const after = near.filter((rest) => !isOnTheWayUp(rest, near));
    if (after.length === 0) continue;
    const first = after.reduce((a, b) => (b.end - b.start > a.end - a.start ? b : a));
    const rest = leftFor(first, rests, strokes);
    const least = Math.max(shortestReturn, (fewestSamples - 1) * quality.interval);
    if (rest.end - rest.start < least) continue;
    // It went on from there: a hand, a rebound, or a landing that the recording's end cut short.
    if (rest.level - stroke.to > stopScatter + band) continue;
    const volts = scale.closed + rest.level * scale.span;
    const came = whenItCame(rest, rests);
    const snapped = snaps.some(
      ({ start, settled }) =>
        start < came && came < settled + arrival && start >= stroke.start - arrival,
    );
    if (rest.level > closed + farthestStop) continue;
    const isLast = stroke === strokes[strokes.length - 1] && rest === rests[rests.length - 1];
    if (isLast && rest.level > closed + stopScatter + band && isStep(rest, stroke, rests)) continue;
    if (rest.level > closed + farthestReturn) hanging++;
    else if (snapped) bySpring.push(volts);
    else byHand.push(volts);
  }
  const ways = [byHand, bySpring] as const;
  const [first] = rests;
  const lay = first && scale.closed + first.level * scale.span;
  const isNearer =
    first &&
    isBefore(first, strokes) &&
    ways.flat().length > 0 &&
    ways.flat().every((volts) => (volts - lay!) * scale.span > 0);
  return { ways, hanging, ...(isNearer && { before: lay! }) };
}

/**
 * The closed reading that is judged: of the returns that the spring brought, the one farthest beyond the window where one is, since a control
 * unit reads each of them; else the one at the stop.
 */
export function worstReturn(
  reading: EndReading | undefined,
  { ways: [, bySpring] }: ClosedReturns,
  window: ReadingWindow,
  inner: number,
  scatter: Volts,
): EndReading | undefined {
  if (!reading) return undefined;
  const beyond = (volts: Volts): Volts => (inner > 0 ? volts - window.high : window.low - volts);
  const worst = bySpring.reduce(
    (most, volts) => (beyond(volts) > Math.max(0, beyond(most)) ? volts : most),
    reading.volts,
  );
  if (worst === reading.volts) return reading;
  const uncertainty = Math.hypot(reading.instrument, scatter);
  return { ...reading, volts: worst, uncertainty, atStop: true };
}

/** The rest that an opening left: a throttle that closes on from where it was held, or stuck, had not returned yet. */
function leftFor(first: Rest, rests: readonly Rest[], strokes: readonly Stroke[]): Rest {
  const opening = strokes.find(({ direction, end }) => direction === 'opening' && end > first.end);
  const until = opening?.start ?? Infinity;
  return rests.reduce(
    (last, rest) =>
      rest.start > last.end && rest.start < until && rest.level < last.level ? rest : last,
    first,
  );
}

/** Whether a hand closed it in steps, of which this is one: it had more to go. */
function isStep(rest: Rest, { start, from }: Stroke, rests: readonly Rest[]): boolean {
  return rests.some(
    (other) =>
      other.start > start &&
      other.end < rest.start &&
      other.level < from - sameStop &&
      other.level > rest.level + sameStop,
  );
}

/** A rest above an earlier one of the same return belongs to the next opening. */
function isOnTheWayUp(rest: Rest, rests: readonly Rest[]): boolean {
  return rests.some(({ end, level }) => end <= rest.start && level < rest.level - sameStop);
}

/** When the throttle came to a rest that noise, or a tremor, may have cut into several. */
function whenItCame(rest: Rest, rests: readonly Rest[]): Seconds {
  const isSame = ({ start, end, level }: Rest, later: Rest): boolean =>
    start < later.start && later.start - end <= slack && Math.abs(level - later.level) <= sameLevel;
  let first = rest;
  for (const earlier of rests.toReversed()) if (isSame(earlier, first)) first = earlier;
  return first.start;
}

function outermost(end: 'closed' | 'open', rests: readonly Rest[]): readonly Rest[] {
  const outer = end === 'open' ? Math.max : Math.min;
  const edge = rests.reduce(
    (most, { level }) => outer(most, level),
    end === 'open' ? -Infinity : Infinity,
  );
  return rests.filter(({ level }) => Math.abs(level - edge) <= sameStop);
}

/** The mean level of rests by their length: a short one may be the hand's on its way. */
function weighted(rests: readonly Rest[]): number {
  const seconds = rests.reduce((sum, { start, end }) => sum + end - start, 0);
  return rests.reduce((sum, { start, end, level }) => sum + level * ((end - start) / seconds), 0);
}

function highest(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, value));
}

function lowest(values: Float64Array): number {
  return values.reduce((least, value) => Math.min(least, value));
}
