import { InputError } from '@truesweep/core';
import { visibleText } from '@truesweep/wording';
import { h } from 'preact';
import { renderToString } from 'preact-render-to-string';
import { checkedReport } from './checkedReport.js';
import { dataId } from './dataId.js';
import { findStoredFault } from './findStoredFault.js';
import { ReportPage } from './ReportPage.js';
import type { Report } from './report.js';
import { reportStyle } from './reportStyle.js';
import { storeReport } from './storeReport.js';

/** Nothing is fetched and no script runs, whatever names and notes hold. */
const policy = "default-src 'none'; style-src 'unsafe-inline'";

/**
 * A report of judged sweeps as one HTML file that needs nothing else: no network, no scripts; it prints, and holds the job, all
 * results and, where they are few enough, the samples, so that `readReport` opens it again.
 *
 * @param report Each recording with its score by this job.
 * @throws InputError where the job's hook-up has no single output.
 *
 * @example
 * const job = { version: 3, title: 'Spare sensor', sensor: { kind: 'potentiometer', name: 'Sensor', track: 5000 }, hookUp: { source: { volts: 5 }, limiter: 1000 }, instrument: { name: 'Logger', inputResistance: 1e7 } } as const;
 * const html = reportHtml({ job, writtenAt: '2026-05-04', recordings: [] });
 * html.startsWith('<!doctype html>') // => true
 */
export function reportHtml(given: Report): string {
  const report = checkedReport(given);
  const stored = storeReport(report);
  const fault = findStoredFault(stored);
  if (fault !== undefined) {
    const path = `report.${fault}`;
    throw new InputError(
      'out-of-range',
      path,
      `${path} can't be kept in a report; give what was judged.`,
    );
  }
  const page = htmlPage(
    report.job.title,
    renderToString(h(ReportPage, report)),
    dataId,
    JSON.stringify(stored),
  );
  // As well in the data, where what is written out is read back as it was.
  return visibleText(page, '\t\r\n');
}

/** A page that needs nothing else, with data for programs in an element of its own. */
export function htmlPage(title: string, body: string, id: string, data: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<title>${escaped(title)}</title>
<style>${reportStyle}</style>
</head>
<body>
${body}
<script type="application/json" id="${id}">${data.replaceAll('<', '\\u003c')}</script>
</body>
</html>
`;
}

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}
