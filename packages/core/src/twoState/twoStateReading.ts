import { InputError } from '../errors.js';
import { checkFields, type FieldRules } from '../fields.js';
import { between, resistance } from '../guard.js';
import type { Degrees, Ohms, Volts } from '../units.js';
import type { TwoStateSensor } from './twoStateSensor.js';

/**
 * In which state it was read, in the order in which one reads them: at rest, operated (tilted to one side), operated the other way (tilted to the other
 * side), back at rest, after the key was off and on again.
 */
export type TwoStateAt = 'rest' | 'operated' | 'operated-other-way' | 'back-at-rest' | 'key-cycled';

export const states: readonly TwoStateAt[] = [
  'rest',
  'operated',
  'operated-other-way',
  'back-at-rest',
  'key-cycled',
];

/** One reading of a sensor of two states. */
export interface TwoStateReading {
  /** In which state it was read. */
  readonly state: TwoStateAt;
  /** What was read: V between −100 and 100 of the kinds `volts` and `ratio`; of `ohms` Ω, 0 or more, Infinity where nothing connects. */
  readonly value: number;
  /** Its standard uncertainty, V or Ω, 0 or more; of Ω once the leads are off. */
  readonly uncertainty: number;
  /** The supply at the sensor's terminals, V, from 0.1 to 100: needed of the kind `ratio`, and of no other. */
  readonly supply?: Volts;
  /** Its standard uncertainty, V, 0 to 100; 0 when left out. */
  readonly supplyUncertainty?: Volts;
  /** What the test leads alone read, Ω, 0 to 100, of the kind `ohms` only; left out they are not known: 0 to 0.2 Ω, all alike likely. */
  readonly leads?: Ohms;
  /** The angle from rest at which it changed on the way to an operated state, °, 0 to 180; left out where nobody read it. */
  readonly changedAt?: Degrees;
  /** Standard uncertainty of that angle, °, 0 to 180; 0 when left out. */
  readonly angleUncertainty?: Degrees;
}

const some = between(0, 1e9);
const volts = between(-100, 100, 'V');
const shared: FieldRules = {
  state: states,
  uncertainty: some,
  'changedAt?': between(0, 180, '°'),
  'angleUncertainty?': between(0, 180, '°'),
};

const byKind: Readonly<Record<TwoStateSensor['kind'], FieldRules>> = {
  volts: { ...shared, value: volts },
  ratio: {
    ...shared,
    value: volts,
    supply: between(0.1, 100, 'V'),
    'supplyUncertainty?': between(0, 100, 'V'),
  },
  ohms: { ...shared, value: resistance, 'leads?': between(0, 100, 'Ω') },
};

/** A rule for readings of one kind of sensor. */
export function readingRule(kind: TwoStateSensor['kind']) {
  return (value: unknown, path: string): void => {
    checkFields(value, path, byKind[kind]);
    const { state, changedAt } = value as TwoStateReading;
    if (changedAt === undefined || /^operated/.test(state)) return;
    throw new InputError(
      'unexpected',
      `${path}.changedAt`,
      `${path}.changedAt stands with the state “${state}”; it belongs to an operated one.`,
    );
  };
}
