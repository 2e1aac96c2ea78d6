import { jobCriteria, jobExpectation } from '@truesweep/jobs';
import {
  cautions,
  checkRows,
  findingRows,
  limitSources,
  reportWords,
  scoreLabels,
  scoreSentences,
  sweepCautions,
  verdictLabels,
  visibleText,
} from '@truesweep/wording';
import { checkedReport } from './checkedReport.js';
import { conditionRows } from './conditionRows.js';
import { filingRows } from './filingRows.js';
import { list, plain, table } from './markdown.js';
import type { Report, ReportRecording } from './report.js';
import { workingParts } from './workingParts.js';

/**
 * A report of judged sweeps as Markdown (CommonMark with tables), to be pasted into a work order: verdict, reasons, findings, checks,
 * conditions and cautions, without drawings.
 *
 * @throws InputError where the job's hook-up has no single output.
 *
 * @example
 * const job = { version: 3, title: 'Spare sensor', sensor: { kind: 'potentiometer', name: 'Sensor', track: 5000 }, hookUp: { source: { volts: 5 }, limiter: 1000 }, instrument: { name: 'Logger', inputResistance: 1e7 } } as const;
 * reportMarkdown({ job, writtenAt: '2026-05-04', recordings: [] }).split('\n')[0] // => '# Spare sensor'
 */
export function reportMarkdown(report: Report): string {
  const { job, writtenAt, record, recordings } = checkedReport(report);
  const filed = filingRows(record);
  const criteria = jobCriteria(job);
  const parts = [
    `# ${plain(job.title)}`,
    `${reportWords.title}, ${reportWords.written.toLowerCase()} ${plain(writtenAt)}`,
    ...(filed.length > 0 ? [list(filed.map(([label, value]) => `${label}: ${value}`))] : []),
    ...recordings.flatMap((recording) => recordingParts(recording, criteria)),
    `## ${reportWords.conditions}`,
    list(conditionRows(job, jobExpectation(job)).map(([label, value]) => `${label}: ${value}`)),
    ...(job.notes ? [`${reportWords.notes}: ${plain(job.notes)}`] : []),
    `## ${scoreLabels.cautions}`,
    list(sweepCautions().map((one) => cautions[one])),
    ...workingParts(recordings),
  ];
  return `${visibleText(parts.join('\n\n'), '\n')}\n`;
}

function recordingParts(
  { name, bytes, sha256, howRead, score }: ReportRecording,
  criteria: ReturnType<typeof jobCriteria>,
): readonly string[] {
  const { verdict, findings, checks } = score;
  const said = scoreSentences(score, criteria);
  const labelled = (label: string, sentences: readonly string[]): readonly string[] =>
    sentences.map((sentence) => `${label}: ${sentence}`);
  return [
    `## ${plain(name)}`,
    `**${verdictLabels[verdict].toUpperCase()}** ${said.verdict}`,
    list([
      ...labelled(scoreLabels.limits, said.loosened),
      ...labelled(scoreLabels.sure, said.sure),
      ...labelled(scoreLabels.cause, said.cause),
      ...labelled(scoreLabels.next, said.next),
      ...labelled(scoreLabels.abrupt, said.abrupt),
    ]),
    ...(findings.length > 0 ? [table(findingRows(findings))] : []),
    table(checkRows(checks)),
    limitSources(checks),
    list([
      ...labelled(scoreLabels.places, said.places),
      ...labelled(scoreLabels.tests, said.tests),
      ...labelled(scoreLabels.codes, said.codes),
      ...labelled(scoreLabels.movement, [said.movement]),
      ...labelled(scoreLabels.seen, said.seen),
      ...labelled(scoreLabels.couldShow, said.couldShow),
      ...labelled(scoreLabels.stamps, said.stamps),
      ...labelled(scoreLabels.assumed, said.assumed),
      ...labelled(reportWords.howRead, [howRead]),
      `${reportWords.size}: ${bytes} bytes, ${reportWords.hash} ${sha256}`,
    ]),
  ];
}
