export { type AdviceNumbers, adviceSentences } from './advice.js';
export {
  type BatchCounts,
  batchColumns,
  batchOutcomeLabels,
  batchOutcomeMeanings,
  batchProgressSentence,
  batchSentence,
  batchStoppedSentence,
  batchWords,
  folderInUseSentence,
  folderNamedSentence,
  folderNotWrittenSentence,
  folderUnreadableSentence,
  journalSentence,
  manifestFieldSentence,
  manifestFileSentence,
  manifestLineSentence,
  manifestTextSentence,
  manifestTwiceSentence,
  marginSentence,
  moreNotJudgedSentence,
  moreRecordingsSentence,
  noJobNamedSentence,
  nothingMatchesSentence,
  nothingToBatchSentence,
  notWorkersSentence,
  openQuoteSentence,
  otherResultsSentence,
  programFailedSentence,
} from './batchWords.js';

export {
  type CarriedFacts,
  type CarryEntry,
  carryHints,
  carryLabels,
  carryWords,
} from './carryEntries.js';
export { causeLabels, causeMeanings } from './causes.js';
export {
  adviceCautions,
  type Caution,
  cautions,
  moreCautionsSentence,
  sweepCautions,
} from './cautions.js';
export { checkRows, limitSources } from './checkRows.js';
export { checkLabels, limitSourceLabels, outcomeLabels, visibleSetByLabels } from './checks.js';
export { indeterminateReasons, nodeLabels, partLabels, sourceStateLabels } from './circuitNames.js';
export { closedSettingSentences } from './closedSettingSentences.js';
export {
  brokenOutputSentence,
  commandHelp,
  giveRatingsSentence,
  intervalTakenSentence,
  noFilesWithReadingsSentence,
  noJobSentence,
  notASizeSentence,
  nothingToScoreSentence,
  notJudgedLabel,
  notJudgedSentence,
  oneInputSentence,
  outputIsInputSentence,
  plotWords,
  ratingWithoutUnitSentence,
  readingsInJobSentence,
  refusalSentence,
  standardInputName,
  tooLargeSentence,
  unknownShellSentence,
  usualLargest,
  waitingSentence,
} from './commandHelp.js';
export {
  type CommandPart,
  eitherSentence,
  lackingSentence,
  noValueSentence,
  spareWordSentence,
  unknownCommandSentence,
  unknownOptionSentence,
} from './commandWords.js';
export {
  cannotShowSentences,
  comparisonWords,
  endChangeSentence,
  missedByChanceSentence,
  spotOutcomeLabels,
} from './comparisonWords.js';
export { connectionRows } from './connectionRows.js';
export { loosenedSentence } from './criteriaWords.js';
export {
  benchLoadLabels,
  type DirtEntry,
  dirtHints,
  dirtLabels,
  dirtWords,
  noBenchLoadLabels,
} from './dirtEntries.js';
export {
  type DividerFacts,
  type DividerSentences,
  dividerSentences,
  dividerWords,
} from './dividerWords.js';
export {
  type CircuitFacts,
  type CurveFacts,
  circuitSentence,
  curveSentence,
  drawingWords,
  hookUpPictureSentence,
  passesSentence,
  settingPictureSentence,
  terminalsPictureSentence,
  traceSentence,
  travelMapSentence,
  windowWords,
} from './drawingWords.js';
export { type DropEntry, type DropFacts, dropHints, dropLabels, dropWords } from './dropEntries.js';
export {
  blindSentence,
  coverageSentence,
  missedSentence,
  morePassesSentence,
  narrowestSpotSentence,
  shortPassSentence,
  spotSentence,
  surePassSentence,
  sureReasonSentence,
  testsNotDoneSentence,
} from './evidenceSentences.js';
export { findingRows } from './findingRows.js';
export { duringLabels, findingLabels, findingMeanings } from './findings.js';
export { formatAlike } from './formatAlike.js';
export {
  farLimitLabel,
  historyPageWords,
  historyScaleText,
  listedSensorsSentence,
  newestRecordsSentence,
  readRecordsSentence,
  type TrendDrawn,
  thinnedSentence,
  trendDrawingSentence,
  worstPlaceText,
} from './historyPageWords.js';
export {
  addedSentence,
  changedSensorsSentence,
  damagedEntrySentence,
  dateText,
  historyQuantityLabels,
  historyQuantityNames,
  historyWords,
  moreDamagedSentence,
  noResultsInFolderSentence,
  noStoreSentence,
  type QuantityTold,
  quantitySentences,
  recordDate,
  savedRecordsSentence,
  undatedSentence,
  unknownSensorSentence,
} from './historyWords.js';
export { howRead } from './howRead.js';
export { type InstrumentSentences, instrumentSentences } from './instrumentSentences.js';
export {
  addLoadSentence,
  assumptionSentences,
  displayWords,
  instrumentWords,
  notByHandSentence,
  settingSentence,
  shownBySentence,
  sightLabels,
  soughtSentence,
  stepByStepSentence,
  triggerWords,
  unprovedLabels,
  unprovedSentence,
} from './instrumentWords.js';
export { limiterAdviceSentences } from './limiterAdviceSentences.js';
export {
  cannotSaveSentence,
  findingLine,
  folderSentence,
  gapsText,
  liveWords,
  missingSentence,
  noSerialSentence,
  noSourceSentence,
  notADurationSentence,
  notARateSentence,
  nothingCameSentence,
  portFailedSentence,
  rateSentence,
  recordedSentence,
  runningSentence,
  unitsTakenText,
} from './liveCommandWords.js';
export { hintLabels, hintSentence, missingText } from './liveWords.js';
export * from './pages.js';
export { pairHint, pairLabel, pinTableWords, pinWords } from './pinEntries.js';
export { pinFindingSentences } from './pinFindingSentences.js';
export { pinSentences, undecidedSentences } from './pinSentences.js';
export { type PlanEntry, planHints, planLabels, planTitles } from './planEntries.js';
export {
  appearanceLabels,
  limiterSentences,
  mistakeLabel,
  partOverWords,
  planWords,
} from './planWords.js';
export {
  bandPartLabels,
  entryHints,
  entryLabels,
  type HookUpEntry,
  type ReadingsFacts,
  readingsSentence,
  readingsWords,
} from './readingsWords.js';
export {
  columnSentence,
  delimiterLabels,
  encodingLabels,
  movementSentence,
  readingSentence,
  sampleRateSentence,
  smoothedSentence,
  soundSentence,
  supplyAssumedSentence,
  takenFromLabels,
  uncertaintyAssumedSentence,
  unitText,
  visibilitySentence,
} from './recordingSentences.js';
export {
  couplingLabels,
  filingLabels,
  recheckSentence,
  reportWords,
  restOfFindingsSentence,
  samplingLabels,
  tolerancedText,
  writtenSentence,
} from './reportWords.js';
export { limitsSentence, moreFindingsSentence, scoreLabels } from './scoreLabels.js';
export { type ScoreSentences, scoreSentences } from './scoreSentences.js';
export * from './sensors.js';
export { type SettingEntry, settingHints, settingLabels, settingWords } from './settingEntries.js';
export { settingSentences } from './settingSentences.js';
export {
  type OwnRecorderEntry,
  ownRecorderHints,
  ownRecorderLabels,
  type SpotEntry,
  spotHints,
  spotLabels,
} from './spotWords.js';
export { stampsSentence } from './stampsSentence.js';
export { troubleCodesSentence, troubleMeanings } from './troubleCodes.js';
export { takeUnitWords, unitSentences } from './unitSentences.js';
export { verdictLabels, verdictMeanings } from './verdicts.js';
export { visibleText } from './visibleText.js';
export * from './working.js';
