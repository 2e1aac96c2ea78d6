// Sensors without a wiper: how to recognise them, and what a limiting resistor leaves them. An entry for those who use no more; `index.ts` has everything.
export {
  type PotentiometerFinding,
  type PotentiometerReason,
  recognisePotentiometer,
  type TerminalReadings,
  type WiperReadings,
} from './contactless/recognisePotentiometer.js';
export {
  type LimitedSupply,
  type StarvedSupply,
  starvedSupply,
} from './contactless/starvedSupply.js';
export { InputError, type TextPlace } from './errors.js';
