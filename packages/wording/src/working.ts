// Words of the step-by-step workings and of the exercises: an entry for those who use no more.
export {
  circuitWorkingWords,
  inverseWorkingWords,
  loadingWorkingWords,
} from './circuitWorkingWords.js';
export { limiterWorkingWords, mistakeWorkingWords } from './mistakeWorkingWords.js';
export { budgetWorkingWords, windowWorkingWords } from './windowWorkingWords.js';
export { workingLabels, workingRules } from './workingWords.js';
