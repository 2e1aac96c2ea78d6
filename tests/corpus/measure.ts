import type { Cause, Verdict } from '@truesweep/core';
import type { EventMatch, JudgedCase } from './judgeCase.js';
import type { Kind } from './trueEvents.js';
import { maybe, surely } from './trueOutcomes.js';

export const kinds: readonly Kind[] = ['dropout', 'spike', 'step', 'dead-spot', 'rough'];
export const verdicts: readonly Verdict[] = ['pass', 'marginal', 'fail', 'inconclusive'];

/** So many of so many. */
export interface Rate {
  readonly hits: number;
  readonly of: number;
}

/** Rows and columns by name. */
export type Table = Readonly<Record<string, Readonly<Record<string, number>>>>;

export interface Measured {
  readonly cases: number;
  readonly soundFailed: Rate;
  readonly soundMarginal: Rate;
  readonly soundInconclusive: Rate;
  readonly visiblePassed: Rate;
  readonly inadequatePassed: Rate;
  readonly recall: Readonly<Record<Kind, Rate>>;
  readonly recallInSnaps: Rate;
  readonly recallInadequate: Rate;
  readonly precision: Readonly<Record<Kind, Rate>>;
  readonly below: Rate;
  readonly falseFindings: Rate;
  readonly inPieces: Rate;
  readonly cause: Rate;
  readonly verdict: Rate;
  /** Also of the undecided cases: a verdict that the rules allow. */
  readonly verdictAllowed: Rate;
  readonly travelError: {
    readonly median: number;
    readonly percentile95: number;
    readonly of: number;
  };
  readonly undecided: Rate;
  readonly undecidedBy: Readonly<Record<string, number>>;
  /** Share reported, as any kind, by visibility ratio. */
  readonly detection: readonly {
    readonly from: number;
    readonly to: number;
    readonly rate: Rate;
  }[];
  readonly verdictTable: Table;
  readonly causeTable: Table;
  readonly kindTable: Table;
  readonly verdictByClass: Readonly<Record<string, Rate>>;
  readonly wrongByClass: Table;
}

/** All rates and tables over a set of judged cases. */
export function measure(cases: readonly JudgedCase[]): Measured {
  const decided = cases.filter((one) => one.decided);
  const sound = cases.filter(({ truth }) => truth.sound);
  const decidedSound = decided.filter(({ truth }) => truth.sound);
  const adequateSound = decidedSound.filter(({ truth }) => truth.adequate === true);
  const verdictIs = (verdict: Verdict) => (one: JudgedCase) => one.score.verdict === verdict;
  const events = cases.flatMap((one) => one.events);
  const judgeable = events.filter(({ event, adequate }) => adequate && event.counted);
  const sure = judgeable.filter(({ event }) => event.ratio >= surely);
  const findings = cases.flatMap((one) => one.findings);
  const errors = sure.flatMap(({ travelError }) => travelError ?? []).sort((a, b) => a - b);
  const ofKind = <T>(rate: (kind: Kind) => T) =>
    Object.fromEntries(kinds.map((kind) => [kind, rate(kind)])) as Record<Kind, T>;
  const found = (match: EventMatch): boolean => match.found;
  const sureSlow = events.filter(({ event, adequate }) => !adequate && event.ratio >= surely);
  const sureSnap = events.filter(
    ({ event, adequate }) => adequate && event.snap && event.ratio >= surely,
  );
  return {
    cases: cases.length,
    soundFailed: rate(sound, (one) => verdictIs('fail')(one) && !one.verdictRight),
    soundMarginal: rate(decidedSound, verdictIs('marginal')),
    soundInconclusive: rate(adequateSound, verdictIs('inconclusive')),
    visiblePassed: rate(
      cases.filter(({ truth }) => truth.surelyVisible),
      verdictIs('pass'),
    ),
    inadequatePassed: rate(
      cases.filter(({ truth }) => truth.adequate === false),
      verdictIs('pass'),
    ),
    recall: ofKind((kind) =>
      rate(
        sure.filter(({ event }) => event.kinds[0] === kind),
        found,
      ),
    ),
    recallInSnaps: rate(sureSnap, found),
    recallInadequate: rate(sureSlow, found),
    precision: ofKind((kind) =>
      rate(
        findings.filter(({ finding }) => finding.kind === kind),
        ({ match }) => match === 'right',
      ),
    ),
    below: rate(findings, ({ match }) => match === 'below'),
    falseFindings: {
      hits: findings.filter(({ match }) => match === 'false').length,
      of: cases.length,
    },
    inPieces: rate(sure.filter(found), ({ pieces }) => pieces > 1),
    cause: rate(
      cases.flatMap(({ cause }) => cause ?? []),
      ({ right }) => right,
    ),
    verdict: rate(decided, ({ verdictRight }) => verdictRight),
    verdictAllowed: rate(cases, ({ verdictRight }) => verdictRight),
    travelError: {
      median: errors[errors.length >> 1] ?? 0,
      percentile95: errors[Math.floor(errors.length * 0.95)] ?? 0,
      of: errors.length,
    },
    undecided: rate(cases, (one) => !one.decided),
    undecidedBy: count(
      cases.filter((one) => !one.decided),
      ({ truth }) => truth.open.join(' and ') || 'visible in a poor recording',
    ),
    detection: detectionCurve(judgeable),
    verdictTable: crossed(
      decided,
      ({ truth }) => truth.verdicts[0]!,
      ({ score }) => score.verdict,
    ),
    causeTable: crossed(
      cases.flatMap(({ cause }) => cause ?? []),
      ({ allowed }): Cause => allowed[0]!,
      ({ got }) => got,
    ),
    kindTable: {
      ...crossed(
        sure,
        ({ event }) => event.kinds[0]!,
        ({ reported }) => reported ?? 'missed',
      ),
      ...crossed(
        findings.filter(({ match }) => match === 'false' || match === 'below'),
        ({ match }) => match,
        ({ finding }) => finding.kind,
      ),
    },
    verdictByClass: byClass(decided),
    wrongByClass: crossed(
      cases.flatMap(({ plan, wrong }) =>
        wrong.map((what) => ({ what, className: plan.className })),
      ),
      ({ className }) => className,
      ({ what }) => what,
    ),
  };
}

function rate<T>(items: readonly T[], hit: (item: T) => boolean): Rate {
  return { hits: items.filter(hit).length, of: items.length };
}

function count<T>(
  items: readonly T[],
  name: (item: T) => string,
): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {};
  for (const item of items) counts[name(item)] = (counts[name(item)] ?? 0) + 1;
  return counts;
}

function crossed<T>(
  items: readonly T[],
  row: (item: T) => string,
  column: (item: T) => string,
): Table {
  const names = [...new Set(items.map(row))];
  return Object.fromEntries(
    names.map((name) => [
      name,
      count(
        items.filter((item) => row(item) === name),
        column,
      ),
    ]),
  );
}

function byClass(decided: readonly JudgedCase[]): Readonly<Record<string, Rate>> {
  const names = [...new Set(decided.map(({ plan }) => plan.className))];
  return Object.fromEntries(
    names.map((name) => [
      name,
      rate(
        decided.filter(({ plan }) => plan.className === name),
        ({ verdictRight }) => verdictRight,
      ),
    ]),
  );
}

/** Bins of the visibility ratio: below what may be seen, seven in the doubtful range, and above. */
function detectionCurve(events: readonly EventMatch[]): Measured['detection'] {
  const edges = [
    0.02,
    0.4,
    maybe,
    0.8,
    0.9,
    1,
    1.1,
    1.2,
    1.3,
    surely,
    2,
    4,
    8,
    Number.POSITIVE_INFINITY,
  ];
  return edges.slice(1).map((to, i) => {
    const from = edges[i]!;
    const within = events.filter(({ event }) => event.ratio >= from && event.ratio < to);
    return { from, to, rate: rate(within, ({ reported }) => reported !== undefined) };
  });
}
