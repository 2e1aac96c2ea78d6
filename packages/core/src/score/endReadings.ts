import type { PreparedSweep, Recorder } from '../sweep/captureQuality.js';
import type { Rest, SnapClosing, Stroke } from '../sweep/movement.js';
import type { ThrottleScale } from '../sweep/throttleScale.js';
import type { Seconds, Volts } from '../units.js';
import type { EndReading } from './judgeEnd.js';

/** What the end readings are taken from. */
export interface EndEvidence {
  readonly prepared: PreparedSweep;
  readonly scale: ThrottleScale;
  readonly path: Float64Array;
  readonly movement: {
    readonly strokes: readonly Stroke[];
    readonly rests: readonly Rest[];
    readonly snaps: readonly SnapClosing[];
  };
  readonly recorder: Recorder;
}

/** Rests this close to the outermost one are at the same stop, as a fraction of the span. */
const sameStop = 0.05;
/** A rest begins within this time of the movement that led to it. */
const arrival: Seconds = 0.3;
/** Rests this close to each other came from a stop and not from a hand. */
const sameLevel = 0.003;

/**
 * The reading at a stop: the mean of the rests at the outermost level. The stop was surely reached where
 * the spring closed the throttle or where three arrivals agree.
 */
export function endReading(end: 'closed' | 'open', evidence: EndEvidence): EndReading | undefined {
  const { prepared, scale, path, movement, recorder } = evidence;
  const rests = outermost(end, movement.rests);
  if (rests.length === 0) return undefined;
  const level = mean(rests.map((rest) => rest.level));
  const beyond = end === 'open' ? highest(path) - level : level - lowest(path);
  const { visible } = prepared.quality;
  const agreeing = rests.filter((rest) => Math.abs(rest.level - level) <= sameLevel);
  const bySpring = end === 'closed' && movement.snaps.length > 0;
  return {
    volts: scale.closed + level * scale.span,
    uncertainty: Math.hypot(recorder.uncertainty ?? 0, scatterOfReading(evidence)),
    atStop:
      (arrivals(end, agreeing, movement.strokes) >= 3 || bySpring) &&
      beyond * Math.abs(scale.span) <= 2 * visible,
  };
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

function leadsTo(stroke: Stroke, rest: Rest): boolean {
  return stroke.end > rest.start - arrival && stroke.end <= rest.end;
}

/** What rounding and noise leave in the mean of a rest of ten effective samples, V. */
export function scatterOfReading({ prepared }: EndEvidence): Volts {
  const { resolution, noise } = prepared.quality;
  return Math.hypot(resolution / Math.sqrt(12), noise / Math.sqrt(10));
}

/** The closed readings, V, of the returns by hand and of those by the spring. */
export function closedReturns({ movement, scale }: EndEvidence): readonly (readonly Volts[])[] {
  const byHand: Volts[] = [];
  const bySpring: Volts[] = [];
  for (const rest of outermost('closed', movement.rests)) {
    const volts = scale.closed + rest.level * scale.span;
    const snapped = movement.snaps.some(
      ({ start, settled }) => start < rest.start && rest.start < settled + arrival,
    );
    const closing = movement.strokes.some(
      (stroke) => stroke.direction === 'closing' && leadsTo(stroke, rest),
    );
    if (snapped) bySpring.push(volts);
    else if (closing) byHand.push(volts);
  }
  return [byHand, bySpring];
}

function outermost(end: 'closed' | 'open', rests: readonly Rest[]): readonly Rest[] {
  const levels = rests.map(({ level }) => level);
  const edge = end === 'open' ? Math.max(...levels) : Math.min(...levels);
  return rests.filter(({ level }) => Math.abs(level - edge) <= sameStop);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

function highest(values: Float64Array): number {
  return values.reduce((most, value) => Math.max(most, value));
}

function lowest(values: Float64Array): number {
  return values.reduce((least, value) => Math.min(least, value));
}
