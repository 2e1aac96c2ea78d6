import { findPins, type PinFinding, type PinReading, type Stop } from '@truesweep/core';
import { pairHint, pairLabel, pinWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';

type Terminal = 'A' | 'B' | 'C' | 'D' | 'E' | 'F';
type Pair =
  | 'AB'
  | 'AC'
  | 'BC'
  | 'AD'
  | 'BD'
  | 'CD'
  | 'AE'
  | 'BE'
  | 'CE'
  | 'DE'
  | 'AF'
  | 'BF'
  | 'CF'
  | 'DF'
  | 'EF';

/** The name of a reading: its pair and where the throttle was held. */
type PairEntry = `${Pair}${'closed' | 'open'}`;

const ohms = (initial: string) =>
  ({ unit: 'Ω', low: 0, high: 1e9, initial, optional: true, overRange: true }) as const;

const meter = {
  meterError: { unit: '%', low: 0, high: 0.5, initial: '1 %' },
  meterOhms: { unit: 'Ω', low: 0, high: 1e4, initial: '1 Ω' },
} as const satisfies Readonly<Record<string, Entry>>;

const stops: readonly Stop[] = ['closed', 'open'];
const firstThree: readonly Pair[] = ['AB', 'AC', 'BC'];
const further: Readonly<Record<'D' | 'E' | 'F', readonly Pair[]>> = {
  D: ['AD', 'BD', 'CD'],
  E: ['AE', 'BE', 'CE', 'DE'],
  F: ['AF', 'BF', 'CF', 'DF', 'EF'],
};

/** A sound sensor's readings stand in the form first. */
const initial: Readonly<Partial<Record<PairEntry, string>>> = {
  ABclosed: '5 kΩ',
  ABopen: '5 kΩ',
  ACclosed: '1.3 kΩ',
  ACopen: '5.3 kΩ',
  BCclosed: '5.3 kΩ',
  BCopen: '1.3 kΩ',
};

const namesOfPairs = (pairs: readonly Pair[]): readonly PairEntry[] =>
  pairs.flatMap((pair) => stops.map((at): PairEntry => `${pair}${at}`));

const pairNames = namesOfPairs([...firstThree, ...Object.values(further).flat()]);

function partsOf(name: PairEntry): {
  readonly between: readonly [Terminal, Terminal];
  readonly at: Stop;
} {
  return {
    between: [name[0] as Terminal, name[1] as Terminal],
    at: name.slice(2) as Stop,
  };
}

const byPair = <Value>(make: (name: PairEntry) => Value): Readonly<Record<PairEntry, Value>> =>
  Object.fromEntries(pairNames.map((name) => [name, make(name)])) as Record<PairEntry, Value>;

const entries = { ...byPair((name) => ohms(initial[name] ?? '')), ...meter };

/** The form: an ohmmeter's readings between three terminals, up to six, at both stops. */
export const findTerminalsForm: Form<typeof entries> = {
  groups: [
    { title: pinWords.three, names: namesOfPairs(firstThree) },
    ...(['D', 'E', 'F'] as const).map((terminal) => ({
      title: pinWords.further(terminal),
      names: namesOfPairs(further[terminal]),
      folded: true as const,
    })),
    { title: pinWords.meter, names: ['meterError', 'meterOhms'], folded: true },
  ],
  entries,
  readings: namesOfPairs(firstThree),
  labels: {
    ...byPair((name) => {
      const { between, at } = partsOf(name);
      return pairLabel(...between, at);
    }),
    meterError: pinWords.error,
    meterOhms: pinWords.leads,
  },
  hints: {
    ...byPair(() => pairHint),
    meterError: pinWords.errorHint,
    meterOhms: pinWords.leadsHint,
  },
};

/** The same form for readings of one's own: the sound sensor's are examples, not values. */
export const ownTerminalsForm: Form<typeof entries> = {
  ...findTerminalsForm,
  entries: {
    ...entries,
    ...byPair((name) => {
      const { initial: example, ...entry } = entries[name];
      return { ...entry, initial: '', ...(example !== '' && { example }) };
    }),
  },
};

/** Whether no reading was taken yet. */
export function hasNoReading(values: Values<typeof entries>): boolean {
  return pairNames.every((name) => values[name] === undefined);
}

/** What the readings say of the terminals; one that no reading names is none of the sensor's. */
export function findTerminals(values: Values<typeof entries>): PinFinding {
  const readings = pairNames.flatMap((name): readonly PinReading[] => {
    const value = values[name];
    return value === undefined ? [] : [{ ...partsOf(name), ohms: value }];
  });
  const terminals = [...new Set(readings.flatMap(({ between }) => between))].sort();
  return findPins(terminals, readings, { fraction: values.meterError, ohms: values.meterOhms });
}
