// Two scores of one sensor. An entry for those who use no more; `index.ts` has everything.
export { chanceAllMissed } from './compare/chanceAllMissed.js';
export { compareSweeps } from './compare/compareSweeps.js';
export type {
  CannotShow,
  EndChange,
  SpotChange,
  SpotOutcome,
  SpotState,
  SweepComparison,
} from './compare/comparison.js';
export { InputError, type TextPlace } from './errors.js';
