export { type AdviceNumbers, adviceSentences } from './advice.js';

export { type AirEntry, airHints, airLabels, airWords } from './airEntries.js';
export { bandSentence, bandWords, type DrawnOutcome, stepsSentence } from './bandSentences.js';
export { type BathEntry, bathHints, bathLabels, bathWords } from './bathEntries.js';
export { bounceSentences } from './bounceSentences.js';
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
export { checkPageWords, restsOnWords } from './checkPageWords.js';
export { checkRows, limitSources } from './checkRows.js';
export {
  checkSweepWords,
  jobOpenedSentence,
  judgedByJobSentence,
  neededWithSentence,
  pairSentence,
  progressSentence,
  type RecorderEntry,
  recorderHints,
  recorderLabels,
  reportOpenedSentence,
  type TestTimeEntry,
  testTimeHint,
  testTimeLabels,
  traceWords,
} from './checkSweepWords.js';
export { checkLabels, limitSourceLabels, outcomeLabels, visibleSetByLabels } from './checks.js';
export { indeterminateReasons, nodeLabels, partLabels, sourceStateLabels } from './circuitNames.js';
export { closedSettingSentences } from './closedSettingSentences.js';
export { type CodeEntry, codeHints, codeLabels, codeWords } from './codeEntries.js';
export { type CoilEntry, coilHints, coilLabels, coilWords } from './coilEntries.js';
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
export {
  type ContactlessEntry,
  contactlessHints,
  contactlessLabels,
  contactlessWords,
} from './contactlessEntries.js';
export { loosenedSentence } from './criteriaWords.js';
export { type CurveEntry, curveHints, curveLabels, curveWords } from './curveEntries.js';
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
export { expectedWords } from './expectedWords.js';
export { findingRows } from './findingRows.js';
export { duringLabels, findingLabels, findingMeanings } from './findings.js';
export { formatAlike } from './formatAlike.js';
export {
  boundsWords,
  exampleSentence,
  formWords,
  mendEntriesSentence,
  noAnswerSentence,
  notChoiceSentence,
  outOfBoundsSentence,
  unknownEntriesSentence,
} from './formWords.js';
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
export {
  answersEndedSentence,
  fileIsThereSentence,
  type JobEntryWords,
  jobEntries,
  jobQuestion,
  jobWrittenSentence,
} from './jobEntries.js';
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
export {
  columnChoice,
  extentSentence,
  type ForeignKind,
  findingPlaceSentence,
  foreignFileSentence,
  judgeWords,
  readingUnitLabels,
  soundAsksSentence,
  waitsForSensorSentence,
} from './judgeWords.js';
export { type LawEntry, lawHints, lawLabels, lawWords } from './lawEntries.js';
export { limiterAdviceSentences } from './limiterAdviceSentences.js';
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
export { type PortEntry, portHints, portLabels, portWords } from './portEntries.js';
export { pressureAdvice, pressureUnsaid } from './pressureReadingWords.js';
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
export { foundSentence, searchWords } from './searchWords.js';
export { type SettingEntry, settingHints, settingLabels, settingWords } from './settingEntries.js';
export { settingSentences } from './settingSentences.js';
export {
  shelfFieldHints,
  shelfFieldLabels,
  shelfOpenedSentence,
  shelfRefusals,
  shelfTroubleSentences,
  shelfWords,
} from './shelfWords.js';
export { type SoakEntry, soakAdvice, soakHints, soakLabels, soakWords } from './soakEntries.js';
export {
  type OwnRecorderEntry,
  ownRecorderHints,
  ownRecorderLabels,
  type SpotEntry,
  spotHints,
  spotLabels,
} from './spotWords.js';
export { stampsSentence } from './stampsSentence.js';
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
export { troubleCodesSentence, troubleMeanings } from './troubleCodes.js';
export { twoStateAdvice, twoStateUnsaid } from './twoStateReadingWords.js';
export { takeUnitWords, unitSentences } from './unitSentences.js';
export { verdictLabels, verdictMeanings } from './verdicts.js';
export { visibleText } from './visibleText.js';
export {
  type BenchKind,
  benchKindLabels,
  goesOnSentence,
  type RefitAnswer,
  type RefitEntry,
  refitAnswers,
  refitCheckLabels,
  refitHints,
  refitLabels,
  refitOutcomeLabels,
  type SweepTask,
  sweepTaskLabels,
  takeOverSentence,
  type WayStep,
  wayStepCautions,
  wayStepLabels,
  wayStepTasks,
  wayWords,
} from './wayWords.js';
export { windingAdvice, windingUnsaid } from './windingReadingWords.js';
