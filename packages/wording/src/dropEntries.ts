import { say } from './say.js';
import { whole } from './whole.js';

/** The entries of voltage drops in supply and ground. */
export type DropEntry =
  | 'unitReference'
  | 'referenceAtSensor'
  | 'sensorGround'
  | 'unitGround'
  | 'dropUncertainty'
  | 'leadCurrent'
  | 'dropCriterion';

/**
 * What each entry of a voltage drop is called.
 *
 * @example
 * dropLabels.sensorGround // => "Sensor's ground above the control unit's"
 */
export const dropLabels: Readonly<Record<DropEntry, string>> = {
  unitReference: 'Reference at the control unit',
  referenceAtSensor: 'Reference at the sensor',
  sensorGround: "Sensor's ground above the control unit's",
  unitGround: "Control unit's ground above battery minus",
  dropUncertainty: 'Uncertainty of each voltage',
  leadCurrent: 'Current in the leads',
  dropCriterion: 'Largest error that does not matter',
};

/**
 * What each entry of a voltage drop means, in one line.
 *
 * @example
 * dropHints.referenceAtSensor // => 'Supply terminal to ground terminal, plugged in and switched on.'
 */
export const dropHints: Readonly<Record<DropEntry, string>> = {
  unitReference: 'Its reference pin to its own ground pin.',
  referenceAtSensor: 'Supply terminal to ground terminal, plugged in and switched on.',
  sensorGround: "One tip at the sensor's ground terminal, one at the unit's ground pin.",
  unitGround: "One tip at the unit's ground pin, one at the battery's minus.",
  dropUncertainty: 'Standard uncertainty; a last digit of 1 mV has 0.3 mV.',
  leadCurrent: 'Measured in the supply lead; leave empty if it is not known.',
  dropCriterion: 'In percent of the reference (1 %: common practice, no source).',
};

/** What {@link dropWords} says of drops, every quantity written with its unit. */
export interface DropFacts {
  /** The larger of the two errors. */
  readonly worst: string;
  /** What it is compared with. */
  readonly criterion: string;
}

/**
 * Headings and sentences of voltage drops in supply and ground.
 *
 * @example
 * dropWords.small({ worst: '0.4 %', criterion: '1 %' }) // => 'The leads move the signal by up to 0.4 % of the reference: no more than the 1 % that does not matter. Leave them as they are.'
 */
export const dropWords = {
  readings: 'Voltages, everything plugged in and switched on',
  further: 'Current and limit',
  matters: (facts: DropFacts): string =>
    whole(
      facts,
      'facts',
      () =>
        say`The leads move the signal by up to ${facts.worst} of the reference, more than the ${facts.criterion} that does not matter.`,
    ),
  small: (facts: DropFacts): string =>
    whole(
      facts,
      'facts',
      () =>
        say`The leads move the signal by up to ${facts.worst} of the reference: no more than the ${facts.criterion} that does not matter. Leave them as they are.`,
    ),
  mendSupply: 'The larger part is in the supply lead: look at its connectors first.',
  mendGround: 'The larger part is in the ground lead: look at its connectors first.',
  fromBattery: (seen: string): string =>
    say`Read from the battery's minus, the closed signal would seem ${seen} of the reference too high; the control unit does not see all of that.`,
  numbers: 'The drops in numbers',
  what: 'What',
  value: 'Value',
  supplyDrop: 'Drop in the supply lead',
  groundDrop: 'Drop in the ground lead',
  bottomError: 'Error with the wiper at the bottom of the track',
  topError: 'Error with the wiper at the top of the track',
  supplyOhms: "Supply lead's resistance",
  groundOhms: "Ground lead's resistance",
  notDetermined: {
    'current-unknown': 'not known without the current',
    contradictory: 'the readings contradict each other',
  },
} as const;
