import type { DelimitedOptions } from './delimitedOptions.js';
import { type DelimitedRecording, delimitedReader } from './delimitedReader.js';
import { checkBytes } from './shown.js';

/**
 * Reads a recorded sweep from delimited text (UTF-8, UTF-16, or the western single-byte code): one row a sample, a column of times and one of
 * voltages. Delimiter, decimal sign, headings, columns and units are found out from the first 64 KB
 * unless the options say them; lines before the table are passed over. Without headings the first
 * two columns of numbers are time and signal, in s and V. Times are numbers, times on a clock, or counted at a
 * sample rate that an option or a line before the table tells.
 *
 * Units are converted in the text of each number, so that 1500 ms is exactly 1.5 s. Equal times in
 * a row are kept as they are. Rows without a reading stand in the sweep as such, between the samples. A wrong file is refused as a whole.
 *
 * @param input The bytes of the file, or its text.
 * @returns The sweep in s and V, and how the file was read.
 * @throws InputError with `path` the name of the file and `place` its line and column: `empty-file`,
 * `binary-file`, `no-numbers`, `one-column`, `one-sample`, `missing-field`, `extra-field`,
 * `not-a-number`, `not-finite`, `time-backwards`, `mixed-times`, `endless-line`, `ambiguous-comma`, `heading-mismatch`,
 * `unknown-unit`, `no-scale`, `no-time-column`, `no-signal-column`; for an option, with its name as `path`:
 * `not-one-of`, `out-of-range`, `two-times`, `needless-scale`, `no-such-column`, `ambiguous-column`, `same-column`.
 *
 * @example
 * const text = 'time (ms);signal (V)\n0;0,512\n1500;0,518\n';
 * const { sweep, reading } = readDelimited(text, { name: 'idle.csv' });
 * sweep.time[1] // => 1.5
 * sweep.signal[1] // => 0.518
 * reading.delimiter // => ';'
 */
export function readDelimited(
  input: Uint8Array | string,
  options: DelimitedOptions = {},
): DelimitedRecording {
  const reader = delimitedReader(options);
  if (typeof input !== 'string') checkBytes(input, 'input');
  reader.feed(typeof input === 'string' ? new TextEncoder().encode(input) : input);
  return reader.end();
}
