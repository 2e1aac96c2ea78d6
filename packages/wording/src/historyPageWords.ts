import { count } from './count.js';
import { historyQuantityLabels } from './historyWords.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Words of the page that shows what changed of sensors over the years.
 *
 * @example
 * historyPageWords.files // => 'Choose files of results'
 */
export const historyPageWords = {
  files: 'Choose files of results',
  filesHint:
    'or drop them here: the results.jsonl of a batch, records of a history, or a saved shelf. Several at once.',
  reading: 'Reading …',
  computing: 'Working out what changed …',
  forget: 'Forget the files',
  theShelf: 'The shelf of this browser',
  sensors: 'Sensors, those with a change first',
  find: 'Find a sensor by its name',
  noneFound: 'No sensor has that in its name.',
  more: 'Show more sensors',
  moreRecords: 'Show more records',
  choose: 'Choose a sensor to see its records.',
  back: 'Back to the sensors',
  records: 'Records, the newest first',
  followed: 'What is followed',
  ofTheSpan: '% of the span',
  limit: 'limit',
  legend:
    'In the drawings a dot is a recording, its bar the stated expanded uncertainty (twice the standard uncertainty). The line is fitted; the band around it is where one more recording is expected. What is dashed is a forecast: it is drawn only where a change is told, and no farther ahead than the records reach back. Lines of dots and dashes are limits.',
  example: 'An example, not yours',
  exampleSays:
    'Invented records of two sensors of a small marine workshop, one a year from each engine: the closed reading of the port engine’s drifts, that of the starboard engine’s does not. They go as soon as there are records of yours.',
  unreadable: 'This file can no longer be read; choose it again.',
  tooLarge: 'This file is larger than 500 MB; the command line reads it.',
  brokenOff:
    'Reading broke off; the files may be too large for this browser. Use fewer at once, or the command line.',
  noWorker:
    'Nothing can be worked out: this browser starts no worker for this page. Use a newer browser, or the command line.',
} as const satisfies Record<string, string>;

/**
 * What was read of a file or of the shelf.
 *
 * @param name Of the file.
 * @param records How many records, 0 or more.
 * @param notJudged How many recordings that could not be judged, 0 or more.
 *
 * @example
 * readRecordsSentence('results.jsonl', 12, 1) // => 'results.jsonl: 12 records, and 1 recording that could not be judged.'
 */
export function readRecordsSentence(name: string, records: number, notJudged: number): string {
  const others =
    notJudged > 0 ? say`, and ${count(notJudged, 'recording')} that could not be judged` : '';
  return say`${name}: ${count(records, 'record')}${others}.`;
}

/**
 * How many of the sensors stand in the list.
 *
 * @example
 * listedSensorsSentence(50, 400) // => '50 of 400 sensors are shown.'
 */
export function listedSensorsSentence(shown: number, all: number): string {
  return say`${shown} of ${count(all, 'sensor')} are shown.`;
}

/**
 * How many of a sensor's records are listed; all of them count.
 *
 * @example
 * newestRecordsSentence(200, 5000) // => 'The newest 200 of 5000 records are listed; what changed is told of all.'
 */
export function newestRecordsSentence(listed: number, all: number): string {
  return say`The newest ${listed} of ${count(all, 'record')} are listed; what changed is told of all.`;
}

/**
 * Of a drawing that can't hold every record.
 *
 * @example
 * thinnedSentence(20000) // => 'Of 20000 values the lowest and the highest of each stretch of time are drawn.'
 */
export function thinnedSentence(values: number): string {
  return say`Of ${count(values, 'value')} the lowest and the highest of each stretch of time are drawn.`;
}

/**
 * A limit that lies outside a drawing.
 *
 * @param at The limit with its unit.
 *
 * @example
 * farLimitLabel('high', '+2.5 %') // => 'limit +2.5 % is higher'
 */
export function farLimitLabel(side: 'low' | 'high', at: string): string {
  return say`limit ${at} is ${side === 'high' ? 'higher' : 'lower'}`;
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

/** What a drawing of a quantity over time shows; each value with its unit, each time as a date. */
export interface TrendDrawn {
  /** How many values: a count, 1 or more. */
  readonly values: number;
  /** The first date. */
  readonly from: string;
  /** The last date. */
  readonly to: string;
  /** The lowest value. */
  readonly low: string;
  /** The highest value. */
  readonly high: string;
  /** Where the fitted line begins and ends; left out where there is none. */
  readonly line?: { readonly first: string; readonly last: string };
  /** Where the forecast ends; left out where there is none. */
  readonly ahead?: {
    readonly at: string;
    readonly value: string;
    readonly low: string;
    readonly high: string;
  };
  /** The limits; left out where there are none. */
  readonly limits?: { readonly low: string; readonly high: string };
}

/**
 * A drawing of a quantity over time, for who does not see it.
 *
 * @example
 * trendDrawingSentence({ values: 1, from: '2026-05-03', to: '2026-05-03', low: '0.1 %', high: '0.1 %' }) // => '1 value from 2026-05-03 to 2026-05-03, from 0.1 % to 0.1 % of the span.'
 */
export function trendDrawingSentence(drawn: TrendDrawn): string {
  return whole(drawn, 'drawn', () => {
    const { values, from, to, low, high, line, ahead, limits } = drawn;
    return [
      say`${count(values, 'value')} from ${from} to ${to}, from ${low} to ${high} of the span.`,
      ...(line ? [say`The fitted line goes from ${line.first} to ${line.last}.`] : []),
      ...(ahead
        ? [say`The forecast for ${ahead.at} is ${ahead.value} (${ahead.low} to ${ahead.high}).`]
        : []),
      ...(limits ? [say`The limits are ${limits.low} and ${limits.high}.`] : []),
    ].join(' ');
  });
}

/**
 * The worst place of a recording, in a cell of a table.
 *
 * @param kind What it is, as a label.
 * @param depth How deep, of the span, with its unit.
 * @param travel Where; left out where that can't be told.
 *
 * @example
 * worstPlaceText('dropout', '97 %', '5.9 %') // => 'dropout, 97 % at 5.9 %'
 */
export function worstPlaceText(kind: string, depth: string, travel?: string): string {
  return say`${kind}, ${depth}${travel === undefined ? '' : say` at ${travel}`}`;
}
