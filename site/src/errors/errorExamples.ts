import {
  type Circuit,
  chooseBenchLoad,
  combineUncertainties,
  compareTracks,
  dropoutOf,
  expectation,
  findPins,
  formatResistanceCode,
  type InputErrorCode,
  liveSweep,
  monteCarlo,
  operatingPoint,
  parseMeasure,
  parsePressure,
  parseQuantity,
  partsFromReadings,
  refitChecks,
  riseTime,
  scoreSweep,
  simulateSweep,
  wholeCriteria,
} from '@truesweep/core';
import { explainOperatingPoint } from '@truesweep/explain';
import { checkRecording, parseJob, readJob, readJobRecording } from '@truesweep/jobs';
import { readDelimited, readSound } from '@truesweep/recordings';
import { readReport, storedSweep } from '@truesweep/report';
import {
  nothingToScoreSentence,
  oneInputSentence,
  outputIsInputSentence,
  tooLargeSentence,
} from '@truesweep/wording';

/** What provokes a refusal; or, where that takes files or the command line, what is said then. */
export type ErrorExample = (() => unknown) | { readonly path: string; readonly sentence: string };

const circuit: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: { pullDown: 1e6 },
};
const sensor = { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 };
const job = {
  version: 3,
  title: 'Spare sensor from the shelf',
  sensor,
  hookUp: { source: { volts: 5 }, limiter: 1000 },
  instrument: { name: 'Bench logger', inputResistance: 1e7 },
};
const ofSensor = (more: object) => () => parseJob({ ...job, sensor: { ...sensor, ...more } });
const ofRecording = (more: object) => () =>
  parseJob({ ...job, recordings: [{ file: 'port.csv', ...more }] });
const score = (time: readonly number[], signal: readonly number[] = time) =>
  scoreSweep({ time, signal }, expectation(circuit));
const ohms = (text: string) => () => parseQuantity(text, 'Ω', 'limiter');
const read =
  (text: string, options = {}) =>
  () =>
    readDelimited(text, { name: 'port.csv', ...options });
const bytes = (text: string) => new TextEncoder().encode(text);

/** A sound file's head, with what is said of its samples. */
function sound(
  tag: number,
  format: 'fmt ' | 'LIST' = 'fmt ',
  data: 'data' | 'LIST' = 'data',
): Uint8Array {
  const view = new DataView(new ArrayBuffer(48));
  for (const [i, byte] of bytes(`RIFF    WAVE${format}`).entries()) view.setUint8(i, byte);
  view.setUint32(16, 16, true);
  view.setUint16(20, tag, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, 8000, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  for (const [i, byte] of bytes(data).entries()) view.setUint8(36 + i, byte);
  view.setUint32(40, 4, true);
  return new Uint8Array(view.buffer);
}
const wav = { name: 'port.wav', fullScale: 1, attenuation: 1, microphoneBias: 'off' } as const;
const hear =
  (...[tag, format, data]: Parameters<typeof sound>) =>
  () =>
    readSound(sound(tag, format, data), wav);
const named = (path: string, sentence: string) => ({ path, sentence });

/** Of every code one refusal, so that the list of codes is whole. */
export const errorExamples: Readonly<Record<InputErrorCode, ErrorExample>> = {
  unreadable: () =>
    parseJob({
      ...job,
      get notes(): string {
        throw new Error('the file is closed');
      },
    }),
  missing: () => operatingPoint({ source: { volts: 5 } } as never, 0.5),
  'not-finite': () => operatingPoint(circuit, Number.NaN),
  negative: () => operatingPoint({ ...circuit, limiter: -5 }, 0.5),
  zero: () => riseTime(0),
  'out-of-range': () => operatingPoint(circuit, 1.5),
  'out-of-order': () => wholeCriteria({ closedNormal: 0.1 }),
  'not-whole': () => wholeCriteria({ returns: 2.5 }),
  'not-boolean': () => refitChecks({ low: 0.4, nominal: 0.5, high: 0.6 }, 5, 'yes' as never),
  'unknown-choice': () => wholeCriteria({ endAcceptance: 'strict' as never }),
  'not-one-of': ofRecording({ text: { decimal: ';' } }),
  'not-a-number': read('t (s),U (V)\n0,0.5\n1,high\n2,0.7\n'),
  'not-a-count': ofRecording({ bytes: 1.5 }),
  'not-a-text': ofSensor({ name: '' }),
  'not-a-name': () => findPins(['A', 'A', 'C'], [], { fraction: 0.01, ohms: 1 }),
  'not-a-function': () => monteCarlo([], 'sum' as never, 100, 1),
  'not-bytes': () => readSound('RIFF' as never, wav),
  'too-much-work': () =>
    simulateSweep({
      circuit,
      movements: [{ kind: 'hold', seconds: 3600 }],
      recorder: { interval: 1e-6 },
      seed: 1,
    }),
  'not-a-group': () => parseJob([job]),
  'not-a-list': () => scoreSweep({ time: 1, signal: 2 } as never, expectation(circuit)),
  'unknown-field': () => operatingPoint({ ...circuit, sensor: { trak: 5000 } as never }, 0.5),
  'unknown-name': () =>
    combineUncertainties(
      [{ name: 'track', sensitivity: 1, uncertainty: 1 }],
      [['track', 'limiter', 0.5]],
    ),
  unexpected: () => {
    const live = liveSweep(expectation(circuit));
    live.feed([0, 1], [1, 2]);
    live.feed([2, 3], [1, 2], [5, 5]);
  },
  duplicate: () => {
    const once = { between: ['A', 'B'], at: 'closed', ohms: 5000 } as const;
    findPins(['A', 'B', 'C'], [once, once], { fraction: 0.01, ohms: 1 });
  },
  'field-twice': () => readJob('{ "version": 3, "version": 1 }', 'shelf.json'),
  'not-a-version': () => parseJob({ ...job, version: 'two' }),
  'newer-version': () => parseJob({ ...job, version: 9 }),
  'not-a-hash': ofRecording({ sha256: 'abc' }),
  'not-a-column': ofRecording({ text: { timeColumn: 1.5 } }),
  empty: ohms(''),
  'not-a-quantity': ohms('about 5'),
  'ambiguous-fraction': ofSensor({ closedPosition: '0.1' }),
  'ambiguous-separator': ohms('1,500'),
  'thousands-separator': ohms('1,500.5'),
  'misplaced-space': ohms('15 00'),
  'ambiguous-exponent': ohms('4E7'),
  'wrong-unit': ohms('5 V'),
  'unknown-unit': ohms('4x7'),
  'no-unit': () => parseMeasure('20', 'temperature'),
  'gauge-or-absolute': () => parsePressure('67 kPa'),
  'too-large': ohms('1e999'),
  'too-small': ohms('1e-999'),
  'not-exact': () => formatResistanceCode(4700.001),
  'not-a-permutation': () =>
    operatingPoint(
      { ...circuit, connection: { supply: 'top', ground: 'top', signal: 'wiper' } },
      0.5,
    ),
  'same-terminal': () =>
    partsFromReadings(
      circuit,
      ['track'],
      [{ kind: 'ohms', between: ['top', 'top'], position: 0, ohms: 5000, uncertainty: 10 }],
    ),
  'no-output': () =>
    expectation({
      ...circuit,
      sensor: { track: 5000, contact: Number.POSITIVE_INFINITY },
      load: {},
    }),
  'no-span': () =>
    scoreSweep({ time: [0, 1], signal: [1, 2] }, expectation({ ...circuit, source: { volts: 0 } })),
  'no-travel': ofSensor({ closedPosition: '50 %', openPosition: '50 %' }),
  'no-range': () =>
    parseJob({ ...job, instrument: { ...job.instrument, range: { low: 5, high: 5 } } }),
  'no-stretch': ofRecording({ stretches: [{ kind: 'warmed', start: 2, end: 1 }] }),
  'no-rest-level': () =>
    dropoutOf(
      { ...circuit, load: {} },
      {
        kind: 'control-unit',
        name: 'unit',
        interval: 0.01,
        limits: { low: 0.2, high: 4.8 },
        debounce: 0.1,
      },
      0.5,
      0.01,
    ),
  'no-pull-down': () =>
    parseJob({ ...job, hookUp: { ...job.hookUp, tolerances: { pullDown: '1 %' } } }),
  'has-pull-up': () =>
    chooseBenchLoad(
      { ...circuit, load: { pullUp: { ohms: 1e4, volts: 5 } } },
      { travels: [0.5], dirt: 1e4, visible: 0.1 },
    ),
  'no-working': () => explainOperatingPoint({ ...circuit, load: { pullDown: 0 } }, 0.5),
  'impossible-setting': () =>
    dropoutOf(
      circuit,
      {
        kind: 'logger',
        name: 'logger',
        inputOhms: 1e7,
        range: { low: 5, high: 5 },
        bits: 12,
        interval: 0.01,
      },
      0.5,
      0.01,
    ),
  'not-a-potentiometer': () => parseJob({ ...job, sensor: { kind: 'hall' } }),
  'length-mismatch': () => score([0, 1, 2], [1, 2]),
  'too-few-samples': () => score([0]),
  'no-duration': () => score([1, 1]),
  'time-backwards': () =>
    compareTracks({ time: [1, 0], first: [1, 2], second: [1, 2], travel: [0, 1] }, { limit: 0.1 }),
  ended: () => {
    const live = liveSweep(expectation(circuit));
    live.feed([0, 1], [1, 2]);
    live.end();
    live.feed([2, 3], [1, 2]);
  },
  'not-a-reading': named(
    'A=5k',
    '"A=5k" is no reading; write two terminals, then the resistance with the throttle closed and open, such as A,B=5k/5k.',
  ),
  'nothing-to-score': named('shelf.json', nothingToScoreSentence),
  'missing-file': named('port.csv', 'There is no such file; check its name and folder.'),
  'not-a-file': named('recordings', 'This is a folder; name a file in it.'),
  'unreadable-file': named('port.csv', 'The file may not be read; ask its owner for the right to.'),
  'file-too-large': named('port.csv', tooLargeSentence('1 GB', '2 GB')),
  'file-exists': named(
    'shelf.json',
    'Nothing was written. There is a file of this name already; choose another name, or ask to overwrite it.',
  ),
  'cannot-write': named('shelf.json', 'Nothing was written. This is a link; name the file itself.'),
  'one-input': named('-', oneInputSentence),
  'output-is-input': named('port.csv', outputIsInputSentence('port.csv')),
  'not-utf-8': named('shelf.json', 'The file is no text in UTF-8; save the job as such.'),
  'not-json': () => readJob('{ "version": 3, }', 'shelf.json'),
  'no-report': () => readReport('<p>Hello', 'report.html'),
  'not-in-report': named(
    'port.csv',
    'The report report.html was made from other bytes than these (their SHA-256 differs); name the recording as it was when the report was written.',
  ),
  'broken-samples': () => storedSweep({ samples: { time: 'AAA', signal: 'AAA' } }),
  'recording-changed': () =>
    checkRecording({ file: 'port.csv', bytes: 3 }, { bytes: 4, sha256: 'ab' }),
  'empty-file': read(''),
  'binary-file': read('t (s),U (V)\n0,0.5\n\u0001,0.6\n'),
  'no-numbers': read('nothing here\n'),
  'one-column': read('1\n2\n3\n'),
  'one-sample': read('t (s),U (V)\n0,0.5\n'),
  'not-a-sound': () => readSound(bytes('t (s),U (V)\n0,0.5\n'), wav),
  'no-format': hear(1, 'LIST'),
  'no-samples': hear(1, 'fmt ', 'LIST'),
  'unknown-coding': hear(7),
  'missing-field': read('t (s),U (V)\n0,0.5\n1\n2,0.7\n'),
  'extra-field': read('t (s),U (V)\n0,0.5\n1,0.6,0.7\n2,0.7\n'),
  'endless-line': read(`t (s),U (V)\n0,0.5\n${'1'.repeat(3e6)}`),
  'heading-mismatch': read('t (s),U (V)\n0,0.5,1\n1,0.6,1\n'),
  'no-such-column': read('t (s),U (V)\n0,0.5\n1,0.6\n', { signalColumn: 'supply' }),
  'ambiguous-column': read('t (s),U (V),U (V)\n0,0.5,1\n1,0.6,1\n', { signalColumn: 'U' }),
  'same-column': read('t (s),U (V)\n0,0.5\n1,0.6\n', { timeColumn: 0, signalColumn: 0 }),
  'no-signal-column': read('t (s),n\n0,0.5\n1,0.6\n', { timeColumn: 0 }),
  'no-time-column': read('a (V),b (V)\n5,0.5\n3,0.6\n'),
  'no-scale': read('t (s),U (counts)\n0,5\n1,6\n'),
  'needless-scale': read('t (s),U (mV)\n0,500\n1,600\n', { voltsPerUnit: 0.005 }),
  'no-coupling': () =>
    readJobRecording(
      sound(1),
      { file: 'port.wav', sound: { fullScale: 1, attenuation: 1, microphoneBias: 'off' } },
      parseJob(job),
    ),
  'no-such-channel': () => readSound(sound(1), { ...wav, signalChannel: 3 }),
  'two-times': read('0,0.5\n1,0.6\n', { sampleRate: 10, timeColumn: 0 }),
  'mixed-times': read('t,U (V)\n10:00:00,0.5\n2026-05-04T10:00:01,0.6\n10:00:02,0.7\n'),
  'ambiguous-comma': read('0,5\n1,6\n2,7\n'),
  'ambiguous-point': read('t (s);U (mV)\n0;1.234\n1;2.345\n'),
  'unclear-date': read('time;U\n4.5.2026 10:00:00;1.5\n4.5.2026 10:00:01;1.6\n'),
  'clock-set-back': read('time,V\n02:59:59.9,1.5\n02:00:00,1.6\n'),
};
