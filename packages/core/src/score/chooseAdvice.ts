import type { Volts } from '../units.js';
import type { Advice, Cause, Check, Score, Verdict } from './score.js';

/** A cause less probable than this part of the leading one asks for nothing yet. */
const leastOfLeading = 0.5;

/** What else there is to say of a recording. */
export interface Shortcomings {
  /** Strokes went over what was not seen, so that the recorder must do better. */
  readonly passedUnseen?: boolean;
  /** Fewer looks and snaps were recorded than are asked for. */
  readonly shortOfAsked?: boolean;
  /** Nobody told what the instrument reads true to, and one of its kind is too coarse for an end's window. */
  readonly untoldInstrument?: boolean;
}

/** What to do next, the most urgent first. */
export function chooseAdvice(
  verdict: Verdict,
  causes: Score['causes'],
  checks: readonly Check[],
  { passedUnseen = false, shortOfAsked = false, untoldInstrument = false }: Shortcomings = {},
): readonly Advice[] {
  const advice = new Set<Advice>();
  if (verdict === 'pass' && shortOfAsked) advice.add('complete-recording');
  if (verdict === 'pass' && untoldInstrument) advice.add('finer-instrument');
  if (verdict === 'pass') advice.add('refit');
  else
    for (const { cause, weight } of causes)
      if (weight >= leastOfLeading * causes[0]!.weight)
        for (const one of forCause(cause, verdict)) advice.add(one);
  for (const one of checks) {
    const { check, outcome } = one;
    if (isWithoutWidth(one)) advice.add('state-tolerances');
    // The reading is there: what it lacks is a window.
    const isRecorded = isWithoutWidth(one) && one.measured !== undefined;
    if (isTooCoarse(one)) advice.add('finer-instrument');
    else if (outcome === 'cannot-tell' && !isRecorded)
      advice.add(forPoorCheck(check, passedUnseen));
    if (check === 'closed-rest' && outcome === 'not-judged') advice.add('record-more-returns');
  }
  return [...advice];
}

/** An end that does not conform to a window of no width: no tolerances were stated, and every sound sensor lies beside such a one. */
function isWithoutWidth({ outcome, limitFrom, lowLimit, highLimit }: Check): boolean {
  return limitFrom === 'expected-window' && outcome !== 'conforms' && lowLimit === highLimit;
}

/** Whether an end's window is narrower than four times an expanded uncertainty: then a reading by it proves nothing. */
export function isNarrowFor(
  { check, measured, lowLimit = 0, highLimit = 0 }: Check,
  uncertainty: Volts,
): boolean {
  const isEnd = check === 'closed-end' || check === 'open-end';
  return isEnd && measured !== undefined && highLimit - lowLimit < 8 * uncertainty;
}

/** An end that was read, but not well enough for its window. */
function isTooCoarse(one: Check): boolean {
  const isWide = (one.lowLimit ?? 0) < (one.highLimit ?? 0);
  return one.outcome === 'cannot-tell' && isWide && isNarrowFor(one, one.uncertainty ?? 0);
}

function forCause(cause: Cause, verdict: Verdict): readonly Advice[] {
  switch (cause) {
    case 'track':
      return verdict === 'fail' ? ['prove-connection', 'replace-sensor'] : ['record-again'];
    case 'connection':
      return ['prove-connection', 'record-again'];
    case 'interference':
      return ['remove-interference', 'record-again'];
    case 'ends':
      return ['check-adjustment', 'check-wiring'];
    case 'closed-rest':
      return ['check-adjustment', 'record-again'];
    case 'wiring':
      return ['check-wiring', 'record-again'];
    default:
      return [];
  }
}

function forPoorCheck(check: Check['check'], isPassedUnseen: boolean): Advice {
  switch (check) {
    case 'sample-interval':
      return 'record-faster';
    case 'smoothing':
      return 'record-without-smoothing';
    case 'coverage':
      return isPassedUnseen ? 'record-faster' : 'record-whole-strokes';
    case 'visible-departure':
      return 'record-quieter';
    case 'clipping':
      return 'change-range';
    case 'unread':
      return 'record-every-reading';
    case 'criteria':
      return 'tighten-criteria';
    case 'duration':
    case 'closed-end':
    case 'open-end':
    case 'whole-strokes':
    case 'live-output':
      return 'record-whole-strokes';
    default:
      return 'record-again';
  }
}
