// Words of the step-by-step workings and of the exercises: an entry for those who use no more.
export { answerWords } from './answerWords.js';
export {
  limiterExerciseWords,
  loadingExerciseWords,
  meterExerciseWords,
  windowExerciseWords,
} from './circuitExerciseWords.js';
export { circuitWorkingWords } from './circuitWorkingWords.js';
export { traceExerciseWords, visibilityExerciseWords } from './recordingExerciseWords.js';
export { thermistorExerciseWords } from './thermistorExerciseWords.js';
export { workingLabels, workingRules } from './workingWords.js';
