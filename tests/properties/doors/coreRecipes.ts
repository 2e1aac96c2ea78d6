import * as core from '@truesweep/core';
import type { Recipes } from './recipe.js';

const { expectation, scoreSweep, simulateSweep } = core;

const circuit = (): core.Circuit => ({
  source: { volts: 5, ohms: 0.1, currentLimit: 0.5 },
  limiter: 1000,
  leads: { supply: 0.1, ground: 0.1, signal: 0.2 },
  sensor: {
    track: 5000,
    bottomResidual: 20,
    topResidual: 20,
    contact: 50,
    terminalResistors: { bottom: 10, wiper: 100, top: 10 },
    closedPosition: 0.1,
    openPosition: 0.9,
  },
  load: { pullDown: 1e6, common: 'source' },
  connection: { supply: 'top', ground: 'bottom', signal: 'wiper' },
  faults: [
    { kind: 'broken-track', position: 0.95 },
    { kind: 'shorted-leads', leads: ['supply', 'ground'] },
  ],
});
const right = (): core.Circuit => {
  const { faults: _, connection: __, ...rest } = circuit();
  return rest;
};
const pulled = (): core.Circuit => ({
  ...right(),
  load: { pullUp: { ohms: 1e5, from: 'sensor' }, pullDown: 1e6 },
});
const plain = (): core.Circuit => ({
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 1e6 },
});
const hookup = (): core.Hookup => {
  const { sensor: _, ...rest } = right();
  return rest;
};
const tolerances = (): core.Tolerances => ({ track: 0.2, limiter: 0.05, closedPosition: 0.02 });
const ratings = (): core.Ratings => ({
  track: { watts: 0.5, shortTerm: 1, fullTo: 70, zeroAt: 125 },
  wiper: { amps: 0.005 },
  limiter: { watts: 0.25 },
  source: { amps: 0.5 },
  ambient: 25,
});

const plan = (): core.SweepPlan => ({
  circuit: plain(),
  movements: [
    { kind: 'hold', seconds: 0.3 },
    { kind: 'turn', to: 1, seconds: 0.6, unevenness: 0.01 },
    { kind: 'hold', seconds: 0.2 },
    { kind: 'snap', seconds: 0.1, restitution: 0.3 },
    { kind: 'hold', seconds: 0.2 },
  ],
  recorder: {
    interval: 0.005,
    noise: 0.002,
    resolution: 0.001,
    range: { low: -1, high: 6 },
    hum: { volts: 0.001, hertz: 50 },
    capacitance: 1e-9,
  },
  faults: [
    { kind: 'worn-spot', travel: 0.4, width: 0.05, ohms: Number.POSITIVE_INFINITY, chance: 0.9 },
    { kind: 'interference', at: [{ time: 0.5, seconds: 0.02, volts: 0.3 }] },
    { kind: 'loose-connection', at: [{ time: 0.7, seconds: 0.02 }] },
    { kind: 'shifted-track', travel: 0.8, shift: 0.01 },
    { kind: 'dead-spot', from: 0.6, to: 0.62 },
    { kind: 'rough-track', from: 0.2, to: 0.3, volts: 0.05 },
  ],
  seed: 7,
});

const recorded = simulateSweep(plan()).sweep;
const sweep = (): core.Sweep => ({
  time: recorded.time.slice(),
  signal: recorded.signal.slice(),
  supply: recorded.time.map(() => 4.9),
  stretches: [{ kind: 'sweep', start: 0, end: 1 }],
});
const short = (): core.Sweep => ({
  time: recorded.time.slice(),
  signal: recorded.signal.slice(),
});
const expected = () => expectation(plain(), tolerances());
const recorder = (): core.Recorder => ({
  resolution: 0.001,
  range: { low: -1, high: 6 },
  uncertainty: 0.005,
  coupling: 'dc',
  sampling: 'picked',
  sampledEvery: 0.005,
  before: { source: 5, zero: 0 },
  after: { source: 5, zero: 0 },
});
const judged = scoreSweep(short(), expected(), { resolution: 0.001 });
const score = () => structuredClone(judged);

const trend = (): core.Trend =>
  core.fitTrend([0.51, 0.52, 0.531].map((value, at) => ({ at, value })))!;

const time = () => Float64Array.from({ length: 50 }, (_, i) => i / 50);
const readings = (): core.ShaftReadings => ({
  shaft: Float64Array.from({ length: 400 }, (_, i) => (i < 200 ? i : 400 - i)),
  ratio: Float64Array.from(
    { length: 400 },
    (_, i) => (i < 200 ? i : 400 - i) / 200 + 0.001 * (i % 3),
  ),
  uncertainty: 0.001,
});

const digital = (): core.DigitalMeter => ({
  kind: 'digital-meter',
  name: 'meter',
  inputOhms: 1e7,
  inputFarads: 1e-10,
  ranges: [2, 20],
  counts: 1999,
  heldRange: 20,
  aperture: 0.1,
  deadTime: 0.02,
  displayInterval: 0.3,
  rangeChange: { up: 1, down: 0.09, blank: 0.1 },
  accuracy: { ofReading: 0.005, counts: 2 },
  keepsExtremes: true,
});
const autoRange = (): core.DigitalMeter => {
  const { heldRange: _, displayInterval: __, ...rest } = digital();
  return rest;
};
const needle = (): core.NeedleMeter => ({
  kind: 'needle-meter',
  name: 'needle',
  inputFarads: 5e-11,
  ohmsPerVolt: 20e3,
  range: 10,
  movement: { naturalFrequency: 6, damping: 0.7 },
  accuracyClass: 0.025,
  parallax: 0.005,
  noticed: 0.02,
});
const scope = (): core.Oscilloscope => ({
  kind: 'oscilloscope',
  name: 'scope',
  inputOhms: 1e7,
  inputFarads: 1e-11,
  range: { low: -2, high: 6 },
  bits: 8,
  bandwidth: 2e7,
  record: 2,
  memory: 250,
  fastest: 1e-6,
  keepsPeaks: true,
  offsetError: 0.01,
  gainError: 0.01,
});
const logger = (): core.Logger => ({
  kind: 'logger',
  name: 'logger',
  inputOhms: 1e7,
  inputFarads: 1e-10,
  range: { low: 0, high: 5 },
  bits: 12,
  interval: 0.01,
  filter: 0.001,
  sampling: { ohms: 1000, farads: 1e-11, seconds: 1e-4 },
  highPass: 1,
});
const unit = (): core.ControlUnit => ({
  kind: 'control-unit',
  name: 'unit',
  inputFarads: 1e-8,
  pullDown: 220e3,
  pullUp: { ohms: 1e6, volts: 5 },
  filter: 0.002,
  interval: 0.01,
  limits: { low: 0.2, high: 4.8 },
  debounce: 0.1,
});
const dropout = (): core.ModelledDropout => ({
  seconds: 0.02,
  from: 2.5,
  to: 0,
  fall: 1e-4,
  recovery: 1e-5,
  slope: 1,
  sound: { low: 0.5, high: 4.5 },
});

const pair = (a: string, b: string, closed: number, open: number) => [
  { between: [a, b], at: 'closed', ohms: closed },
  { between: [a, b], at: 'open', ohms: open },
];

const law = (): core.ThermistorLaw => ({
  ...{ kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100, lowest: -40, highest: 150 },
});
const rows = (): core.ThermistorLaw => ({
  kind: 'table',
  rows: [
    { temperature: 0, ohms: 5975, low: 5500, high: 6400 },
    { temperature: 20, ohms: 2502, low: 2300, high: 2700 },
    { temperature: 90, ohms: 250, low: 240, high: 260 },
  ],
});
const steinhartHart = (): core.ThermistorLaw => ({
  ...{ kind: 'steinhart-hart', a: 1.336e-3, b: 2.559e-4, c: 1.512e-7, lowest: -40, highest: 150 },
});
const pressureSensor = (): core.PressureSensor => ({
  reference: 'absolute',
  response: { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15_000, highest: 115_000 },
  error: 1500,
  errorFactors: [
    { temperature: 85, factor: 1 },
    { temperature: 125, factor: 3 },
  ],
  supply: { low: 4.85, high: 5.35 },
});
const pressureTable = (): core.PressureSensor => ({
  reference: 'absolute',
  response: {
    kind: 'table',
    rows: [
      { pressure: 20_000, ratio: 0.158 },
      { pressure: 46_660, ratio: 0.368 },
      { pressure: 101_320, ratio: 0.8 },
    ],
  },
});
const pullUpDivider = (): core.PullUpDivider => ({ supply: 5, pullUp: 1000, meter: 1e7 });

/** Every function of core, called with what is right. */
export const coreRecipes: Recipes = {
  absoluteLinearity: {
    args: () => [readings(), { index: { shaft: 100, ratio: 0.5 }, electricalTravel: 200 }],
  },
  absoluteThrottlePercent: { args: () => [0.5, 'rising'] },
  adcCount: { args: () => [0.5, 10, 'steps'] },
  adcRatio: { args: () => [512, 10, 'steps'] },
  adviseInstruments: {
    args: () => [
      plain(),
      { travel: 0.4, width: 0.02, passes: 3, travelTime: 1 },
      [autoRange(), logger()],
    ],
    weight: 0.1,
    infinite: 'a spot that no length shows, and the fastest sweep where any length does',
  },
  blindStretch: { args: () => [plain(), 0.1] },
  carryToBench: { args: () => [{ volts: 2, uncertainty: 0.01 }, plain(), hookup()] },
  carryToVehicle: { args: () => [{ volts: 2, uncertainty: 0.01 }, plain(), hookup()] },
  chanceAllMissed: { args: () => [2, 3, 4] },
  chanceInPasses: { args: () => [0.5, 3] },
  chanceOfReading: { args: () => [0.1, { interval: 0.2, aperture: 0.1, share: 0.3, inARow: 1 }] },
  chanceOfSamples: { args: () => [time(), 0.05, 2] },
  checkFields: {
    args: () => [{ track: 5000 }, 'sensor', { track: () => {}, 'contact?': () => {} }],
    open: 'the rules themselves are code',
  },
  checkReadable: {
    args: () => [{ list: [{ track: 1 }], of: { ohms: 2 } }, 'it'],
    open: 'any data can be read, and the path may be any text',
  },
  checkExpectation: { args: () => [expected(), 'expected'], open: 'the path may be any text' },
  checkScore: { args: () => [score(), 'score'], weight: 3, open: 'the path may be any text' },
  checkRecorder: { args: () => [recorder(), 'recorder'], open: 'the path may be any text' },
  checkText: { args: () => ['port', 'name'], open: 'the path may be any text' },
  checkSweep: { args: () => [sweep()] },
  chooseBenchLoad: {
    args: () => [
      plain(),
      {
        travels: [0.05, 0.5],
        dirt: 1e4,
        visible: 0.2,
        wiperCurrent: 0.001,
        loadingError: 0.1,
        pullUpVolts: 5,
        series: 'E24',
      },
    ],
    infinite: 'a load that is not connected, as it was given',
    weight: 0.1,
  },
  chooseLimiter: {
    args: () => [plain(), ratings(), { series: 'E24', rounding: 'up', span: 0.5, otherSource: 12 }],
    weight: 0.1,
  },
  chooseSetting: { args: () => [plain(), { width: 0.02, travelTime: 1, samples: 5 }] },
  closedSetting: {
    args: () => [0.6, 0.5, { kind: 'second-reading', degrees: 2, volts: 0.7 }, 0.01],
  },
  combineUncertainties: {
    args: () => [
      [
        { name: 'a', sensitivity: 1, uncertainty: 0.1, degreesOfFreedom: 5 },
        { name: 'b', sensitivity: -2, uncertainty: 0.1 },
      ],
      [['a', 'b', 0.5]],
    ],
  },
  compareSweeps: { args: () => [score(), score()], weight: 2 },
  compareTracks: {
    args: () => [
      {
        time: time(),
        first: time().map((at) => 0.5 + 4 * at),
        second: time().map((at) => 4.5 - 4 * at),
        supply: time().map(() => 5),
        travel: time(),
      },
      { limit: 0.2, relation: { kind: 'sum', value: 5 }, skew: 0.001, expected: expected() },
    ],
  },
  derated: { args: () => [{ watts: 1, shortTerm: 2, fullTo: 40, zeroAt: 135 }, 87.5, 'rating'] },
  digitalDisplay: { args: () => [autoRange(), sweep()] },
  dirtEffect: { args: () => [pulled(), 0.5, 1e4] },
  drawOutput: { args: () => [plain(), tolerances(), 0.5, 100, 1], weight: 0.3 },
  drawingEnvelope: { args: () => [time(), time()] },
  dropoutOf: { args: () => [plain(), unit(), 0.5, 0.01, 1] },
  envelopeColumns: { args: () => [{ ...core.drawingEnvelope(time(), time()) }, 0, 1, 4] },
  expectation: {
    args: () => [plain(), tolerances()],
    weight: 0.3,
    infinite: 'the circuit as it was given',
  },
  expectedBand: { args: () => [plain(), tolerances(), 11], weight: 0.3 },
  expectedCurve: { args: () => [right(), 21] },
  expectedWindows: { args: () => [plain(), tolerances(), 0.01] },
  findPins: {
    args: () => [
      ['1', '2', '3'],
      [...pair('1', '2', 5000, 5000), ...pair('1', '3', 1300, 5300), ...pair('2', '3', 5300, 1300)],
      { fraction: 0.01, ohms: 1 },
    ],
    infinite: 'a resistance of no connection',
  },
  fitTrend: {
    args: () => [
      [0.51, 0.52, 0.53].map((value, at) => ({ at, value, uncertainty: 0.001 })),
      { coverage: 0.95, scatter: { deviation: 0.001, degreesOfFreedom: 12 } },
    ],
    infinite: 'degrees of freedom where the scatter is as good as known',
  },
  forecast: { args: () => [trend(), 4] },
  forecastEnd: { args: () => [trend()] },
  formatQuantity: { args: () => [4700, 'Ω', { digits: 3, trim: true, decimal: ',' }] },
  formatResistanceCode: { args: () => [4700] },
  hysteresis: { args: () => [readings()] },
  inParallel: { args: () => [1000, 2000], infinite: 'no connection' },
  independentLinearity: { args: () => [readings()] },
  inputCorner: { args: () => [1e6, 1e-10] },
  inputOhms: { args: () => [unit()], infinite: 'an input that loads nothing' },
  integratorRejection: { args: () => [50, 0.1], infinite: 'the rejection of whole cycles' },
  isDetermined: { args: () => [2.5] },
  isInputError: { args: () => [new core.InputError('empty', 'x', 'x.')] },
  listOf: {
    args: () => [['a', 'b'], 1, 3, ['a', 'b'], 'list'],
    call: (rule: core.FieldRule, least: number, most: number, value: unknown, path: string) =>
      core.listOf(rule, least, most)(value, path),
    open: 'the rule itself is code, and the path may be any text',
  },
  liveSweep: {
    args: () => {
      const { time: at, signal, supply, stretches } = sweep();
      return [expected(), recorder(), { dropout: 0.02 }, at, signal, supply, stretches];
    },
    call: (...[expect, by, limits, at, signal, supply, stretches]: never[]) => {
      const live = core.liveSweep(expect!, by, limits);
      live.feed(at!, signal!, supply);
      return [live.provisional(), live.end(stretches)];
    },
    weight: 0.1,
  },
  missingIn: {
    args: () => {
      const { restsOn, testsNotDone, findings } = score();
      return [{ restsOn, testsNotDone, findings }];
    },
  },
  loadingErrors: { args: () => [plain()] },
  monteCarlo: {
    args: () => [
      [{ value: 1, distribution: 'rectangular', width: 0.1 }],
      (values: Float64Array) => values[0],
      100,
      1,
    ],
  },
  moveNeedle: {
    args: () => [{ naturalFrequency: 6, damping: 0.7 }, { deflection: 0, speed: 0 }, [1, 1], 0.5],
  },
  movementOf: { args: () => [0.5, 0.05] },
  nearestName: { args: () => ['limitr', ['limiter', 'leads']] },
  needleDisplay: { args: () => [needle(), sweep()] },
  noticedFaults: { args: () => [unit(), sweep()] },
  openWiper: { args: () => [{ from: 2.5, rest: 0, ohms: 1e6, farads: 1e-10 }, 1e-4] },
  openWiperReaches: { args: () => [{ from: 2.5, rest: 0, ohms: 1e6, farads: 1e-10 }, 0.9] },
  normalQuantile: { args: () => [0.025] },
  operatingPoint: { args: () => [circuit(), 0.5], weight: 2 },
  outputUncertainty: { args: () => [plain(), tolerances(), 0.5] },
  parseQuantity: { args: () => ['4k7', 'Ω', 'value'] },
  partsFromReadings: {
    args: () => [
      plain(),
      ['track', 'bottomResidual'],
      [
        { kind: 'ohms', between: ['bottom', 'top'], position: 0, ohms: 4300, uncertainty: 10 },
        { kind: 'ohms', between: ['bottom', 'wiper'], position: 0, ohms: 55, uncertainty: 1 },
        { kind: 'volts', position: 0.5, volts: 2, uncertainty: 0.01 },
      ],
    ],
    weight: 0.3,
  },
  pooledScatter: {
    args: () => [[1, 2, 3].map((deviation) => ({ deviation, degreesOfFreedom: 3 }))],
    infinite: 'degrees of freedom of series that are alike',
  },
  positionAt: { args: () => [right().sensor, 0.5] },
  positionAtOutput: { args: () => [plain(), { volts: 2, uncertainty: 0.01 }] },
  preferredValue: { args: () => [4800, 'E24', 'up'] },
  preferredValues: { args: () => ['E24'] },
  probedInput: { args: () => [{ inputOhms: 1e6, inputFarads: 2e-11 }, 10, 1e-10] },
  quantityPattern: { args: () => ['Ω', true] },
  rankInstruments: {
    args: () => [
      [digital(), scope(), logger(), unit()],
      plain(),
      { travel: 0.4, width: 0.02, speed: 1, passes: 3 },
    ],
    weight: 0.3,
    infinite: 'a spot that no length shows, and the fastest sweep where any length does',
  },
  readingUncertainty: { args: () => [digital(), 2.5] },
  refitChecks: {
    args: () => [
      { low: 0.4, nominal: 0.5, high: 0.6 },
      5,
      true,
      {
        cold: { volts: 0.49, reference: 4.9 },
        warm: { volts: 0.5, reference: 5 },
        learnedClosed: 0.1,
        relearned: true,
        snapsShut: true,
      },
    ],
  },
  relativeThrottlePercent: { args: () => [0.5, 0.1, 'falling'] },
  riseTime: { args: () => [1e6] },
  sampledDisplay: { args: () => [logger(), sweep()] },
  scoreSweep: {
    args: () => [sweep(), expected(), recorder(), { ...core.defaultCriteria }],
    weight: 0.4,
  },
  settlingError: { args: () => [logger(), 1000] },
  settlingTime: { args: () => [1000, 1e-10, 12] },
  shapeOf: {
    args: () => {
      const at = Float64Array.from({ length: 401 }, (_, i) => i / 400);
      return [
        { time: at, signal: at.map((x) => 5 * x), supply: at.map(() => 5) },
        {
          shaft: at,
          circuit: { ...plain(), limiter: 0 },
          supply: 5,
          range: { from: 0, to: 1 },
          uncertainty: 0.001,
          index: { shaft: 0.5, ratio: 0.5 },
          electricalTravel: 1,
        },
      ];
    },
    weight: 0.2,
  },
  shortestShown: {
    args: () => [{ interval: 0.2, aperture: 0.1, share: 0.3, inARow: 1 }, 0.95, 3],
  },
  sightOf: {
    args: () => [scope(), dropout(), 3],
    weight: 0.5,
    infinite: 'a dropout that no length shows',
  },
  simulateSweep: { args: () => [plan()], infinite: 'the faults as they were given' },
  smoothness: { args: () => [readings(), { intercept: 0, slope: 0.005 }] },
  sourceResistance: { args: () => [plain(), 0.5] },
  stepByStep: { args: () => [digital(), 0.02, true] },
  straightLine: { args: () => [time(), time()] },
  supplyAndGroundDrop: {
    args: () => {
      const drop = {
        reference: 5,
        referenceAtSensor: 4.8,
        sensorGround: 0.1,
        unitGround: 0.05,
        uncertainty: 0.001,
      };
      return [
        drop,
        0.01,
        { kind: 'second-load', ohms: 1000, readings: { ...drop, referenceAtSensor: 4.7 } },
      ];
    },
  },
  boilingBath: { args: () => [{ kind: 'barometer', pressure: 101_000, uncertainty: 100 }] },
  boilingTemperature: { args: () => [101_325] },
  choosePullUp: { args: () => [law(), 0, 100, 5] },
  compareSoaked: {
    args: () => [
      { law: law(), tolerances: { kelvins: 1 }, ohms: 2700, uncertainty: 10 },
      { law: steinhartHart(), tolerances: { ohms: 0.05, at: 25 }, ohms: 2800, uncertainty: 10 },
      { temperature: 18, uncertainty: 0.1 },
    ],
  },
  dividerOhms: { args: () => [pullUpDivider(), 3.48] },
  dividerSlope: { args: () => [pullUpDivider(), law(), 90] },
  dividerVolts: { args: () => [pullUpDivider(), 2502], infinite: 'a break' },
  fitThermistor: {
    args: () => [
      [
        { temperature: -25, ohms: 87_041, uncertainty: 0.1 },
        { temperature: 0, ohms: 27_326, uncertainty: 0.1 },
        { temperature: 10, ohms: 17_926, uncertainty: 0.1 },
        { temperature: 25, ohms: 10_000, uncertainty: 0.1 },
        { temperature: 40, ohms: 5800, uncertainty: 0.1 },
      ],
    ],
  },
  formatMeasure: { args: () => [20, '°F', 1] },
  heldSteps: {
    args: () => [time(), Float64Array.from({ length: 50 }, (_, i) => (i < 25 ? 4 : 2)), 0.2],
  },
  judgePressure: {
    args: () => [
      pressureSensor(),
      { station: 96_000, stationUncertainty: 100, temperature: 20 },
      [
        { gauge: 0, gaugeUncertainty: 0, volts: 3.85, supply: 5, uncertainty: 0.005 },
        { gauge: -50_000, gaugeUncertainty: 300, volts: 1.6, supply: 5, uncertainty: 0.005 },
      ],
    ],
  },
  judgeReading: {
    args: () => [
      {
        ...{ measured: 2510, low: 2100, high: 2900 },
        inputs: [{ name: 'meter', sensitivity: 1, uncertainty: 15 }],
      },
      'guarded',
    ],
  },
  judgeThermistor: {
    args: () => [
      { law: law(), tolerances: { ohms: 0.05, b: 0.01, kelvins: 0.1, at: 25 }, dissipation: 0.007 },
      [
        { temperature: 0, temperatureUncertainty: 0.1, ohms: 6050, uncertainty: 15 },
        { temperature: 98.3, temperatureUncertainty: 0.2, volts: 0.77, uncertainty: 0.003 },
      ],
      { ...pullUpDivider(), supplyUncertainty: 0.01, pullUpUncertainty: 2, isProved: true },
    ],
    infinite: 'a meter that showed over-range',
  },
  leakByDrift: {
    args: () => [pressureSensor(), { gauge: -60_000, station: 96_000, supply: 5 }, 0.0045],
    infinite: 'nothing leaks',
  },
  leakTime: {
    args: () => [
      [
        { seconds: 0, pascals: 60_000 },
        { seconds: 30, pascals: 57_000 },
      ],
    ],
    infinite: 'nothing leaks',
  },
  parseMeasure: { args: () => ['68 °F', 'temperature', 'field'] },
  parsePressure: { args: () => ['20 inHg vacuum', 'gauge', 'field'] },
  pressureFromRatio: { args: () => [pressureTable(), 0.5] },
  pressureRatio: { args: () => [pressureSensor(), 96_000, 100] },
  pullUpFromPairs: {
    args: () => [
      [
        { ohms: 2370, volts: 3.48 },
        { ohms: 236, volts: 0.97 },
      ],
      5,
    ],
  },
  relativeSlopeAt: { args: () => [steinhartHart(), 25] },
  resistanceAt: { args: () => [rows(), 25] },
  resistanceBand: { args: () => [law(), 100, { ohms: 0.05, b: 0.01, kelvins: 0.2, at: 25 }] },
  selfHeating: { args: () => [law(), pullUpDivider(), 20, 0.007] },
  shownPressure: { args: () => [101_325] },
  shownTemperature: { args: () => [79.6] },
  standardPressure: { args: () => [500] },
  stationPressure: {
    args: () => [{ kind: 'altimeter-setting', setting: 102_000, uncertainty: 50, altitude: 1000 }],
  },
  temperatureAt: { args: () => [steinhartHart(), 2500] },
  timeInBath: { args: () => [25, 80, 0.1] },
  coilCurrent: {
    args: () => [
      {
        ohms: 4,
        at: 25,
        conductor: { kind: 'conductivity', conductivity: 0.93 },
        henries: 0.006,
        volts: 12,
        temperature: 80,
        openedIn: 1e-6,
      },
    ],
  },
  codesOfReadings: {
    args: () => [
      'pressure',
      [{ check: 'open-port', outcome: 'fails', measured: 0.01, lowLimit: 0.3, unit: '1' }],
    ],
  },
  compareCodeLimit: { args: () => [{ code: 'P0112', set: 'above', volts: 4.8, supply: 5 }] },
  conductorConstant: { args: () => [{ kind: 'constant', k: 235 }] },
  judgeTwoState: {
    args: () => [
      {
        kind: 'ohms',
        rest: { low: 0, high: 0.5 },
        operated: { low: 1e6 },
        latched: true,
        bothWays: true,
        changesBetween: { low: 60, high: 70 },
      },
      [
        { state: 'rest', value: 0.4, uncertainty: 0.05, leads: 0.2 },
        { state: 'operated', value: 2e6, uncertainty: 1e4, changedAt: 65, angleUncertainty: 1 },
        { state: 'back-at-rest', value: 0.4, uncertainty: 0.05 },
      ],
    ],
    infinite: 'a contact that is open',
  },
  judgeWinding: {
    args: () => [
      { low: 10.8, high: 13.2, at: 20, conductor: { kind: 'aluminium' } },
      [
        {
          ohms: 12.4,
          uncertainty: 0.05,
          leads: 0.2,
          temperature: 25,
          temperatureUncertainty: 1,
        },
        { ohms: 12.4, uncertainty: 0.05, temperature: 25, temperatureUncertainty: 1 },
      ],
    ],
    infinite: 'a winding that is open',
  },
  locateCodeFault: {
    args: () => [
      {
        code: 'P0107',
        unplugged: 'low',
        bridged: 'high',
        leads: 'sound',
        pull: 'down',
        supply: 'right',
      },
    ],
  },
  readTroubleCode: { args: () => ['P0117'] },
  recognisePotentiometer: {
    args: () => [
      {
        endToEnd: 5000,
        endToEndReversed: 5010,
        oneToWiper: 900,
        otherToWiper: 4200,
        moved: { oneToWiper: 3900, otherToWiper: 1200 },
        uncertainty: 0.01,
      },
    ],
  },
  resistanceAtTemperature: {
    args: () => [{ ohms: 12, at: 20, conductor: { kind: 'copper' } }, 80],
  },
  starvedSupply: { args: () => [{ supply: 5, limiter: 1000, current: 0.01, least: 4.5 }] },
  switchBounce: {
    args: () => [
      time(),
      Float64Array.from({ length: 50 }, (_, i) => (i > 20 && i !== 23 ? 4.9 : 0.1)),
      { low: 1, high: 4, apart: 0.05 },
    ],
  },
  temperatureOfWinding: { args: () => [{ ohms: 12, at: 20, conductor: { kind: 'copper' } }, 13.4] },
  sweepColumns: { args: () => [sweep(), 20] },
  terminalBasedLinearity: { args: () => [readings()] },
  throttlePercentRatio: { args: () => [50, 'rising'] },
  troubleCodes: {
    args: () => [score(), 'A'],
    open: 'of a score only checks and findings are looked at',
  },
  loosenedCriteria: { args: () => [{ ...core.defaultCriteria }] },
  whenLimitIsMet: { args: () => [trend(), 0.6] },
  wholeCriteria: { args: () => [{ ...core.defaultCriteria }] },
  withInstrument: {
    args: () => [{ pullDown: 1e6 }, unit()],
    infinite: 'a pull-up that is not connected',
  },
  wrongConnections: { args: () => [plain(), ratings(), 12], weight: 0.2 },
  zeroBasedLinearity: { args: () => [readings()] },
};
