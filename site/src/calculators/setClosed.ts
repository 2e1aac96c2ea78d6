import { type ClosedSetting, closedSetting, type Volts } from '@truesweep/core';
import { settingHints, settingLabels, settingWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';

const volts = (initial: string) => ({ unit: 'V', low: 0, high: 60, initial }) as const;

const entries = {
  readingNow: volts('620 mV'),
  turned: { unit: '°', low: -360, high: 360, initial: '2°' },
  readingThen: volts('700 mV'),
  readingWanted: volts('500 mV'),
  readingUncertainty: { unit: 'V', low: 0, high: 1, initial: '3 mV' },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: two closed readings with the turn between them, and the reading that is wanted. */
export const setClosedForm: Form<typeof entries> = {
  groups: [
    {
      title: settingWords.readings,
      names: ['readingNow', 'turned', 'readingThen', 'readingWanted', 'readingUncertainty'],
    },
  ],
  entries,
  readings: ['readingNow', 'turned', 'readingThen', 'readingWanted'],
  labels: settingLabels,
  hints: settingHints,
};

/** How far to turn, from the first place and from where the sensor is now. */
export interface ClosedTurn {
  readonly setting: ClosedSetting;
  readonly turned: number;
  readonly wanted: Volts;
}

export function setClosed(values: Values<typeof entries>): ClosedTurn {
  const { readingNow, turned, readingThen, readingWanted, readingUncertainty } = values;
  const setting = closedSetting(
    readingNow,
    readingWanted,
    { kind: 'second-reading', degrees: turned, volts: readingThen },
    readingUncertainty,
  );
  return { setting, turned, wanted: readingWanted };
}
