import { type RefitCheck, type RefitReadings, refitChecks } from '@truesweep/core';
import { refitHints, refitLabels, wayWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';

const later = { unit: 'V', low: 0, high: 60, initial: '', optional: true } as const;
const reference = { ...later, low: 0.1 } as const;

const entries = {
  closedLow: { ...later, example: '400 mV' },
  closedHigh: { ...later, example: '600 mV' },
  statedReference: { ...reference, example: '5 V' },
  coldReading: later,
  coldReference: reference,
  warmReading: later,
  warmReference: reference,
  learnedSignal: { unit: '%', low: 0, high: 1, initial: '', optional: true },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: what the manual allows, and what was read at the connector. */
export const refitForm: Form<typeof entries> = {
  groups: [
    { title: wayWords.stops, names: ['closedLow', 'closedHigh', 'statedReference'] },
    {
      title: wayWords.atConnector,
      names: ['coldReading', 'coldReference', 'warmReading', 'warmReference', 'learnedSignal'],
    },
  ],
  entries,
  labels: refitLabels,
  hints: refitHints,
};

/** The answers that are ticks. */
export interface RefitTicks {
  readonly asksRelearn: boolean;
  readonly relearned: boolean;
  readonly snapsShut: boolean;
}

/** The checks after refitting; what was not read or ticked is still to do. Nothing where the manual's window was not entered. */
export function refit(
  values: Values<typeof entries>,
  ticks: RefitTicks,
): readonly RefitCheck[] | undefined {
  const { closedLow, closedHigh, statedReference, learnedSignal } = values;
  if (closedLow === undefined || closedHigh === undefined || statedReference === undefined)
    return undefined;
  const at = (reading: number | undefined, beside: number | undefined) =>
    reading === undefined || beside === undefined
      ? undefined
      : { volts: reading, reference: beside };
  const cold = at(values.coldReading, values.coldReference);
  const warm = at(values.warmReading, values.warmReference);
  const readings: RefitReadings = {
    ...(cold && { cold }),
    ...(warm && { warm }),
    ...(learnedSignal !== undefined && { learnedClosed: learnedSignal }),
    ...(ticks.relearned && { relearned: true }),
    ...(ticks.snapsShut && { snapsShut: true }),
  };
  const nominal = (closedLow + closedHigh) / 2;
  return refitChecks(
    { low: closedLow, nominal, high: closedHigh },
    statedReference,
    ticks.asksRelearn,
    readings,
  );
}
