// Words of the step-by-step workings and of the exercises: an entry for those who use no more.
export {
  circuitWorkingWords,
  dirtWorkingWords,
  inverseWorkingWords,
  loadingWorkingWords,
  trackWorkingWords,
} from './circuitWorkingWords.js';
export { chanceWorkingWords } from './instrumentWorkingWords.js';
export {
  causesWorkingWords,
  endWorkingWords,
  findingWorkingWords,
  placeWorkingWords,
  visibleWorkingWords,
} from './judgementWorkingWords.js';
export { limiterWorkingWords, mistakeWorkingWords } from './mistakeWorkingWords.js';
export {
  coilWorkingWords,
  fitWorkingWords,
  pressureWorkingWords,
  thermistorWorkingWords,
} from './sensorWorkingWords.js';
export { carryWorkingWords, dropWorkingWords, settingWorkingWords } from './vehicleWorkingWords.js';
export { budgetWorkingWords, windowWorkingWords } from './windowWorkingWords.js';
export { workingLabels, workingRules, workingWords } from './workingWords.js';
