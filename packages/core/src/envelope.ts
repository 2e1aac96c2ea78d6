// Huge sweeps in few columns, for drawing. An entry for those who use no more; `index.ts` has everything.
export { type DrawingEnvelope, drawingEnvelope } from './envelope/drawingEnvelope.js';
export { type EnvelopeColumns, envelopeColumns } from './envelope/envelopeColumns.js';
export { type SweepColumns, sweepColumns } from './envelope/sweepColumns.js';
export { InputError, type TextPlace } from './errors.js';
