import type { Cause, Expectation, ReadingWindow, Recorder, Verdict, Volts } from '@truesweep/core';
import type { WorldEvent } from '../worlds/worldCase.js';
import { type FaultName, families, trueCauses } from './faults.js';

/** What was recorded of a case, as far as its verdict rests on it. */
export interface Evidence {
  readonly fault: FaultName | undefined;
  readonly adequate: boolean | undefined;
  /** Readings at rest on the stops, V. */
  readonly closed: readonly { readonly volts: Volts; readonly way: 'fall' | 'hand' }[];
  readonly open: readonly Volts[];
  readonly expected: Expectation;
  readonly told: Recorder;
  readonly span: Volts;
  readonly noise: Volts;
  readonly resolution: Volts;
  readonly high: Volts;
  /** Events with the rows that showed them. */
  readonly events: readonly (WorldEvent & { readonly rows: number })[];
  /** Falls by the spring from high up with rebounds to see, which tell open from closed. */
  readonly falls: number;
  /** Strokes that stopped short of the open stop, where none reached it. */
  readonly shortStrokes: number;
  readonly clipped: boolean;
  readonly supplyShown: boolean;
  /** A median or average so long that only opinion tells whether a dropout could show, or stamps no judge need trust. */
  readonly doubtful: boolean;
}

type Fair = ReadonlySet<Verdict>;
const fair = (...verdicts: Verdict[]): Fair => new Set(verdicts);

/** What two fair judgements of parts leave for the whole: the worse one, and "can't tell" beside any. */
function together(a: Fair, b: Fair): Fair {
  const whole = new Set<Verdict>();
  for (const one of a)
    for (const other of b) {
      const both = [one, other];
      const worst = (['fail', 'marginal'] as const).find((verdict) => both.includes(verdict));
      if (worst) whole.add(worst);
      if (both.includes('inconclusive')) whole.add('inconclusive');
      else if (!worst) whole.add('pass');
    }
  return whole;
}

/** A value known to some tolerance, against a normal and a marginal limit. */
function graded(value: number, tolerance: number, normal: number, marginal: number): Fair {
  const verdicts = new Set<Verdict>();
  if (value - tolerance <= normal) verdicts.add('pass');
  if (value + tolerance > normal && value - tolerance <= marginal) verdicts.add('marginal');
  if (value + tolerance > marginal) verdicts.add('fail');
  return verdicts;
}

const union = (...all: Fair[]): Fair => new Set(all.flatMap((one) => [...one]));

/** Readings against a window: outside by up to 2.5 % of span, or the uncertainty, is marginal. */
function ofEnd(readings: readonly Volts[], window: ReadingWindow, evidence: Evidence): Fair {
  if (readings.length === 0) return fair('pass');
  const { span, told, noise, resolution } = evidence;
  const tolerance = 0.003 + (noise / 2 + resolution) / span;
  const limit = Math.max(0.025, (2 * (told.uncertainty ?? 0)) / span);
  return union(
    ...readings.map((volts) =>
      graded(Math.max(window.low - volts, volts - window.high) / span, tolerance, 0, limit),
    ),
  );
}

function ofEnds(evidence: Evidence, swapped = false): Fair {
  const { closed, open, expected } = evidence;
  const { windows } = expected;
  const closedVolts = closed.map(({ volts }) => volts);
  return together(
    ofEnd(closedVolts, swapped ? windows.open : windows.closed, evidence),
    ofEnd(open, swapped ? windows.closed : windows.open, evidence),
  );
}

/** Scatter of returns: up to 3 % of span normal, up to 7 % marginal; two suffice beyond a limit, within it three are needed. */
function ofReturns({ closed, span, resolution, noise }: Evidence): Fair {
  const range = (volts: readonly Volts[]): number =>
    volts.length < 2 ? 0 : (Math.max(...volts) - Math.min(...volts)) / span;
  const of = (way?: 'fall' | 'hand'): readonly Volts[] =>
    closed.filter((one) => way === undefined || one.way === way).map(({ volts }) => volts);
  const tolerance = 0.004 + (noise / 2 + resolution) / span;
  // Ways of return are judged apart or together; the first rest may be taken for a return or not.
  const ranges = [range(of('fall')), range(of()), range(of().slice(1))];
  const verdicts = union(...ranges.map((one) => graded(one, tolerance, 0.03, 0.07)));
  if (of('fall').length >= 3) return verdicts;
  // Nothing tells a throttle that sticks under the hand from one that the hand stopped short.
  return Math.max(...ranges) > 0.03 - tolerance
    ? union(verdicts, fair('pass', 'marginal', 'inconclusive'))
    : verdicts;
}

/** Departures of the track or the connection: one may be marginal, many fail. */
function ofDepartures({ events, fault }: Evidence): Fair {
  const shown = events.filter(({ ratio }) => ratio >= 0.7);
  // A smooth dip of so long a time may be the hand's.
  const sharp = events.filter(({ start, end }) => fault !== 'dirt' || end - start < 0.03);
  const strong = sharp.filter(({ ratio, fast }) => ratio >= (fast ? 4 : 1.4));
  const sure = sharp.filter(({ ratio, fast, rows }) => ratio >= 2 && !fast && rows >= 2);
  // A dead spot alone looks like a pause of the hand, a step within a fall like the fall.
  const hides = fault === 'dead spot' || strong.every(({ fast }) => fast);
  if (shown.length === 0) return fair('pass', 'marginal');
  if (strong.length === 0) return fair('pass', 'marginal', 'fail');
  // A few short ones at random may be taken for interference at first.
  const enough = fault && families[fault] === 'connection' ? 5 : 3;
  if (sure.length >= enough && fault !== 'dead spot' && fault !== 'rough') return fair('fail');
  if (hides && strong.length < 3) return fair('pass', 'marginal', 'fail');
  if (sure.length === 0) return fair('marginal', 'fail', 'inconclusive');
  return fair('marginal', 'fail');
}

function ofHookUp(evidence: Evidence): Fair {
  const { fault, expected, closed, open, span, falls } = evidence;
  const ends = ofEnds(evidence);
  if (fault === 'open crack') return fair('fail');
  if (fault === 'exchanged' || fault === 'mirrored exchange') {
    const taken = ofEnds(evidence, true);
    if (!taken.has('pass') && !taken.has('marginal')) return fair('fail');
    // Nothing but the spring tells which end is which.
    return falls >= 2
      ? fair('fail', 'marginal', 'inconclusive')
      : union(taken, fair('fail', 'inconclusive', 'marginal'));
  }
  const near = ({ low, high }: ReadingWindow): boolean =>
    [...closed.map(({ volts }) => volts), ...open].some(
      (v) => v > low - 0.03 * span && v < high + 0.03 * span,
    );
  const looksLikeAnEnd = near(expected.windows.closed) || near(expected.windows.open);
  if (closed.length + open.length === 0 || looksLikeAnEnd)
    return fair('fail', 'inconclusive', 'marginal');
  return ends.has('fail') ? fair('fail') : union(ends, fair('fail', 'inconclusive'));
}

function ofClipping({ clipped, told, expected, high, span }: Evidence): Fair {
  if (!clipped) return fair('pass');
  if (told.range) return fair('inconclusive');
  // A flat top that nobody named may be taken for a stop's.
  const windows = [expected.windows.closed, expected.windows.open];
  const within = windows.some(
    (window) => high > window.low - 0.03 * span && high < window.high + 0.03 * span,
  );
  return within
    ? fair('inconclusive', 'fail', 'marginal', 'pass')
    : fair('inconclusive', 'fail', 'marginal');
}

function ofFault(evidence: Evidence): Fair {
  const { fault, events } = evidence;
  if (fault === undefined) return fair('pass');
  switch (families[fault]) {
    case 'track':
    case 'connection':
      return ofDepartures(evidence);
    case 'interference':
      return fair('pass', 'marginal', 'inconclusive');
    case 'hook-up':
      return ofHookUp(evidence);
    case 'supply':
      if (evidence.supplyShown) return fair('pass', 'marginal', 'inconclusive');
      // A slow dip or two may be the hand's.
      return events.filter(({ ratio }) => ratio >= 1.4).length >= 3
        ? fair('marginal', 'fail', 'inconclusive')
        : fair('pass', 'marginal', 'fail', 'inconclusive');
    case 'recorder':
      return ofClipping(evidence);
    case 'ends':
    case 'return':
      return fair('pass');
  }
}

/** What a fair judge may say of a recording, by the rules of a verdict. */
export function fairVerdicts(evidence: Evidence): readonly Verdict[] {
  const { fault, adequate, doubtful, closed, open } = evidence;
  const family = fault && families[fault];
  const capture =
    adequate === true
      ? fair('pass')
      : adequate === false && !doubtful
        ? fair('inconclusive')
        : fair('pass', 'inconclusive');
  let verdicts = together(ofFault(evidence), capture);
  // Any other fault leaves the readings at the stops as they are, in their windows.
  const movesRests =
    family === 'ends' || family === 'return' || fault === 'crack' || fault === 'slipped';
  if (movesRests) verdicts = together(verdicts, together(ofEnds(evidence), ofReturns(evidence)));
  // Nothing but the end tells a stroke that stopped short from an end that is off.
  if (family === 'ends' && (closed.length < 3 || open.length < 3))
    verdicts = union(verdicts, fair('inconclusive'));
  const { shortStrokes } = evidence;
  if (shortStrokes > 0 && shortStrokes < 3) verdicts = union(verdicts, fair('marginal', 'fail'));
  return [...verdicts].sort();
}

/** Causes that count as right, where the evidence decides. */
export function fairCauses(
  evidence: Evidence,
  verdicts: readonly Verdict[],
): readonly Cause[] | undefined {
  const { fault, adequate, events, expected } = evidence;
  if (fault === undefined)
    return adequate === true
      ? ['none']
      : adequate === false && !evidence.doubtful
        ? ['recording']
        : undefined;
  const strong = events.filter(({ ratio, fast, rows }) => ratio >= 2 && !fast && rows >= 2).length;
  const family = families[fault];
  if (family === 'interference')
    return events.filter(({ ratio }) => ratio >= 2).length >= 6
      ? trueCauses.interference
      : undefined;
  if (verdicts.includes('pass')) return undefined;
  const more: Cause[] = [];
  if (!ofEnds(evidence).has('pass')) more.push('ends');
  if (!ofReturns(evidence).has('pass')) more.push('closed-rest');
  if (verdicts.includes('inconclusive')) more.push('recording');
  if (family === 'track' && strong < 3) return undefined;
  if (family === 'connection' && strong < 5) return undefined;
  if (family === 'supply' && !evidence.supplyShown) return undefined;
  if (fault === 'open crack') more.push('track');
  // A dead level may be a broken lead as well as a wrong terminal, and an end's reading.
  if (fault === 'no output' && expected.restLevel === undefined) return undefined;
  return [...new Set([...trueCauses[family], ...more])];
}
