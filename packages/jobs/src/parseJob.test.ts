import { defaultCriteria, InputError, operatingPoint } from '@truesweep/core';
import { describe, expect, test } from 'vitest';
import { jobCircuit } from './jobCircuit.js';
import { jobCriteria } from './jobCriteria.js';
import { jobExpectation } from './jobExpectation.js';
import { jobRecorder } from './jobRecorder.js';
import { jobTolerances } from './jobTolerances.js';
import { parseJob } from './parseJob.js';

const least = {
  version: 3,
  title: 'Spare sensor from the shelf',
  sensor: { kind: 'potentiometer', name: 'Outboard throttle sensor', track: 5000 },
  hookUp: { source: { volts: 5 }, limiter: 1000 },
  instrument: { name: 'Bench logger', inputResistance: 10e6 },
};

const whole = {
  ...least,
  sensor: {
    kind: 'potentiometer',
    name: 'Outboard throttle sensor',
    track: '5 kΩ',
    bottomResidual: '20R',
    topResidual: '20 ohm',
    contact: '50',
    closedPosition: '10 %',
    openPosition: 0.9,
    tolerances: { track: '±20 %', closedPosition: '2 %', openPosition: 0.02 },
  },
  hookUp: {
    source: { volts: '5 V', ohms: '0R1', currentLimit: '50 mA' },
    limiter: '1k',
    leads: { supply: '0.1', ground: 0.1, signal: '0,2 Ω' },
    pullDown: '100k',
    pullUp: { ohms: '1M', volts: '5V0' },
    tolerances: { source: '1 %', limiter: '±5 %', pullDown: '± 1 %' },
  },
  instrument: {
    name: 'Bench logger',
    inputResistance: '10M',
    resolution: '1 mV',
    range: { low: '-1 V', high: '6 V' },
    uncertainty: '5 mV',
  },
  criteria: { dropout: '20 ms', returns: 4, visibleSpan: '2 %' },
  recordings: [
    {
      file: 'sound.csv',
      text: { decimal: ',', timeColumn: 0, signalColumn: 'wiper' },
      stretches: [{ kind: 'harness-flexed', start: '14 s', end: 16.5 }],
    },
    {
      file: 'fast.csv',
      text: { sampleRate: '10 kHz', signalUnit: 'counts', voltsPerUnit: '5 mV' },
    },
  ],
  notes: 'Bench 2',
};

function refused(json: unknown): InputError {
  try {
    parseJob(json);
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('The job was taken.');
}

/** The job with the value at a path changed. */
function changed(path: string, value: unknown): unknown {
  const copy = structuredClone(whole) as unknown as Record<string, never>;
  const keys = path.split('.');
  const last = keys.pop()!;
  const group = keys.reduce((from, key) => from[key]!, copy) as Record<string, unknown>;
  group[last] = value;
  return copy;
}

const { kind: _, ...oldSensor } = least.sensor;

describe('a job of version 2', () => {
  test('is read into one of version 3: its sensor is a potentiometer', () => {
    expect(parseJob({ ...least, version: 2, sensor: oldSensor })).toEqual(least);
  });

  test('knows no kinds', () => {
    const later = refused({ ...least, version: 2 });
    expect(later).toMatchObject({ code: 'unknown-field', path: 'job.sensor.kind' });
  });
});

describe('a job of version 1', () => {
  const old = {
    ...least,
    sensor: oldSensor,
    version: 1,
    recordings: [{ file: 'a.csv', bytes: 9, decimal: ',', timeColumn: 0 }, { file: 'b.csv' }],
  };

  test('is read into one of version 3', () => {
    expect(parseJob(old)).toEqual({
      ...least,
      recordings: [
        { file: 'a.csv', bytes: 9, text: { decimal: ',', timeColumn: 0 } },
        { file: 'b.csv' },
      ],
    });
  });

  test('is refused with its own paths, and knows no later field', () => {
    const wrong = refused({ ...old, recordings: [{ file: 'a.csv', decimal: ';' }] });
    expect(wrong).toMatchObject({ code: 'not-one-of', path: 'job.recordings[0].decimal' });
    const later = refused({ ...old, recordings: [{ file: 'a.csv', text: {} }] });
    expect(later).toMatchObject({ code: 'unknown-field', path: 'job.recordings[0].text' });
  });
});

describe('a job that is right', () => {
  test('may name no more than what it must', () => {
    expect(parseJob(least)).toEqual(least);
  });

  test('has all its quantities in SI units', () => {
    expect(parseJob(whole)).toEqual({
      ...whole,
      recordings: [
        { ...whole.recordings[0], stretches: [{ kind: 'harness-flexed', start: 14, end: 16.5 }] },
        {
          file: 'fast.csv',
          text: { sampleRate: 10_000, signalUnit: 'counts', voltsPerUnit: 0.005 },
        },
      ],
      sensor: {
        kind: 'potentiometer',
        name: 'Outboard throttle sensor',
        track: 5000,
        bottomResidual: 20,
        topResidual: 20,
        contact: 50,
        closedPosition: 0.1,
        openPosition: 0.9,
        tolerances: { track: 0.2, closedPosition: 0.02, openPosition: 0.02 },
      },
      hookUp: {
        source: { volts: 5, ohms: 0.1, currentLimit: 0.05 },
        limiter: 1000,
        leads: { supply: 0.1, ground: 0.1, signal: 0.2 },
        pullDown: 100e3,
        pullUp: { ohms: 1e6, volts: 5 },
        tolerances: { source: 0.01, limiter: 0.05, pullDown: 0.01 },
      },
      instrument: {
        name: 'Bench logger',
        inputResistance: 10e6,
        resolution: 0.001,
        range: { low: -1, high: 6 },
        uncertainty: 0.005,
      },
      criteria: { dropout: 0.02, returns: 4, visibleSpan: 0.02 },
    });
  });

  test('read once more is the same job', () => {
    const job = parseJob(whole);
    expect(parseJob(JSON.parse(JSON.stringify(job)))).toEqual(job);
  });

  test('gives the core a circuit, tolerances, a recorder and criteria', () => {
    const job = parseJob(whole);
    const circuit = jobCircuit(job);
    expect(circuit.load).toEqual({
      pullDown: (100e3 * 10e6) / (100e3 + 10e6),
      pullUp: { ohms: 1e6, volts: 5 },
    });
    expect(Object.keys(circuit.sensor)).not.toContain('name');
    expect(operatingPoint(circuit, 0.5).output).toBeGreaterThan(1.9);
    expect(jobTolerances(job)).toEqual({
      source: 0.01,
      limiter: 0.05,
      pullDown: 0.01,
      track: 0.2,
      closedPosition: 0.02,
      openPosition: 0.02,
    });
    expect(jobRecorder(job)).toEqual({
      resolution: 0.001,
      range: { low: -1, high: 6 },
      uncertainty: 0.005,
    });
    expect(jobCriteria(job)).toEqual({
      ...defaultCriteria,
      dropout: 0.02,
      returns: 4,
      visibleSpan: 0.02,
    });
    expect(jobExpectation(job).windows.closed.low).toBeLessThan(
      jobExpectation(job).windows.closed.high,
    );
  });
});

test.each([
  [
    { closedNormal: '6 %', closedMarginal: '5.5 %' },
    'job.criteria.closedMarginal is 5.5 %; it must be at least closedNormal, 6 %.',
  ],
  [
    { closedMarginal: 0.02 },
    'job.criteria.closedMarginal is 2 %; it must be at least closedNormal, 3 % where it is not named.',
  ],
  [
    { closedNormal: 0.1 },
    'job.criteria.closedNormal is 10 %; it must be at most closedMarginal, 7 % where it is not named.',
  ],
])('limits that contradict each other are refused with both values: %j', (criteria, sentence) => {
  const act = () => parseJob({ ...whole, criteria });
  expect(act).toThrow(expect.objectContaining({ code: 'out-of-order' }));
  expect(act).toThrow(sentence.replaceAll(/(\d) %/g, '$1\u00a0%'));
});

test('limits that agree are taken, the default beside what is named included', () => {
  for (const criteria of [{ closedNormal: 0.07 }, { closedNormal: 0.1, closedMarginal: 0.1 }])
    expect(parseJob({ ...whole, criteria }).criteria).toEqual(criteria);
});

describe('a job that is wrong is refused', () => {
  test.each([
    ['hookUp.limiter', '4x7', 'unknown-unit', 'job.hookUp.limiter'],
    ['hookUp.limiter', '1,500', 'ambiguous-separator', 'job.hookUp.limiter'],
    ['hookUp.limiter', '5 V', 'wrong-unit', 'job.hookUp.limiter'],
    ['hookUp.limiter', -5, 'negative', 'job.hookUp.limiter'],
    ['hookUp.limiter', '-5', 'negative', 'job.hookUp.limiter'],
    ['hookUp.limiter', Number.NaN, 'out-of-range', 'job.hookUp.limiter'],
    ['hookUp.limiter', null, 'not-a-quantity', 'job.hookUp.limiter'],
    ['hookUp.limiter', '', 'empty', 'job.hookUp.limiter'],
    ['hookUp.source', 5, 'not-a-group', 'job.hookUp.source'],
    ['hookUp.source', {}, 'missing', 'job.hookUp.source.volts'],
    [
      'hookUp.source',
      { volts: 5, currentLimit: 0 },
      'out-of-range',
      'job.hookUp.source.currentLimit',
    ],
    ['hookUp.leads', [], 'not-a-group', 'job.hookUp.leads'],
    ['hookUp.pullDown', undefined, 'not-a-quantity', 'job.hookUp.pullDown'],
    ['sensor.track', 0, 'out-of-range', 'job.sensor.track'],
    ['sensor.closedPosition', 10, 'out-of-range', 'job.sensor.closedPosition'],
    ['sensor.closedPosition', '90 %', 'no-travel', 'job.sensor'],
    ['sensor.tolerances.track', '±', 'empty', 'job.sensor.tolerances.track'],
    ['sensor.name', ' ', 'not-a-text', 'job.sensor.name'],
    ['instrument.range', { low: 5, high: 5 }, 'no-range', 'job.instrument.range'],
    ['criteria.returns', 2.5, 'not-a-count', 'job.criteria.returns'],
    ['criteria.visibleSteps', '3', 'out-of-range', 'job.criteria.visibleSteps'],
    ['criteria', { closedMarginal: '2 %' }, 'out-of-order', 'job.criteria.closedMarginal'],
    ['criteria', { closedNormal: 0.1 }, 'out-of-order', 'job.criteria.closedNormal'],
    ['recordings', {}, 'not-a-list', 'job.recordings'],
    [
      'recordings',
      [{ file: 'a.csv', text: { decimal: ';' } }],
      'not-one-of',
      'job.recordings[0].text.decimal',
    ],
    [
      'recordings',
      [{ file: 'a.csv', text: { timeColumn: -1 } }],
      'not-a-column',
      'job.recordings[0].text.timeColumn',
    ],
    [
      'recordings',
      [{ file: 'a.csv', stretches: [{ kind: 'shaken', start: 1, end: 2 }] }],
      'not-one-of',
      'job.recordings[0].stretches[0].kind',
    ],
    [
      'recordings',
      [{ file: 'a.csv', stretches: [{ kind: 'warmed', start: 2, end: 2 }] }],
      'no-stretch',
      'job.recordings[0].stretches[0]',
    ],
    ['version', 0, 'not-a-version', 'job.version'],
    ['version', '1', 'not-a-version', 'job.version'],
  ])('%s: %j', (path, value, code, at) => {
    const error = refused(changed(path, value));
    expect(error.code).toBe(code);
    expect(error.path).toBe(at);
    expect(error.message).toMatch(/^job\b.*\.$/s);
    expect(error.message).not.toMatch(/undefined|\n/);
  });

  test.each([undefined, null, 5, 'job', [], [least]])('%j is no job', (json) => {
    expect(refused(json).code).toBe('not-a-group');
  });

  test('a later version, whatever else it holds', () => {
    const error = refused({ version: 4, sensors: [] });
    expect(error.code).toBe('newer-version');
    expect(error.message).toContain('version 4');
  });

  test('a mistyped field, with the nearest known one offered', () => {
    const { limiter, ...rest } = least.hookUp;
    const error = refused({ ...least, hookUp: { ...rest, limitr: limiter } });
    expect(error.code).toBe('unknown-field');
    expect(error.path).toBe('job.hookUp.limitr');
    expect(error.message).toContain('“limiter”');
  });

  test('a quantity of two lines, with all of its sentence', () => {
    const error = refused(changed('hookUp.limiter', '4\nk'));
    expect(error.message).toMatch(/^job\.hookUp\.limiter can't be read: .*“4\nk”.*\.$/s);
  });

  test('a field whose name has lines', () => {
    const error = refused({ ...least, 'a\nb': 1 });
    expect(error).toMatchObject({ code: 'unknown-field', path: 'job.a\nb' });
  });

  test('a field that is like none, with the known ones listed', () => {
    expect(refused({ ...least, colour: 'red' }).message).toContain('version, title, sensor');
  });

  test('a mistyped field of an inner group too, before the one that it leaves missing', () => {
    const { name, ...rest } = least.sensor;
    const error = refused({ ...least, sensor: { ...rest, nmae: name } });
    expect(error).toMatchObject({ code: 'unknown-field', path: 'job.sensor.nmae' });
  });

  test('a field whose name is longer than any line, shown by its beginning', () => {
    const error = refused({ ...least, [`limiter${'r'.repeat(20_000_000)}`]: 1 });
    expect(error.code).toBe('unknown-field');
    expect(error.path).toMatch(/^job\.limiterr+…$/);
    expect(error.message.length).toBeLessThan(250);
  });

  const entries = 200_000;
  const timeOf = (recording: (i: number) => unknown): number => {
    const recordings = Array.from({ length: entries }, (_, i) => recording(i));
    const begun = performance.now();
    try {
      parseJob({ ...least, recordings });
    } catch (error) {
      expect(error).toBeInstanceOf(InputError);
    }
    return performance.now() - begun;
  };

  test.each<[string, (i: number) => unknown]>([
    ['no groups', (i) => i],
    ['with wrong values', () => ({ file: 5 })],
    ['with unknown names', (i) => ({ file: 'a.csv', [`delimiter${i}`]: ',' })],
    ['with missing ones', () => ({})],
  ])('many wrong entries, %s, are refused sooner than as many right ones are read', (_, wrong) => {
    const right = timeOf((i) => ({ file: `${i}.csv` }));
    expect(timeOf(wrong)).toBeLessThan(right);
  });

  test('a tolerance of a pull-down that is not there', () => {
    const error = refused({
      ...least,
      hookUp: { ...least.hookUp, tolerances: { pullDown: 0.01 } },
    });
    expect(error.code).toBe('no-pull-down');
  });

  test('a recorder’s way to form samples goes on to the scorer', () => {
    const instrument = { ...least.instrument, sampling: 'interpolated', sampledEvery: '10 ms' };
    const recorder = jobRecorder(parseJob({ ...least, instrument }));
    expect(recorder).toMatchObject({ sampling: 'interpolated', sampledEvery: 0.01 });
  });

  test('and is not changed by being read', () => {
    const before = structuredClone(whole);
    parseJob(whole);
    expect(whole).toEqual(before);
  });
});

describe('what is missing is told all at once', () => {
  const told = (json: unknown): InputError => {
    try {
      parseJob(json);
    } catch (error) {
      if (error instanceof InputError) return error;
    }
    throw new Error('It was read.');
  };
  const inGroups = [
    'job.sensor.name',
    'job.sensor.track',
    'job.hookUp.source.volts',
    'job.hookUp.limiter',
    'job.instrument.name',
    'job.instrument.inputResistance',
  ];

  test('also what groups need that are missing themselves', () => {
    const error = told({ version: 2 });
    expect(error).toMatchObject({ code: 'missing', path: 'job.title' });
    for (const path of inGroups) expect(error.message).toContain(path);
    expect(error.message).not.toContain('closedPosition');
    for (const path of inGroups) expect(told({}).message).toContain(path);
  });

  test('in groups that are there', () => {
    const { sensor, hookUp, ...more } = least;
    const error = told({
      ...more,
      sensor: { kind: 'potentiometer', name: 'A' },
      hookUp: { ...hookUp, source: {} },
    });
    expect(error).toMatchObject({ code: 'missing', path: 'job.sensor.track' });
    expect(error.message).toBe(
      'job.sensor.track and job.hookUp.source.volts are missing; a job needs each of them.',
    );
    expect(sensor.track).toBe(5000);
  });

  test('beside a value that is wrong, which is told first', () => {
    const error = told({
      ...least,
      title: 5,
      sensor: { kind: 'potentiometer', name: 'A' },
      instrument: undefined,
    });
    expect(error).toMatchObject({ code: 'not-a-text', path: 'job.title' });
    expect(error.message).toMatch(
      /must be a text.* job\.sensor\.track, job\.instrument\.name and job\.instrument\.inputResistance are missing/,
    );
  });

  test('in what may be left out, where it is there', () => {
    const error = told({ ...least, recordings: [{}, { file: 'a.csv', sound: {} }] });
    expect(error.message).toMatch(
      /^job\.recordings\[0\]\.file, .*recordings\[1\]\.sound\.fullScale/,
    );
  });

  test('one alone as before', () => {
    expect(told({ ...least, sensor: { kind: 'potentiometer', name: 'A' } }).message).toBe(
      'job.sensor.track is missing; a sensor needs the field “track”.',
    );
  });
});
