// Words of the step-by-step workings and of the exercises: an entry for those who use no more.

export { answerWords } from './answerWords.js';
export {
  limiterExerciseWords,
  loadingExerciseWords,
  meterExerciseWords,
  windowExerciseWords,
} from './circuitExerciseWords.js';
export {
  circuitWorkingWords,
  dirtWorkingWords,
  inverseWorkingWords,
  loadingWorkingWords,
  trackWorkingWords,
} from './circuitWorkingWords.js';
export { exerciseSetWords, sheetWords } from './exerciseSetWords.js';
export { chanceWorkingWords } from './instrumentWorkingWords.js';
export {
  causesWorkingWords,
  endWorkingWords,
  findingWorkingWords,
  placeWorkingWords,
  visibleWorkingWords,
} from './judgementWorkingWords.js';
export { lessonSentences, lessonWords } from './lessonWords.js';
export { limiterWorkingWords, mistakeWorkingWords } from './mistakeWorkingWords.js';
export { traceExerciseWords, visibilityExerciseWords } from './recordingExerciseWords.js';
export {
  coilWorkingWords,
  fitWorkingWords,
  pressureWorkingWords,
  thermistorWorkingWords,
} from './sensorWorkingWords.js';
export { thermistorExerciseWords } from './thermistorExerciseWords.js';
export { carryWorkingWords, dropWorkingWords, settingWorkingWords } from './vehicleWorkingWords.js';
export { budgetWorkingWords, windowWorkingWords } from './windowWorkingWords.js';
export { workingRules } from './workingRules.js';
export { workingLabels, workingWords } from './workingWords.js';
