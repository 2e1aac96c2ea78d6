import { checkText } from '@truesweep/core';
import { count } from './count.js';
import { historyQuantityLabels } from './historyWords.js';
import { say } from './say.js';

/**
 * Words of the page on what changed.
 *
 * @example
 * historyPageWords.sensors // => 'Sensors'
 */
export const historyPageWords = {
  open: 'Open results: the results.jsonl of a batch, a saved history, or a saved shelf',
  sensors: 'Sensors',
  shelf: 'The shelf',
  busy: 'Working out what changed …',
  example:
    'An example: two invented sensors of a workshop over four springs. Open your own results, or keep sensors on the shelf, and they stand here instead.',
  moreListed:
    'The first 200 sensors are listed, those with a change before the others; truesweep history lists all.',
} as const;

/**
 * What was read of a file.
 *
 * @param records How many records, 0 or more.
 * @param notJudged How many recordings that could not be judged, 0 or more.
 *
 * @example
 * readRecordsSentence('results.jsonl', 12, 1) // => 'results.jsonl: 12 records, and 1 recording that could not be judged.'
 */
export function readRecordsSentence(name: string, records: number, notJudged: number): string {
  checkText(name, 'name');
  const others =
    notJudged > 0 ? say`, and ${count(notJudged, 'recording')} that could not be judged` : '';
  return say`${name}: ${count(records, 'record')}${others}.`;
}

/**
 * What a quantity's drawing shows, with its scale.
 *
 * @example
 * historyScaleText('noise') // => 'Noise, standard deviation, % of the span'
 */
export function historyScaleText(quantity: keyof typeof historyQuantityLabels): string {
  const from = quantity === 'closed' || quantity === 'open' ? ' from the middle of its window' : '';
  const kind = quantity === 'noise' ? ', standard deviation' : '';
  return say`${historyQuantityLabels[quantity]}${kind}, % of the span${from}`;
}
