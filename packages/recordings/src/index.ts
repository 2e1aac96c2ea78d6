export type { ChosenColumn, ReadColumn, ReadColumns } from './chooseColumns.js';
export type {
  ColumnRole,
  DecimalSign,
  DelimitedOptions,
  Delimiter,
  SignalUnit,
  TimeUnit,
} from './delimitedOptions.js';
export {
  type DelimitedReader,
  type DelimitedReading,
  type DelimitedRecording,
  delimitedReader,
} from './delimitedReader.js';
export type { TextEncoding } from './findEncoding.js';
export type { RecordingSource } from './piecesOf.js';
export { readDelimited } from './readDelimited.js';
export { readRecording } from './readRecording.js';
export type { RowCounts, Samples } from './rowScanner.js';
export { samplesOf } from './samplesOf.js';
