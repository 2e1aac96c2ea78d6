import { column } from '../column.js';
import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import type { ShaftReadings, ShaftReadingsLike } from './shape.js';

const any = () => {};
const readingsRules: FieldRules = { shaft: any, ratio: any, 'uncertainty?': between(0, 1e12) };

/** Refuses columns of different lengths, a value that is no number and an impossible uncertainty; columns are Float64Arrays then. */
export function checkReadings(given: ShaftReadingsLike): ShaftReadings {
  checkFields(given, 'readings', readingsRules);
  const shaft = column(given.shaft, undefined, 'readings.shaft');
  const { uncertainty } = given;
  return {
    shaft,
    ratio: column(given.ratio, shaft.length, 'readings.ratio'),
    ...(uncertainty !== undefined && { uncertainty }),
  };
}
