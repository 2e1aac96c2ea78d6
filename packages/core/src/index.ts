export type { AbruptDeparture } from './acCoupled/abruptDepartures.js';
export type { CaptureQuality, Recorder, ReferenceReadings } from './capture/captureQuality.js';
export { chanceOfSamples } from './capture/chanceOfSamples.js';
export { checkSweep } from './capture/checkSweep.js';
export type { ClipLevels } from './capture/clipLevels.js';
export type { MainsRipple } from './capture/mainsRipple.js';
export type { SampleTimes } from './capture/sampleTimes.js';
export type { Sampling } from './capture/sampling.js';
export type { NoReading, Stretch, Sweep, SweepLike, UnreadRows } from './capture/sweep.js';
export type { Clock, TakenStamps } from './capture/takenStamps.js';
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
export { chanceAllMissed } from './compare/chanceAllMissed.js';
export { compareSweeps } from './compare/compareSweeps.js';
export type {
  CannotShow,
  EndChange,
  SpotChange,
  SpotOutcome,
  SpotState,
  SweepComparison,
} from './compare/comparison.js';
export {
  type Criteria,
  criteriaBounds,
  defaultCriteria,
  type LoosenedCriterion,
  loosenedCriteria,
  type NumberCriterion,
  wholeCriteria,
} from './criteria.js';
export { type DrawingEnvelope, drawingEnvelope } from './envelope/drawingEnvelope.js';
export { type EnvelopeColumns, envelopeColumns } from './envelope/envelopeColumns.js';
export { type SweepColumns, sweepColumns } from './envelope/sweepColumns.js';
export { InputError, isInputError, type TextPlace } from './errors.js';
export { type AdcConvention, adcCount, adcRatio } from './expectation/adcCount.js';
export {
  type BlindStretch,
  blindStretch,
} from './expectation/blindStretch.js';
export {
  type CarriedReading,
  carryToBench,
  carryToVehicle,
  type Hookup,
} from './expectation/carryReading.js';
export { checkExpectation } from './expectation/checkExpectation.js';
export {
  type AnglePerVolt,
  type ClosedSetting,
  closedSetting,
} from './expectation/closedSetting.js';
export type { CountedRatio } from './expectation/countedRatio.js';
export { type DirtEffect, dirtEffect, type ReadingChange } from './expectation/dirtEffect.js';
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
export type { PartReading } from './expectation/partReading.js';
export {
  type FoundPart,
  type NotDeterminedReason,
  type PartsFound,
  partsFromReadings,
} from './expectation/partsFromReadings.js';
export {
  type PositionAtOutput,
  positionAtOutput,
  type Reading,
} from './expectation/positionAtOutput.js';
export {
  type ConnectorReading,
  type RefitCheck,
  type RefitOutcome,
  type RefitReadings,
  refitChecks,
} from './expectation/refitChecks.js';
export {
  type DropReadings,
  type LeadCurrent,
  type LeadOhms,
  type SupplyAndGroundDrop,
  supplyAndGroundDrop,
} from './expectation/supplyAndGroundDrop.js';
export {
  absoluteThrottlePercent,
  type OutputSense,
  relativeThrottlePercent,
  type ThrottlePercent,
  throttlePercentRatio,
} from './expectation/throttlePercent.js';
export type { Tolerances } from './expectation/tolerances.js';
export { checkFields, type FieldRule, type FieldRules, listOf } from './fields.js';
export type { InputErrorCode } from './inputErrorCode.js';
export {
  adviseInstruments,
  type InstrumentAdvice,
  type SoughtByHand,
} from './instruments/adviseInstruments.js';
export {
  chanceInPasses,
  chanceOfReading,
  type Readings,
  shortestShown,
} from './instruments/chanceOfReading.js';
export { chooseSetting, type Setting, type SettingWish } from './instruments/chooseSetting.js';
export {
  type DigitalDisplay,
  digitalDisplay,
  type ShownDigits,
} from './instruments/digitalDisplay.js';
export type { ModelledDropout } from './instruments/dropout.js';
export { dropoutOf } from './instruments/dropoutOf.js';
export { exampleInstruments } from './instruments/exampleInstruments.js';
export { inputOhms, withInstrument } from './instruments/inputLoad.js';
export { inputCorner, riseTime, settlingTime } from './instruments/inputPath.js';
export type {
  Assumption,
  ControlUnit,
  DigitalMeter,
  InputRange,
  Instrument,
  Logger,
  NeedleMeter,
  Oscilloscope,
} from './instruments/instrument.js';
export { integratorRejection, type Rejection } from './instruments/integratorRejection.js';
export { needleDisplay } from './instruments/needleDisplay.js';
export {
  movementOf,
  moveNeedle,
  type NeedleMovement,
  type NeedleState,
} from './instruments/needleMovement.js';
export { type NoticedFault, noticedFaults } from './instruments/noticedFaults.js';
export { type OpenWiper, openWiper, openWiperReaches } from './instruments/openWiper.js';
export { type ProbedInput, probedInput } from './instruments/probedInput.js';
export {
  type RankedInstrument,
  rankInstruments,
  type SoughtDropout,
} from './instruments/rankInstruments.js';
export { readingUncertainty } from './instruments/readingUncertainty.js';
export { type SampledDisplay, sampledDisplay } from './instruments/sampledDisplay.js';
export { settlingError } from './instruments/settlingError.js';
export { type Sight, sightOf } from './instruments/sightOf.js';
export { sourceResistance } from './instruments/sourceResistance.js';
export { type StepByStep, stepByStep, type Unproved } from './instruments/stepByStep.js';
export { type LiveSweep, liveSweep, type ProvisionalScore } from './live/liveSweep.js';
export { nearestName } from './nearestName.js';
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
export { formatQuantity, type QuantityFormat } from './quantity/formatQuantity.js';
export { formatResistanceCode } from './quantity/formatResistanceCode.js';
export { type ParsedQuantity, parseQuantity } from './quantity/parseQuantity.js';
export { type PreferredRounding, preferredValue } from './quantity/preferredValue.js';
export { type PreferredSeries, preferredValues } from './quantity/preferredValues.js';
export { quantityPattern } from './quantity/quantityPattern.js';
export type { QuantityUnit } from './quantity/unitSpelling.js';
export type { RatingChecks } from './ratings/checkRatings.js';
export {
  type BenchLoad,
  type BenchLoadChoice,
  type BenchLoadWay,
  type BenchLoadWish,
  chooseBenchLoad,
  type NoBenchLoad,
} from './ratings/chooseBenchLoad.js';
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
export { checkScore } from './score/checkScore.js';
export type {
  Advice,
  Cause,
  Check,
  CheckCode,
  CheckOutcome,
  ClosedReadings,
  CouldShow,
  Coverage,
  DeliberateTest,
  Finding,
  LimitSource,
  Rest,
  RestsOn,
  Returns,
  Score,
  SnapClosing,
  Spot,
  Stroke,
  UnitThatFits,
  Verdict,
} from './score/score.js';
export { scoreSweep } from './score/scoreSweep.js';
export { type TroubleCode, type TroubleKind, troubleCodes } from './score/troubleCodes.js';
export { absoluteLinearity, type TheoreticalLine } from './shape/absoluteLinearity.js';
export { hysteresis } from './shape/hysteresis.js';
export { independentLinearity } from './shape/independentLinearity.js';
export type {
  Linearity,
  NotJudged,
  ReferenceLine,
  ShaftReadings,
  ShaftReadingsLike,
  ShapeError,
  ShapeReason,
} from './shape/shape.js';
export { type Shape, type ShapeEvidence, shapeOf } from './shape/shapeOf.js';
export { smoothness } from './shape/smoothness.js';
export { terminalBasedLinearity } from './shape/terminalBasedLinearity.js';
export { zeroBasedLinearity } from './shape/zeroBasedLinearity.js';
export type {
  DeadSpot,
  Interference,
  LooseConnection,
  RoughTrack,
  ShiftedTrack,
  SimulatedFault,
  WornSpot,
} from './simulate/faults.js';
export type { Hold, SimulatedMovement, Snap, Turn } from './simulate/movement.js';
export {
  type SimulatedEvent,
  type SimulatedRecorder,
  type SimulatedSweep,
  type SweepPlan,
  simulateSweep,
} from './simulate/simulateSweep.js';
export {
  type CombinedUncertainty,
  type Contribution,
  type Correlation,
  combineUncertainties,
  type UncertainInput,
} from './statistics/combineUncertainties.js';
export { type DrawnInput, type MonteCarloResult, monteCarlo } from './statistics/monteCarlo.js';
export { type StraightLine, straightLine } from './statistics/straightLine.js';
export { compareTracks, type TracksEvidence } from './tracks/compareTracks.js';
export type {
  Disagreement,
  Liar,
  NotCompared,
  TrackRelation,
  TracksComparison,
  TwoTracks,
  TwoTracksLike,
} from './tracks/twoTracks.js';
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
