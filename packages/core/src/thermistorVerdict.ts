// Whether a thermistor is sound. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { Judgement, ReadingCheck } from './judgement/readingCheck.js';
export {
  compareSoaked,
  type SoakAdvice,
  type SoakComparison,
  type SoakedSensor,
  type SoakSource,
  type SoakThermometer,
} from './thermistor/compareSoaked.js';
export {
  farEnoughApart,
  judgeThermistor,
  type ReadOn,
  type ThermistorAdvice,
  type ThermistorCheck,
  type ThermistorJudgement,
  type ThermistorReading,
  type ThermistorSensor,
  type ThermistorSource,
  type ThermistorUnsaid,
} from './thermistor/judgeThermistor.js';
export type { ThermistorLaw, ThermistorRow } from './thermistor/law.js';
export type { ThermistorTolerances } from './thermistor/resistanceBand.js';
