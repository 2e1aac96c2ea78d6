export type { Job, JobHookUp, JobInstrument, JobRecording, JobSensor } from './job.js';
export { jobCircuit } from './jobCircuit.js';
export { jobCriteria } from './jobCriteria.js';
export { jobExpectation } from './jobExpectation.js';
export { jobRecorder } from './jobRecorder.js';
export { jobTolerances } from './jobTolerances.js';
export { parseJob } from './parseJob.js';
export { readJob } from './readJob.js';
export {
  checkRecording,
  identifyRecording,
  type RecordingIdentity,
} from './recordingIdentity.js';
