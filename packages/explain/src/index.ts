export { explainOperatingPoint } from './circuit/explainOperatingPoint.js';
export type { CircuitMethod } from './circuit/output.js';
export { type AnswerChecked, checkAnswer } from './exercises/checkAnswer.js';
export {
  type AnswerUnit,
  type AnswerValue,
  type ChoicePart,
  type DrawnBeside,
  type DrawnSweep,
  type Exercise,
  type ExerciseLevel,
  type ExercisePart,
  type ExerciseTopic,
  exerciseLevels,
  exerciseTopics,
  type QuantityPart,
  type WrongValue,
} from './exercises/exercise.js';
export { makeExercise } from './exercises/makeExercise.js';
export { workingHtml } from './workingHtml.js';
export { workingLatex } from './workingLatex.js';
export { workingText } from './workingText.js';
