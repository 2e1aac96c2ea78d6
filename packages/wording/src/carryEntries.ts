import { say } from './say.js';
import { whole } from './whole.js';

/** The entries for carrying readings between bench and vehicle, besides those of the hook-up. */
export type CarryEntry =
  | 'benchReading'
  | 'vehicleReading'
  | 'reference'
  | 'vehiclePullDown'
  | 'vehiclePullUp'
  | 'learnedClosed'
  | 'scanPercent';

/**
 * What each entry for carrying a reading is called.
 *
 * @example
 * carryLabels.reference // => "Vehicle's reference"
 */
export const carryLabels: Readonly<Record<CarryEntry, string>> = {
  benchReading: 'Reading on the bench',
  vehicleReading: 'Reading stated for the vehicle',
  reference: "Vehicle's reference",
  vehiclePullDown: "Control unit's input resistance",
  vehiclePullUp: "Control unit's pull-up resistor",
  learnedClosed: 'Closed signal that was learned',
  scanPercent: 'Throttle shown by a scan tool',
};

/**
 * What each entry for carrying a reading means, in one line.
 *
 * @example
 * carryHints.vehicleReading // => 'As the service data states it, such as its closed voltage.'
 */
export const carryHints: Readonly<Record<CarryEntry, string>> = {
  benchReading: 'What the bench showed at the place in question.',
  vehicleReading: 'As the service data states it, such as its closed voltage.',
  reference: 'Measured at the sensor’s connector, supply to ground.',
  vehiclePullDown: 'From the signal to ground; often 47 kΩ to 1 MΩ.',
  vehiclePullUp: 'From the signal to the reference; leave empty for none.',
  learnedClosed: 'In volts at the reference; leave empty if it is not known.',
  scanPercent: 'Absolute throttle position; leave empty if none was read.',
};

/** A reading carried to the vehicle, every quantity written with its unit. */
export interface CarriedFacts {
  /** The reading at the bench. */
  readonly bench: string;
  /** The reading at the vehicle. */
  readonly vehicle: string;
  /** Of the reference, such as `9.8 %`. */
  readonly ratio: string;
  /** The vehicle's reference voltage. */
  readonly reference: string;
}

/**
 * Headings and sentences of readings carried between bench and vehicle.
 *
 * @example
 * carryWords.toBench({ vehicle: '500 mV', bench: '420 mV' }) // => 'Where the service data states 500 mV on the vehicle, this bench shows 420 mV.'
 */
export const carryWords = {
  readings: 'Readings',
  vehicle: "The vehicle's side",
  bench: 'Sensor and bench hook-up',
  scanTool: 'Scan tool',
  toVehicle: (facts: CarriedFacts): string => {
    return whole(facts, 'facts', () => {
      const { bench, vehicle, ratio, reference } = facts;
      return say`Where the bench shows ${bench}, the control unit will see ${vehicle}: ${ratio} of its ${reference} reference.`;
    });
  },
  toBench: (facts: { readonly vehicle: string; readonly bench: string }): string => {
    return whole(facts, 'facts', () => {
      return say`Where the service data states ${facts.vehicle} on the vehicle, this bench shows ${facts.bench}.`;
    });
  },
  scan: (absolute: string, relative: string | undefined): string =>
    say`A scan tool will show ${absolute} absolute${relative === undefined ? '' : say`, ${relative} relative to the learned closed position`}.`,
  notCarried: {
    impossible: (side: string): string =>
      say`The reading ${side} is out of reach of this sensor on that hook-up: no place of the wiper gives it. Check what was entered, then leads and terminals.`,
    ambiguous: (side: string): string =>
      say`More than one place of the wiper gives the reading ${side}: it can't be carried over.`,
    insensitive: (side: string): string =>
      say`The reading ${side} hardly changes with the wiper there: it can't be carried over.`,
  },
  onBench: 'on the bench',
  onVehicle: 'on the vehicle',
  numbers: 'The same place on bench and vehicle',
  place: 'Place',
  benchVolts: 'Bench',
  vehicleVolts: 'Vehicle',
  wiper: 'Wiper on the track',
  scanTable: 'What a scan tool shows there (one count either way in brackets)',
  absolute: 'Absolute',
  relative: 'Relative',
  fromScan: (percent: string, volts: string, low: string, high: string): string =>
    say`A scan tool that shows ${percent} absolute stands for ${volts} at the control unit (${low} to ${high}).`,
  closed: 'Throttle closed',
  open: 'Throttle open',
  read: 'As read on the bench',
  stated: 'As stated for the vehicle',
} as const;
