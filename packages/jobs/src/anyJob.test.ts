import { readFileSync } from 'node:fs';
import { Ajv2020, type AnySchemaObject } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { expectReadings } from './expectReadings.js';
import { jobJsonSchema } from './jobJsonSchema.js';
import { judgeReadings } from './judgeReadings.js';
import { parseAnyJob } from './parseAnyJob.js';
import { parseJob } from './parseJob.js';
import { readAnyJob } from './readAnyJob.js';
import type { PumpDown, ReadingsJob } from './readingsJob.js';
import { readPumpDown } from './readPumpDown.js';
import { writeAnyJob } from './writeAnyJob.js';

const example = (name: string) =>
  JSON.parse(readFileSync(`examples/${name}.job.json`, 'utf8')) as Record<string, unknown>;
const names = ['coolant-sensor', 'manifold-sensor', 'lean-switch', 'crank-sensor'] as const;
const read = (name: (typeof names)[number]) => parseAnyJob(example(name)) as ReadingsJob;
const isJob = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(
  jobJsonSchema() as AnySchemaObject,
);

const codeOf = (call: () => unknown): string => {
  try {
    call();
  } catch (error) {
    return `${(error as { code: string }).code} at ${(error as { path: string }).path}`;
  }
  return 'taken';
};

describe('jobs of single readings', () => {
  test.each(names)('%s: what is written is read again', (name) => {
    const job = read(name);
    expect(readAnyJob(writeAnyJob(job))).toEqual(job);
    expect(isJob(example(name)), JSON.stringify(isJob.errors)).toBe(true);
    expect(isJob(JSON.parse(writeAnyJob(job)))).toBe(true);
  });

  test.each([
    ['coolant-sensor', 'pass', ['refit']],
    ['manifold-sensor', 'pass', ['refit']],
    ['lean-switch', 'fail', undefined],
    ['crank-sensor', 'pass', []],
  ] as const)('%s: %s', (name, verdict, advice) => {
    const { judgement } = judgeReadings(read(name));
    expect(judgement.verdict).toBe(verdict);
    if (advice) expect(judgement.advice).toEqual(advice);
  });

  test('texts are read into SI units and °C', () => {
    const job = read('manifold-sensor');
    if (job.sensor.kind !== 'pressure') throw new Error('another kind');
    expect(job.sensor.error).toBe(2000);
    expect(job.readings?.[1]).toMatchObject({ port: { reference: 'gauge' }, volts: 2.53 });
    const coolant = read('coolant-sensor');
    expect(coolant.readings?.[1]).toMatchObject({ temperature: 21.5, ohms: 2410 });
  });

  test('each refusal has its path', () => {
    const coolant = example('coolant-sensor');
    const manifold = example('manifold-sensor');
    const changed = (job: Record<string, unknown>, part: string, more: object) => () =>
      parseAnyJob({ ...job, [part]: { ...(job[part] as object), ...more } });
    expect(codeOf(changed(coolant, 'sensor', { law: { kind: 'spline' } }))).toBe(
      'not-one-of at job.sensor.law.kind',
    );
    expect(codeOf(changed(coolant, 'sensor', { colour: 'green' }))).toBe(
      'unknown-field at job.sensor.colour',
    );
    expect(codeOf(changed(coolant, 'sensor', { law: { kind: 'b', b: 3640 } }))).toMatch(
      /^missing at job\.sensor\.law/,
    );
    expect(codeOf(changed(coolant, 'air', { pressure: '1009' }))).toBe(
      'no-unit at job.air.pressure',
    );
    expect(
      codeOf(() =>
        parseAnyJob({
          ...manifold,
          readings: [{ port: '67 kPa', volts: 1, supply: 5, uncertainty: 0 }],
        }),
      ),
    ).toBe('gauge-or-absolute at job.readings[0].port');
    expect(codeOf(changed(coolant, 'sensor', { kind: 'hall' }))).toBe(
      'not-a-potentiometer at job.sensor.kind',
    );
    expect(codeOf(() => parseAnyJob({ ...coolant, version: 2 }))).toBe(
      'not-a-version at job.version',
    );
    expect(codeOf(() => parseAnyJob({ ...coolant, version: 4 }))).toBe(
      'newer-version at job.version',
    );
    expect(codeOf(() => parseJob(coolant))).toBe('not-a-potentiometer at job.sensor.kind');
    expect(isJob({ ...coolant, sensor: { kind: 'hall' } })).toBe(false);
  });

  test('a thermometer’s uncertainty, a bath’s temperature and the air for boiling water must be told', () => {
    const judged =
      (reading: object, more: object = {}) =>
      () => {
        const { air: _, ...coolant } = example('coolant-sensor');
        return judgeReadings(
          parseAnyJob({
            ...coolant,
            ...more,
            readings: [{ ohms: 2500, uncertainty: 5, ...reading }],
          }) as ReadingsJob,
        );
      };
    expect(codeOf(judged({ temperature: 20 }))).toBe(
      'missing at job.readings[0].temperatureUncertainty',
    );
    expect(codeOf(judged({}))).toBe('missing at job.readings[0].temperature');
    expect(codeOf(judged({ bath: 'boiling' }))).toBe('missing at job.air');
    expect(codeOf(judged({ bath: 'ice', temperature: 0 }))).toBe(
      'unexpected at job.readings[0].temperature',
    );
    expect(codeOf(judged({ bath: 'ice' }))).toBe('taken');
    const none = example('crank-sensor');
    expect(codeOf(() => judgeReadings(parseAnyJob({ ...none, readings: [] }) as ReadingsJob))).toBe(
      'nothing-to-score at job.readings',
    );
  });

  test('boiling water is as warm as the air has it', () => {
    const air = { kind: 'altitude', altitude: '1500 m' };
    const job = parseAnyJob({ ...example('coolant-sensor'), air }) as ReadingsJob;
    const { readings } = judgeReadings(job);
    expect(readings[2]).toMatchObject({ temperature: expect.closeTo(94.98, 1) });
    // ±3 kPa of weather, U = 2u, are ±0.96 K in that thinner air, where a kilopascal is 0.32 K.
    expect(readings[2]).toMatchObject({ temperatureUncertainty: expect.closeTo(0.48, 2) });
  });

  test('a gauge of absolute pressures is taken against the air', () => {
    const absolute = {
      ...example('manifold-sensor'),
      readings: [
        {
          port: '67.03 kPa absolute',
          portUncertainty: 100,
          volts: 2.53,
          supply: 5.02,
          uncertainty: 0.004,
        },
      ],
    };
    const { readings } = judgeReadings(parseAnyJob(absolute) as ReadingsJob);
    expect(readings[0]).toMatchObject({ readAs: 'absolute' });
    const untold = {
      ...absolute,
      readings: [{ port: '67 kPa absolute', volts: 2.5, supply: 5, uncertainty: 0 }],
    };
    expect(codeOf(() => judgeReadings(parseAnyJob(untold) as ReadingsJob))).toBe(
      'missing at job.readings[0].portUncertainty',
    );
    expect(readings[0]).toMatchObject({ gauge: expect.closeTo(67_030 - 100_900, 6) });
  });

  test('a recorded pump-down is read step by step', () => {
    const time = Float64Array.from({ length: 900 }, (_, i) => i / 50);
    const level = (t: number) => (t < 6 ? 4.03 : t < 12 ? 2.53 : 1.31);
    const signal = time.map((t, i) => level(t) + 0.001 * (i % 3));
    const told: PumpDown = {
      file: 'pump.csv',
      ports: [
        'open',
        ...[-33_864, -60_955].map((pascals) => ({ pascals, reference: 'gauge' as const })),
      ],
      portUncertainty: 400,
      supply: 5.02,
      uncertainty: 0.004,
    };
    const { readings, steps } = readPumpDown({ time, signal }, told);
    expect(steps).toHaveLength(3);
    const job = { ...read('manifold-sensor'), readings: [] } as ReadingsJob;
    expect(judgeReadings(job, readings).judgement.verdict).toBe('pass');
    const { supply: _, ...without } = told;
    expect(codeOf(() => readPumpDown({ time, signal }, without))).toBe(
      'missing at pump.csv supply',
    );
    expect(codeOf(() => readPumpDown({ time, signal }, { ...told, ports: ['open'] }))).toBe(
      'length-mismatch at pump.csv',
    );
    const supplied = readPumpDown({ time, signal, supply: time.map(() => 4.98) }, without);
    expect(supplied.readings[0]?.supply).toBeCloseTo(4.98, 9);
  });

  test('what must be read, by kind', () => {
    const coolant = expectReadings(read('coolant-sensor'));
    expect(coolant.kind === 'thermistor' && coolant.rows[0]).toMatchObject({ temperature: 0 });
    const manifold = expectReadings(read('manifold-sensor'));
    if (manifold.kind !== 'pressure') throw new Error('another kind');
    expect(manifold.rows[0]!.volts.nominal).toBeCloseTo(5 * (8.8e-6 * 100_900 - 0.085), 9);
    expect(expectReadings(read('crank-sensor'))).toMatchObject({ kind: 'winding' });
    expect(expectReadings(read('lean-switch'))).toMatchObject({ kind: 'two-state' });
  });

  test('values of two states are in the unit that the sensor is read in', () => {
    const lean = example('lean-switch');
    const read =
      (value: unknown, reads = 'volts') =>
      () =>
        parseAnyJob({
          ...lean,
          sensor: { ...(lean.sensor as object), reads },
          readings: [{ state: 'rest', value, uncertainty: 0.01 }],
        });
    expect(codeOf(read('1 V'))).toBe('taken');
    expect(codeOf(read('980 mV'))).toBe('taken');
    expect(codeOf(read('1 Ω'))).toBe('wrong-unit at job.readings[0].value');
    expect(codeOf(read('open'))).toMatch(/at job\.readings\[0\]\.value$/);
    expect(codeOf(read('0.4 Ω', 'ohms'))).toBe('taken');
    expect(codeOf(read('OL', 'ohms'))).toBe('taken');
    expect(codeOf(read('1 V', 'ohms'))).toBe('wrong-unit at job.readings[0].value');
  });

  test('a break is written and read again', () => {
    const job = parseAnyJob({
      ...example('crank-sensor'),
      readings: [{ ohms: 'OL', uncertainty: 3, temperature: 20, temperatureUncertainty: 1 }],
    });
    expect(readAnyJob(writeAnyJob(job))).toEqual(job);
    expect(judgeReadings(job as ReadingsJob).judgement.verdict).toBe('fail');
  });
});
