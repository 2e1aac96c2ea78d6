import { type Criteria, defaultCriteria } from '../criteria.js';
import { InputError } from '../errors.js';
import type { Expectation } from '../expectation/expectation.js';
import { bridged } from '../sweep/bridged.js';
import { type PreparedSweep, prepareSweep, type Recorder } from '../sweep/captureQuality.js';
import { checkSweep } from '../sweep/checkSweep.js';
import type { Departure } from '../sweep/departure.js';
import { findDepartures } from '../sweep/departures.js';
import { firstAt } from '../sweep/firstAt.js';
import type { Levels } from '../sweep/levels.js';
import { findRests, findStrokes } from '../sweep/movement.js';
import { findSnaps } from '../sweep/snaps.js';
import type { Sweep } from '../sweep/sweep.js';
import { onScale, type ThrottleScale, throttleScale, travelAt } from '../sweep/throttleScale.js';
import { withoutRebounds } from '../sweep/withoutRebounds.js';
import { chooseAdvice } from './chooseAdvice.js';
import { decideVerdict } from './decideVerdict.js';
import { closedReturns, endReading, scatterOfReading } from './endReadings.js';
import { findCauses } from './findCauses.js';
import { judgeCapture } from './judgeCapture.js';
import { judgeClosedRest } from './judgeClosedRest.js';
import { judgeDepartures } from './judgeDepartures.js';
import { judgeEnd } from './judgeEnd.js';
import { judgeMovement } from './judgeMovement.js';
import type { Finding, Score } from './score.js';

/**
 * Judges a recorded sweep of a contacting position sensor.
 *
 * The signal's path is its running median over 0.1 s; what leaves it farther than the visible limit, faster
 * than a hand can move, is a departure. Snap closings with their rebounds are recognised first. The ends and
 * the closed reading are compared with what the hook-up must show.
 *
 * @param sweep Time in s and signal in V.
 * @param expected From {@link expectation}: curve, windows and the load's rest level.
 * @param recorder What is known of the recorder.
 * @param criteria The limits; {@link defaultCriteria} when left out.
 * @returns Verdict, causes, advice, checks and findings as plain data.
 * @throws InputError for what is no sweep, or for an expectation without span.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const time = Float64Array.from({ length: 100 }, (_, i) => i / 100);
 * const dead = { time, signal: new Float64Array(100).fill(2.5) };
 * scoreSweep(dead, expectation(circuit)).verdict // => 'fail'
 */
export function scoreSweep(
  sweep: Sweep,
  expected: Expectation,
  recorder: Recorder = {},
  criteria: Criteria = defaultCriteria,
): Score {
  checkSweep(sweep);
  const scale = throttleScale(expected);
  if (!(Math.abs(scale.span) > 0)) {
    throw new InputError(
      'no-span',
      'expected.windows',
      'The expected closed and open readings are equal; the sensor must have a different position at each stop.',
    );
  }
  const prepared = prepareSweep(sweep, scale.span, recorder, criteria);
  const levels = levelsOf(prepared, scale);
  const band = Math.max(levels.visible / 2, 0.01);
  const closed = Math.min(
    0.2,
    ...findRests(levels.time, levels.path, band).map(({ level }) => level),
  );
  const snaps = findSnaps(levels.time, levels.mean, closed, levels.visible);
  const departures = findDepartures(levels, snaps);
  const moved = bridged(levels.path, levels, departures);
  const path = withoutRebounds(moved, levels.time, snaps);
  const strokes = findStrokes(levels.time, path);
  const rests = findRests(levels.time, path, band);
  const movement = { strokes, rests, snaps };
  const findings = departures.map((one) => finding(one, levels, moved, movement, expected, scale));
  const ends = { prepared, scale, path, movement, recorder };
  const checks = [
    ...judgeCapture(sweep, prepared, expected, rests, recorder, criteria),
    ...judgeMovement(path, strokes, expected, scale),
    judgeDepartures(findings, findCauses(findings, [], strokes, criteria), criteria),
    judgeEnd(
      'closed-end',
      endReading('closed', ends),
      expected.windows.closed,
      scale.span,
      Math.sign(scale.span),
      criteria,
    ),
    judgeEnd(
      'open-end',
      endReading('open', ends),
      expected.windows.open,
      scale.span,
      -Math.sign(scale.span),
      criteria,
    ),
    judgeClosedRest(closedReturns(ends), scatterOfReading(ends), scale.span, criteria),
  ];
  const causes = findCauses(findings, checks, strokes, criteria);
  const verdict = decideVerdict(checks);
  return {
    verdict,
    causes,
    advice: chooseAdvice(verdict, causes, checks),
    checks,
    findings,
    strokes,
    rests,
    snaps,
    quality: prepared.quality,
    supplyAssumed: sweep.supply === undefined,
  };
}

/** The recording on the scale of the throttle; a falling sensor's lowest volts are its highest level. */
function levelsOf({ bins, path, quality }: PreparedSweep, scale: ThrottleScale): Levels {
  const level = (volts: number): number => onScale(scale, volts);
  const [low, high] = scale.span > 0 ? [bins.low, bins.high] : [bins.high, bins.low];
  return {
    time: bins.time,
    interval: bins.interval,
    withinBin: (bins.samplesPerBin - 1) / (2 * bins.samplesPerBin),
    mean: bins.mean.map(level),
    low: low.map(level),
    high: high.map(level),
    path: path.map(level),
    rest: scale.rest,
    visible: quality.visible / Math.abs(scale.span),
    noise: quality.noise / Math.sqrt(bins.samplesPerBin) / Math.abs(scale.span),
  };
}

function finding(
  { kind, from, to, depth }: Departure,
  { time, interval }: Levels,
  path: Float64Array,
  movement: Pick<Score, 'strokes' | 'rests' | 'snaps'>,
  expected: Expectation,
  scale: ThrottleScale,
): Finding {
  const start = time[from]! - interval / 2;
  const end = time[to]! + interval / 2;
  const level = path[firstAt(time, (time[from]! + time[to]!) / 2)]!;
  const resting = movement.rests.some((rest) => rest.start <= start && rest.end >= end);
  const snapped = movement.snaps.some((snap) => snap.start <= end && snap.settled >= start);
  const stroke = movement.strokes.find((one) => one.start <= end && one.end >= start);
  return {
    kind,
    start,
    end,
    travel: travelAt(expected, scale.closed + level * scale.span),
    depth: depth * scale.span,
    depthOfSpan: Math.abs(depth),
    during: snapped ? 'closing' : resting || !stroke ? 'rest' : stroke.direction,
  };
}
