import { readFileSync } from 'node:fs';
import {
  chooseSetting,
  expectation,
  operatingPoint,
  scoreSweep,
  simulateSweep,
  sweepColumns,
} from '@truesweep/core';
import {
  identifyRecording,
  type Job,
  jobExpectation,
  jobRecorder,
  judgeReadings,
  parseAnyJob,
  parseJob,
  type ReadingsJob,
} from '@truesweep/jobs';
import { judgeOne } from '@truesweep/jobs/node';
import type { SoundOptions } from '@truesweep/recordings';
import {
  type Report,
  readingsReportHtml,
  readReport,
  reportHtml,
  type StoredReport,
} from '@truesweep/report';
import { renderToString } from 'preact-render-to-string';
import type { Recipes } from './recipe.js';

const written = JSON.parse(readFileSync('examples/outboard-sensor.job.json', 'utf8'));
const whole = {
  ...written,
  criteria: { dropout: '20 ms', visibleSpan: '2 %' },
  recordings: [{ file: 'a.csv', bytes: 40, text: { delimiter: ',' } }],
};
const job = (): Job => structuredClone(parseJob(whole));
const csv = 't (s),U (V)\n0,0.5\n0.1,0.6\n0.2,0.7\n';
const bytes = () => new TextEncoder().encode(csv);
const readOptions = () => ({
  name: 'a.csv',
  delimiter: ',',
  decimal: '.',
  timeColumn: 0,
  signalColumn: 'U',
  timeUnit: 's',
  signalUnit: 'V',
});

const coolant = () => JSON.parse(readFileSync('examples/coolant-sensor.job.json', 'utf8'));
const coil = () =>
  parseAnyJob({
    version: 3,
    title: 'Crank sensor',
    sensor: {
      kind: 'winding',
      name: 'Crank sensor',
      low: 765,
      high: 935,
      at: 20,
      conductor: { kind: 'constant', k: 235 },
    },
    readings: [
      { ohms: 866, uncertainty: 3, leads: 0.2, temperature: 23, temperatureUncertainty: 1 },
    ],
    notes: 'invented',
  });

/** Four samples of 16 bits, RIFF WAVE. */
function sound(): Uint8Array {
  const view = new DataView(new ArrayBuffer(52));
  const put = (at: number, text: string) => {
    for (let i = 0; i < text.length; i++) view.setUint8(at + i, text.charCodeAt(i));
  };
  put(0, 'RIFF');
  view.setUint32(4, 44, true);
  put(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, 8000, true);
  view.setUint32(28, 16_000, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  put(36, 'data');
  view.setUint32(40, 8, true);
  for (let i = 0; i < 4; i++) view.setInt16(44 + 2 * i, 1000 * i, true);
  return new Uint8Array(view.buffer);
}
const soundOptions = (): SoundOptions => ({
  name: 'a.wav',
  fullScale: 5,
  attenuation: 1,
  microphoneBias: 'off',
  signalChannel: 0,
});

const { sweep } = simulateSweep({
  circuit: expectationCircuit(),
  movements: [
    { kind: 'hold', seconds: 0.3 },
    { kind: 'turn', to: 1, seconds: 0.6 },
    { kind: 'hold', seconds: 0.3 },
  ],
  recorder: { interval: 0.01 },
  faults: [{ kind: 'worn-spot', travel: 0.4, width: 0.05, ohms: 1e12 }],
  seed: 1,
});
function expectationCircuit() {
  return jobExpectation(job()).circuit;
}
const score = scoreSweep(sweep, expectation(expectationCircuit()), jobRecorder(job()));
const report = (): Report => ({
  job: job(),
  writtenAt: '2026-05-04',
  record: { jobNumber: '17', machine: 'Port engine', by: 'A. B.', at: '2026-05-04 10:00' },
  recordings: [
    {
      name: 'a.csv',
      bytes: 40,
      sha256: 'a'.repeat(64),
      howRead: 'Read as text.',
      recorder: { resolution: 0.001 },
      sweep: { time: sweep.time.slice(), signal: sweep.signal.slice() },
      score: structuredClone(score),
    },
  ],
});
type ReportOne = Report['recordings'][number];
const html = reportHtml(report());
const stored = () => readReport(html);
const identity = await identifyRecording(bytes());

/** A stream of bytes; made anew, for it can be read once. */
async function* pieces() {
  yield bytes();
}

const inJob = 'of a job only what is wrong for parseJob is refused';

/** Every function of recordings. */
export const recordingsRecipes: Recipes = {
  delimitedReader: {
    args: () => [readOptions(), bytes(), 40],
    call: async (options: never, input: never, size: never) => {
      const { delimitedReader } = await import('@truesweep/recordings');
      const reader = delimitedReader(options, size);
      reader.feed(input);
      return reader.end();
    },
  },
  isSound: { args: () => [sound()] },
  liveReader: {
    args: () => [readOptions(), false, bytes(), 2],
    call: async (options: never, fromMiddle: never, input: never, arrived: never) => {
      const { liveReader } = await import('@truesweep/recordings');
      const reader = liveReader(options, fromMiddle);
      reader.feed(input, arrived);
      return [reader.end(), reader.reading()];
    },
  },
  isTextOf: {
    args: () => [bytes()],
    call: async (input: never) => {
      const { isTextOf } = await import('@truesweep/recordings');
      return isTextOf()(input);
    },
  },
  rateFinder: {
    args: () => [readOptions(), bytes()],
    call: async (options: never, input: never) => {
      const { rateFinder } = await import('@truesweep/recordings');
      return rateFinder(options)(input);
    },
  },
  readDelimited: { args: () => [csv, readOptions()], weight: 2 },
  readRecording: { args: () => [pieces(), readOptions()] },
  readSound: { args: () => [sound(), soundOptions()], weight: 2 },
  samplesOf: {
    args: () => [pieces(), readOptions()],
    call: async (source: never, options: never) => {
      const { samplesOf } = await import('@truesweep/recordings');
      const all: unknown[] = [];
      for await (const samples of samplesOf(source, options)) all.push(samples);
      return all;
    },
  },
};

/** Every function of jobs. */
export const jobsRecipes: Recipes = {
  checkRecording: {
    args: () => [
      { file: 'a.csv', bytes: 4, sha256: 'ab' },
      { bytes: 4, sha256: 'ab' },
    ],
  },
  findRecordings: {
    args: () => [[{ file: 'a.csv', ...identity }], [{ name: 'a.csv', bytes: bytes() }]],
  },
  identifyRecording: { args: () => [bytes()] },
  jobCircuit: { args: () => [job()], open: inJob },
  jobCriteria: { args: () => [job()] },
  jobExpectation: { args: () => [job()], weight: 0.3 },
  jobRecorder: { args: () => [job()] },
  jobTolerances: { args: () => [job()] },
  parseJob: { args: () => [structuredClone(whole)], weight: 3 },
  readJob: { args: () => [JSON.stringify(whole), 'shelf.json'] },
  readJobPieces: {
    args: () => [
      pieces(),
      { file: 'a.csv', text: { delimiter: ',', timeColumn: 0 } },
      job(),
      { size: 40 },
    ],
  },
  readJobRecording: {
    args: () => [
      bytes(),
      {
        file: 'a.csv',
        text: { delimiter: ',', timeColumn: 0 },
        stretches: [{ kind: 'sweep', start: 0, end: 1 }],
      },
      job(),
      () => {},
    ],
  },
  watchSweep: {
    args: () => [
      job(),
      { text: { timeColumn: 0 }, name: 'a.csv', fromMiddle: false },
      bytes(),
      2,
      'warmed',
    ],
    call: async (of: never, options: never, input: never, arrived: never, kind: never) => {
      const { watchSweep } = await import('@truesweep/jobs');
      const watched = watchSweep(of, options);
      watched.feed(input, arrived);
      watched.mark(kind);
      return [watched.end(), watched.recent(), watched.soFar(), watched.reading()];
    },
    weight: 0.3,
  },
  writeJob: { args: () => [job()] },
  expectReadings: { args: () => [coil()] },
  isSweepJob: { args: () => [coil()], open: 'of a job only its kind is looked at' },
  judgeReadings: { args: () => [coil(), []], infinite: 'a winding that is open' },
  parseAnyJob: { args: () => [coolant()], weight: 2 },
  readAnyJob: { args: () => [JSON.stringify(coolant()), 'shelf.json'] },
  readPumpDown: {
    args: () => [
      {
        time: Float64Array.from({ length: 80 }, (_, i) => i / 10),
        signal: Float64Array.from({ length: 80 }, (_, i) => (i < 40 ? 4 : 2)),
      },
      {
        file: 'a.csv',
        ports: ['open', { pascals: -34_000, reference: 'gauge' }],
        portUncertainty: 400,
        supply: 5,
        uncertainty: 0.002,
      },
    ],
    open: 'a port is looked at where it is judged',
  },
  writeAnyJob: { args: () => [coil()] },
  roughness: { args: () => [{ findings: structuredClone(score.findings) }] },
  worstPlace: {
    args: () => [
      { findings: structuredClone(score.findings), spots: structuredClone(score.spots) },
    ],
  },
};

/** A place below a file, where no system writes anything, whatever name stands there. */
const belowFile = (path: unknown) =>
  typeof path === 'string' && path !== '' ? `LICENSE/${path}` : path;

/** Every function of jobs that touches files. */
export const jobsNodeRecipes: Recipes = {
  judgeOne: {
    args: () => [
      'examples/recordings/too-slow.csv',
      job(),
      { file: 'a.csv', sensor: 'Port engine', date: '2026-04-02', note: 'cleaned', most: 1e6 },
    ],
    weight: 2,
  },
  hashedPieces: {
    args: () => [pieces()],
    call: async (source: never) => {
      const { hashedPieces } = await import('@truesweep/jobs/node');
      const hashed = hashedPieces(source);
      for await (const _ of hashed.pieces);
      return hashed.identity();
    },
  },
  filePieces: {
    args: () => ['LICENSE'],
    call: async (path: never) => {
      const { filePieces } = await import('@truesweep/jobs/node');
      let size = 0;
      for await (const piece of filePieces(path)) size += piece.length;
      return size;
    },
  },
  loadAnyJob: { args: () => ['examples/coolant-sensor.job.json'] },
  loadJob: { args: () => ['examples/outboard-sensor.job.json'] },
  readFileBytes: { args: () => ['LICENSE', { most: 1e6 }] },
  saveJob: {
    args: () => ['no.json', job(), { overwrite: false }],
    call: async (path: never, ...rest: never[]) => {
      const { saveJob } = await import('@truesweep/jobs/node');
      await (saveJob as (...args: unknown[]) => unknown)(belowFile(path), ...rest);
    },
  },
  writeFileAtomically: {
    args: () => ['no.json', 'text', { overwrite: false }],
    call: async (path: never, ...rest: never[]) => {
      const { writeFileAtomically } = await import('@truesweep/jobs/node');
      await (writeFileAtomically as (...args: unknown[]) => unknown)(belowFile(path), ...rest);
    },
  },
};

const readingsReport = () => {
  const ofCoil = coil() as ReadingsJob;
  return { job: ofCoil, writtenAt: '2026-05-04', judged: judgeReadings(ofCoil) };
};

/** Every function of report. */
const { judgedAt: _, ...judged } = await judgeOne('examples/recordings/too-slow.csv', job());
const record = (season = 0) => ({
  kind: 'truesweep-record',
  form: 1,
  sensor: 'Port engine',
  recording: `${season}`.padStart(64, '0'),
  date: `${2023 + season}-05-03`,
  dateFrom: 'told',
  file: 'port.csv',
  note: 'cleaned',
  version: '0.1.0',
  verdict: 'pass',
  cause: 'track',
  closed: { volts: 0.5 + 0.01 * season, uncertainty: 0.001, low: 0.4, high: 0.6 },
  open: { volts: 4.5, low: 4.4, high: 4.6 },
  noise: 0.001,
  visible: 0.02,
  hysteresis: 0.002,
  roughness: 0,
  findings: 1,
  worst: { kind: 'dropout', travel: 0.2, depthOfSpan: 0.4 },
  recorder: { interval: 0.001, resolution: 0.001 },
});
const records = () => [record(), record(1), record(2)];
const scatter = { deviation: 0.001, degreesOfFreedom: 9 };

export const historyRecipes: Recipes = {
  checkRecord: { args: () => [record(), 'record'] },
  readRecords: { args: () => [`${JSON.stringify(record())}\n`, 'season.jsonl'] },
  recordOf: {
    args: () => [structuredClone(judged)],
    open: 'all that is known of a recording is handed in',
  },
  recordOfScore: {
    args: () => [
      structuredClone(score),
      { sensor: 'Port engine', sha256: 'a'.repeat(64), file: 'port.csv', date: '2026-05-03' },
    ],
  },
  sensorHistory: {
    args: () => [records(), { closed: { ...scatter }, noise: { ...scatter } }],
    infinite: 'degrees of freedom where the scatter is as good as known',
  },
  sharedScatter: {
    args: () => [[records(), records(), records()]],
    infinite: 'degrees of freedom of sensors that are alike',
  },
};

export const reportRecipes: Recipes = {
  readingsReportHtml: {
    args: () => [readingsReport()],
    open: 'a judgement is made anew of its job',
    weight: 0.3,
  },
  isReadingsReport: { args: () => ['<p>'] },
  readReadingsReport: { args: () => [readingsReportHtml(readingsReport()), 'a.html'], weight: 0.3 },
  readingsReportMarkdown: {
    args: () => [readingsReport()],
    open: 'a judgement is made anew of its job',
    weight: 0.3,
  },
  RecordingAnswer: {
    args: () => [{ score: structuredClone(score), criteria: { dropout: 0.02 } }],
    call: async (props: never) => {
      const { RecordingAnswer } = await import('@truesweep/report');
      return renderToString(RecordingAnswer(props));
    },
  },
  RecordingEvidence: {
    args: () => {
      const [{ sweep: _, ...recording }] = report().recordings as [ReportOne];
      return [{ id: 'one', recording, criteria: { dropout: 0.02 } }];
    },
    call: async (props: never) => {
      const { RecordingEvidence } = await import('@truesweep/report');
      return renderToString(RecordingEvidence(props));
    },
  },
  readReport: { args: () => [html, 'report.html'] },
  recheckReport: {
    args: () => [stored(), () => undefined],
    weight: 0.3,
    unknown: 'a later version may store more',
  },
  reportHtml: { args: () => [report()] },
  reportMarkdown: { args: () => [report()] },
  storedSweep: {
    args: () => {
      const [{ samples }] = stored().recordings as [StoredReport['recordings'][number]];
      return [{ samples, stretches: [{ kind: 'sweep', start: 0, end: 1 }] }];
    },
  },
};

const drawn =
  (
    component:
      | 'CircuitDrawing'
      | 'CurveDrawing'
      | 'HookUpPicture'
      | 'PassesDrawing'
      | 'PressureDrawing'
      | 'SettingPicture'
      | 'StepsDrawing'
      | 'TerminalsPicture'
      | 'ThermistorDrawing'
      | 'TraceDrawing'
      | 'TravelMapDrawing',
  ) =>
  async (props: never) => {
    const drawings = await import('@truesweep/drawings');
    return renderToString(drawings[component](props));
  };
const expected = () => expectation(expectationCircuit(), { track: 0.2 });

/** Every function of drawings. */
export const drawingsRecipes: Recipes = {
  CircuitDrawing: {
    args: () => {
      const circuit = structuredClone(expectationCircuit());
      const [closed, open] = [0.1, 0.9].map((at) => operatingPoint(circuit, at));
      return [{ id: 'circuit', circuit, closed, open }];
    },
    call: drawn('CircuitDrawing'),
  },
  CurveDrawing: {
    args: () => {
      const { curve, windows } = expected();
      const markers = [{ travel: 0.5, volts: 2, label: 'here' }];
      return [{ id: 'curve', curve, windows, markers, compared: curve }];
    },
    call: drawn('CurveDrawing'),
  },
  TraceDrawing: {
    args: () => [
      {
        id: 'trace',
        columns: sweepColumns(sweep, 20),
        findings: structuredClone(score.findings),
        windows: expected().windows,
        whole: { low: 0, high: 5, interval: 0.01 },
        behind: sweepColumns(sweep, 20),
        width: 400,
        volts: { low: 0, high: 4 },
      },
    ],
    call: drawn('TraceDrawing'),
  },
  ThermistorDrawing: {
    args: () => [
      {
        id: 'ntc',
        points: [
          { temperature: 0, low: 5400, nominal: 5975, high: 6600 },
          { temperature: 100, low: 165, nominal: 175.7, high: 186 },
        ],
        readings: [
          {
            temperature: 20,
            temperatureUncertainty: 1,
            ohms: 2510,
            uncertainty: 20,
            outcome: 'conforms',
          },
          { temperature: 40, ohms: Infinity, outcome: 'fails' },
        ],
        width: 400,
      },
    ],
    call: drawn('ThermistorDrawing'),
  },
  PressureDrawing: {
    args: () => [
      {
        id: 'port',
        unit: 'V',
        against: 'absolute',
        points: [
          { pressure: 15e3, low: 0.13, nominal: 0.2, high: 0.27 },
          { pressure: 115e3, low: 4.7, nominal: 4.8, high: 4.9 },
        ],
        readings: [
          {
            pressure: 96e3,
            pressureUncertainty: 100,
            signal: 3.85,
            uncertainty: 0.01,
            outcome: 'conforms',
          },
        ],
        width: 400,
      },
    ],
    call: drawn('PressureDrawing'),
  },
  StepsDrawing: {
    args: () => [
      {
        id: 'steps',
        unit: 'V',
        columns: sweepColumns(sweep, 20),
        stretches: [{ start: 0, end: 0.3, mean: 0.4, low: 0.3, high: 0.5, outcome: 'marginal' }],
        width: 400,
      },
    ],
    call: drawn('StepsDrawing'),
  },
  TravelMapDrawing: {
    args: () => {
      const { strokes, findings, spots, coverage } = structuredClone(score);
      return [{ id: 'map', score: { strokes, findings, spots, coverage }, width: 400 }];
    },
    call: drawn('TravelMapDrawing'),
  },
  HookUpPicture: {
    args: () => {
      const terminals = { supply: 'A', ground: 'B', signal: 'C' };
      const bench = { source: 5, limiter: 1000, track: 5000 };
      return [{ id: 'bench', ...bench, instrument: 'digits', reading: 0.4, terminals }];
    },
    call: drawn('HookUpPicture'),
  },
  SettingPicture: {
    args: () => {
      const setting = chooseSetting(expectationCircuit(), { width: 0.01, travelTime: 2 });
      return [{ id: 'set', setting }];
    },
    call: drawn('SettingPicture'),
  },
  TerminalsPicture: {
    args: () => [{ id: 'pins', stop: 'closed' }],
    call: drawn('TerminalsPicture'),
  },
  PassesDrawing: {
    args: () => {
      const pass = { direction: 'opening', travel: [0, 1], low: [0.4, 3.6], high: [0.5, 3.7] };
      const findings = structuredClone(score.findings);
      return [{ id: 'passes', curve: expected().curve, passes: [pass], findings, width: 400 }];
    },
    call: drawn('PassesDrawing'),
  },
  tracePlot: { args: () => [760] },
  traceColumns: { args: () => [760] },
};

/** Every function of the entry that writes the drawings as text. */
export const svgRecipes: Recipes = {
  circuitSvg: { args: drawingsRecipes.CircuitDrawing!.args },
  curveSvg: { args: drawingsRecipes.CurveDrawing!.args },
  traceSvg: { args: drawingsRecipes.TraceDrawing!.args },
  travelMapSvg: { args: drawingsRecipes.TravelMapDrawing!.args },
  tracePlot: drawingsRecipes.tracePlot!,
  traceColumns: drawingsRecipes.traceColumns!,
};
