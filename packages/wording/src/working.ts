// Words of the step-by-step workings and of the exercises: an entry for those who use no more.
export { circuitWorkingWords } from './circuitWorkingWords.js';
export { workingLabels, workingRules } from './workingWords.js';
