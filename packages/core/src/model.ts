// Circuit, expectation, ratings and wrong connections, and the way to the vehicle. An entry for those who use no more; `index.ts` has everything.
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
export { type OperatingPoint, operatingPoint, type PartState } from './circuit/operatingPoint.js';
export { positionAt } from './circuit/positionAt.js';
export type { Lead, Terminal } from './circuit/terminals.js';
export { InputError, type TextPlace } from './errors.js';
export {
  type CarriedReading,
  carryToBench,
  carryToVehicle,
  type Hookup,
} from './expectation/carryReading.js';
export { type Expectation, expectation } from './expectation/expectation.js';
export {
  type Band,
  drawOutput,
  expectedBand,
  type OutputUncertainty,
  outputUncertainty,
  type ToleranceName,
} from './expectation/expectedBand.js';
export { type Curve, expectedCurve } from './expectation/expectedCurve.js';
export {
  type ExpectedWindows,
  expectedWindows,
  type ReadingWindow,
} from './expectation/expectedWindows.js';
export {
  type LargestError,
  type LoadingErrors,
  loadingErrors,
} from './expectation/loadingErrors.js';
export {
  type PositionAtOutput,
  positionAtOutput,
  type Reading,
} from './expectation/positionAtOutput.js';
export type { Tolerances } from './expectation/tolerances.js';
export type { RatingChecks } from './ratings/checkRatings.js';
export {
  type Binding,
  chooseLimiter,
  type LimiterChoice,
  type LimiterPrice,
  type LimiterWish,
  type NoLimiter,
} from './ratings/chooseLimiter.js';
export type { RatingCheck, RatingOutcome } from './ratings/compareRating.js';
export {
  type CurrentRating,
  derated,
  type PowerRating,
  type Ratings,
} from './ratings/ratings.js';
export type { Worst, WorstCase } from './ratings/worstCase.js';
export {
  type Appearance,
  type Mistake,
  type MistakeEffect,
  type WrongConnection,
  wrongConnections,
} from './ratings/wrongConnections.js';
export type {
  Amps,
  Celsius,
  Degrees,
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
