export type { ReadColumn, ReadColumns } from './chooseColumns.js';
export type {
  DecimalSign,
  DelimitedOptions,
  Delimiter,
  SignalUnit,
  TimeUnit,
} from './delimitedOptions.js';
export {
  type DelimitedReading,
  type DelimitedRecording,
  readDelimited,
} from './readDelimited.js';
export type { TextEncoding } from './readText.js';
