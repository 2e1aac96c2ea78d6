import {
  cautions,
  judgedReadingWords,
  readingAdviceSentences,
  readingCautions,
  readingCheckRows,
  readingCodesSentences,
  readingReasonSentences,
  readingUnsaidSentences,
  readingVerdictMeanings,
  reportWords,
  scoreLabels,
  sensorKindLabels,
  verdictLabels,
  visibleText,
} from '@truesweep/wording';
import { checkedReadings } from './checkedReadings.js';
import { filingRows } from './filingRows.js';
import { list, plain, table } from './markdown.js';
import type { ReadingsReport } from './readingsReport.js';
import { workingParts } from './workingParts.js';

/**
 * A report of single readings as Markdown (CommonMark with tables), to be pasted into a work order.
 *
 * @throws InputError for what is no such report.
 *
 * @example
 * import { judgeReadings } from '@truesweep/jobs';
 * const job = { version: 3, title: 'Coil', sensor: { kind: 'winding', name: 'Coil', low: 0.7, high: 1 }, readings: [{ ohms: 0.9, uncertainty: 0.01, leads: 0, temperature: 20, temperatureUncertainty: 1 }] };
 * readingsReportMarkdown({ job, writtenAt: '2026-05-04', judged: judgeReadings(job) }).split('\n')[0] // => '# Coil'
 */
export function readingsReportMarkdown(report: ReadingsReport): string {
  const { job, writtenAt, record, judged, workings = [] } = checkedReadings(report);
  const filed = filingRows(record);
  const { verdict } = judged.judgement;
  const section = (title: string, sentences: readonly string[]) =>
    sentences.length > 0 ? [`## ${title}`, list(sentences)] : [];
  const parts = [
    `# ${plain(job.title)}`,
    `${reportWords.readingsTitle}, ${reportWords.written.toLowerCase()} ${plain(writtenAt)}`,
    ...(filed.length > 0 ? [list(filed.map(([label, value]) => `${label}: ${value}`))] : []),
    `${sensorKindLabels[judged.kind]}: ${plain(job.sensor.name)}`,
    `**${verdictLabels[verdict].toUpperCase()}** ${readingVerdictMeanings[verdict]}`,
    ...section(judgedReadingWords.why, readingReasonSentences(judged)),
    ...section(judgedReadingWords.next, readingAdviceSentences(judged)),
    ...section(judgedReadingWords.codes, readingCodesSentences(judged)),
    `## ${judgedReadingWords.checks}`,
    table(readingCheckRows(judged)),
    judgedReadingWords.spread,
    ...section(judgedReadingWords.unsaid, readingUnsaidSentences(judged)),
    ...(job.notes ? [`${reportWords.notes}: ${plain(job.notes)}`] : []),
    `## ${scoreLabels.cautions}`,
    list(readingCautions(judged.kind).map((one) => cautions[one])),
    ...workingParts([{ name: job.sensor.name, workings }]),
  ];
  return `${visibleText(parts.join('\n\n'), '\n')}\n`;
}
