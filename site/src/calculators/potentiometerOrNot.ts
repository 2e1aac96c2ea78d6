import type { Ohms } from '@truesweep/core';
import {
  type PotentiometerFinding,
  recognisePotentiometer,
  type StarvedSupply,
  starvedSupply,
} from '@truesweep/core/contactless';
import {
  type ContactlessEntry,
  contactlessHints,
  contactlessLabels,
  contactlessWords,
} from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';

const ohms = (initial: string) =>
  ({ unit: 'Ω', low: 0, high: 1e9, initial, overRange: true }) as const;

const entries = {
  endToEnd: ohms('5 kΩ'),
  endToEndReversed: ohms('5 kΩ'),
  oneToWiper: ohms('900 Ω'),
  otherToWiper: ohms('4.2 kΩ'),
  oneMoved: { ...ohms('3.9 kΩ'), optional: true },
  otherMoved: { ...ohms('1.2 kΩ'), optional: true },
  ohmmeter: { unit: '%', low: 0, high: 0.3, initial: '1 %' },
  fedFrom: { unit: 'V', low: 0.1, high: 60, initial: '5 V' },
  throughResistor: { unit: 'Ω', low: 0, high: 1e6, initial: '1 kΩ' },
  takes: { unit: 'A', low: 1e-5, high: 1, initial: '10 mA' },
  worksFrom: { unit: 'V', low: 0.1, high: 60, initial: '4.5 V' },
} as const satisfies Readonly<Record<ContactlessEntry, Entry>>;

/** The form: an ohmmeter's readings of three terminals, and a contactless sensor behind a resistor. */
export const potentiometerOrNotForm: Form<typeof entries> = {
  groups: [
    {
      title: contactlessWords.readings,
      names: ['endToEnd', 'endToEndReversed', 'oneToWiper', 'otherToWiper'],
    },
    { title: contactlessWords.moved, names: ['oneMoved', 'otherMoved'] },
    {
      title: contactlessWords.starving,
      names: ['fedFrom', 'throughResistor', 'takes', 'worksFrom', 'ohmmeter'],
      folded: true,
    },
  ],
  entries,
  readings: [
    'endToEnd',
    'endToEndReversed',
    'oneToWiper',
    'otherToWiper',
    'oneMoved',
    'otherMoved',
  ],
  labels: contactlessLabels,
  hints: contactlessHints,
  check: ({ oneMoved, otherMoved }) => {
    if ((oneMoved === undefined) === (otherMoved === undefined)) return {};
    return oneMoved === undefined
      ? { oneMoved: contactlessWords.needsBoth }
      : { otherMoved: contactlessWords.needsBoth };
  },
};

/** What three terminals are, and what a limiting resistor would leave a contactless sensor. */
export interface RecognisedTerminals {
  readonly finding: PotentiometerFinding;
  readonly starving: StarvedSupply;
  readonly limiter: Ohms;
  readonly needs: number;
  readonly endToEnd: Ohms;
  readonly sum: Ohms;
  readonly difference: Ohms;
}

export function potentiometerOrNot(values: Values<typeof entries>): RecognisedTerminals {
  const { endToEnd, endToEndReversed, oneToWiper, otherToWiper, oneMoved, otherMoved } = values;
  const difference = Math.abs(endToEnd - endToEndReversed);
  return {
    finding: recognisePotentiometer({
      endToEnd,
      endToEndReversed,
      oneToWiper,
      otherToWiper,
      ...(oneMoved !== undefined &&
        otherMoved !== undefined && { moved: { oneToWiper: oneMoved, otherToWiper: otherMoved } }),
      uncertainty: values.ohmmeter,
    }),
    starving: starvedSupply({
      supply: values.fedFrom,
      limiter: values.throughResistor,
      current: values.takes,
      least: values.worksFrom,
    }),
    limiter: values.throughResistor,
    needs: values.worksFrom,
    endToEnd,
    sum: oneToWiper + otherToWiper,
    // Two that are open do not differ.
    difference: Number.isNaN(difference) ? 0 : difference,
  };
}
