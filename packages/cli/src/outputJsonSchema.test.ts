import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv, type AnySchemaObject } from 'ajv';
import { afterAll, describe, expect, test } from 'vitest';
import { runTruesweep } from '../../../tests/runTruesweep.js';
import { outputJsonSchema } from './outputJsonSchema.js';

const job = ['--job', 'examples/outboard-sensor.job.json'];
const recording = 'examples/recordings/worn.csv';
const folder = mkdtempSync(join(tmpdir(), 'truesweep-output-'));
const report = join(folder, 'report.html');
afterAll(() => rmSync(folder, { recursive: true }));

const schema = new Ajv({ strict: true, allowUnionTypes: true });
schema.addSchema(outputJsonSchema() as AnySchemaObject, 'output');

async function printed(args: readonly string[], wanted: number): Promise<unknown> {
  const { code, out } = await runTruesweep([...args, '--json']);
  expect(code).toBe(wanted);
  return JSON.parse(out);
}

describe('what the commands print is what the published definition says', () => {
  test.each<[string, readonly string[], number?]>([
    ['terminals', ['terminals', 'A,B=5k/5k', 'A,C=1k/4.5k', 'B,C=4.5k/1k']],
    ['plan', ['plan', ...job]],
    ['expect', ['expect', ...job]],
    ['expect', ['expect', '--job', 'examples/coolant-sensor.job.json']],
    ['expect', ['expect', '--job', 'examples/lean-switch.job.json']],
    ['readings', ['readings', '--job', 'examples/coolant-sensor.job.json']],
    ['readings', ['readings', '--job', 'examples/manifold-sensor.job.json']],
    ['readings', ['readings', '--job', 'examples/lean-switch.job.json']],
    ['score', ['score', '--job', 'examples/crank-sensor.job.json']],
    ['score', ['score', ...job]],
    ['score', ['score', recording, 'examples/recordings/none.csv', ...job], 2],
    ['compare', ['compare', 'examples/recordings/sound.csv', recording, ...job]],
    [
      'set-closed',
      ['set-closed', '--reading', '0.7 V', '--wanted', '0.5 V', '--turned', '5', '--then', '0.6 V'],
    ],
    ['instruments', ['instruments', ...job]],
    ['report', ['report', recording, ...job, '--out', report]],
    ['reopen', ['reopen', report]],
    ['simulate', ['simulate', ...job, '--worn-at', '30 %', '--interval', '20 ms']],
  ])('%s', async (name, args, code = 0) => {
    const isRight = schema.compile({
      $ref: `output#/definitions/PrintedData/properties/${name}`,
    });
    const data = await printed(args, code);
    expect(isRight(data), JSON.stringify(isRight.errors, undefined, 1)).toBe(true);
    expect(isRight({ another: data })).toBe(false);
  });
});

test('a line of --json-lines is a scored file of that definition', async () => {
  const isRight = schema.compile({ $ref: 'output#/definitions/ScoredFile' });
  for (const file of [recording, 'examples/recordings/none.csv']) {
    const { out } = await runTruesweep(['score', file, ...job, '--json-lines']);
    expect(isRight(JSON.parse(out)), JSON.stringify(isRight.errors)).toBe(true);
  }
});
