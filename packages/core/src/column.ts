import { InputError } from './errors.js';
import { mostRecorded, read, refuse, shown } from './guard.js';

/**
 * Refuses anything but numbers between −10¹² and 10¹² of a wanted length, at least 1; returns them as a Float64Array, the same one where they
 * were one already: loops over samples see no other kind of array.
 *
 * @param values A Float64Array, another typed array, or a plain list of numbers.
 * @param length How many there must be; as many as there are when undefined.
 * @throws InputError `missing`, `not-a-list`, `length-mismatch`, `not-finite` or `out-of-range`, with the path of the column or of
 * the number in it, such as `shaft[12]`.
 */
export function column(values: unknown, length: number | undefined, path: string): Float64Array {
  const numbers = values instanceof Float64Array ? values : converted(values, path);
  const wanted = length ?? numbers.length;
  if (numbers.length !== wanted || wanted === 0) {
    throw new InputError(
      'length-mismatch',
      path,
      `${path} holds ${numbers.length} numbers; it must hold as many as the other columns: ${wanted || '1 or more'}.`,
    );
  }
  let wrong = 0;
  while (wrong < wanted && Math.abs(numbers[wrong]!) <= mostRecorded) wrong++;
  if (wrong === wanted) return numbers;
  const given = (values as ArrayLike<unknown>)[wrong];
  throw new InputError(
    Number.isFinite(given) ? 'out-of-range' : 'not-finite',
    `${path}[${wrong}]`,
    `${path}[${wrong}] is ${shown(given)}; it must be a number between −10¹² and 10¹².`,
  );
}

/**
 * Refuses time stamps that run backwards, on top of what {@link column} refuses; returns them.
 *
 * @throws InputError `time-backwards` with the path of the first such stamp.
 */
export function timeColumn(values: unknown, path: string): Float64Array {
  const time = column(values, undefined, path);
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

function converted(values: unknown, path: string): Float64Array {
  if (!Array.isArray(values) && !ArrayBuffer.isView(values)) {
    return refuse(values, path, 'a list of numbers, best a Float64Array', 'not-a-list');
  }
  return Float64Array.from({ length: (values as unknown as ArrayLike<unknown>).length }, (_, i) => {
    const value = read(values, i, path);
    return typeof value === 'number' ? value : Number.NaN;
  });
}
