// One reading beside its limits. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export {
  type Acceptance,
  type JudgedReading,
  judgeReading,
  type ReadingInLimits,
} from './judgement/judgeReading.js';
export type { Judgement, ReadingCheck } from './judgement/readingCheck.js';
export type { CheckOutcome, Verdict } from './score/score.js';
export type { UncertainInput } from './statistics/combineUncertainties.js';
