// A thermistor on its pull-up. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { type ChosenPullUp, choosePullUp } from './thermistor/choosePullUp.js';
export {
  dividerOhms,
  dividerSlope,
  dividerVolts,
  type PullUpDivider,
} from './thermistor/divider.js';
export type { ThermistorLaw, ThermistorRow } from './thermistor/law.js';
export { type FoundPullUp, pullUpFromPairs } from './thermistor/pullUpFromPairs.js';
export { type SelfHeating, selfHeating } from './thermistor/selfHeating.js';
