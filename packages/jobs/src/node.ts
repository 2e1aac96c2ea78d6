export { filePieces } from './filePieces.js';
export { type HashedPieces, hashedPieces } from './hashedPieces.js';
export type {
  EndReading,
  JudgedRecording,
  NearestLimit,
  RecordingFacts,
  RecordingResult,
  RefusedRecording,
  SmallTrace,
  WorstPlace,
} from './judgedRecording.js';
export { type JudgeOptions, judgeOne, type KeptOptions } from './judgeOne.js';
export { loadAnyJob } from './loadAnyJob.js';
export { loadJob } from './loadJob.js';
export { readFileBytes } from './readFileBytes.js';
export { saveJob } from './saveJob.js';
export { writeFileAtomically } from './writeFileAtomically.js';
