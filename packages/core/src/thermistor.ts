// Thermistors: their laws, both ways. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export type { ThermistorLaw, ThermistorRow } from './thermistor/law.js';
export { relativeSlopeAt, resistanceAt } from './thermistor/resistanceAt.js';
export {
  type ResistanceBand,
  resistanceBand,
  type ThermistorTolerances,
} from './thermistor/resistanceBand.js';
export { type ShownTemperature, shownTemperature } from './thermistor/shownTemperature.js';
export { temperatureAt } from './thermistor/temperatureAt.js';
export { timeInBath } from './thermistor/timeInBath.js';
