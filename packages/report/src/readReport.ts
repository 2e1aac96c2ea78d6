import { InputError } from '@truesweep/core';
import { parseJob } from '@truesweep/jobs';
import { dataId } from './dataId.js';
import { findStoredFault } from './findStoredFault.js';
import type { StoredReport } from './report.js';

/** The element itself: a text of a page can't look like it, for its < is written &lt;. */
const storedData = new RegExp(`<script(?: type="application/json")? id="${dataId}">`);

/** The newest version of a report that this version reads. */
const newest = 1;

/**
 * Reads back what a report in HTML holds for programs.
 *
 * @param html The whole file.
 * @param path Name of the file, for errors.
 * @throws InputError `no-report` where the file holds none or a damaged one, `newer-version` where a newer program wrote it, and what
 * `parseJob` throws for a job that is none.
 *
 * @example
 * const job = { version: 3, title: 'Spare sensor', sensor: { kind: 'potentiometer', name: 'Sensor', track: 5000 }, hookUp: { source: { volts: 5 }, limiter: 1000 }, instrument: { name: 'Logger', inputResistance: 1e7 } } as const;
 * const html = reportHtml({ job, writtenAt: '2026-05-04', recordings: [] });
 * readReport(html).job.title // => 'Spare sensor'
 */
export function readReport(html: string, path = 'report'): StoredReport {
  for (const [name, value] of Object.entries({ html, path })) {
    if (typeof value === 'string') continue;
    throw new InputError(
      'not-a-text',
      name,
      `${name} is ${value === undefined ? 'missing' : `a ${typeof value}`}; it must be a text.`,
    );
  }
  const start = storedData.exec(html);
  if (!start) refuseOther(path);
  const from = start.index + start[0].length;
  const to = html.indexOf('</script>', from);
  if (to < 0) refuseOther(path);
  const data = parsed(html.slice(from, to), path);
  if (!isRecord(data) || data.kind !== 'truesweep-report') refuseOther(path);
  const { version } = data;
  if (!Number.isInteger(version) || (version as number) < 1) refuseDamaged('version', path);
  if ((version as number) > newest) {
    throw new InputError(
      'newer-version',
      path,
      `The report is of version ${version}, this program reads up to ${newest}; use a newer one.`,
    );
  }
  const fault = findStoredFault(data);
  if (fault !== undefined) refuseDamaged(fault, path);
  return { ...(data as unknown as StoredReport), job: parseJob(data.job) };
}

function parsed(text: string, path: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    refuseOther(path);
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function refuseOther(path: string): never {
  throw new InputError(
    'no-report',
    path,
    'The file holds no report of this program, or what it holds was changed; open the HTML file as it was written.',
  );
}

function refuseDamaged(field: string, path: string): never {
  throw new InputError(
    'no-report',
    path,
    `What the report holds in ${field} is missing or not what this program writes there; open the HTML file as it was written.`,
  );
}
