// Sensors and switches of two states: whether they are right. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { ReadingLimits } from './judgement/checkLimits.js';
export type { OhmsSource } from './judgement/compareOhms.js';
export type { Judgement, ReadingCheck } from './judgement/readingCheck.js';
export type { CheckOutcome } from './score/score.js';
export {
  judgeTwoState,
  type TwoStateAdvice,
  type TwoStateCheck,
  type TwoStateJudgement,
  type TwoStateSource,
  type TwoStateUnsaid,
} from './twoState/judgeTwoState.js';
export type { TwoStateAt, TwoStateReading } from './twoState/twoStateReading.js';
export type { TwoStateSensor } from './twoState/twoStateSensor.js';
