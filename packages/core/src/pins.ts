// Which terminal is which. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
export { findPins } from './pins/findPins.js';
export type {
  Estimate,
  IdleSwitch,
  OhmmeterTolerance,
  PairChange,
  PinFinding,
  PinReading,
  PinResult,
  Stop,
  TerminalPair,
  TrackPins,
  Undecided,
  WantedReading,
} from './pins/pinFinding.js';
