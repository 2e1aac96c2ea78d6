import { InputError } from '../errors.js';
import { finiteBetween, oneOf, present } from '../guard.js';
import type { Stretch, Sweep } from './sweep.js';

const kinds: readonly Stretch['kind'][] = [
  'sweep',
  'rest',
  'harness-flexed',
  'housing-tapped',
  'warmed',
];

/** Far beyond any recording, and small enough that no square of it overflows. */
const most = 1e12;

/**
 * Refuses what is no sweep: no samples, columns of different lengths, a value that is no number, no duration, a
 * stretch that is none.
 *
 * @throws InputError with the path of the sample, such as `sweep.time[12]`.
 */
export function checkSweep(sweep: Sweep): void {
  present(sweep, 'sweep', 'a recorded sweep { time, signal }');
  const { time, signal, supply, stretches } = sweep;
  checkColumn(time, 'sweep.time', time);
  checkColumn(signal, 'sweep.signal', time);
  if (supply !== undefined) checkColumn(supply, 'sweep.supply', time);
  if (time.every((at) => at === time[0])) {
    throw new InputError(
      'no-duration',
      'sweep.time',
      'All samples bear one time; a sweep takes time.',
    );
  }
  stretches?.forEach(({ kind, start, end }, i) => {
    const path = `sweep.stretches[${i}]`;
    oneOf(kind, kinds, `${path}.kind`);
    finiteBetween(start, -most, most, `${path}.start`, 's');
    finiteBetween(end, start, most, `${path}.end`, 's');
  });
}

function checkColumn(values: Float64Array, path: string, time: Float64Array): void {
  if (!(values instanceof Float64Array)) {
    throw new InputError('missing', path, `${path} is missing; it must be a Float64Array.`);
  }
  if (values.length < 2) {
    throw new InputError(
      'too-few-samples',
      path,
      `${path} holds ${values.length} samples; a sweep has 2 or more.`,
    );
  }
  if (values.length !== time.length) {
    throw new InputError(
      'length-mismatch',
      path,
      `${path} holds ${values.length} samples and sweep.time ${time.length}; they must be equal.`,
    );
  }
  const wrong = values.findIndex((value) => !(Math.abs(value) <= most));
  if (wrong < 0) return;
  const finite = Number.isFinite(values[wrong]!);
  throw new InputError(
    finite ? 'out-of-range' : 'not-finite',
    `${path}[${wrong}]`,
    `${path}[${wrong}] is ${values[wrong]}; it must be a number between −10¹² and 10¹².`,
  );
}
