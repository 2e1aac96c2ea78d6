// The air at the bench: its pressure, and where water boils in it. An entry for those who use no more; `index.ts` has everything.
export { type BathTemperature, boilingBath, iceBath } from './atmosphere/bathTemperature.js';
export { boilingTemperature } from './atmosphere/boilingTemperature.js';
export { standardPressure } from './atmosphere/standardPressure.js';
export {
  type PressureSource,
  type StationPressure,
  stationPressure,
} from './atmosphere/stationPressure.js';
export { InputError, type TextPlace } from './errors.js';
export { shownPressure } from './pressure/shownPressure.js';
