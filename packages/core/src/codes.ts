// Trouble codes of temperature and pressure sensors: what they say, and whose fault it is. An entry for those who use no more; `index.ts` has everything.

export { type CodedCheck, codesOfReadings, type SettableCode } from './codes/codesOfReadings.js';
export type { CodedSensor, CodeKind } from './codes/codeTable.js';
export {
  type CodeLimitComparison,
  compareCodeLimit,
  type StatedCodeLimit,
} from './codes/compareCodeLimit.js';
export {
  type CodeFault,
  type CodeObservations,
  type CodeReason,
  type CodeStep,
  type FaultPlace,
  locateCodeFault,
  type SeenSignal,
} from './codes/locateCodeFault.js';
export { type ReadCode, readTroubleCode } from './codes/readTroubleCode.js';
export { InputError, type TextPlace } from './errors.js';
