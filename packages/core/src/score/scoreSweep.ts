import { type Criteria, defaultCriteria } from '../criteria.js';
import { InputError } from '../errors.js';
import type { Expectation } from '../expectation/expectation.js';
import { type PreparedSweep, prepareSweep, type Recorder } from '../sweep/captureQuality.js';
import { checkSweep } from '../sweep/checkSweep.js';
import { followThrottle } from '../sweep/followThrottle.js';
import type { Levels } from '../sweep/levels.js';
import type { Sweep } from '../sweep/sweep.js';
import { onScale, type ThrottleScale, throttleScale } from '../sweep/throttleScale.js';
import { chooseAdvice } from './chooseAdvice.js';
import { contactEvidence, spotsOf } from './contactEvidence.js';
import { decideVerdict } from './decideVerdict.js';
import { closedReturns, endReading, scatterOfReading } from './endReadings.js';
import { findCauses } from './findCauses.js';
import { asExplained, finding } from './findings.js';
import { isMisconnected } from './isMisconnected.js';
import { judgeCapture } from './judgeCapture.js';
import { judgeClosedRest } from './judgeClosedRest.js';
import { judgeDepartures } from './judgeDepartures.js';
import { judgeEnd } from './judgeEnd.js';
import { judgeMovement } from './judgeMovement.js';
import { morePasses } from './morePasses.js';
import type { Score } from './score.js';
import { sharesOf, weighCauses } from './weighCauses.js';

/**
 * Judges a recorded sweep of a contacting position sensor.
 *
 * Snap closings with their rebounds are recognised first; what then leaves the throttle's path farther than the
 * visible limit, faster than a hand can move, is a departure. Where departures come from is weighed by their form,
 * time and travel. The ends and the closed reading are compared with what the hook-up must show.
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
  const { path, departures, movement } = followThrottle(levels);
  const found = departures.map((one) => finding(one, levels, path, movement, expected, scale));
  const evidence = contactEvidence(found, departures, levels, path, movement, expected, scale);
  const { events, passes, spent } = evidence;
  const explanations = events.length > 0 ? weighCauses(events, passes, spent) : [];
  const findings = found.map((one, i) => asExplained(one, explanations[0]?.foreign.has(i)));
  const ends = { prepared, scale, path: movement.path, movement, recorder };
  const checks = [
    ...judgeCapture(sweep, prepared, expected, movement.rests, recorder, criteria),
    ...judgeMovement(movement.path, movement.strokes, expected, scale),
    judgeDepartures(findings, explanations[0], criteria),
    judgeEnd(
      'closed-end',
      endReading('closed', expected.windows.closed, ends),
      expected.windows.closed,
      scale.span,
      Math.sign(scale.span),
      criteria,
    ),
    judgeEnd(
      'open-end',
      endReading('open', expected.windows.open, ends),
      expected.windows.open,
      scale.span,
      -Math.sign(scale.span),
      criteria,
    ),
    judgeClosedRest(closedReturns(ends), scatterOfReading(ends), scale.span, criteria),
  ];
  const causes = findCauses(
    checks,
    explanations.length > 0 ? sharesOf(explanations) : undefined,
    isMisconnected(movement.path, expected, scale),
  );
  const verdict = decideVerdict(checks);
  const more = morePasses(events, passes, spent);
  return {
    verdict,
    causes,
    advice: chooseAdvice(verdict, causes, checks),
    checks,
    findings,
    spots: spotsOf(events, passes),
    ...(more !== undefined && { morePasses: more }),
    strokes: movement.strokes,
    rests: movement.rests,
    snaps: movement.snaps,
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
