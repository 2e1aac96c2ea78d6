// Uncertainties combined, by formula or by drawing. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export {
  type CombinedUncertainty,
  type Contribution,
  type Correlation,
  combineUncertainties,
  type UncertainInput,
} from './statistics/combineUncertainties.js';
export { type DrawnInput, type MonteCarloResult, monteCarlo } from './statistics/monteCarlo.js';
export { normalQuantile } from './statistics/normalQuantile.js';
export { type StraightLine, straightLine } from './statistics/straightLine.js';
