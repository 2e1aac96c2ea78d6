/**
 * What parts the fields of a text file.
 *
 * @example
 * delimiterLabels[';'] // => 'semicolons'
 */
export const delimiterLabels: Readonly<Record<',' | ';' | '\t' | '|' | ' ', string>> = {
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
 * encodingLabels['utf-16'] // => 'UTF-16'
 */
export const encodingLabels: Readonly<Record<'utf-8' | 'utf-16' | 'windows-1252', string>> = {
  'utf-8': 'UTF-8',
  'utf-16': 'UTF-16',
  'windows-1252': 'Windows-1252',
};

/**
 * Where the unit of a column came from.
 *
 * @example
 * unitFromLabels.heading // => 'by its heading'
 */
export const unitFromLabels: Readonly<Record<'option' | 'heading' | 'assumed', string>> = {
  option: 'as told',
  heading: 'by its heading',
  assumed: 'assumed',
};

/**
 * What was read from a column of a file. Columns are counted from 1.
 *
 * @example
 * const column = { number: 2, name: 'wiper', unit: 'V', unitFrom: 'by its heading' };
 * columnSentence(column) // => 'column 2 “wiper” in V (by its heading)'
 */
export function columnSentence(column: {
  readonly number: number;
  readonly name: string;
  readonly unit: string;
  readonly unitFrom: string;
}): string {
  const name = column.name && ` “${column.name}”`;
  return `column ${column.number}${name} in ${column.unit} (${column.unitFrom})`;
}

/**
 * What was taken for what when a file was read.
 *
 * @example
 * const columns = { time: 'column 1 in s (assumed)', signal: 'column 2 in V (assumed)' };
 * readingSentence({ ...columns, rows: '12001', delimiter: 'tabs', encoding: 'UTF-8', withoutReading: 0 }).includes('12001 rows') // => true
 */
export function readingSentence(reading: {
  readonly time: string;
  readonly signal: string;
  readonly supply?: string;
  readonly rows: string;
  readonly delimiter: string;
  readonly encoding: string;
  readonly withoutReading: number;
}): string {
  const { withoutReading } = reading;
  const left =
    withoutReading === 0 ? '' : ` ${count(withoutReading, 'row')} without a reading left out.`;
  return `Time from ${reading.time}, signal from ${reading.signal}${reading.supply ? `, supply from ${reading.supply}` : ''}; ${reading.rows} rows, fields parted by ${reading.delimiter}, text in ${reading.encoding}.${left}`;
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
  const { dropout, departure, departureOfSpan, setBy } = visible;
  const share = departureOfSpan ? ` (${departureOfSpan} of the span)` : '';
  return `The shortest dropout that surely shows lasts ${dropout}; the smallest departure that shows is ${departure}${share}, set by ${setBy}.`;
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
  const { openings, closings, snaps, rebounds } = movement;
  const bySpring =
    snaps === 0
      ? ''
      : `, ${snaps} of them by the spring${rebounds === 0 ? '' : ` with ${count(rebounds, 'rebound')} on the stop, which is normal`}`;
  return `${count(openings, 'opening')} and ${count(closings, 'closing')}${bySpring}.`;
}

function count(number: number, what: string): string {
  return `${number} ${what}${number === 1 ? '' : 's'}`;
}
