// A sweep judged in chunks, while it is recorded. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { Hint, HintCode } from './live/hintsOf.js';
export { type LiveSweep, liveSweep, type ProvisionalScore } from './live/liveSweep.js';
export { type Missing, missingIn } from './live/missingIn.js';
