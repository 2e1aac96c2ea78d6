import { type JsonSchema, toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { jobSchema } from './jobSchema.js';
import { readingsSchemas } from './readingsJobSchema.js';
import { sharedDefinitions } from './sharedDefinitions.js';

/**
 * The definition of a job's file in JSON Schema, made from the schema that jobs are read with: what the one takes the other takes. It says
 * less in two things: whether a quantity that is written as text lies in its range, and whether fields agree with each other, only the
 * program tells.
 */
export function jobJsonSchema(): JsonSchema {
  const kinds = [jobSchema, ...Object.values(readingsSchemas)];
  const { $schema, ...definition } = toJsonSchema(v.union(kinds), {
    target: 'draft-2020-12',
    typeMode: 'output',
    ignoreActions: ['check', 'raw_transform', 'transform'],
    overrideSchema: ({ valibotSchema }) => {
      const { type } = valibotSchema;
      return type === 'custom' || type === 'unknown' ? {} : undefined;
    },
  });
  const title = 'A truesweep job, version 3';
  return sharedDefinitions({ ...($schema && { $schema }), title, ...definition });
}
