// Linearities, where the shaft’s position was recorded. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { absoluteLinearity, type TheoreticalLine } from './shape/absoluteLinearity.js';
export { hysteresis } from './shape/hysteresis.js';
export { independentLinearity } from './shape/independentLinearity.js';
export type {
  Linearity,
  NotJudged,
  ReferenceLine,
  ShaftReadings,
  ShaftReadingsLike,
  ShapeError,
  ShapeReason,
} from './shape/shape.js';
export { type Shape, type ShapeEvidence, shapeOf } from './shape/shapeOf.js';
export { smoothness } from './shape/smoothness.js';
export { terminalBasedLinearity } from './shape/terminalBasedLinearity.js';
export { zeroBasedLinearity } from './shape/zeroBasedLinearity.js';
