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
export { isTextOf } from './live/isTextOf.js';
export {
  type LiveReader,
  type LiveReading,
  type LiveSamples,
  liveReader,
} from './live/liveReader.js';
export { rateFinder } from './live/rateFinder.js';
export type { Gap } from './live/stampClock.js';
export { usualRates } from './live/usualRates.js';
export type { RecordingSource } from './piecesOf.js';
export { readDelimited } from './readDelimited.js';
export { readRecording } from './readRecording.js';
export type { RowCounts, Samples } from './rowScanner.js';
export { samplesOf } from './samplesOf.js';
export { readSound, type SoundReading, type SoundRecording } from './sound/readSound.js';
export { isSound } from './sound/soundFormat.js';
export type { SoundOptions } from './sound/soundOptions.js';
export type { TakenFrom } from './takenFrom.js';
