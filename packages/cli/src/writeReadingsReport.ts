import { dirname, join } from 'node:path';
import { InputError } from '@truesweep/core';
import type { ReadingsJob } from '@truesweep/jobs';
import { writeFileAtomically } from '@truesweep/jobs/node';
import { readingsReportHtml, readingsReportMarkdown } from '@truesweep/report';
import { readingsInJobSentence, visibleText, writtenSentence } from '@truesweep/wording';
import { jobBounds } from './inputBounds.js';
import { jsonText } from './jsonText.js';
import { judgedJob } from './judgedJob.js';
import { refuseInput } from './refuseInput.js';
import type { Output } from './terminal.js';

/** Judges a job's single readings and writes the report; tells what was written. */
export async function writeReadingsReport(
  job: ReadingsJob,
  files: readonly string[],
  options: {
    readonly job: string;
    readonly out: string;
    readonly markdown?: true;
    readonly overwrite?: true;
    readonly working?: true;
    readonly json?: true;
  },
  output: Output,
): Promise<string> {
  const { out, markdown, overwrite, working, json } = options;
  if (files.length > 0) {
    throw new InputError('unexpected', files[0]!, readingsInJobSentence(job.sensor.kind));
  }
  const listed = 'recordings' in job ? (job.recordings ?? []) : [];
  await refuseInput(out, [
    options.job,
    ...listed.map(({ file }) => join(dirname(options.job), file)),
  ]);
  const { judged, recorded } = await judgedJob(job, options.job, jobBounds(output));
  const pumpDowns = recorded.map(({ file, sweep, steps }) => ({ name: file, sweep, steps }));
  const explain = working && (await import('./readingsWorkings.js'));
  const report = {
    job,
    writtenAt: new Date().toISOString(),
    judged,
    pumpDowns,
    ...(explain && { workings: explain.readingsWorkings(judged) }),
  };
  const text = markdown ? readingsReportMarkdown(report) : readingsReportHtml(report);
  await writeFileAtomically(out, text, { overwrite: overwrite ?? false });
  const { verdict } = judged.judgement;
  return json
    ? jsonText('report', { out, recordings: [{ file: options.job, verdict }] })
    : `${visibleText(writtenSentence(out))}\n`;
}
