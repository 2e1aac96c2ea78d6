import { formatQuantity, type Score } from '@truesweep/core';
import { type Job, jobCriteria } from '@truesweep/jobs';
import type { ReportRecording } from '@truesweep/report';
import { findingPlaceSentence, scoreSentences } from '@truesweep/wording';
import type { JudgedRecording } from './protocol.js';
import type { Trace } from './trace.js';

/** A judged recording as the page shows it; its samples are needed no more. */
export function shownRecording(
  recording: Omit<ReportRecording, 'sweep'>,
  trace: Trace,
  job: Job,
): JudgedRecording {
  const { name, score, sha256 } = recording;
  const criteria = jobCriteria(job);
  const said = scoreSentences(score, criteria);
  return {
    name,
    verdict: score.verdict,
    said: said.verdict,
    why: said.cause.map((cause) => cause.charAt(0).toUpperCase() + cause.slice(1)),
    where: whereOf(score, said.places),
    next: said.next,
    sure: [...said.loosened, ...said.sure, ...said.abrupt],
    score,
    sha256,
    units: score.unitsThatFit ?? [],
    bounds: { whole: trace.stretch, shortest: trace.shortest, volts: voltsOf(trace) },
    hasPasses: score.strokes.length > 0 && !score.abrupt,
    findings: score.findings.map(({ start, end }) => ({ start, end })),
  };
}

/** So many places are enough to go and look. */
const mostPlaces = 3;

/** Where the trouble lies: places that several passes showed, then the deepest findings elsewhere. */
function whereOf({ findings, spots }: Score, places: readonly string[]): readonly string[] {
  const told = new Set(spots.filter(({ seen }) => seen > 1).flatMap((spot) => spot.findings));
  const others = findings
    .map((finding, i) => ({ finding, i }))
    .filter(({ i }) => !told.has(i))
    .sort((one, other) => other.finding.depthOfSpan - one.finding.depthOfSpan)
    .map(({ finding, i }) =>
      findingPlaceSentence({
        number: String(i + 1),
        kind: finding.kind,
        during: finding.during,
        at: formatQuantity(finding.start, 's', { digits: 4, trim: true }),
        depth: formatQuantity(finding.depthOfSpan, '%', { digits: 2, trim: true }),
        ...(!finding.unplaced && {
          travel: formatQuantity(finding.travel, '%', { digits: 2, trim: true }),
        }),
      }),
    );
  return [...places, ...others].slice(0, mostPlaces);
}

/** All readings that are drawn: those of the recording, zero and the windows. */
function voltsOf({ whole, expected }: Trace) {
  const { closed, open } = expected.windows;
  return {
    low: Math.min(0, whole.low, closed.low, open.low),
    high: Math.max(whole.high, closed.high, open.high, 1e-3),
  };
}
