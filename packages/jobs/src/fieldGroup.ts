import { nearestName } from '@truesweep/core';
import * as v from 'valibot';
import { clipped, refusal, shown } from './refusal.js';

/**
 * A JSON object with exactly these fields: an unknown one is refused and the nearest known one offered, before what a mistyped name
 * leaves missing.
 *
 * @param what What the group describes, for refusals: `a sensor`.
 */
export function fieldGroup<Entries extends v.ObjectEntries>(what: string, entries: Entries) {
  const names = Object.keys(entries);
  const isGroup = (value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value);
  const unknownName = (value: unknown) =>
    Object.keys(value as object).find((name) => !Object.hasOwn(entries, name));
  return v.pipe(
    v.custom<Record<string, unknown>>(isGroup, ({ input }) =>
      refusal('not-a-group', `is ${shown(input)}; it must be ${what}: { "${names[0]}": … }.`),
    ),
    v.custom<Record<string, unknown>>(
      (value) => unknownName(value) === undefined,
      ({ input }) => {
        const name = unknownName(input)!;
        const nearest = nearestName(clipped(name), names);
        const right = nearest
          ? `it may be meant to be “${nearest}”`
          : `${what} has the fields ${names.join(', ')}`;
        return refusal('unknown-field', `is not known; ${right}.`, name);
      },
    ),
    v.strictObject(entries, ({ path }) =>
      refusal('missing', `is missing; ${what} needs the field “${String(path?.[0]?.key)}”.`),
    ),
  );
}
