import { InputError } from './errors.js';

/** Far beyond any recording, and small enough that no square of it overflows. */
const most = 1e12;

/**
 * Refuses anything but a Float64Array of a wanted length, at least 1, with numbers between −10¹² and 10¹²; returns it.
 *
 * @throws InputError `missing`, `length-mismatch`, `not-finite` or `out-of-range`, with the path of the column or of
 * the number in it, such as `shaft[12]`.
 */
export function column(values: Float64Array, length: number, path: string): Float64Array {
  if (!(values instanceof Float64Array)) {
    throw new InputError('missing', path, `${path} is missing; it must be a Float64Array.`);
  }
  if (values.length !== length || length === 0) {
    throw new InputError(
      'length-mismatch',
      path,
      `${path} holds ${values.length} numbers; it must hold as many as the other columns: ${length || '1 or more'}.`,
    );
  }
  let wrong = 0;
  while (wrong < length && Math.abs(values[wrong]!) <= most) wrong++;
  if (wrong === length) return values;
  throw new InputError(
    Number.isFinite(values[wrong]) ? 'out-of-range' : 'not-finite',
    `${path}[${wrong}]`,
    `${path}[${wrong}] is ${values[wrong]}; it must be a number between −10¹² and 10¹².`,
  );
}

/**
 * Refuses time stamps that run backwards, on top of what {@link column} refuses; returns them.
 *
 * @throws InputError `time-backwards` with the path of the first such stamp.
 */
export function timeColumn(time: Float64Array, path: string): Float64Array {
  column(time, time?.length, path);
  for (let i = 1; i < time.length; i++) {
    if (time[i]! >= time[i - 1]!) continue;
    throw new InputError(
      'time-backwards',
      `${path}[${i}]`,
      `${path}[${i}] is ${time[i]} s after ${time[i - 1]} s; time must never decrease.`,
    );
  }
  return time;
}
