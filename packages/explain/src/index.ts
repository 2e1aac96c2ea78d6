export { explainDirt } from './circuit/explainDirt.js';
export { explainLimiter } from './circuit/explainLimiter.js';
export { explainLoadingError } from './circuit/explainLoadingError.js';
export { explainMistake } from './circuit/explainMistake.js';
export { explainOperatingPoint } from './circuit/explainOperatingPoint.js';
export { explainPosition } from './circuit/explainPosition.js';
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
export type { Expression, FunctionName } from './expression.js';
export { explainDropoutChance } from './instruments/explainDropoutChance.js';
export { explainCauses } from './judgement/explainCauses.js';
export { explainFinding } from './judgement/explainFinding.js';
export { explainLimits, type LimitsCheck, type Tolerated } from './judgement/explainLimits.js';
export { explainPlace } from './judgement/explainPlace.js';
export { explainScore } from './judgement/explainScore.js';
export { explainVisible } from './judgement/explainVisible.js';
export { explainTrack, type TrackReadings } from './pins/explainTrack.js';
export type { Quantity, WorkingUnit } from './quantity.js';
export { explainCoil } from './sensors/explainCoil.js';
export { explainOpenPort } from './sensors/explainOpenPort.js';
export { explainThermistor } from './sensors/explainThermistor.js';
export { explainThermistorFit } from './sensors/explainThermistorFit.js';
export { explainCarriedReading, type ReadingToCarry } from './vehicle/explainCarriedReading.js';
export { explainClosedSetting } from './vehicle/explainClosedSetting.js';
export { explainSupplyDrop } from './vehicle/explainSupplyDrop.js';
export { whereWritten } from './whereWritten.js';
export { explainUncertainty } from './windows/explainUncertainty.js';
export { explainWindow } from './windows/explainWindow.js';
export * from './written.js';
