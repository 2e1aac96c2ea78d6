import { type ReadingsJob, writeAnyJob } from '@truesweep/jobs';
import { visibleText } from '@truesweep/wording';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { checkedReadings } from './checkedReadings.js';
import { ReadingsPage } from './ReadingsPage.js';
import type { ReadingsReport } from './readingsReport.js';
import { jobId } from './readReadingsReport.js';
import { htmlPage } from './reportHtml.js';

/**
 * A report of single readings as one HTML file that needs nothing else: no network, no scripts; it prints, and holds the job with its readings.
 *
 * @param report The job and what was made of its readings.
 * @throws InputError for what is no such report.
 *
 * @example
 * import { judgeReadings } from '@truesweep/jobs';
 * const job = { version: 3, title: 'Coil', sensor: { kind: 'winding', name: 'Coil', low: 0.7, high: 1 }, readings: [{ ohms: 0.9, uncertainty: 0.01, leads: 0, temperature: 20, temperatureUncertainty: 1 }] };
 * const html = readingsReportHtml({ job, writtenAt: '2026-05-04', judged: judgeReadings(job) });
 * html.includes('PASS') // => true
 */
export function readingsReportHtml(report: ReadingsReport): string {
  const checked = checkedReadings(report);
  const page = htmlPage(
    checked.job.title,
    renderToString(h(ReadingsPage, checked)),
    jobId,
    writeAnyJob(withAllReadings(checked)),
  );
  return visibleText(page, '\t\r\n');
}

/** The job with what was read from its pump-downs in the place of the recordings, which a report does not hold. */
function withAllReadings({ job, judged, pumpDowns = [] }: ReadingsReport): ReadingsJob {
  if (judged.kind !== 'pressure' || pumpDowns.length === 0) return job;
  const { recordings: _, ...rest } = job as ReadingsJob & { readonly recordings?: unknown };
  const readings = judged.readings.map(
    ({ gauge, gaugeUncertainty, readAs = 'gauge', ...read }) => ({
      ...read,
      port:
        gauge === 0
          ? 'open'
          : {
              pascals: readAs === 'gauge' ? gauge : gauge + judged.station.pressure,
              reference: readAs,
            },
      portUncertainty: gaugeUncertainty,
    }),
  );
  return { ...rest, readings } as ReadingsJob;
}
