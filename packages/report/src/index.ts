export { RecordingAnswer, RecordingEvidence } from './RecordingPart.js';
export type { ReadingsReport, ReportedPumpDown } from './readingsReport.js';
export { readingsReportHtml } from './readingsReportHtml.js';
export { readingsReportMarkdown } from './readingsReportMarkdown.js';
export { isReadingsReport, readReadingsReport } from './readReadingsReport.js';
export { readReport } from './readReport.js';
export { type Recheck, recheckReport } from './recheckReport.js';
export type {
  FilingRecord,
  NamedRecording,
  Report,
  ReportRecording,
  StoredEnvelope,
  StoredRecording,
  StoredReport,
} from './report.js';
export { reportHtml } from './reportHtml.js';
export { reportMarkdown } from './reportMarkdown.js';
export { storedSweep } from './storedSweep.js';
