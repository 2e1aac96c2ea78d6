import {
  type DropReadings,
  type SupplyAndGroundDrop,
  supplyAndGroundDrop,
  type Volts,
} from '@truesweep/core';
import { dropHints, dropLabels, dropWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';

const ground = (initial: string) => ({ unit: 'V', low: -60, high: 60, initial }) as const;

const entries = {
  unitReference: { unit: 'V', low: 0.1, high: 60, initial: '5 V' },
  referenceAtSensor: { unit: 'V', low: 0.1, high: 60, initial: '4.86 V' },
  sensorGround: ground('95 mV'),
  unitGround: ground('20 mV'),
  dropUncertainty: { unit: 'V', low: 0, high: 1, initial: '3 mV' },
  leadCurrent: { unit: 'A', low: 1e-6, high: 100, initial: '', optional: true },
  dropCriterion: { unit: '%', low: 0, high: 1, initial: '1 %' },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: voltages along supply and ground, the current where it is known, and what does not matter. */
export const supplyDropForm: Form<typeof entries> = {
  groups: [
    {
      title: dropWords.readings,
      names: ['unitReference', 'referenceAtSensor', 'sensorGround', 'unitGround'],
    },
    { title: dropWords.further, names: ['dropUncertainty', 'leadCurrent', 'dropCriterion'] },
  ],
  entries,
  readings: ['unitReference', 'referenceAtSensor', 'sensorGround', 'unitGround'],
  labels: dropLabels,
  hints: dropHints,
};

/** What the drops do, with the limit that they are held to. */
export interface JudgedDrop {
  readonly drop: SupplyAndGroundDrop;
  readonly groundDrop: Volts;
  readonly criterion: number;
}

/** The voltages as they were read. */
export function dropReadings(values: Values<typeof entries>): DropReadings {
  const { unitReference, referenceAtSensor, sensorGround, unitGround, dropUncertainty } = values;
  return {
    reference: unitReference,
    referenceAtSensor,
    sensorGround,
    unitGround,
    uncertainty: dropUncertainty,
  };
}

export function supplyDrop(values: Values<typeof entries>): JudgedDrop {
  const { sensorGround, leadCurrent, dropCriterion } = values;
  const drop = supplyAndGroundDrop(
    dropReadings(values),
    dropCriterion,
    leadCurrent === undefined ? undefined : { kind: 'amps', amps: leadCurrent },
  );
  return { drop, groundDrop: sensorGround, criterion: dropCriterion };
}
