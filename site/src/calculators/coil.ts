import type { Celsius, Ohms } from '@truesweep/core';
import {
  type CoilCurrent,
  coilCurrent,
  type FedCoil,
  type Judgement,
  judgeWinding,
  resistanceAtTemperature,
  type WindingAdvice,
  type WindingCheck,
  type WindingReading,
  type WindingUnsaid,
} from '@truesweep/core/winding';
import { type CoilEntry, coilHints, coilLabels, coilWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';
import { inductanceEntry } from '../forms/inductanceEntry.js';
import { measureEntry } from '../forms/measureEntry.js';

const celsius = (initial: string) => measureEntry('temperature', [-60, 300], initial);
const limit = (initial: string) =>
  ({ unit: 'Ω', low: 0.001, high: 1e8, initial, optional: true }) as const;

const entries = {
  coilLow: limit('765 Ω'),
  coilHigh: limit('935 Ω'),
  statedAt: celsius('20 °C'),
  coilOhms: { unit: 'Ω', low: 0, high: 1e9, initial: '1012 Ω', overRange: true },
  coilTemperature: celsius('68 °C'),
  coilTemperatureUncertainty: measureEntry('temperature-difference', [0, 50], '3 K'),
  coilLeads: { unit: 'Ω', low: 0, high: 10, initial: '0.2 Ω', optional: true },
  coilUncertainty: { unit: '%', low: 0, high: 0.1, initial: '0.3 %' },
  conductor: { unit: 'choice', initial: 'copper', choices: coilWords.conductors },
  feed: { unit: 'V', low: 0.1, high: 60, initial: '12 V', optional: true },
  inductance: inductanceEntry(''),
} as const satisfies Readonly<Record<CoilEntry, Entry>>;

/** The form: a winding's limits, what was read at which temperature, and what it works on. */
export const coilForm: Form<typeof entries> = {
  groups: [
    { title: coilWords.readings, names: ['coilOhms', 'coilLeads', 'coilTemperature'] },
    { title: coilWords.manual, names: ['coilLow', 'coilHigh', 'statedAt'] },
    { title: coilWords.currentTitle, names: ['feed', 'inductance'] },
    {
      title: coilWords.further,
      names: ['coilTemperatureUncertainty', 'coilUncertainty', 'conductor'],
      folded: true,
    },
  ],
  entries,
  readings: ['coilOhms', 'coilLeads', 'coilTemperature', 'coilLow', 'coilHigh'],
  labels: coilLabels,
  hints: coilHints,
  check: ({ coilLow, coilHigh }): Refusals<typeof entries> => ({
    ...(coilLow === undefined && coilHigh === undefined && { coilLow: coilWords.needsLimit }),
    ...(coilLow !== undefined &&
      coilHigh !== undefined &&
      coilHigh < coilLow && { coilHigh: coilWords.belowLow }),
  }),
};

/** Limits of a winding at a temperature. */
export interface CoilAt {
  readonly temperature: Celsius;
  readonly low?: Ohms;
  readonly high?: Ohms;
}

/** What the reading of a coil says. */
export interface JudgedCoil {
  readonly judgement: Judgement<WindingCheck, WindingAdvice, WindingUnsaid>;
  readonly readings: readonly WindingReading[];
  readonly here: CoilAt;
  readonly rows: readonly CoilAt[];
  /** Left out where no voltage was entered, or nothing connects. */
  readonly current?: CoilCurrent;
  readonly feed?: number;
}

/** Where a winding's limits are looked up, °C. */
const temperatures: readonly Celsius[] = [0, 20, 40, 60, 80, 100];

export type CoilValues = Values<typeof entries>;

/** The coil on what feeds it, its leads taken off as the verdict takes them off; nothing where it isn't fed or doesn't conduct. */
export function fedCoil(values: CoilValues, measured: Ohms | undefined): FedCoil | undefined {
  const { feed, inductance, conductor, coilTemperature } = values;
  const ohms = measured ?? 0;
  if (feed === undefined || !(ohms > 1e-3) || ohms === Number.POSITIVE_INFINITY) return undefined;
  return {
    ohms,
    at: coilTemperature,
    conductor: { kind: conductor },
    volts: feed,
    temperature: coilTemperature,
    ...(inductance !== undefined && { henries: inductance }),
  };
}

export function coil(values: CoilValues): JudgedCoil {
  const { coilLow, coilHigh, statedAt, conductor, coilOhms, coilLeads, coilTemperature } = values;
  const wire = { at: statedAt, conductor: { kind: conductor } };
  const readings: readonly WindingReading[] = [
    {
      ohms: coilOhms,
      uncertainty: coilOhms === Number.POSITIVE_INFINITY ? 0 : values.coilUncertainty * coilOhms,
      ...(coilLeads !== undefined && { leads: coilLeads }),
      temperature: coilTemperature,
      temperatureUncertainty: values.coilTemperatureUncertainty,
    },
  ];
  const limits = {
    ...(coilLow !== undefined && { low: coilLow }),
    ...(coilHigh !== undefined && { high: coilHigh }),
  };
  const at = (temperature: Celsius): CoilAt => ({
    temperature,
    ...Object.fromEntries(
      Object.entries(limits).map(([name, ohms]) => [
        name,
        resistanceAtTemperature({ ohms, ...wire }, temperature),
      ]),
    ),
  });
  const judgement = judgeWinding({ ...limits, ...wire }, readings);
  const fed = fedCoil(values, judgement.checks[0]?.measured);
  return {
    judgement,
    readings,
    here: at(coilTemperature),
    rows: temperatures.map(at),
    ...(fed && { feed: fed.volts, current: coilCurrent(fed) }),
  };
}
