// Single questions at the bench: setting the closed stop, dirt, drops, counts, a load to choose, a refit to check. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { type AdcConvention, adcCount, adcRatio } from './expectation/adcCount.js';
export {
  type BlindStretch,
  blindStretch,
} from './expectation/blindStretch.js';
export {
  type AnglePerVolt,
  type ClosedSetting,
  closedSetting,
} from './expectation/closedSetting.js';
export type { CountedRatio } from './expectation/countedRatio.js';
export { type DirtEffect, dirtEffect, type ReadingChange } from './expectation/dirtEffect.js';
export type { PartReading } from './expectation/partReading.js';
export {
  type FoundPart,
  type NotDeterminedReason,
  type PartsFound,
  partsFromReadings,
} from './expectation/partsFromReadings.js';
export {
  type ConnectorReading,
  type RefitCheck,
  type RefitOutcome,
  type RefitReadings,
  refitChecks,
} from './expectation/refitChecks.js';
export {
  type DropReadings,
  type LeadCurrent,
  type LeadOhms,
  type SupplyAndGroundDrop,
  supplyAndGroundDrop,
} from './expectation/supplyAndGroundDrop.js';
export {
  absoluteThrottlePercent,
  type OutputSense,
  relativeThrottlePercent,
  type ThrottlePercent,
  throttlePercentRatio,
} from './expectation/throttlePercent.js';
export {
  type BenchLoad,
  type BenchLoadChoice,
  type BenchLoadWay,
  type BenchLoadWish,
  chooseBenchLoad,
  type NoBenchLoad,
} from './ratings/chooseBenchLoad.js';
