export { type AdviceNumbers, adviceSentences } from './advice.js';
export { causeLabels, causeMeanings } from './causes.js';
export { type Caution, cautions } from './cautions.js';
export { checkRows, limitSources } from './checkRows.js';
export { checkLabels, limitSourceLabels, outcomeLabels, visibleSetByLabels } from './checks.js';
export { indeterminateReasons, nodeLabels, partLabels, sourceStateLabels } from './circuitNames.js';
export { commandHelp, nothingToScoreSentence, refusalSentence } from './commandHelp.js';
export {
  type CircuitFacts,
  type CurveFacts,
  circuitSentence,
  curveSentence,
  drawingWords,
  traceSentence,
  travelMapSentence,
  windowWords,
} from './drawingWords.js';
export {
  blindSentence,
  morePassesSentence,
  narrowestSpotSentence,
  spotSentence,
  testsNotDoneSentence,
} from './evidenceSentences.js';
export { findingRows } from './findingRows.js';
export { duringLabels, findingLabels, findingMeanings } from './findings.js';
export { formatAlike } from './formatAlike.js';
export {
  boundsWords,
  entryHints,
  entryLabels,
  type HookUpEntry,
  mendEntriesSentence,
  outOfBoundsSentence,
  type ReadingsFacts,
  readingsSentence,
  readingsWords,
} from './readingsWords.js';
export {
  columnSentence,
  delimiterLabels,
  movementSentence,
  readingSentence,
  supplyAssumedSentence,
  unitFromLabels,
  visibilitySentence,
} from './recordingSentences.js';
export {
  recheckSentence,
  reportWords,
  restOfFindingsSentence,
  tolerancedText,
} from './reportWords.js';
export { limitsSentence, moreFindingsSentence, scoreLabels } from './scoreLabels.js';
export { type ScoreSentences, scoreSentences } from './scoreSentences.js';
export { troubleCodesSentence, troubleMeanings } from './troubleCodes.js';
export { verdictLabels, verdictMeanings } from './verdicts.js';
