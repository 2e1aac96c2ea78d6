import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import * as wording from './index.js';
import * as working from './working.js';

/** Keys of our own: no code of another package stands behind them. */
const ownKeys = [
  'bandWords',
  'batchColumns',
  'batchOutcomeLabels',
  'batchOutcomeMeanings',
  'batchWords',
  'twoStateAdvice',
  'displayWords',
  'refitCheckLabels',
  'bandPartLabels',
  'cautions',
  'commandHelp',
  'comparisonWords',
  'drawingWords',
  'partOverWords',
  'plotWords',
  'checkPageWords',
  'restsOnWords',
  'checkSweepWords',
  'formWords',
  'pinTableWords',
  'planTitles',
  'settingWords',
  'instrumentWords',
  'readingsWords',
  'reportWords',
  'scoreLabels',
  'searchWords',
  'filingLabels',
  'judgeWords',
  'judgedReadingWords',
  'sensorKindLabels',
  'readingUnitLabels',
  'shelfFieldHints',
  'shelfFieldLabels',
  'shelfRefusals',
  'shelfTroubleSentences',
  'shelfWords',
  'watchWords',
  'historyPageWords',
  'historyQuantityLabels',
  'historyQuantityNames',
  'historyWords',
  'liveWords',
];

/** Sentences that are made of facts, each with facts of its own; the examples of their files show them. */
const madeOfFacts = [
  'lawWords',
  'temperatureNowWords',
  'bathWords',
  'soakWords',
  'airWords',
  'curveWords',
  'portWords',
  'coilWords',
  'stateWords',
  'contactlessWords',
  'codeWords',
  'stepWords',
  'expectedWords',
  'wayWords',
  'carryWords',
  'dirtWords',
  'dividerWords',
  'dropWords',
  'jobEntries',
  'limiterSentences',
  'pinSentences',
  'pinWords',
  'planWords',
  'settingSentences',
  'traceWords',
  'wayStepCautions',
  'triggerWords',
];

/** Each map of sentences with the declaration whose codes it must have. */
const maps: Readonly<Record<string, readonly [file: string, type: string, field?: string]>> = {
  verdictLabels: ['core/src/score/score.ts', 'Verdict'],
  verdictMeanings: ['core/src/score/score.ts', 'Verdict'],
  readingVerdictMeanings: ['core/src/score/score.ts', 'Verdict'],
  causeLabels: ['core/src/score/score.ts', 'Cause'],
  causeMeanings: ['core/src/score/score.ts', 'Cause'],
  adviceSentences: ['core/src/score/score.ts', 'Advice'],
  checkLabels: ['core/src/score/score.ts', 'CheckCode'],
  outcomeLabels: ['core/src/score/score.ts', 'CheckOutcome'],
  limitSourceLabels: ['core/src/score/score.ts', 'LimitSource'],
  hintLabels: ['core/src/live/hintsOf.ts', 'HintCode'],
  testButtons: ['core/src/score/score.ts', 'DeliberateTest'],
  findingLabels: ['core/src/score/score.ts', 'Finding', 'kind'],
  troubleMeanings: ['core/src/score/troubleCodes.ts', 'TroubleKind'],
  findingMeanings: ['core/src/score/score.ts', 'Finding', 'kind'],
  duringLabels: ['core/src/score/score.ts', 'Finding', 'during'],
  visibleSetByLabels: ['core/src/capture/captureQuality.ts', 'CaptureQuality', 'visibleSetBy'],
  partLabels: ['core/src/circuit/circuitNetwork.ts', 'PartName'],
  nodeLabels: ['core/src/circuit/circuitNetwork.ts', 'NodeName'],
  sourceStateLabels: ['core/src/circuit/operatingPoint.ts', 'OperatingPoint', 'sourceState'],
  indeterminateReasons: ['core/src/circuit/determined.ts', 'IndeterminateReason'],
  delimiterLabels: ['recordings/src/delimitedOptions.ts', 'Delimiter'],
  spotLabels: ['wording/src/spotWords.ts', 'SpotEntry'],
  spotHints: ['wording/src/spotWords.ts', 'SpotEntry'],
  ownRecorderLabels: ['wording/src/spotWords.ts', 'OwnRecorderEntry'],
  ownRecorderHints: ['wording/src/spotWords.ts', 'OwnRecorderEntry'],
  sightLabels: ['core/src/instruments/rankInstruments.ts', 'RankedInstrument', 'reason'],
  assumptionSentences: ['core/src/instruments/instrument.ts', 'Assumption'],
  unprovedLabels: ['core/src/instruments/stepByStep.ts', 'Unproved'],
  samplingLabels: ['core/src/capture/sampling.ts', 'Sampling'],
  couplingLabels: ['core/src/capture/captureQuality.ts', 'Recorder', 'coupling'],
  takenFromLabels: ['recordings/src/takenFrom.ts', 'TakenFrom'],
  encodingLabels: ['recordings/src/findEncoding.ts', 'TextEncoding'],
  spotOutcomeLabels: ['core/src/compare/comparison.ts', 'SpotOutcome'],
  cannotShowSentences: ['core/src/compare/comparison.ts', 'CannotShow'],
  undecidedSentences: ['core/src/pins/pinFinding.ts', 'Undecided'],
  appearanceLabels: ['core/src/ratings/wrongConnections.ts', 'Appearance'],
  lawLabels: ['wording/src/lawEntries.ts', 'LawEntry'],
  lawHints: ['wording/src/lawEntries.ts', 'LawEntry'],
  temperatureNowLabels: ['wording/src/temperatureNowEntries.ts', 'TemperatureNowEntry'],
  temperatureNowHints: ['wording/src/temperatureNowEntries.ts', 'TemperatureNowEntry'],
  airLabels: ['wording/src/airEntries.ts', 'AirEntry'],
  airHints: ['wording/src/airEntries.ts', 'AirEntry'],
  soakLabels: ['wording/src/soakEntries.ts', 'SoakEntry'],
  soakHints: ['wording/src/soakEntries.ts', 'SoakEntry'],
  soakAdvice: ['core/src/thermistor/compareSoaked.ts', 'SoakAdvice'],
  bathLabels: ['wording/src/bathEntries.ts', 'BathEntry'],
  bathHints: ['wording/src/bathEntries.ts', 'BathEntry'],
  curveLabels: ['wording/src/curveEntries.ts', 'CurveEntry'],
  curveHints: ['wording/src/curveEntries.ts', 'CurveEntry'],
  portLabels: ['wording/src/portEntries.ts', 'PortEntry'],
  portHints: ['wording/src/portEntries.ts', 'PortEntry'],
  coilLabels: ['wording/src/coilEntries.ts', 'CoilEntry'],
  coilHints: ['wording/src/coilEntries.ts', 'CoilEntry'],
  stateLabels: ['wording/src/stateEntries.ts', 'StateEntry'],
  stateHints: ['wording/src/stateEntries.ts', 'StateEntry'],
  contactlessLabels: ['wording/src/contactlessEntries.ts', 'ContactlessEntry'],
  contactlessHints: ['wording/src/contactlessEntries.ts', 'ContactlessEntry'],
  codeLabels: ['wording/src/codeEntries.ts', 'CodeEntry'],
  codeHints: ['wording/src/codeEntries.ts', 'CodeEntry'],
  thermistorAdvice: ['core/src/thermistor/judgeThermistor.ts', 'ThermistorAdvice'],
  thermistorUnsaid: ['core/src/thermistor/judgeThermistor.ts', 'ThermistorUnsaid'],
  pressureAdvice: ['core/src/pressure/judgePressure.ts', 'PressureAdvice'],
  pressureUnsaid: ['core/src/pressure/judgePressure.ts', 'PressureUnsaid'],
  twoStateUnsaid: ['core/src/twoState/judgeTwoState.ts', 'TwoStateUnsaid'],
  windingAdvice: ['core/src/winding/judgeWinding.ts', 'WindingAdvice'],
  windingUnsaid: ['core/src/winding/judgeWinding.ts', 'WindingUnsaid'],
  entryLabels: ['wording/src/readingsWords.ts', 'HookUpEntry'],
  entryHints: ['wording/src/readingsWords.ts', 'HookUpEntry'],
  planLabels: ['wording/src/planEntries.ts', 'PlanEntry'],
  planHints: ['wording/src/planEntries.ts', 'PlanEntry'],
  settingLabels: ['wording/src/settingEntries.ts', 'SettingEntry'],
  settingHints: ['wording/src/settingEntries.ts', 'SettingEntry'],
  carryLabels: ['wording/src/carryEntries.ts', 'CarryEntry'],
  carryHints: ['wording/src/carryEntries.ts', 'CarryEntry'],
  dropLabels: ['wording/src/dropEntries.ts', 'DropEntry'],
  dropHints: ['wording/src/dropEntries.ts', 'DropEntry'],
  dirtLabels: ['wording/src/dirtEntries.ts', 'DirtEntry'],
  dirtHints: ['wording/src/dirtEntries.ts', 'DirtEntry'],
  testTimeLabels: ['wording/src/checkSweepWords.ts', 'TestTimeEntry'],
  recorderLabels: ['wording/src/checkSweepWords.ts', 'RecorderEntry'],
  recorderHints: ['wording/src/checkSweepWords.ts', 'RecorderEntry'],
  benchKindLabels: ['wording/src/wayWords.ts', 'BenchKind'],
  wayStepLabels: ['wording/src/wayWords.ts', 'WayStep'],
  wayStepTasks: ['wording/src/wayWords.ts', 'WayStep'],
  sweepTaskLabels: ['wording/src/wayWords.ts', 'SweepTask'],
  refitLabels: ['wording/src/wayWords.ts', 'RefitEntry'],
  refitHints: ['wording/src/wayWords.ts', 'RefitEntry'],
  refitAnswers: ['wording/src/wayWords.ts', 'RefitAnswer'],
  refitOutcomeLabels: ['core/src/expectation/refitChecks.ts', 'RefitOutcome'],
  benchLoadLabels: ['core/src/ratings/chooseBenchLoad.ts', 'BenchLoadWay'],
  noBenchLoadLabels: ['core/src/ratings/chooseBenchLoad.ts', 'NoBenchLoad', 'binding'],
};

/** The codes that a declaration in the sources of a package lists: a union of texts, or the type of a field. */
function declaredCodes(file: string, type: string, field?: string): string[] {
  const path = fileURLToPath(new URL(`../../${file}`, import.meta.url));
  const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ES2023);
  const declaration = source.statements.find(
    (one): one is ts.TypeAliasDeclaration | ts.InterfaceDeclaration =>
      (ts.isTypeAliasDeclaration(one) || ts.isInterfaceDeclaration(one)) && one.name.text === type,
  );
  if (!declaration) throw new Error(`${file} declares no ${type}.`);
  const node = ts.isTypeAliasDeclaration(declaration)
    ? declaration.type
    : declaration.members
        .filter(ts.isPropertySignature)
        .find(({ name }) => ts.isIdentifier(name) && name.text === field)?.type;
  if (!node || !ts.isUnionTypeNode(node)) throw new Error(`${type} ${field} is no union.`);
  return node.types.map((member) => {
    if (ts.isLiteralTypeNode(member) && ts.isStringLiteral(member.literal))
      return member.literal.text;
    throw new Error(`${type} ${field} has a member that is no text.`);
  });
}

// What workings and exercises say is in groups, and made of facts throughout.
const exported = Object.entries(wording as Readonly<Record<string, unknown>>).filter(
  (entry): entry is [string, object] =>
    typeof entry[1] === 'object' && !madeOfFacts.includes(entry[0]) && !(entry[0] in working),
);

test('every map of sentences is compared with the codes that it is for', () => {
  expect(exported.map(([name]) => name).sort()).toEqual([...Object.keys(maps), ...ownKeys].sort());
});

describe.each(Object.entries(maps))('%s', (name, declaration) => {
  test('has a sentence for every code and no code too many', () => {
    const map = Object.fromEntries(exported)[name]!;
    expect(Object.keys(map).sort()).toEqual(declaredCodes(...declaration).sort());
  });
});

const numbers = { interval: '7.5 ms', returns: '3', visible: '5 %', uncertainty: '12 mV' };

/** Every text of a map and of those in it, with sentences that take numbers made out. */
function texts(map: object): string[] {
  return Object.values(map).flatMap((text) =>
    typeof text === 'function' ? text(numbers) : typeof text === 'object' ? texts(text) : text,
  );
}

test('nothing is empty, nothing unresolved', () => {
  for (const [name, map] of exported) {
    for (const text of texts(map)) expect(text, name).toMatch(/^(?!.*undefined).*\S/s);
  }
});

test('two codes never share a sentence', () => {
  for (const [name, map] of exported) {
    expect(new Set(texts(map)).size, name).toBe(texts(map).length);
  }
});

test('what are sentences begin with a capital and end with a full stop', () => {
  const sentences = [
    wording.verdictMeanings,
    wording.causeMeanings,
    wording.adviceSentences,
    wording.cautions,
    wording.indeterminateReasons,
    wording.sourceStateLabels,
  ].flatMap(texts);
  for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z].*\.$/);
});

test('an advice to record faster says how fast', () => {
  expect(wording.adviceSentences['record-faster'](numbers)).toContain('7.5 ms');
  expect(wording.adviceSentences['record-more-returns'](numbers)).toContain('3 or more');
  expect(wording.adviceSentences['record-quieter'](numbers)).toContain('5 %');
});
