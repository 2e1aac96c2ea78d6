import { scoreAcCoupled } from '../acCoupled/scoreAcCoupled.js';
import { assumedUncertainty } from '../capture/assumedUncertainty.js';
import {
  type CaptureQuality,
  type PreparedSweep,
  prepareSweep,
  type Recorder,
} from '../capture/captureQuality.js';
import { checkRecorder } from '../capture/checkRecorder.js';
import { checkSweep } from '../capture/checkSweep.js';
import { evenClock } from '../capture/evenClock.js';
import { inOrder } from '../capture/inOrder.js';
import { orderedPairs, pairTimes } from '../capture/orderedPairs.js';
import { ratiometric } from '../capture/ratiometric.js';
import type { Sweep, SweepLike } from '../capture/sweep.js';
import { takenReadings } from '../capture/takenReadings.js';
import { asStamped } from '../capture/takenStamps.js';
import { withoutSeams } from '../capture/withoutSeams.js';
import { withUnread } from '../capture/withUnread.js';
import { contactLevels } from '../contact/contactLevels.js';
import { type Criteria, wholeCriteria } from '../criteria.js';
import { InputError } from '../errors.js';
import { checkExpectation } from '../expectation/checkExpectation.js';
import type { Expectation } from '../expectation/expectation.js';
import { hookUpLevels } from '../expectation/hookUpLevels.js';
import { decideVerdict } from '../judgement/decideVerdict.js';
import { followThrottle } from '../movement/followThrottle.js';
import type { Levels } from '../movement/levels.js';
import { levelsOf } from '../movement/levelsOf.js';
import { type ThrottleScale, throttleScale } from '../movement/throttleScale.js';
import type { Seconds } from '../units.js';
import { chanceMisconnected } from './chanceMisconnected.js';
import { chooseAdvice, isNarrowFor } from './chooseAdvice.js';
import { closedReadings } from './closedReadings.js';
import { chanceOfDepartures, confidence } from './confidence.js';
import { contactEvidence, spotsOf } from './contactEvidence.js';
import { couldShow } from './couldShow.js';
import { coverage } from './coverage.js';
import { closedReturns, endReading, scatterOfReading, worstReturn } from './endReadings.js';
import { findCauses } from './findCauses.js';
import { asExplained, finding } from './findings.js';
import { goalsOf } from './goalsOf.js';
import { inTravel } from './inTravel.js';
import { judgeCapture } from './judgeCapture.js';
import { judgeClosedRest } from './judgeClosedRest.js';
import { isPassedUnseen, judgeCoverage } from './judgeCoverage.js';
import { judgeCriteria } from './judgeCriteria.js';
import { judgeDepartures } from './judgeDepartures.js';
import { judgeDuration } from './judgeDuration.js';
import { judgeEnd } from './judgeEnd.js';
import { judgeMovement } from './judgeMovement.js';
import { judgeStarts, longStroke } from './judgeStarts.js';
import { judgeSupply } from './judgeSupply.js';
import { type JudgedUnits, judgeUnits } from './judgeUnits.js';
import { judgeUnread } from './judgeUnread.js';
import { leadsBeyondRange } from './leadsBeyondRange.js';
import { morePasses } from './morePasses.js';
import { isShort, restsOn } from './restsOn.js';
import type { Check, DeliberateTest, Finding, Score } from './score.js';
import { crossingsOf } from './stepTravel.js';
import { type Explanation, sharesOf, weighCauses } from './weighCauses.js';

/**
 * Judges a recorded sweep of a contacting position sensor.
 *
 * Snap closings with their rebounds are recognised first; what then leaves the throttle's path farther than the
 * visible limit, faster than a hand can move, is a departure. Where departures come from is weighed by their form,
 * time and travel. The ends and the closed reading are compared with what the hook-up must show.
 *
 * A recorder that is coupled through a capacitor shows abrupt departures only: they fail the sweep with the cause left open, and nothing
 * passes it.
 *
 * With a supply channel, or readings of source and zero, the signal is judged as a ratio: then leave the source's
 * tolerance out of the expectation.
 *
 * @param given Time in s and signal in V; the supply and what was done when, where recorded.
 * @param expected From {@link expectation}: curve, windows and the load's rest level.
 * @param recorder What is known of the recorder.
 * @param limits The criteria, all or some; {@link defaultCriteria} for those left out, within {@link criteriaBounds}.
 * @returns Verdict, causes, advice, checks and findings as plain data.
 * @throws InputError for what is no sweep, no expectation, no recorder or no criterion, or for an expectation without span.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const time = Float64Array.from({ length: 100 }, (_, i) => i / 100);
 * const dead = { time, signal: new Float64Array(100).fill(2.5) };
 * scoreSweep(dead, expectation(circuit)).verdict // => 'fail'
 */
export function scoreSweep(
  given: SweepLike,
  expected: Expectation,
  recorder: Recorder = {},
  limits: Partial<Criteria> = {},
): Score {
  const sweep = checkSweep(given);
  checkExpectation(expected);
  checkRecorder(recorder);
  const criteria = wholeCriteria(limits);
  const scale = throttleScale(expected);
  if (!(Math.abs(scale.span) > 0)) {
    throw new InputError(
      'no-span',
      'expected.windows',
      'The expected closed and open readings are equal; the sensor must have a different position at each stop.',
    );
  }
  const { sweep: read, unknown } = withUnread(sweep, recorder.range);
  const { sweep: ordered, disordered, ...mended } = inOrder(read);
  const asMended = { ...asStamped, ...mended };
  if (recorder.coupling === 'ac') {
    const taken = { disordered, stamps: asMended };
    const whole = prepareSweep(ordered, scale.span, recorder, criteria, taken);
    return scoreAcCoupled(ordered, whole, expected, recorder, criteria);
  }
  const hookUp = hookUpLevels(expected.circuit);
  const readings = takenReadings(ordered);
  const whole = withoutSeams(readings?.sweep ?? ordered);
  const known: Recorder = readings
    ? { sampling: 'interpolated', sampledEvery: readings.sampledEvery, ...recorder }
    : recorder;
  const ratio = ratiometric(whole, hookUp, recorder);
  const kept = ratio.sweep.time.length < 2 ? whole : ratio.sweep;
  const inPairs = orderedPairs(kept.time, kept.signal);
  const signal = inPairs?.signal ?? kept.signal;
  const { time: at, ...clock } = evenClock(kept.time, signal);
  const inTime = inPairs ? pairTimes(kept.time, at, inPairs.apart) : at;
  const moved = inPairs ? farthestApart(inTime, kept.time) : clock.moved;
  const judged = { ...kept, time: at, signal };
  const { draft, ...capture } = prepared(judged, scale, known, criteria, {
    disordered,
    stamps: { ...asMended, ...clock, moved, pairs: inPairs?.pairs ?? 0 },
  });
  const { quality } = capture;
  const levels =
    inPairs && capture.levels.perBin === 1 ? { ...capture.levels, time: inTime } : capture.levels;
  const { path, movement, isOpenTrack, doubtful, ...all } = followThrottle(
    levels,
    draft,
    contactLevels(hookUp, scale),
  );
  const departures = all.departures.filter((one) => !leadsBeyondRange(one, levels));
  const { stretches = [] } = sweep;
  const steps = crossingsOf(departures, levels);
  const found = departures.map((one): Finding => {
    const placed = finding(one, levels, path, steps, movement, expected, hookUp, scale);
    if (!isOpenTrack) return placed;
    // The open side of the crack lies beyond the open reading, the closed side beyond the closed one.
    const during = one.depth > 0 ? 'opening' : 'closing';
    return { ...placed, travel: 0.5, unplaced: true, during };
  });
  const evidence = contactEvidence(
    found,
    departures,
    levels,
    path,
    movement,
    expected,
    scale,
    stretches,
    criteria.sameTravel,
    departures.map((one, i) => goalsOf(one, found[i]!, levels, path, hookUp, scale)),
  );
  const explanations = evidence.events.length > 0 ? weighCauses(evidence) : [];
  const pulses = found.some(({ kind }) => kind === 'spike') ? explanations[0]?.foreign : undefined;
  const findings = found.map((one, i) => asExplained(one, pulses?.has(i)));
  const { uncertainty } = ratio;
  const instrument = uncertainty ?? 0;
  const duration = judgeDuration(quality);
  const isLong = duration.outcome === 'conforms';
  // What is too short for a stroke came to no stop.
  const ended = isLong ? movement : { ...movement, rests: [], strokes: [], snaps: [] };
  const ends = { quality, scale, path: movement.path, movement: ended, instrument };
  const { closed, open } = expected.windows;
  const returns = closedReturns(ends, closed);
  const inward = Math.sign(scale.span);
  const misconnected = isOpenTrack
    ? 0
    : chanceMisconnected(movement, expected.windows, hookUp, scale, quality.clip, criteria);
  const told = inTravel(movement, expected, scale);
  // An open track leaps from side to side: that there were strokes is sure, where they led is not.
  const followed = isOpenTrack ? [] : told.strokes;
  const looks = coverage(
    levels,
    movement,
    followed,
    departures,
    expected,
    scale,
    quality,
    criteria,
  );
  const units = judgeUnits(
    read.signal,
    followed
      .filter(({ from, to }) => Math.abs(to - from) >= longStroke)
      .map(({ start, end }) => end - start),
    expected.circuit,
    expected.windows,
  );
  const visible = quality.visible / Math.abs(scale.span);
  const checks = [
    duration,
    ...judgeCapture(capture, expected, recorder, criteria),
    ...(sweep.unread ? [judgeUnread(unknown)] : []),
    judgeSupply(ratio, criteria),
    ...judgeMovement(
      movement.path,
      isOpenTrack ? [] : movement.strokes,
      expected,
      scale,
      misconnected,
      isLong,
      criteria,
    ),
    judgeStarts(levels.time, path, movement, levels),
    judgeCoverage(looks, criteria),
    judgeDepartures(findings, explanations, doubtful, visible, criteria),
    judgeEnd(
      'closed-end',
      worstReturn(
        endReading('closed', closed, ends),
        returns,
        closed,
        inward,
        scatterOfReading(ends),
      ),
      closed,
      scale.span,
      inward,
      criteria,
    ),
    judgeEnd('open-end', endReading('open', open, ends), open, scale.span, -inward, criteria),
    judgeClosedRest(returns, scatterOfReading(ends), scale.span, criteria),
    ...judgeCriteria(criteria),
  ];
  const shares = explanations.length > 0 ? sharesOf(explanations) : undefined;
  const spots = isOpenTrack ? [] : spotsOf(evidence);
  const could = couldShow(
    levels.time,
    movement,
    expected,
    scale,
    quality.visible,
    quality.shortestDropout,
  );
  const grounded = {
    checks,
    findings,
    spots,
    couldShow: could,
    coverage: looks,
    quality,
    interference: shares?.interference ?? 0,
  };
  const causes = findCauses(checks, shares, shares && chanceOfDepartures(grounded), misconnected);
  const verdict = decideVerdict(checks);
  const sure = confidence(verdict, grounded);
  const more = morePasses(evidence);
  const isUntold = uncertainty === undefined;
  const isTooNarrow = (check: Check): boolean =>
    isNarrowFor(check, assumedUncertainty(check.measured ?? 0, quality.resolution, hookUp.source));
  const rests = restsOn(looks, movement.snaps.length);
  const score: Score = {
    verdict,
    ...(sure !== undefined && { confidence: sure }),
    causes,
    ...(explanations.length > 0 && { explanations: explanations.map(toldExplanation) }),
    advice: chooseAdvice(verdict, causes, checks, {
      passedUnseen: isPassedUnseen(looks, followed, criteria),
      shortOfAsked: isShort(rests),
      untoldInstrument: isUntold && checks.some(isTooNarrow),
    }),
    checks,
    findings,
    spots,
    ...(more !== undefined && { morePasses: more }),
    ...told,
    quality,
    restsOn: rests,
    couldShow: could,
    coverage: looks,
    closedReadings: closedReadings(...returns.ways),
    testsNotDone: tests.filter((test) => !stretches.some(({ kind }) => kind === test)),
    supplyAssumed: ratio.supply === 'assumed',
    uncertaintyAssumed: isUntold,
  };
  return units.checks.some(({ outcome }) => outcome !== 'conforms')
    ? inOtherUnits(score, units)
    : score;
}

/** An explanation without what the judge alone needs. */
function toldExplanation({ foreign: _, weight, ...factors }: Explanation) {
  return { ...factors, weight: Math.round(1e9 * weight) / 1e9 };
}

/** What a recording says whose numbers are in other units than they were taken for: nothing of the sensor. */
function inOtherUnits(score: Score, { checks, fit }: JudgedUnits): Score {
  const { confidence: _, explanations: __, morePasses: ___, ...rest } = score;
  return {
    ...rest,
    verdict: 'inconclusive',
    causes: [{ cause: 'recording', weight: 1 }],
    advice: ['tell-units'],
    checks: [...checks, ...score.checks.filter(({ outcome }) => outcome === 'cannot-tell')],
    unitsThatFit: fit,
    findings: [],
    spots: [],
  };
}

/** A recording made ready; its bins in volts end here, large as they are, and its rough path's array is left to work in. */
function prepared(
  sweep: Sweep,
  scale: ThrottleScale,
  recorder: Recorder,
  criteria: Criteria,
  taken: Pick<CaptureQuality, 'disordered' | 'stamps'>,
): Pick<PreparedSweep, 'quality' | 'clipped'> & {
  readonly levels: Levels;
  readonly draft: Float64Array;
} {
  const { bins, path, quality, clipped } = prepareSweep(
    sweep,
    scale.span,
    recorder,
    criteria,
    taken,
  );
  return { quality, clipped, levels: levelsOf({ bins, path, quality }, scale), draft: path };
}

function farthestApart(a: Float64Array, b: Float64Array): Seconds {
  return a.reduce((most, at, i) => Math.max(most, Math.abs(at - b[i]!)), 0);
}

const tests: readonly DeliberateTest[] = ['harness-flexed', 'housing-tapped', 'warmed'];
