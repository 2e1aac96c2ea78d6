import * as v from 'valibot';

/**
 * Says in the words of JSON Schema what a field takes whose schema is a test that only code can do. The definition that is published is made
 * from it; reading a job doesn't use it.
 */
export function jsonSchemaOf<Value>(keywords: Readonly<Record<string, unknown>>) {
  return v.metadata<Value, Record<string, unknown>>(keywords);
}
