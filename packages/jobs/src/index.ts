export { checkRecording } from './checkRecording.js';
export { type ExpectedOfKind, expectReadings } from './expectReadings.js';
export { type FoundRecording, findRecordings, type NamedFile } from './findRecordings.js';
export { identifyRecording, type RecordingIdentity } from './identifyRecording.js';
export type { Job, JobHookUp, JobInstrument, JobRecording, JobSensor } from './job.js';
export { jobCircuit } from './jobCircuit.js';
export { jobCriteria } from './jobCriteria.js';
export { jobExpectation } from './jobExpectation.js';
export { jobRecorder } from './jobRecorder.js';
export { jobTolerances } from './jobTolerances.js';
export { type JudgedReadings, judgeReadings } from './judgeReadings.js';
export { parseAnyJob } from './parseAnyJob.js';
export { parseJob } from './parseJob.js';
export { readAnyJob } from './readAnyJob.js';
export {
  type AnyJob,
  type BathReading,
  isSweepJob,
  type PortReading,
  type PressureJob,
  type PumpDown,
  type ReadingsJob,
  type SwitchRecording,
  type ThermistorJob,
  type TwoStateJob,
  type WindingJob,
} from './readingsJob.js';
export { readJob } from './readJob.js';
export { readJobPieces } from './readJobPieces.js';
export { type HowRead, type ReadRecording, readJobRecording } from './readJobRecording.js';
export { type ReadPumpDown, readPumpDown } from './readPumpDown.js';
export { roughness } from './roughness.js';
export {
  type WatchedSoFar,
  type WatchedSweep,
  type WatchOptions,
  watchSweep,
} from './watchSweep.js';
export { worstPlace } from './worstPlace.js';
export { writeAnyJob } from './writeAnyJob.js';
export { writeJob } from './writeJob.js';
