import { fileURLToPath } from 'node:url';
import { createGenerator, type Schema } from 'ts-json-schema-generator';

const path = (name: string) => fileURLToPath(new URL(name, import.meta.url));

/**
 * The definition of what the commands print with `--json`, in JSON Schema, made from the types that they print: the output of `score` is
 * `#/definitions/PrintedData/properties/score`, and so on.
 */
export function outputJsonSchema(): Schema {
  return createGenerator({
    path: path('printedData.ts'),
    tsconfig: path('../../../tsconfig.json'),
    type: 'PrintedData',
    topRef: true,
    skipTypeCheck: true,
    additionalProperties: false,
  }).createSchema('PrintedData');
}
