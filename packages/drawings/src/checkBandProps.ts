import { type FieldRule, InputError } from '@truesweep/core';
import { refuse } from './checkProps.js';

/** A temperature, °C. */
export const celsius: FieldRule = within(-273.15, 1e6, 'a temperature from −273.15 to 10⁶ °C');

/** What stands on an axis of logarithms. */
export const aboveZero: FieldRule = within(1e-12, 1e12, 'a number from 10⁻¹² to 10¹²');

export const atLeastZero = within(0, 1e12, 'a number from 0 to 10¹²');

/** A resistance that was read; Infinity where nothing connects. */
export const ohmsOrOpen: FieldRule = (value, path) => {
  if (value !== Infinity) atLeastZero(value, path);
};

/** What came of a reading. */
export const outcome: FieldRule = ['conforms', 'marginal', 'fails', 'cannot-tell', 'not-judged'];

function within(low: number, high: number, wanted: string) {
  return (value: unknown, path: string): void => {
    if (typeof value !== 'number' || !(value >= low && value <= high)) refuse(value, path, wanted);
  };
}

/** Refuses a band whose places don't rise, or whose limits are the wrong way round. */
export function checkBand<Axis extends string>(
  points: readonly (Readonly<Record<Axis, number>> & {
    readonly low: number;
    readonly high: number;
  })[],
  axis: Axis,
): void {
  const refuseOrder = (field: string, wanted: string): never => {
    throw new InputError('out-of-order', field, `${field} must be ${wanted}.`);
  };
  points.forEach((point, i) => {
    const before = points[i - 1];
    if (before && !(point[axis] > before[axis]))
      refuseOrder(`props.points[${i}].${axis}`, 'above that of the point before');
    if (point.low > point.high) refuseOrder(`props.points[${i}].low`, 'no more than high');
  });
}
