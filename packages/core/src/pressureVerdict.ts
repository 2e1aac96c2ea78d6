// Whether a pressure sensor is sound. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { Judgement, ReadingCheck } from './judgement/readingCheck.js';
export {
  judgePressure,
  leastPumped,
  type PressureAdvice,
  type PressureBench,
  type PressureCheck,
  type PressureJudgement,
  type PressureReading,
  type PressureUncertainty,
  type PressureUnsaid,
} from './pressure/judgePressure.js';
export type { ErrorFactor, PressureRow, PressureSensor } from './pressure/pressureSensor.js';
