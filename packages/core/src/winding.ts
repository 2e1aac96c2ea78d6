// Windings: their resistance at a temperature, what flows in them, whether they are right. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { OhmsReading, OhmsSource } from './judgement/compareOhms.js';
export type { Judgement, ReadingCheck } from './judgement/readingCheck.js';
export type { CheckOutcome } from './score/score.js';
export { type CoilCurrent, coilCurrent, type FedCoil } from './winding/coilCurrent.js';
export { type Conductor, conductorConstant } from './winding/conductor.js';
export {
  judgeWinding,
  type WindingAdvice,
  type WindingCheck,
  type WindingJudgement,
  type WindingLimits,
  type WindingReading,
  type WindingSource,
  type WindingUnsaid,
} from './winding/judgeWinding.js';
export { resistanceAtTemperature } from './winding/resistanceAtTemperature.js';
export { temperatureOfWinding } from './winding/temperatureOfWinding.js';
export type { Winding } from './winding/winding.js';
