import { type Cause, type Finding, InputError, type Score, type Verdict } from '@truesweep/core';
import type { Kind } from '../trueEvents.js';
import { maybe, surely } from '../trueOutcomes.js';
import { type ToldOdds, toldOdds } from './toldOdds.js';
import type { WorldCase, WorldEvent } from './worldCase.js';

/** An event that is surely visible, beside what was reported of it. */
export interface WorldEventMatch {
  readonly event: WorldEvent;
  /** A finding of a right kind overlaps it. */
  readonly found: boolean;
  /** Kind of the finding that overlaps it, a right one first. */
  readonly reported?: Kind;
  /** Distance of the reported travel from where it was. */
  readonly travelError?: number;
}

/** A finding beside the truth: `open` where the event is about as large as the visible departure, or explained by the supply. */
export interface WorldFindingMatch {
  readonly finding: Finding;
  readonly match: 'right' | 'wrong kind' | 'open' | 'false';
}

export interface JudgedWorldCase {
  /** Without what takes memory. */
  readonly played: Omit<WorldCase, 'sweep' | 'expected'>;
  readonly verdict: Verdict | 'refused';
  readonly verdictRight: boolean;
  /** Left out where the truth can't be decided. */
  readonly cause?: { readonly got: Cause; readonly right: boolean };
  readonly events: readonly WorldEventMatch[];
  readonly findings: readonly WorldFindingMatch[];
  /** Normal rebounds, and those that a finding without event overlaps. */
  readonly bounces: { readonly all: number; readonly named: number };
  readonly odds: ToldOdds;
  /** What was wrong, in words; empty for a case that was judged right. */
  readonly wrong: readonly string[];
}

interface Span {
  readonly start: number;
  readonly end: number;
}

/** Compares what was said of a case with what is true of it. */
export function judgeWorldCase(world: WorldCase, said: Score | InputError): JudgedWorldCase {
  const { sweep, expected: _, ...played } = world;
  const found = said instanceof InputError ? [] : said.findings;
  const slack = Math.max(0.005, 3 * usualInterval(sweep.time));
  const near = (finding: Finding, event: Span): boolean =>
    finding.start - slack <= event.end && finding.end + slack >= event.start;
  const events = world.events
    .filter(({ ratio }) => ratio >= surely)
    .map((event) =>
      matchOf(
        event,
        found.filter((finding) => near(finding, event)),
      ),
    );
  const findings = found.map((finding): WorldFindingMatch => {
    const over = world.events.filter((event) => near(finding, event));
    const sure = over.filter(({ ratio }) => ratio >= surely);
    if (sure.some(({ kinds }) => kinds.includes(finding.kind))) return { finding, match: 'right' };
    // A ratio of nothing: what the supply shows is explained, and may be named or not.
    if (over.some(({ ratio }) => ratio === 0 || (ratio >= maybe && ratio < surely)))
      return { finding, match: 'open' };
    return { finding, match: sure.length > 0 ? 'wrong kind' : 'false' };
  });
  const named = world.bounces.filter(({ start, end }) =>
    findings.some(
      ({ finding, match }) => match === 'false' && finding.start <= end && finding.end >= start,
    ),
  );
  const verdict = said instanceof InputError ? 'refused' : said.verdict;
  const verdictRight = world.verdicts.includes(verdict === 'refused' ? 'inconclusive' : verdict);
  const cause = causeOf(world, said);
  const judged = {
    played,
    verdict,
    verdictRight,
    ...(cause && { cause }),
    events,
    findings,
    bounces: { all: world.bounces.length, named: named.length },
    odds: toldOdds(world, said),
  } as const;
  return { ...judged, wrong: wrongWith(judged) };
}

/** The middle one of the intervals that are any. */
function usualInterval(time: Float64Array): number {
  const intervals = time.subarray(1).map((at, i) => at - time[i]!);
  const some = intervals.filter((interval) => interval > 0).sort();
  return some[some.length >> 1] ?? 0;
}

function matchOf(event: WorldEvent, over: readonly Finding[]): WorldEventMatch {
  const right = over.find(({ kind }) => event.kinds.includes(kind));
  const best = right ?? over[0];
  return {
    event,
    found: right !== undefined,
    ...(best && { reported: best.kind }),
    ...(right && {
      travelError: Math.max(0, event.from - right.travel, right.travel - event.to),
    }),
  };
}

/** Where "can't tell" is fair, so is the recording as its cause. */
function causeOf({ causes, verdicts }: WorldCase, said: Score | InputError) {
  if (!causes) return undefined;
  const isOpen = said instanceof InputError || said.verdict === 'inconclusive';
  const got = said instanceof InputError ? 'recording' : (said.causes[0]?.cause ?? 'none');
  const right =
    causes.includes(got) || (got === 'recording' && isOpen && verdicts.includes('inconclusive'));
  return { got, right };
}

function wrongWith(judged: Omit<JudgedWorldCase, 'wrong'>): readonly string[] {
  const { played, verdict, verdictRight, cause, events, findings, bounces } = judged;
  const wrong = [
    ...(verdictRight ? [] : [`verdict ${verdict} for ${played.verdicts.join(' or ')}`]),
    ...(cause && !cause.right ? [`cause ${cause.got} for ${played.causes!.join(' or ')}`] : []),
    ...events.flatMap(({ event, found, reported }) =>
      found ? [] : [`${event.kinds[0]} ${reported ? `reported as ${reported}` : 'missed'}`],
    ),
    ...findings.flatMap(({ finding, match }) =>
      match === 'wrong kind' || match === 'false' ? [`${match} ${finding.kind}`] : [],
    ),
    ...(bounces.named > 0 ? ['bounce named a fault'] : []),
  ];
  return [...new Set(wrong)];
}
