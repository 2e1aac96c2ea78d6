// What a sound sensor must read: curve and windows. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { type Expectation, expectation } from './expectation/expectation.js';
export { type Curve, expectedCurve } from './expectation/expectedCurve.js';
export {
  type ExpectedWindows,
  expectedWindows,
  type ReadingWindow,
} from './expectation/expectedWindows.js';
export type { Tolerances } from './expectation/tolerances.js';
