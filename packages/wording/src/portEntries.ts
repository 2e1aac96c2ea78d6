import { say } from './say.js';

/** The entries of a pressure sensor's check, besides the points of its table and the pump's steps. */
export type PortEntry =
  | 'reference'
  | 'answers'
  | 'tableSupply'
  | 'gain'
  | 'offset'
  | 'lowestPressure'
  | 'highestPressure'
  | 'error'
  | 'errorFactor'
  | 'supplyLow'
  | 'supplyHigh'
  | 'supply'
  | 'openVolts'
  | 'voltsUncertainty'
  | 'pumpUncertainty';

/**
 * What each entry of a pressure sensor's check is called.
 *
 * @example
 * portLabels.reference // => 'Its pressure counts from'
 */
export const portLabels: Readonly<Record<PortEntry, string>> = {
  reference: 'Its pressure counts from',
  answers: 'What the manual states',
  tableSupply: 'Supply that the volts are stated for',
  gain: 'Output over supply for each kPa',
  offset: 'Output over supply at 0 kPa',
  lowestPressure: 'Lowest pressure that it is made for',
  highestPressure: 'Highest pressure that it is made for',
  error: 'Error of a sound one, either way',
  errorFactor: 'Factor on that error at this temperature',
  supplyLow: 'Lowest supply that it is made for',
  supplyHigh: 'Highest supply that it is made for',
  supply: 'Supply at the sensor now',
  openVolts: 'Output with the port open',
  voltsUncertainty: 'Uncertainty of each voltage',
  pumpUncertainty: 'Uncertainty of the pump’s gauge',
};

/**
 * What each entry of a pressure sensor's check means, in one line.
 *
 * @example
 * portHints.supply // => 'Measured at its plug with the readings: the output is a part of it.'
 */
export const portHints: Readonly<Record<PortEntry, string>> = {
  reference:
    'A manifold sensor usually shows about 4 V with its port open and is absolute; a gauge one shows its lowest. Look it up, never guess.',
  answers: 'Points of a table, or the line of a data sheet.',
  tableSupply: 'Often 5 V.',
  gain: 'K₁ of output = supply · (K₁ · pressure + K₂): a plain number, such as 0.0088.',
  offset: 'K₂: a plain number, such as −0.085.',
  lowestPressure: 'With its unit, by the reference above.',
  highestPressure: 'The same, of its upper end.',
  error: 'From the data sheet, as a pressure with its unit.',
  errorFactor: 'Data sheets have a larger one when it is cold or hot; 1 near 25 °C.',
  supplyLow: 'Leave empty if it is not known.',
  supplyHigh: 'The same.',
  supply: 'Measured at its plug with the readings: the output is a part of it.',
  openVolts: 'Signal to the sensor’s ground, the hose off; leave empty if it was not read.',
  voltsUncertainty: 'Standard uncertainty; a last digit of 10 mV has 3 mV.',
  pumpUncertainty: 'Standard uncertainty, with its unit: half of the ± that it is good for.',
};

/**
 * Words of a pressure sensor's check.
 *
 * @example
 * portWords.pumpOf(1) // => 'Pump 1'
 */
export const portWords = {
  sensor: 'The sensor',
  points: 'From the service manual: pressure and output',
  line: 'The line of a data sheet in place of the points',
  limits: 'What a sound one may be off, and its supply',
  readings: 'Read now',
  steps: 'Under a hand pump: what its gauge shows, and the output',
  uncertainties: 'The instruments',
  references: { absolute: 'nothing: absolute', gauge: 'the air: gauge' },
  kinds: { table: 'points of a table', line: 'a line' },
  pressureOf: (row: number): string => say`Pressure ${row}`,
  voltsOf: (row: number): string => say`Output ${row}`,
  pumpOf: (row: number): string => say`Pump ${row}`,
  pumpedVoltsOf: (row: number): string => say`Output at pump ${row}`,
  pressureHint: 'With its unit, by the reference above.',
  voltsHint: 'At the supply that the manual states it for.',
  pumpHint:
    'With its unit and what it counts from: 18 inHg vacuum, −60 kPa gauge, 40 kPa absolute.',
  pumpedVoltsHint: 'Signal to the sensor’s ground, the pump holding.',
  mustRead: (port: string, low: string, high: string): string =>
    say`With its port open, in air of ${port}, a sound one has ${low} to ${high} now.`,
  shown: (pressure: string): string => say`A scan tool shows ${pressure} absolute of it.`,
  notNumber: (text: string): string =>
    say`“${text}” is no plain number; write one such as 0.0088 or −0.085.`,
  needsVolts: 'Enter the output at this pressure, or leave the whole row empty.',
  needsPressure: 'Enter the pressure of this row with its unit, or leave the whole row empty.',
  needsTwo: 'Enter two points or more; one draws no line.',
  twice: (row: number): string => say`Point ${row} has this pressure already.`,
  turns: 'The output must rise, or fall, all the way; look for swapped or misread values.',
  belowEmpty: 'No absolute pressure is below 0; it may be meant as gauge.',
  notAbove: 'This must be above the lowest.',
  caution:
    'A hand pump only, never compressed air; no fuel vapour near the bench (common practice, no source).',
  needsReading: 'Enter the output with the port open, or one under the pump.',
  needsPump: 'Enter what the pump’s gauge shows, with its unit and vacuum, gauge or absolute.',
  needsPumpedVolts: 'Enter the output at this step, or leave the whole row empty.',
  beyond: (pressure: string, lowest: string, highest: string): string =>
    say`That is ${pressure} at the port, beyond the sensor’s ${lowest} to ${highest}; nothing is extrapolated.`,
  openBeyond: (pressure: string, lowest: string, highest: string): string =>
    say`The open port has ${pressure}, beyond the sensor’s ${lowest} to ${highest}. Is it absolute or gauge?`,
  emptySpace: 'No pump goes below empty space; it may be meant as an absolute pressure.',
  openAt: (pressure: string): string => say`Port open, ${pressure}`,
  pumpedAt: (pressure: string): string => say`Pumped to ${pressure}`,
  table: 'What a sound one has now',
  pressure: 'Pressure at the port',
  lowest: 'Lowest',
  nominal: 'Middle',
  highest: 'Highest',
} as const;
