import { say } from './say.js';

/** The entries of a check of a sensor of two states. */
export type StateEntry =
  | 'readsAs'
  | 'restLow'
  | 'restHigh'
  | 'operatedLow'
  | 'operatedHigh'
  | 'latched'
  | 'bothWays'
  | 'angleLow'
  | 'angleHigh'
  | 'atRest'
  | 'operated'
  | 'otherWay'
  | 'backAtRest'
  | 'keyCycled'
  | 'changedAt'
  | 'stateUncertainty'
  | 'angleUncertainty'
  | 'contactLeads'
  | 'stateSupply'
  | 'stateStatedSupply';

/**
 * What each entry of two states is called.
 *
 * @example
 * stateLabels.backAtRest // => 'Back at rest'
 */
export const stateLabels: Readonly<Record<StateEntry, string>> = {
  readsAs: 'It is read as',
  restLow: 'Lowest at rest',
  restHigh: 'Highest at rest',
  operatedLow: 'Lowest operated',
  operatedHigh: 'Highest operated',
  latched: 'It stays operated until the key is off',
  bothWays: 'It answers to both sides',
  angleLow: 'Angle that it must not change below',
  angleHigh: 'Angle that it must have changed at',
  atRest: 'At rest',
  operated: 'Operated',
  otherWay: 'Operated to the other side',
  backAtRest: 'Back at rest',
  keyCycled: 'After the key was off and on',
  changedAt: 'Angle at which it changed',
  stateUncertainty: 'Uncertainty of each reading',
  angleUncertainty: 'Uncertainty of the angle',
  contactLeads: 'What the test leads alone read',
  stateSupply: 'Supply at the sensor now',
  stateStatedSupply: 'Supply that the windows are stated for',
};

/**
 * What each entry of two states means, in one line.
 *
 * @example
 * stateHints.latched // => 'A lean-angle switch often does: the engine stays off until the key was.'
 */
export const stateHints: Readonly<Record<StateEntry, string>> = {
  readsAs: 'Volts at its signal terminal, or the ohms of a contact.',
  restLow: 'Upright, the stand up, nothing pressed; leave empty where there is no lowest.',
  restHigh: 'Of a contact that must be open there is no highest.',
  operatedLow: 'Tilted, the stand down, pressed.',
  operatedHigh: 'From the machine’s service manual, as all of these.',
  latched: 'A lean-angle switch often does: the engine stays off until the key was.',
  bothWays: 'A lean to the left and one to the right.',
  angleLow: 'From rest; leave both empty where the manual states none.',
  angleHigh: 'From rest.',
  atRest: 'Leave empty what was not read.',
  operated: 'Operate it all the way and hold it for a second or more.',
  otherWay: 'The same to the other side.',
  backAtRest: 'Before the key is touched.',
  keyCycled: 'At rest, the key off and on again.',
  changedAt: 'By a protractor, on the way there; leave empty if it was not read.',
  stateUncertainty: 'Standard uncertainty, in volts or ohms as the readings.',
  angleUncertainty: 'Standard uncertainty of the protractor.',
  contactLeads: 'Their tips held together, taken off of ohms; leave empty if it was not read.',
  stateSupply:
    'Measured at its plug: the windows then move with it; leave empty where they stand fast.',
  stateStatedSupply: 'Often 5 V; counts where the supply was measured.',
};

/**
 * Words of a check of a sensor of two states.
 *
 * @example
 * stateWords.needsUnit('180 Ω', 'volts') // => '“180 Ω” is no reading in volts, as chosen above.'
 */
export const stateWords = {
  readings: 'Read in each state',
  windows: 'From the service manual: what it must read',
  sensor: 'The sensor',
  angles: 'Where it changes',
  further: 'The instruments',
  kinds: { volts: 'volts', ohms: 'the ohms of a contact' },
  answers: { yes: 'yes', no: 'no' },
  needsLimit: 'Enter the lowest or the highest that is right in this state.',
  endlessLow:
    'OL is no lowest; write how many ohms it must have at least, such as 1 MΩ, or leave it empty.',
  needsUncertainty:
    'Enter the standard uncertainty of a reading, such as 10 mV or 0.1 Ω: no meter is free of it.',
  belowLow: 'This is below the lowest; write the higher of the two here.',
  overlap:
    'The two windows overlap; a reading in both would tell nothing. Look for swapped values.',
  needsAngle: 'Enter both angles, or none.',
  needsUnit: (text: string, kind: string): string =>
    say`“${text}” is no reading in ${kind}, as chosen above.`,
  notReading: (text: string): string =>
    say`“${text}” is no reading; write volts or ohms with their unit, such as 980 mV, 0.4 Ω or OL.`,
  atMost: (high: string): string => say`${high} or less`,
  atLeast: (low: string): string => say`${low} or more`,
  between: (low: string, high: string): string => say`${low} – ${high}`,
} as const;
