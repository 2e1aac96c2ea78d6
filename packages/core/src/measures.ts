// Temperatures, pressures and heights as people write them. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { formatMeasure, type MeasureUnit } from './measures/formatMeasure.js';
export type { MeasureKind } from './measures/measureSpelling.js';
export { parseMeasure } from './measures/parseMeasure.js';
export {
  type PressureReference,
  parsePressure,
  type ReadPressure,
} from './measures/parsePressure.js';
