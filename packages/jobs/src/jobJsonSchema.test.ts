import { readFileSync } from 'node:fs';
import { Ajv2020, type AnySchemaObject } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { jobJsonSchema } from './jobJsonSchema.js';
import { parseJob } from './parseJob.js';

const example = JSON.parse(readFileSync('examples/outboard-sensor.job.json', 'utf8'));
const isJob = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(
  jobJsonSchema() as AnySchemaObject,
);

/** The example with one part changed. */
const changed = (part: string, change: object) => ({
  ...example,
  [part]: { ...example[part], ...change },
});

describe('a validator of JSON Schema and the program agree', () => {
  test.each([
    ['the example', example],
    ['numbers for texts', changed('hookUp', { limiter: 470 })],
    ['a hash', { ...example, recordings: [{ file: 'a.csv', sha256: 'a'.repeat(64) }] }],
    ['how a text is read', { ...example, recordings: [{ file: 'a', text: { sampleRate: 50 } }] }],
  ])('that this is a job: %s', (_, json) => {
    expect(isJob(json), JSON.stringify(isJob.errors)).toBe(true);
    expect(() => parseJob(json)).not.toThrow();
  });

  test.each([
    ['nothing', {}],
    ['an unknown field', { ...example, colour: 'red' }],
    ['a field in a group', changed('sensor', { colour: 'red' })],
    ['a missing field', changed('instrument', { name: undefined })],
    ['a negative resistance', changed('hookUp', { limiter: -1 })],
    ['an empty name', changed('sensor', { name: '' })],
    ['another version', { ...example, version: 4 }],
    ['no list', { ...example, recordings: {} }],
    ['no hash', { ...example, recordings: [{ file: 'a.csv', sha256: 'abc' }] }],
    ['no delimiter', { ...example, recordings: [{ file: 'a.csv', text: { delimiter: ':' } }] }],
    ['no column', { ...example, recordings: [{ file: 'a.csv', text: { timeColumn: 1.5 } }] }],
  ])('that this is none: %s', (_, json) => {
    expect(isJob(JSON.parse(JSON.stringify(json)))).toBe(false);
    expect(() => parseJob(json)).toThrow();
  });
});
