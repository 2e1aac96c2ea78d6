import type { Cause, Finding, Verdict } from '@truesweep/core';
import type { CaseResult } from './runCase.js';
import type { Kind, TrueEvent } from './trueEvents.js';
import { maybe, surely } from './trueOutcomes.js';

/** A true event beside what was reported of it. */
export interface EventMatch {
  readonly event: TrueEvent;
  /** A finding of a right kind overlaps it. */
  readonly found: boolean;
  /** Kind of the finding that overlaps it, a right one first. */
  readonly reported?: Kind;
  /** How many findings of a right kind it was cut into. */
  readonly pieces: number;
  /** Reported less true travel, without sign; for stretches the distance from the stretch. */
  readonly travelError?: number;
  /** Whether its recording could show what it must, or that is open. */
  readonly adequate: boolean;
}

/** A finding beside the truth: `below` is an event that is too small to report. */
export interface FindingMatch {
  readonly finding: Finding;
  readonly match: 'right' | 'wrong kind' | 'below' | 'false';
}

export interface JudgedCase extends CaseResult {
  readonly events: readonly EventMatch[];
  readonly findings: readonly FindingMatch[];
  readonly verdictRight: boolean;
  readonly decided: boolean;
  readonly cause?: {
    readonly allowed: readonly Cause[];
    readonly got: Cause;
    readonly right: boolean;
  };
  /** What was wrong, in words; empty for a case that was judged right. */
  readonly wrong: readonly string[];
}

/** Compares what was reported of a case with its truth. */
export function judgeCase(result: CaseResult): JudgedCase {
  const { plan, truth, score } = result;
  const slack = Math.max(0.005, 3 * plan.recorder.interval);
  const overlaps = (finding: Finding, event: TrueEvent): boolean =>
    finding.start - slack <= event.end && finding.end + slack >= event.start;
  const events = truth.events.map((event): EventMatch => {
    const over = score.findings.filter((finding) => overlaps(finding, event));
    const right = over.filter(({ kind }) => event.kinds.includes(kind));
    const best = right[0] ?? over[0];
    return {
      event,
      found: right.length > 0,
      pieces: right.length,
      adequate: truth.adequate !== false,
      ...(best && { reported: best.kind }),
      ...(right[0] && { travelError: travelError(right[0], event) }),
    };
  });
  const findings = score.findings.map((finding): FindingMatch => {
    const over = truth.events.filter((event) => overlaps(finding, event));
    const visible = over.filter(({ ratio }) => ratio >= maybe);
    if (visible.some(({ kinds }) => kinds.includes(finding.kind)))
      return { finding, match: 'right' };
    if (visible.length > 0) return { finding, match: 'wrong kind' };
    return { finding, match: over.length > 0 ? 'below' : 'false' };
  });
  const decided = truth.verdicts.length === 1;
  const verdictRight = truth.verdicts.includes(score.verdict);
  const got = score.causes[0]?.cause ?? 'none';
  const cause = truth.causes && { allowed: truth.causes, got, right: truth.causes.includes(got) };
  const judged = { ...result, events, findings, decided, verdictRight, ...(cause && { cause }) };
  return { ...judged, wrong: wrongWith(judged, score.verdict) };
}

function travelError({ travel }: Finding, { kinds, from, to, travel: middle }: TrueEvent): number {
  const stretch = kinds[0] === 'rough' || kinds[0] === 'dead-spot';
  return stretch ? Math.max(0, from - travel, travel - to) : Math.abs(travel - middle);
}

function wrongWith(judged: Omit<JudgedCase, 'wrong'>, verdict: Verdict): readonly string[] {
  const { truth, events, findings, cause } = judged;
  const wrong: string[] = [];
  if (truth.surelyVisible && verdict === 'pass') wrong.push('visible fault passed');
  if (!judged.verdictRight) wrong.push(`verdict ${verdict} for ${truth.verdicts.join(' or ')}`);
  if (cause && !cause.right) wrong.push(`cause ${cause.got} for ${cause.allowed.join(' or ')}`);
  for (const { event, found, adequate, reported } of events)
    if (adequate && event.counted && event.ratio >= surely && !found)
      wrong.push(`${event.kinds[0]} ${reported ? `reported as ${reported}` : 'missed'}`);
  if (
    events.some(
      ({ event, travelError = 0 }) => event.ratio >= surely && event.counted && travelError > 0.02,
    )
  )
    wrong.push('travel off by more than 2 %');
  for (const { finding, match } of findings)
    if (match !== 'right') wrong.push(`${match} ${finding.kind}`);
  return [...new Set(wrong)];
}
