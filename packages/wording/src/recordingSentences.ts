import { checkText } from '@truesweep/core';
import type { Delimiter, TakenFrom, TextEncoding } from '@truesweep/recordings';
import { count } from './count.js';
import { say } from './say.js';
import { whole } from './whole.js';
/**
 * What parts the fields of a text file.
 *
 * @example
 * delimiterLabels[';'] // => 'semicolons'
 */
export const delimiterLabels: Readonly<Record<Delimiter, string>> = {
  ',': 'commas',
  ';': 'semicolons',
  '\t': 'tabs',
  '|': 'bars',
  ' ': 'spaces',
};

/**
 * How a text file is encoded.
 *
 * @example
 * encodingLabels['utf-16le'] // => 'UTF-16'
 */
export const encodingLabels: Readonly<Record<TextEncoding, string>> = {
  'utf-8': 'UTF-8',
  'utf-16le': 'UTF-16',
  'utf-16be': 'UTF-16 (high byte first)',
  'windows-1252': 'Windows-1252',
};

/**
 * What a column, its unit or the sample rate was taken from.
 *
 * @example
 * takenFromLabels.heading // => 'by its heading'
 */
export const takenFromLabels: Readonly<Record<TakenFrom, string>> = {
  option: 'as told',
  heading: 'by its heading',
  preamble: 'by a line before the table',
  values: 'by its fields',
  place: 'the first that can be it',
  assumed: 'assumed',
};

/**
 * What was read from a column of a file, and why it was taken for that. Columns are counted from 1.
 *
 * @example
 * const column = { number: 2, name: 'wiper', chosenFrom: 'heading', unit: 'V', unitFrom: 'assumed' } as const;
 * columnSentence(column) // => 'column 2 “wiper” (by its heading) in V (assumed)'
 */
export function columnSentence(column: {
  readonly number: number;
  readonly name: string;
  readonly chosenFrom: TakenFrom;
  readonly unit?: string;
  readonly unitFrom?: TakenFrom;
}): string {
  return whole(column, 'column', () => {
    const name = column.name && say` “${column.name}”`;
    const chosen = takenFromLabels[column.chosenFrom];
    if (column.unit === undefined) return say`column ${column.number}${name} (${chosen})`;
    const unit = takenFromLabels[column.unitFrom ?? 'assumed'];
    const whyColumn = chosen === unit ? '' : say` (${chosen})`;
    return say`column ${column.number}${name}${whyColumn} in ${column.unit} (${unit})`;
  });
}

/**
 * What stands in for a column of times.
 *
 * @example
 * sampleRateSentence('1 kHz', 'option') // => 'the sample rate of 1 kHz (as told)'
 */
export function sampleRateSentence(rate: string, from: TakenFrom): string {
  return whole(from, 'from', () => say`the sample rate of ${rate} (${takenFromLabels[from]})`);
}

const unitNames: Readonly<Record<string, string>> = { clock: 'clock time' };

/**
 * The unit that a column is read in, with its scale where it has one.
 *
 * @example
 * unitText('counts', '4.9 mV') // => 'counts of 4.9 mV'
 */
export function unitText(unit: string, scale?: string): string {
  checkText(unit, 'unit');
  return scale === undefined ? (unitNames[unit] ?? unit) : say`${unit} of ${scale}`;
}

/**
 * What was taken for what when a file was read.
 *
 * @example
 * const columns = { time: 'column 1 in s (assumed)', signal: 'column 2 in V (assumed)' };
 * const counts = { withoutReading: 0, repeatedHeadings: 0, footerLines: 0 };
 * readingSentence({ ...columns, ...counts, rows: '12001', delimiter: 'tabs', encoding: 'UTF-8' }).includes('12001 rows') // => true
 */
export function readingSentence(reading: {
  readonly time: string;
  readonly signal: string;
  readonly supply?: string;
  readonly second?: string;
  readonly position?: string;
  readonly rows: string;
  readonly delimiter: string;
  readonly encoding: string;
  readonly withoutReading: number;
  readonly repeatedHeadings: number;
  readonly footerLines: number;
  readonly damagedLines?: number;
}): string {
  return whole(reading, 'reading', () => {
    const { withoutReading, repeatedHeadings, footerLines, damagedLines } = reading;
    const sources = [
      say`Time from ${reading.time}`,
      say`signal from ${reading.signal}`,
      ...(reading.supply ? [say`supply from ${reading.supply}`] : []),
      ...(reading.second ? [say`second track from ${reading.second}`] : []),
      ...(reading.position ? [say`position from ${reading.position}`] : []),
    ];
    const left = [
      withoutReading > 0 && say` ${count(withoutReading, 'row')} without a reading told apart.`,
      repeatedHeadings > 0 &&
        say` Headings that stood again passed over (${count(repeatedHeadings, 'line')}).`,
      footerLines > 0 && say` Text below the table passed over (${count(footerLines, 'line')}).`,
      damagedLines === 0 && ' The check of every line fits.',
      damagedLines !== undefined &&
        damagedLines > 0 &&
        say` ${count(damagedLines, 'line')} whose check does not fit passed over: damaged on the way.`,
    ];
    return say`${sources.join(', ')}; ${reading.rows} rows, fields parted by ${reading.delimiter}, text in ${reading.encoding}.${left.filter(Boolean).join('')}`;
  });
}

/**
 * How a sound file was read. Channels are counted from 1.
 *
 * @example
 * const format = { coding: 'PCM, 16 bits', channels: 2, signal: 1, rate: '44.1 kHz', fullScale: '6 V' };
 * const sentence = soundSentence({ ...format, samples: '90000', withoutReading: 0, isCut: false });
 * sentence.startsWith('Sound (PCM, 16 bits) at 44.1 kHz, ±6 V at full scale: signal from channel 1 of 2') // => true
 */
export function soundSentence(sound: {
  readonly coding: string;
  readonly channels: number;
  readonly signal: number;
  readonly supply?: number;
  readonly second?: number;
  readonly rate: string;
  readonly fullScale: string;
  readonly samples: string;
  readonly withoutReading: number;
  readonly isCut: boolean;
}): string {
  return whole(sound, 'sound', () => {
    const channels = [
      say`signal from channel ${sound.signal} of ${sound.channels}`,
      ...(sound.supply === undefined ? [] : [say`supply from channel ${sound.supply}`]),
      ...(sound.second === undefined ? [] : [say`second track from channel ${sound.second}`]),
    ];
    const notes = [
      sound.withoutReading > 0 &&
        say` ${count(sound.withoutReading, 'sample')} without a reading told apart.`,
      sound.isCut &&
        ' The file ends before the samples that it announces; those that are there were read.',
    ];
    return say`Sound (${sound.coding}) at ${sound.rate}, ±${sound.fullScale} at full scale: ${channels.join(', ')}; ${sound.samples} samples.${notes.filter(Boolean).join('')}`;
  });
}

/**
 * What the recording could show.
 *
 * @example
 * const visible = { dropout: '2 ms', departure: '45 mV', departureOfSpan: '1.5 %', setBy: 'the noise' };
 * visibilitySentence(visible).includes('lasts 2 ms') // => true
 */
export function visibilitySentence(visible: {
  readonly dropout: string;
  readonly departure: string;
  readonly departureOfSpan?: string;
  readonly setBy: string;
}): string {
  return whole(visible, 'visible', () => {
    const { dropout, departure, departureOfSpan, setBy } = visible;
    const share = departureOfSpan ? say` (${departureOfSpan} of the span)` : '';
    return say`The shortest dropout that surely shows lasts ${dropout}; the smallest departure that shows is ${departure}${share}, set by ${setBy}.`;
  });
}

/**
 * Said where the samples were smoothed.
 *
 * @example
 * smoothedSentence('50 ms') // => 'The noise of neighbouring samples hangs together: they were smoothed over 50 ms or more.'
 */
export function smoothedSentence(over: string): string {
  return say`The noise of neighbouring samples hangs together: they were smoothed over ${over} or more.`;
}

/**
 * Said where no supply channel was recorded.
 *
 * @example
 * supplyAssumedSentence.includes('taken to hold its voltage') // => true
 */
export const supplyAssumedSentence =
  'The supply was not recorded; it was taken to hold its voltage throughout.';

/**
 * Said where nobody told what the instrument reads true to.
 *
 * @example
 * uncertaintyAssumedSentence.includes('tell it to the job') // => true
 */
export const uncertaintyAssumedSentence =
  'How true the instrument reads was not told; it is taken for true to 1 % of a reading, of 8 bits to 3 %: tell it to the job.';

/**
 * What the throttle did.
 *
 * @example
 * movementSentence({ openings: 2, closings: 2, snaps: 0, rebounds: 0 }) // => '2 openings and 2 closings.'
 */
export function movementSentence(movement: {
  readonly openings: number;
  readonly closings: number;
  readonly snaps: number;
  readonly rebounds: number;
}): string {
  return whole(movement, 'movement', () => {
    const { openings, closings, snaps, rebounds } = movement;
    const bySpring =
      snaps === 0
        ? ''
        : say`, ${snaps} of them by the spring${rebounds === 0 ? '' : say` with ${count(rebounds, 'rebound')} on the stop, which is normal`}`;
    return say`${count(openings, 'opening')} and ${count(closings, 'closing')}${bySpring}.`;
  });
}
