import type { RecordingResult } from '@truesweep/jobs/node';
import { batchColumns, visibleText } from '@truesweep/wording';

/** Every column with what stands in it; nothing is told by an empty field. */
const columns: readonly (readonly [
  heading: keyof typeof batchColumns,
  cell: (result: RecordingResult) => string | number | undefined,
])[] = [
  ['file', ({ file }) => file],
  ['date', ({ date }) => date],
  ['sensor', ({ sensor }) => sensor],
  ['job', ({ job }) => job],
  ['outcome', (one) => ('verdict' in one ? one.verdict : 'not judged')],
  ['confidence', (one) => ('verdict' in one ? one.confidence : undefined)],
  ['cause', (one) => ('verdict' in one ? one.causes[0]?.cause : undefined)],
  ['causeWeight', (one) => ('verdict' in one ? one.causes[0]?.weight : undefined)],
  ['closed', (one) => ('verdict' in one ? one.closed?.volts : undefined)],
  ['closedUncertainty', (one) => ('verdict' in one ? one.closed?.uncertainty : undefined)],
  ['open', (one) => ('verdict' in one ? one.open?.volts : undefined)],
  ['openUncertainty', (one) => ('verdict' in one ? one.open?.uncertainty : undefined)],
  ['hysteresis', (one) => ('verdict' in one ? one.hysteresis : undefined)],
  ['findings', (one) => ('verdict' in one ? one.findings : undefined)],
  ['worstKind', (one) => ('verdict' in one ? one.worst?.kind : undefined)],
  ['worstTravel', (one) => ('verdict' in one ? one.worst?.travel : undefined)],
  ['worstDepth', (one) => ('verdict' in one ? one.worst?.depth : undefined)],
  ['noise', (one) => ('verdict' in one ? one.noise : undefined)],
  ['visible', (one) => ('verdict' in one ? one.visible : undefined)],
  ['nearestCheck', (one) => ('verdict' in one ? one.nearest?.check : undefined)],
  ['nearestMargin', (one) => ('verdict' in one ? one.nearest?.margin : undefined)],
  ['refusedCode', (one) => ('refused' in one ? one.refused.code : undefined)],
  ['refusedSentence', (one) => ('refused' in one ? one.refused.sentence : undefined)],
  ['note', ({ note }) => note],
  ['bytes', ({ bytes }) => bytes],
  ['sha256', ({ sha256 }) => sha256],
  ['version', ({ version }) => version],
  ['key', ({ key }) => key],
];

/** The headings of the table. */
export const csvHead = `${columns.map(([name]) => textCell(batchColumns[name])).join(',')}\r\n`;

/** A result as a row of the table (RFC 4180). */
export function csvRow(result: RecordingResult): string {
  const cells = columns.map(([, cell]) => {
    const value = cell(result);
    return typeof value === 'number' ? String(value) : textCell(value ?? '');
  });
  return `${cells.join(',')}\r\n`;
}

/** A spreadsheet would work out what begins like a formula: an apostrophe says that it is text. */
function textCell(text: string): string {
  const visible = visibleText(text);
  const plain = /^[=+\-@]/.test(visible) ? `'${visible}` : visible;
  return /[",]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}
