import { type Job, jobCriteria } from '@truesweep/jobs';
import { RecordingEvidence, type ReportRecording } from '@truesweep/report';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';

/** What a judgement rests on, as HTML that is made from data of the core alone. Loaded when it is asked for. */
export function drawnEvidence(
  recording: Omit<ReportRecording, 'sweep'>,
  job: Job,
  index: number,
  width: number,
): string {
  const criteria = jobCriteria(job);
  return renderToString(
    h(RecordingEvidence, { id: `recording-${index + 1}`, recording, criteria, width }),
  );
}
