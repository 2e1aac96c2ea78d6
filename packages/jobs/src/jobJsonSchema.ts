import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import { jobSchema } from './jobSchema.js';

/**
 * The definition of a job's file in JSON Schema, made from the schema that jobs are read with: what the one takes the other takes. It says
 * less in two things: whether a quantity that is written as text lies in its range, and whether fields agree with each other, only the
 * program tells.
 */
export function jobJsonSchema(): JsonSchema {
  const definition = toJsonSchema(jobSchema, {
    target: 'draft-2020-12',
    typeMode: 'output',
    ignoreActions: ['check', 'raw_transform'],
    overrideSchema: ({ valibotSchema: { type } }) =>
      type === 'custom' || type === 'unknown' ? {} : undefined,
  });
  return { title: 'A truesweep job, version 2', ...definition };
}
