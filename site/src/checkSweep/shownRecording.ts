import { type Job, jobCriteria } from '@truesweep/jobs';
import { RecordingAnswer, RecordingEvidence, type ReportRecording } from '@truesweep/report';
import { scoreSentences } from '@truesweep/wording';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import type { JudgedRecording } from './protocol.js';
import type { Trace } from './trace.js';

/** A judged recording as the page shows it; its samples are needed no more. */
export function shownRecording(
  recording: Omit<ReportRecording, 'sweep'>,
  trace: Trace,
  job: Job,
  index: number,
): JudgedRecording {
  const { name, score } = recording;
  const criteria = jobCriteria(job);
  const id = `recording-${index + 1}`;
  return {
    name,
    verdict: score.verdict,
    said: scoreSentences(score, criteria).verdict,
    units: score.unitsThatFit ?? [],
    answer: renderToString(h(RecordingAnswer, { score, criteria })),
    evidence: renderToString(h(RecordingEvidence, { id, recording, criteria })),
    whole: trace.stretch,
    shortest: trace.shortest,
    findings: score.findings.map(({ start, end }) => ({ start, end })),
  };
}
