// Words of the sensors beside the throttle's, by their pages and kinds. An entry for those who use no more; `index.ts` has everything.
export { type AirEntry, airHints, airLabels, airWords } from './airEntries.js';
export { bandSentence, bandWords, type DrawnOutcome, stepsSentence } from './bandSentences.js';
export { type BathEntry, bathHints, bathLabels, bathWords } from './bathEntries.js';
export { bounceSentences } from './bounceSentences.js';
export { type CodeEntry, codeHints, codeLabels, codeWords } from './codeEntries.js';
export { type CoilEntry, coilHints, coilLabels, coilWords } from './coilEntries.js';
export {
  type ContactlessEntry,
  contactlessHints,
  contactlessLabels,
  contactlessWords,
} from './contactlessEntries.js';
export { type CurveEntry, curveHints, curveLabels, curveWords } from './curveEntries.js';
export { expectedWords } from './expectedWords.js';
export {
  judgedReadingWords,
  type ReadingsOfKind,
  readingAdviceSentences,
  readingCautions,
  readingCheckRows,
  readingCodesSentences,
  readingReasonSentences,
  readingUnsaidSentences,
  readingVerdictMeanings,
  sensorKindLabels,
} from './judgedReadings.js';
export { type LawEntry, lawHints, lawLabels, lawWords } from './lawEntries.js';
export { type PortEntry, portHints, portLabels, portWords } from './portEntries.js';
export { pressureAdvice, pressureUnsaid } from './pressureReadingWords.js';
export { type SoakEntry, soakAdvice, soakHints, soakLabels, soakWords } from './soakEntries.js';
export { type StateEntry, stateHints, stateLabels, stateWords } from './stateEntries.js';
export { stepWords } from './stepWords.js';
export {
  type BandWords,
  type TemperatureNowEntry,
  temperatureNowHints,
  temperatureNowLabels,
  temperatureNowWords,
} from './temperatureNowEntries.js';
export { thermistorAdvice, thermistorUnsaid } from './thermistorReadingWords.js';
export { twoStateAdvice, twoStateUnsaid } from './twoStateReadingWords.js';
export { windingAdvice, windingUnsaid } from './windingReadingWords.js';
