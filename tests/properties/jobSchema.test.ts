import { readFileSync } from 'node:fs';
import {
  InputError,
  type InputErrorCode,
  parseQuantity,
  type QuantityUnit,
  quantityPattern,
} from '@truesweep/core';
import { parseJob } from '@truesweep/jobs';
import { Ajv2020, type AnySchemaObject } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jobJsonSchema } from '../../packages/jobs/src/jobJsonSchema.js';
import { soak } from '../counts.js';

const example = JSON.parse(readFileSync('examples/outboard-sensor.job.json', 'utf8'));
const isJob = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(
  jobJsonSchema() as AnySchemaObject,
);

/** What JSON Schema can't tell: the range of a quantity that is text, and fields that don't agree. */
const beyondSchema: readonly InputErrorCode[] = [
  'negative',
  'out-of-range',
  'too-large',
  'too-small',
  'no-travel',
  'no-pull-down',
  'no-range',
  'no-stretch',
];

const units: readonly QuantityUnit[] = ['Ω', 'V', 'A', 'W', 's', 'F', 'Hz', '%', '°'];
const pieces = [
  ...['0', '1', '4', '7', '10', '100', '000', '1500', '0.1', '.5', ',', '.', ' ', ' ', '\t', '\n'],
  ...['+', '-', '−', '±', 'e', 'E', 'e3', 'E7', 'e-2', 'k', 'K', 'M', 'm', 'µ', 'μ', 'u', 'p', 'G'],
  ...[
    'Ω',
    'Ω',
    'R',
    'r',
    'V',
    'v',
    'A',
    'W',
    's',
    'F',
    'Hz',
    '%',
    '°',
    'ohm',
    'OHMS',
    'kilo',
    'Volts',
  ],
  ...[
    'percent',
    'deg',
    'sec',
    'farad',
    'banana',
    '\u212ailohm',
    '/',
    '5 %',
    '4k7',
    '1 500',
    '1,500',
    '4E7',
  ],
];
const written = fc
  .array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 5 })
  .map((parts) => parts.join(''));

/** A quantity with what is put before, within and after it, so that right ones are frequent. */
const nearly = fc
  .tuple(
    fc.constantFrom('', '', '', ' ', '+', '-', '−'),
    fc.constantFrom(
      '5',
      '0.1',
      '4,7',
      '1 500',
      '12 345.5',
      '.5',
      '1,500',
      '1.500',
      '1e3',
      '2E3',
      '4k7',
      '3V3',
      '4R7',
    ),
    fc.constantFrom('', '', ' ', '  '),
    fc.constantFrom('', '', '', 'k', 'm', 'µ', 'M', 'kilo', 'meg', 'x'),
    fc.constantFrom('', ' '),
    fc.constantFrom(
      '',
      'Ω',
      'ohms',
      'V',
      'volt',
      'A',
      'W',
      's',
      'sec',
      'F',
      'Hz',
      '%',
      'percent',
      '°',
    ),
    fc.constantFrom('', '', ' ', '\n'),
  )
  .map((parts) => parts.join(''));

const read = (text: string, unit: QuantityUnit) => {
  try {
    parseQuantity(text, unit);
    return true;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.code === 'too-large' || error.code === 'too-small';
  }
};

describe('quantityPattern fits what parseQuantity reads, and nothing else', () => {
  test.each(units)('in %s', (unit) => {
    const pattern = new RegExp(quantityPattern(unit), 'u');
    fc.assert(
      fc.property(fc.oneof(written, nearly), (text) => {
        expect(pattern.test(text)).toBe(read(text, unit));
      }),
      { numRuns: 3000 * soak },
    );
  });
});

const refusalOf = (json: unknown): InputErrorCode | undefined => {
  try {
    parseJob(json);
    return undefined;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.code;
  }
};

const value = fc.oneof(
  { weight: 3, arbitrary: fc.oneof(written, nearly) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(0, 0.5, 1, 2, 1e-13, 1e-12, 1e-31, 1e31, 1e19, -1, -2e6, 4700, 1.5),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom(
      null,
      true,
      '',
      ' ',
      [],
      {},
      [1],
      'ac',
      'picked',
      'simple',
      ',',
      'V',
    ),
  },
);

const whole = {
  ...example,
  sensor: {
    ...example.sensor,
    bottomResidual: 20,
    contact: 50,
    tolerances: { track: '±20 %', closedPosition: '2 %' },
  },
  hookUp: {
    ...example.hookUp,
    source: { volts: '5 V', ohms: 0.1, currentLimit: '50 mA' },
    leads: { supply: 0.1 },
    pullDown: '100k',
    tolerances: { source: '1 %', pullDown: 0.01 },
  },
  instrument: {
    ...example.instrument,
    resolution: '1 mV',
    range: { low: '-1 V', high: 6 },
    coupling: 'dc',
    sampledEvery: '1 ms',
  },
  criteria: {
    visibleSpan: '2 %',
    dropout: '20 ms',
    looks: 2,
    visibleSteps: 4,
    endAcceptance: 'guarded',
    returns: 3,
  },
  recordings: [
    {
      file: 'a.csv',
      bytes: 100,
      stretches: [{ kind: 'sweep', start: '1 s', end: 3 }],
      text: { delimiter: ',', timeColumn: 0, voltsPerUnit: '5 mV', sampleRate: '1 kHz' },
    },
    { file: 'b.wav', sound: { fullScale: '1 V', attenuation: 1, microphoneBias: 'off' } },
  ],
};

type Path = readonly (string | number)[];
const placesOf = (json: unknown, path: Path = []): readonly Path[] =>
  typeof json !== 'object' || json === null
    ? [path]
    : [path, ...Object.entries(json).flatMap(([key, part]) => placesOf(part, [...path, key]))];
const places = placesOf(whole).filter((path) => path.length > 0 && path[0] !== 'version');

function changed(path: Path, to: unknown): unknown {
  const copy = structuredClone(whole);
  const key = path.at(-1)!;
  const parent = path.slice(0, -1).reduce((at, step) => at[step], copy);
  if (to === undefined) delete parent[key];
  else parent[key] = to;
  return copy;
}

describe('the published definition and the program agree', () => {
  test('on the whole job', () => {
    expect(isJob(whole), JSON.stringify(isJob.errors)).toBe(true);
    expect(refusalOf(whole)).toBeUndefined();
  });

  test('on every field with any value, or none', () => {
    fc.assert(
      fc.property(fc.constantFrom(...places), fc.option(value), (path, given) => {
        const json = JSON.parse(JSON.stringify(changed(path, given ?? undefined)));
        const code = refusalOf(json);
        if (code !== undefined && beyondSchema.includes(code) && typeof given !== 'number') return;
        if (code !== undefined && /^no-/.test(code)) return;
        expect(isJob(json), `${code}: ${JSON.stringify(isJob.errors?.[0])}`).toBe(
          code === undefined,
        );
      }),
      { numRuns: 20_000 * soak },
    );
  });
});

const fractionPlaces: readonly Path[] = [
  ['sensor', 'closedPosition'],
  ['sensor', 'tolerances', 'track'],
  ['hookUp', 'tolerances', 'source'],
  ['criteria', 'visibleSpan'],
  ['criteria', 'closedNormal'],
];
const valueAt = (job: unknown, path: Path) =>
  path.reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], job);

describe('a fraction has one meaning, however it is written', () => {
  test('as a number, in percent, with a comma; a text without % is refused with both readings', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...fractionPlaces),
        fc.integer({ min: 1, max: 69 }),
        fc.constantFrom('', ' ', '  '),
        (path, tenths, space) => {
          const fraction = tenths / 1000;
          const percent = (sign: string) =>
            `${(tenths / 10).toFixed(1).replace('.', sign)}${space}%`;
          for (const given of [fraction, percent('.'), percent(',')]) {
            expect(valueAt(parseJob(changed(path, given)), path)).toBeCloseTo(fraction, 15);
          }
          for (const given of [
            String(fraction),
            String(fraction).replace('.', ','),
            ` ${fraction} `,
          ]) {
            expect(refusalOf(changed(path, given))).toMatch(/^ambiguous-/);
          }
        },
      ),
      { numRuns: 500 * soak },
    );
  });

  test('the refusal names both readings', () => {
    const message = () => parseJob(changed(['sensor', 'closedPosition'], '0.1'));
    expect(message).toThrow(/“?"0\.1"”?, which can be read as 0\.1\s% or 10\s%; write/);
    expect(() => parseJob(changed(['sensor', 'closedPosition'], true))).toThrow(
      /must be a fraction such as 0\.05, or a text such as "5 %"\.$/,
    );
  });
});
