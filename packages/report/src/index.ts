export { readReport, storedSweep } from './readReport.js';
export { type Recheck, recheckReport } from './recheckReport.js';
export type {
  RecordingIdentity,
  Report,
  ReportRecording,
  StoredEnvelope,
  StoredRecording,
  StoredReport,
} from './report.js';
export { reportHtml } from './reportHtml.js';
export { reportMarkdown } from './reportMarkdown.js';
