import { InputError } from '../errors.js';
import { checkFields, type FieldRules } from '../fields.js';
import { above0, between, finiteBetween, mostRecorded, positive, text } from '../guard.js';
import type { Recorder, ReferenceReadings } from './captureQuality.js';

/** A source reads at least this much more than joined leads, V. */
const leastReading = 1e-3;

const volts = between(-mostRecorded, mostRecorded, 'V');
const size = between(0, mostRecorded, 'V');

const recorderRules: FieldRules = {
  'resolution?': size,
  'range?': (value, path) => {
    checkFields(value, path, { low: volts, high: volts });
    const { low, high } = value as { low: number; high: number };
    finiteBetween(high, low, mostRecorded, `${path}.high`, 'V');
  },
  'uncertainty?': size,
  'coupling?': ['dc', 'ac'],
  'sampling?': ['picked', 'averaged', 'peak-kept', 'interpolated'],
  'sampledEvery?': above0('s'),
  'before?': checkReferences,
  'after?': checkReferences,
};

/**
 * Refuses what no recorder can be; each field may be left out.
 *
 * @param recorder What is known of a recorder, in SI units.
 * @param path What it is called in refusals.
 * @throws InputError with the path of the field, such as `recorder.range.high`.
 *
 * @example
 * checkRecorder({ resolution: 0.001, coupling: 'dc' }) // => undefined
 */
export function checkRecorder(recorder: Recorder, path = 'recorder'): void {
  checkFields(recorder, text(path, 'path'), recorderRules);
  if (recorder.sampling === 'interpolated')
    positive(recorder.sampledEvery, `${path}.sampledEvery`, 's');
}

function checkReferences(value: unknown, path: string): void {
  checkFields(value, path, { source: volts, zero: volts });
  const { source, zero } = value as ReferenceReadings;
  if (source - zero >= leastReading) return;
  throw new InputError(
    'no-span',
    `${path}.source`,
    `${path}.source is ${source} V, not a millivolt above ${path}.zero; a source's reading lies above the zero's.`,
  );
}
