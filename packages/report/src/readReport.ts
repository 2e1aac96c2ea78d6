import { InputError } from '@truesweep/core';
import { parseJob } from '@truesweep/jobs';
import { dataId } from './dataId.js';
import type { StoredReport } from './report.js';

/** The newest version of a report that this version reads. */
const newest = 1;

/**
 * Reads back what a report in HTML holds for programs.
 *
 * @param html The whole file.
 * @param path Name of the file, for errors.
 * @throws InputError `no-report` where the file holds none, `newer-version` where a newer program wrote it, and what
 * `parseJob` throws for a job that is none.
 *
 * @example
 * const job = { version: 2, title: 'Spare sensor', sensor: { name: 'Sensor', track: 5000 }, hookUp: { source: { volts: 5 }, limiter: 1000 }, instrument: { name: 'Logger', inputResistance: 1e7 } } as const;
 * const html = reportHtml({ job, writtenAt: '2026-05-04', recordings: [] });
 * readReport(html).job.title // => 'Spare sensor'
 */
export function readReport(html: string, path = 'report'): StoredReport {
  const start = html.indexOf(`id="${dataId}"`);
  const from = html.indexOf('>', start) + 1;
  const to = html.indexOf('</script>', from);
  if (start < 0 || from === 0 || to < 0) refuse(path);
  const data = parsed(html.slice(from, to), path);
  if (!isRecord(data) || data.kind !== 'truesweep-report') refuse(path);
  if (typeof data.version !== 'number' || data.version > newest) {
    throw new InputError(
      'newer-version',
      path,
      `The report is of version ${data.version}, this program reads up to ${newest}; use a newer one.`,
    );
  }
  const { recordings } = data;
  if (!Array.isArray(recordings) || !recordings.every(isRecording)) refuse(path);
  return { ...(data as unknown as StoredReport), job: parseJob(data.job) };
}

function parsed(text: string, path: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    refuse(path);
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function isRecording(value: unknown): boolean {
  return (
    isRecord(value) &&
    typeof value.name === 'string' &&
    typeof value.sha256 === 'string' &&
    isRecord(value.score) &&
    isRecord(value.envelope)
  );
}

function refuse(path: string): never {
  throw new InputError(
    'no-report',
    path,
    'The file holds no report of this program, or what it holds was changed; open the HTML file as it was written.',
  );
}
