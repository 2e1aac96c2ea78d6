export { InputError, type TextPlace } from './errors.js';
export type {
  Amps, Farads, Fraction, Hertz, Ohms, Position, Quantity, Seconds, Travel, Volts, Watts,
} from './units.js';
