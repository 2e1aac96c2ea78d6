// Words of forms and pages. An entry for those who use no more; `index.ts` has everything.

export { checkPageWords, restsOnWords } from './checkPageWords.js';
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
export {
  answersEndedSentence,
  fileIsThereSentence,
  type JobEntryWords,
  jobEntries,
  jobQuestion,
  jobWrittenSentence,
} from './jobEntries.js';
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
export { foundSentence, searchWords } from './searchWords.js';
export {
  shelfFieldHints,
  shelfFieldLabels,
  shelfOpenedSentence,
  shelfRefusals,
  shelfTroubleSentences,
  shelfWords,
} from './shelfWords.js';
export {
  findingMark,
  looksSentence,
  offeredSentence,
  passesTitle,
  portTroubleSentence,
  readAtSentence,
  standingSentence,
  stillMissingSentence,
  testButtons,
  tryingSentence,
  watchWords,
} from './watchWords.js';
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
