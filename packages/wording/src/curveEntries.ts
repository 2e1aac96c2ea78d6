import { say } from './say.js';

/** The entries of a curve's fit besides its points. */
export type CurveEntry = 'pointUncertainty' | 'pullUpSupply' | 'rangeFrom' | 'rangeTo';

/**
 * What each entry of a curve's fit is called.
 *
 * @example
 * curveLabels.pointUncertainty // => 'Uncertainty of each point'
 */
export const curveLabels: Readonly<Record<CurveEntry, string>> = {
  pointUncertainty: 'Uncertainty of each point',
  pullUpSupply: 'Supply of the pull-up',
  rangeFrom: 'To be told apart from',
  rangeTo: 'To be told apart up to',
};

/**
 * What each entry of a curve's fit means, in one line.
 *
 * @example
 * curveHints.rangeTo // => 'For the pull-up that shows most there; within the measured points.'
 */
export const curveHints: Readonly<Record<CurveEntry, string>> = {
  pointUncertainty:
    'As a temperature, thermometer and meter together, standard uncertainty; leave empty if it is not known.',
  pullUpSupply: 'That the pairs of the service table are stated for, often 5 V.',
  rangeFrom: 'The coldest that matters; leave empty where no pull-up is to be chosen.',
  rangeTo: 'For the pull-up that shows most there; within the measured points.',
};

/**
 * Words of the page that fits a curve to readings.
 *
 * @example
 * curveWords.ohmsOf(2) // => 'Resistance 2'
 */
export const curveWords = {
  points: 'Measured: temperature and resistance',
  certainty: 'How sure they are',
  pullUp: 'Its pull-up, from pairs of a service table: ohms and volts',
  choose: 'A pull-up of one’s own',
  temperatureOf: (row: number): string => say`Temperature ${row}`,
  ohmsOf: (row: number): string => say`Resistance ${row}`,
  pairOhmsOf: (row: number): string => say`Ohms of pair ${row}`,
  pairVoltsOf: (row: number): string => say`Volts of pair ${row}`,
  temperatureHint: 'By a thermometer beside the sensor, with its unit.',
  ohmsHint: 'By an ohmmeter at its terminals, after it settled.',
  pairOhmsHint: 'Resistance that the manual states with a voltage; leave empty if it states none.',
  pairVoltsHint: 'The voltage that it states with it.',
  oneB: (b: string, from: string, to: string): string =>
    say`B is ${b} between ${from} and ${to}: two points make one B and leave nothing to check it by.`,
  threePoints:
    'Three points make Steinhart and Hart’s law exactly and leave nothing to check it by; a fourth would.',
  fitted: (count: number, worst: string): string =>
    say`Steinhart and Hart’s law runs through ${count} points, none farther off than ${worst}.`,
  range: (from: string, to: string): string =>
    say`It holds from ${from} to ${to}, and nowhere else.`,
  chiSquare: (chiSquare: string, freedom: number): string =>
    say`Chi-square is ${chiSquare}, where about ${freedom} is expected of points as sure as stated.`,
  tooFar: 'That is far more: a point is misread, or the stated uncertainty is too small.',
  outlier: (row: number, chance: string): string =>
    say`Point ${row} doesn’t belong to the others: chance makes one stand out so in ${chance} of such fits. Read it again before you use the curve.`,
  foundPullUp: (ohms: string, low: string, high: string): string =>
    say`The pairs give a pull-up of ${ohms}, between ${low} and ${high}.`,
  chosenPullUp: (ohms: string, slope: string): string =>
    say`A pull-up of ${ohms} tells temperatures apart best: at least ${slope} for each kelvin.`,
  coefficients: 'The law',
  coefficient: 'Coefficient',
  value: 'Value',
  residuals: 'Points beside the curve',
  point: 'Point',
  temperature: 'Measured',
  ohms: 'Resistance',
  ofCurve: 'By the curve',
  off: 'Off by',
  a: 'A, per K',
  b: 'B, per K',
  c: 'C, per K',
  oneBRow: 'B, K',
  atFirst: 'Resistance at the first temperature',
  needsOhms: 'Enter the resistance measured at this temperature, or leave the whole row empty.',
  needsTemperature:
    'Enter the temperature of this row with its unit, or leave the whole row empty.',
  needsTwo: 'Enter two points or more; one makes no curve.',
  twice: (row: number): string =>
    say`Point ${row} has this already; each point needs a temperature and a resistance of its own.`,
  rises: (row: number): string =>
    say`An NTC has less when it is warmer, but point ${row} is warmer and has no less. Look for swapped or misread values.`,
  needsVolts: 'Enter the volts of this pair, or leave it empty.',
  needsPairOhms: 'Enter the ohms of this pair, or leave it empty.',
  atSupply: 'A pull-up leaves less than its supply; write a voltage below that.',
  outside: (from: string, to: string): string =>
    say`The curve is known from ${from} to ${to}; write a temperature within.`,
  notRising: 'Write a temperature above the first one.',
} as const;
