// Pressure sensors: what they must read, and whether one is sound. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { Judgement, ReadingCheck } from './judgement/readingCheck.js';
export {
  judgePressure,
  leastPumped,
  type PressureAdvice,
  type PressureBench,
  type PressureCheck,
  type PressureReading,
  type PressureUncertainty,
  type PressureUnsaid,
} from './pressure/judgePressure.js';
export { leakTime } from './pressure/leakTime.js';
export { pressureFromRatio, pressureRatio, type RatioBand } from './pressure/pressureRatio.js';
export type { ErrorFactor, PressureRow, PressureSensor } from './pressure/pressureSensor.js';
export { shownPressure } from './pressure/shownPressure.js';
