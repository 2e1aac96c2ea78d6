// What instruments show, load and can miss. An entry for those who use no more; `index.ts` has everything.
export { InputError, type TextPlace } from './errors.js';
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
