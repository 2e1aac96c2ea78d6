import type { Job } from '@truesweep/jobs';
import { type FilingRecord, type ReportRecording, reportHtml } from '@truesweep/report';

/** The report of judged recordings, one HTML file. Loaded when it is asked for. */
export function writtenReport(
  job: Job,
  writtenAt: string,
  record: FilingRecord,
  recordings: readonly ReportRecording[],
): string {
  return reportHtml({ job, writtenAt, record, recordings });
}
