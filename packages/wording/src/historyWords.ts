import {
  checkText,
  type Forecast,
  formatQuantity,
  type LimitMet,
  type Seconds,
  type Trend,
} from '@truesweep/core';
import { count } from './count.js';
import { formatAlike } from './formatAlike.js';
import { number, say } from './say.js';
import { whole } from './whole.js';

/**
 * Words of a sensor's history.
 *
 * @example
 * historyWords.records // => 'Records'
 */
export const historyWords = {
  sensor: 'Sensor',
  records: 'Records',
  from: 'First',
  to: 'Last',
  verdict: 'Verdict',
  changes: 'Changes',
  none: 'none told',
  noDate: 'no date',
  date: 'Date',
  closed: 'Closed',
  open: 'Open',
  hysteresis: 'Hysteresis',
  noise: 'Noise',
  roughness: 'Roughness',
  worst: 'Worst place',
  file: 'Recording',
  trends: 'What changed',
  howTold:
    'A slope is told as a change only where it exceeds its expanded uncertainty, which is made for 95 % over all that is followed of a sensor together: of twenty sensors that do not change one may show a change. It rests on how far the readings lie from their own line, on their stated uncertainties at least, and on what other sensors in the same history show of that. Closed and open reading count as a part of the span, from the middle of what their own hook-up should have given.',
  noVerdict:
    'A trend is no verdict. What the last recording shows decides whether the sensor may go back on the engine.',
  noRecords: 'There are no records yet.',
} as const;

/**
 * What is followed of a sensor.
 *
 * @example
 * historyQuantityLabels.closed // => 'Closed reading'
 */
export const historyQuantityLabels = {
  closed: 'Closed reading',
  open: 'Open reading',
  hysteresis: 'Closed reading by hand less by spring',
  noise: 'Noise',
  roughness: 'Roughness',
  worst: 'Depth of the worst place',
} as const;

/**
 * The same in short.
 *
 * @example
 * historyQuantityNames.worst // => 'worst place'
 */
export const historyQuantityNames = {
  closed: 'closed',
  open: 'open',
  hysteresis: 'hysteresis',
  noise: 'noise',
  roughness: 'roughness',
  worst: 'worst place',
} as const satisfies Record<keyof typeof historyQuantityLabels, string>;

/** Where a record's date comes from, where it was not told with the recording. */
const dateNotes = { told: '', 'file-name': ' (from the name)', judged: ' (judged then)' } as const;

/**
 * A record's date.
 *
 * @example
 * recordDate('2026-05-03', 'file-name') // => '2026-05-03 (from the name)'
 */
export function recordDate(date: string, from: keyof typeof dateNotes): string {
  checkText(date, 'date');
  return say`${date.slice(0, 10)}${dateNotes[from] ?? ''}`;
}

/**
 * A moment as the date that it lies on, in UTC.
 *
 * @param at s since 1970.
 *
 * @example
 * dateText(1777766400) // => '2026-05-03'
 */
export function dateText(at: Seconds): string {
  // The last day that a date can be of.
  if (!(Math.abs(at) <= 8.64e12))
    number(Number.NaN, 'at', 'a number of seconds from 1970, up to 8.64·10¹²');
  return new Date(at * 1000).toISOString().slice(0, 10);
}

/** 365.25 days (ISO 80000-3 has no year; the Julian year is common practice). */
const year: Seconds = 31_557_600;

/** What is told of one quantity. */
export interface QuantityTold {
  /** Which. */
  readonly quantity: keyof typeof historyQuantityLabels;
  /** Its values: as many as there are. */
  readonly points: readonly unknown[];
  /** How many records it was left out of because another recorder took them, 0 or more. */
  readonly otherRecorder: number;
  /** The line through them, in fractions of the span; left out where there is none. */
  readonly trend?: Trend;
  /** What is to be expected, where a change is told. */
  readonly ahead?: Forecast & { readonly at: Seconds };
  /** Which limit a change leads to, and when; left out where it leads to none. */
  readonly limit?: LimitMet & { readonly side: 'low' | 'high' };
}

/**
 * What is said of one quantity over the years, sentence by sentence.
 *
 * @param told As `sensorHistory` has it.
 *
 * @example
 * quantitySentences({ quantity: 'open', points: [1], otherRecorder: 0 }) // => ['1 value so far. Three of different dates are needed to tell a change, or two where the history has other sensors.']
 */
export function quantitySentences(told: QuantityTold): readonly string[] {
  return whole(told, 'told', () => {
    const { trend, points, otherRecorder } = told;
    const others =
      otherRecorder > 0
        ? [
            say`${count(otherRecorder, 'record')} by a recorder that samples or resolves otherwise ${otherRecorder === 1 ? 'is' : 'are'} left out.`,
          ]
        : [];
    if (!trend) {
      const so = say`${count(points.length, 'value')} so far. Three of different dates are needed to tell a change, or two where the history has other sensors.`;
      return [so, ...others];
    }
    return [...(trend.changed ? changeSentences(told, trend) : [stillSentence(trend)]), ...others];
  });
}

/** A slope that no recording could show, a part of the span each year: what rounding leaves of values that are all alike. */
const nothing = 1e-9;

function stillSentence(trend: Trend): string {
  if (trend.expanded * year < nothing) return 'The same in all recordings.';
  const { numbers, unit } = formatAlike([trend.expanded * year], '%', 2);
  return say`No change that these recordings can show; it would have to exceed ${numbers[0]!} ${unit} of the span a year.`;
}

function changeSentences({ ahead, limit }: QuantityTold, trend: Trend): readonly string[] {
  const { numbers, unit } = formatAlike(
    [Math.abs(trend.slope) * year, trend.expanded * year],
    '%',
    2,
  );
  const way = trend.slope > 0 ? 'Rises' : 'Falls';
  return [
    say`${way} by ${numbers[0]!} ± ${numbers[1]!} ${unit} of the span a year (${restsOn(trend)}).`,
    ...(ahead ? [aheadSentence(ahead, trend)] : []),
    ...(limit ? [limitSentence(limit)] : []),
  ];
}

/** Of how many recordings, over what time, and how sure. */
function restsOn({ count: records, from, to, coverage }: Trend): string {
  const sure = formatQuantity(coverage, '%', { digits: 3, trim: true });
  return say`${records} recordings from ${dateText(from)} to ${dateText(to)}, at ${sure}`;
}

function aheadSentence({ at, value, low, high }: Forecast & { at: Seconds }, trend: Trend): string {
  const now = trend.mean + trend.slope * (trend.to - trend.meanAt);
  const { numbers, unit } = formatAlike([value - now, low - now, high - now], '%', 2);
  return say`Were it to go on so, a recording on ${dateText(at)} would read ${signed(numbers[0]!)} ${unit} of the span (${signed(numbers[1]!)} to ${signed(numbers[2]!)} ${unit}) beside the line on ${dateText(trend.to)}; farther ahead nothing can be told.`;
}

function signed(text: string): string {
  return text.startsWith('\u2212') ? text : say`+${text}`;
}

function limitSentence({ side, soonest, line, latest }: LimitMet & { side: string }): string {
  const which = side === 'high' ? 'upper' : 'lower';
  if (soonest === undefined) return say`Its ${which} limit is not met by then.`;
  const first = say`Its ${which} limit may be met on ${dateText(soonest)} at the soonest`;
  const when = line === undefined ? '' : say`, by the line on ${dateText(line)}`;
  const end = latest === undefined ? '' : say`, by ${dateText(latest)} in all likelihood`;
  return say`${first}${when}${end}.`;
}

/**
 * What came of adding to a history.
 *
 * @example
 * addedSentence({ added: 3, replaced: 0, known: 2, notJudged: 1 }, 'workshop.history') // => '3 records added to workshop.history, 2 known before, 1 recording not judged.'
 */
export function addedSentence(
  counts: {
    readonly added: number;
    readonly replaced: number;
    readonly known: number;
    readonly notJudged: number;
  },
  file: string,
): string {
  return whole(counts, 'counts', () => {
    const { added, replaced, known, notJudged } = counts;
    const parts = [
      say`${count(added, 'record')} added to ${file}`,
      ...(replaced > 0 ? [say`${replaced} judged anew`] : []),
      ...(known > 0 ? [say`${known} known before`] : []),
      ...(notJudged > 0 ? [say`${count(notJudged, 'recording')} not judged`] : []),
    ];
    return say`${parts.join(', ')}.`;
  });
}

/**
 * What can't be read of a file of results.
 *
 * @example
 * damagedEntrySentence('results.jsonl', 'line 4', 'This line is no JSON.') // => 'results.jsonl, line 4: This line is no JSON. It is left out.'
 */
export function damagedEntrySentence(file: string, place: string, sentence: string): string {
  return say`${file}, ${place}: ${sentence} It is left out.`;
}

/**
 * Follows those that were told.
 *
 * @example
 * moreDamagedSentence(12) // => '12 more entries are no results; they are left out.'
 */
export function moreDamagedSentence(more: number): string {
  return say`${more} more ${more === 1 ? 'entry is no result; it is' : 'entries are no results; they are'} left out.`;
}

/**
 * Of records without a date.
 *
 * @example
 * undatedSentence(2) // => '2 records have no date, and no place in any trend: tell it in the list of a batch, or name the file by it, such as 2026-05-03-port.csv.'
 */
export function undatedSentence(undated: number): string {
  return say`${count(undated, 'record')} ${undated === 1 ? 'has' : 'have'} no date, and no place in any trend: tell it in the list of a batch, or name the file by it, such as 2026-05-03-port.csv.`;
}

/**
 * Of how many sensors a change is told, beside how many chance alone would make.
 *
 * @example
 * changedSensorsSentence(40, 3) // => 'Of 3 of 40 sensors a change is told; were none to change, some 2 of 40 would show one.'
 */
export function changedSensorsSentence(sensors: number, changed: number): string {
  const chance = Math.max(1, Math.round(sensors * 0.05));
  return sensors < 20
    ? say`Of ${changed} of ${count(sensors, 'sensor')} a change is told.`
    : say`Of ${changed} of ${count(sensors, 'sensor')} a change is told; were none to change, some ${chance} of ${sensors} would show one.`;
}

/**
 * A sensor that a history doesn't know.
 *
 * @example
 * unknownSensorSentence('Port', 'Port engine') // => 'There is no sensor “Port” here; is “Port engine” meant?'
 */
export function unknownSensorSentence(sensor: string, nearest?: string): string {
  const instead = nearest === undefined ? '' : say`; is “${nearest}” meant?`;
  return say`There is no sensor “${sensor}” here${instead || '.'}`;
}

/**
 * What was saved of a damaged history.
 *
 * @example
 * savedRecordsSentence(57, 'saved.jsonl') // => '57 records saved in saved.jsonl. Add them to a new history: truesweep history saved.jsonl --store new.history'
 */
export function savedRecordsSentence(records: number, file: string): string {
  return say`${count(records, 'record')} saved in ${file}. Add them to a new history: truesweep history ${file} --store new.history`;
}

/**
 * A folder without results.
 *
 * @example
 * noResultsInFolderSentence('season').startsWith('There are no results in season') // => true
 */
export function noResultsInFolderSentence(folder: string): string {
  return say`There are no results in ${folder}: name the folder that a batch wrote or that a queue files results in, a file of results, or the saved shelf of the calculators.`;
}

/**
 * Where nothing tells what to look at.
 *
 * @example
 * noStoreSentence.startsWith('Name the file of a history') // => true
 */
export const noStoreSentence =
  'Name the file of a history with --store, or results to look at: the folder of a batch, a file of results, or a saved shelf. --save needs --store and nothing else.';
