// Quantities and preferred values as text. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { formatQuantity, type QuantityFormat } from './quantity/formatQuantity.js';
export { formatResistanceCode } from './quantity/formatResistanceCode.js';
export { type ParsedQuantity, parseQuantity } from './quantity/parseQuantity.js';
export { type PreferredRounding, preferredValue } from './quantity/preferredValue.js';
export { type PreferredSeries, preferredValues } from './quantity/preferredValues.js';
export type { QuantityUnit } from './quantity/unitSpelling.js';
