// Thermistors: their laws, what they read on a pull-up, and whether one is sound. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { Judgement, ReadingCheck } from './judgement/readingCheck.js';
export { type ChosenPullUp, choosePullUp } from './thermistor/choosePullUp.js';
export {
  compareSoaked,
  type SoakComparison,
  type SoakedSensor,
  type SoakSource,
  type SoakThermometer,
} from './thermistor/compareSoaked.js';
export {
  dividerOhms,
  dividerSlope,
  dividerVolts,
  type PullUpDivider,
} from './thermistor/divider.js';
export {
  fitThermistor,
  type ThermistorFit,
  type ThermistorPoint,
} from './thermistor/fitThermistor.js';
export {
  farEnoughApart,
  judgeThermistor,
  type ReadOn,
  type ThermistorAdvice,
  type ThermistorCheck,
  type ThermistorReading,
  type ThermistorSensor,
  type ThermistorSource,
  type ThermistorUnsaid,
} from './thermistor/judgeThermistor.js';
export type { ThermistorLaw, ThermistorRow } from './thermistor/law.js';
export { type FoundPullUp, pullUpFromPairs } from './thermistor/pullUpFromPairs.js';
export { relativeSlopeAt, resistanceAt } from './thermistor/resistanceAt.js';
export {
  type ResistanceBand,
  resistanceBand,
  type ThermistorTolerances,
} from './thermistor/resistanceBand.js';
export { type SelfHeating, selfHeating } from './thermistor/selfHeating.js';
export { type ShownTemperature, shownTemperature } from './thermistor/shownTemperature.js';
export { temperatureAt } from './thermistor/temperatureAt.js';
export { timeInBath } from './thermistor/timeInBath.js';
