// A thermistor's law from measured points. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export {
  fitThermistor,
  type ThermistorFit,
  type ThermistorPoint,
} from './thermistor/fitThermistor.js';
export type { ThermistorLaw, ThermistorRow } from './thermistor/law.js';
