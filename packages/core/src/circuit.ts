// The bench circuit and its operating point. An entry for those who use no more; `index.ts` has everything.
export type {
  Circuit,
  Connection,
  Leads,
  Load,
  PullUp,
  Sensor,
  Source,
} from './circuit/circuit.js';
export type { NodeName, NumberedNode, NumberedPart, PartName } from './circuit/circuitNetwork.js';
export {
  type Determined,
  type Indeterminate,
  type IndeterminateReason,
  isDetermined,
} from './circuit/determined.js';
export type { CircuitFault } from './circuit/faults.js';
export { inParallel } from './circuit/inParallel.js';
export { type OperatingPoint, operatingPoint, type PartState } from './circuit/operatingPoint.js';
export { positionAt } from './circuit/positionAt.js';
export type { Lead, Terminal } from './circuit/terminals.js';
export { InputError, type TextPlace } from './errors.js';
export type {
  Amps,
  Celsius,
  Degrees,
  Farads,
  Fraction,
  Hertz,
  Kelvins,
  Metres,
  Ohms,
  Pascals,
  Position,
  Quantity,
  Seconds,
  Travel,
  Volts,
  Watts,
} from './units.js';
