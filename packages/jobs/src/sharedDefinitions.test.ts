import { Ajv2020, type AnySchemaObject } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { jobJsonSchema } from './jobJsonSchema.js';
import { sharedDefinitions } from './sharedDefinitions.js';

const ohms = {
  description: 'A resistance, in ohms or as a text with its unit, such as people write it.',
  anyOf: [
    { type: 'number', minimum: 0 },
    { type: 'string', pattern: '^[0-9.]+ *(k|M)?(Ω|ohms?)$' },
  ],
};

test('what stands twice is written once, and means the same', () => {
  const definition = {
    type: 'object',
    properties: { low: ohms, high: ohms, name: { type: 'string' } },
  } as const;
  const shared = sharedDefinitions(definition as never);
  expect(JSON.stringify(shared).match(/such as people/g)).toHaveLength(1);
  const [whole, short] = [definition, shared].map((one) =>
    new Ajv2020({ strict: true, allowUnionTypes: true }).compile(one as AnySchemaObject),
  );
  for (const value of [{ low: 5, high: '2 kΩ' }, { low: -1 }, { high: 'two' }, { name: 5 }, {}]) {
    expect(short!(value), JSON.stringify(value)).toBe(whole!(value));
  }
});

test('the definition of jobs weighs at most 75 KB', () => {
  const size = JSON.stringify(jobJsonSchema(), undefined, 2).length / 1024;
  console.log(`job.schema.json: ${size.toFixed(0)} KB (holds: at most 75)`);
  expect(size).toBeLessThan(75);
});
