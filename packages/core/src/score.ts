// Whether a recorded sweep passes, with what it is judged by. An entry for those who use no more; `index.ts` has everything.
export type { AbruptDeparture } from './acCoupled/abruptDepartures.js';
export type { CaptureQuality, Recorder, ReferenceReadings } from './capture/captureQuality.js';
export { chanceOfSamples } from './capture/chanceOfSamples.js';
export type { ClipLevels } from './capture/clipLevels.js';
export type { MainsRipple } from './capture/mainsRipple.js';
export type { SampleTimes } from './capture/sampleTimes.js';
export type { Sampling } from './capture/sampling.js';
export type { NoReading, Stretch, Sweep, SweepLike, UnreadRows } from './capture/sweep.js';
export type { Clock, TakenStamps } from './capture/takenStamps.js';
export {
  type Criteria,
  criteriaBounds,
  defaultCriteria,
  type LoosenedCriterion,
  loosenedCriteria,
  type NumberCriterion,
  wholeCriteria,
} from './criteria.js';
export { InputError, type TextPlace } from './errors.js';
export { type Expectation, expectation } from './expectation/expectation.js';
export type {
  Advice,
  Cause,
  CauseFactors,
  Check,
  CheckCode,
  CheckOutcome,
  ClosedReadings,
  CouldShow,
  Coverage,
  DeliberateTest,
  Finding,
  LimitSource,
  Rest,
  RestsOn,
  Returns,
  Score,
  SnapClosing,
  Spot,
  Stroke,
  UnitThatFits,
  Verdict,
} from './score/score.js';
export { scoreSweep } from './score/scoreSweep.js';
export { type TroubleCode, type TroubleKind, troubleCodes } from './score/troubleCodes.js';
