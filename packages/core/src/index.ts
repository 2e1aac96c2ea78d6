export type { Circuit, Leads, Load, PullUp, Sensor, Source } from './circuit/circuit.js';
export { positionAt } from './circuit/circuit.js';
export type { NodeName, PartName } from './circuit/circuitNetwork.js';
export {
  type Determined,
  type Indeterminate,
  type IndeterminateReason,
  isDetermined,
} from './circuit/determined.js';
export { type OperatingPoint, operatingPoint, type PartState } from './circuit/operatingPoint.js';
export { InputError, type TextPlace } from './errors.js';
export { type Expectation, expectation } from './expectation/expectation.js';
export { type Curve, expectedCurve } from './expectation/expectedCurve.js';
export {
  type ExpectedWindows,
  expectedWindows,
  type ReadingWindow,
  type Tolerances,
} from './expectation/expectedWindows.js';
export type { Sweep } from './sweep/sweep.js';
export type {
  Amps,
  Farads,
  Fraction,
  Hertz,
  Ohms,
  Position,
  Quantity,
  Seconds,
  Travel,
  Volts,
  Watts,
} from './units.js';
