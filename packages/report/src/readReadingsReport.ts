import { InputError } from '@truesweep/core';
import { isSweepJob, type ReadingsJob, readAnyJob } from '@truesweep/jobs';

/** Of the element that holds the job. */
export const jobId = 'truesweep-job';

const start = `<script type="application/json" id="${jobId}">`;

/**
 * Whether a file is a report of single readings, which {@link readReadingsReport} opens.
 *
 * @throws InputError `not-a-text`.
 *
 * @example
 * isReadingsReport('<!doctype html>') // => false
 */
export function isReadingsReport(html: string): boolean {
  if (typeof html !== 'string') {
    throw new InputError('not-a-text', 'html', 'html is none; it must be the text of a file.');
  }
  return html.includes(start);
}

/**
 * Reads back the job that a report of single readings holds, with all readings that were judged.
 *
 * @param html The whole file.
 * @param path Name of the file, for errors.
 * @throws InputError `no-report` where the file holds none, and what `readAnyJob` throws for a job that is none.
 *
 * @example
 * import { judgeReadings } from '@truesweep/jobs';
 * const job = { version: 3, title: 'Coil', sensor: { kind: 'winding', name: 'Coil', low: 0.7, high: 1 }, readings: [{ ohms: 0.9, uncertainty: 0.01, leads: 0, temperature: 20, temperatureUncertainty: 1 }] };
 * const html = readingsReportHtml({ job, writtenAt: '2026-05-04', judged: judgeReadings(job) });
 * readReadingsReport(html).readings.length // => 1
 */
export function readReadingsReport(html: string, path = 'report'): ReadingsJob {
  if (typeof path !== 'string') {
    throw new InputError('not-a-text', 'path', 'path is none; it must be the name of the file.');
  }
  const refuse = (): never => {
    throw new InputError(
      'no-report',
      path,
      'The file holds no report of single readings, or what it holds was changed; open the HTML file as it was written.',
    );
  };
  if (!isReadingsReport(html)) refuse();
  const from = html.indexOf(start) + start.length;
  const to = html.indexOf('</script>', from);
  if (to < 0) refuse();
  const job = readAnyJob(html.slice(from, to), path);
  return isSweepJob(job) ? refuse() : job;
}
