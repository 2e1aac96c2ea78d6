import type { Score } from '@truesweep/core';
import { explainScore, workingHtml } from '@truesweep/explain';
import { type Job, jobCriteria, jobExpectation } from '@truesweep/jobs';
import type { ReportRecording } from '@truesweep/report';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';

const workingsOf = (score: Score, job: Job) =>
  explainScore(score, jobExpectation(job), jobCriteria(job));

/** A recording with how its numbers come about, for a report's appendix. */
export const withWorkings = (recording: ReportRecording, job: Job): ReportRecording => ({
  ...recording,
  workings: workingsOf(recording.score, job),
});

/** How a judgement's numbers come about, as HTML, each working folded away. */
export function sweepWorkingsHtml(score: Score, job: Job): string {
  return workingsOf(score, job)
    .map((working) =>
      renderToString(
        h('details', { class: 'working' }, [
          h('summary', {}, working.title),
          h('div', { dangerouslySetInnerHTML: { __html: workingHtml(working) } }),
        ]),
      ),
    )
    .join('');
}
