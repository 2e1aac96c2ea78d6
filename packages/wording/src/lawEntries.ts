import { say } from './say.js';

/** The entries of a thermistor's law, besides the rows of its table. */
export type LawEntry = 'law' | 'b' | 'bOhms' | 'bFrom' | 'bTo' | 'ohmsTolerance';

/**
 * What each entry of a thermistor's law is called.
 *
 * @example
 * lawLabels.bOhms // => 'Resistance at the first temperature'
 */
export const lawLabels: Readonly<Record<LawEntry, string>> = {
  law: 'What the manual states',
  b: 'B',
  bOhms: 'Resistance at the first temperature',
  bFrom: 'First temperature of B',
  bTo: 'Second temperature of B',
  ohmsTolerance: 'Tolerance of a single resistance',
};

/**
 * What each entry of a thermistor's law means, in one line.
 *
 * @example
 * lawHints.bTo // => 'A B belongs to two temperatures, such as 25 °C and 85 °C.'
 */
export const lawHints: Readonly<Record<LawEntry, string>> = {
  law: 'Rows of a table, or one B with its two temperatures.',
  b: 'From the data sheet, in kelvins: such as 3435.',
  bOhms: 'Often stated for 25 °C.',
  bFrom: 'The one that the resistance is stated for.',
  bTo: 'A B belongs to two temperatures, such as 25 °C and 85 °C.',
  ohmsTolerance: 'Used where a row has one value only, and with a B.',
};

/**
 * Words of the table that a thermistor's law is entered as.
 *
 * @example
 * lawWords.temperatureOf(2) // => 'Temperature 2'
 */
export const lawWords = {
  rows: 'From the service manual: temperature, lowest and highest resistance',
  moreRows: 'Further rows',
  one: 'One B in place of the rows',
  table: 'rows of a table',
  b: 'one B',
  temperatureOf: (row: number): string => say`Temperature ${row}`,
  lowestOf: (row: number): string => say`Lowest ${row}`,
  highestOf: (row: number): string => say`Highest ${row}`,
  temperatureHint: 'With its unit: 20 °C or 68 °F. Rows may stand in any order.',
  lowestHint: 'The lowest resistance that is right there; the only one where the manual has one.',
  highestHint:
    'The highest that is right there; empty in every row where the manual has one value.',
  needsOhms: 'Enter the resistance at this temperature, or leave the whole row empty.',
  needsTemperature:
    'Enter the temperature of this row with its unit, or leave the whole row empty.',
  needsTwo: 'Enter two rows or more; one row draws no curve.',
  needsAllHighest: 'Enter the highest in every row, or in none.',
  twice: (row: number): string =>
    say`Row ${row} has this temperature already; each row needs its own.`,
  belowLowest: 'This is below the lowest; write the higher of the two here.',
  rises: (row: number): string =>
    say`An NTC has less when it is warmer, but row ${row} is warmer and has no less. Look for swapped or misread values.`,
  beyond: (given: string, lowest: string, highest: string): string =>
    say`${given} lies beyond what the manual states, ${lowest} to ${highest}; nothing is extrapolated. Add a row, or take a temperature within.`,
  sameTwo: 'This is the first temperature again; a B belongs to two.',
} as const;
