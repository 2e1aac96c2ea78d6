import {
  type Judgement,
  judgeTwoState,
  type ReadingLimits,
  type TwoStateAdvice,
  type TwoStateAt,
  type TwoStateCheck,
  type TwoStateReading,
  type TwoStateSensor,
  type TwoStateUnsaid,
} from '@truesweep/core/twoState';
import { type StateEntry, stateHints, stateLabels, stateWords } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Refusals, Values } from '../forms/form.js';
import { type VoltsOrOhms, voltsOrOhmsEntry } from '../forms/voltsOrOhmsEntry.js';

const angle = (initial: string) =>
  ({ unit: '°', low: 0, high: 180, initial, optional: true }) as const;
const yesOrNo = { unit: 'choice', initial: 'yes', choices: stateWords.answers } as const;
const supply = { unit: 'V', low: 0.5, high: 60 } as const;

const entries = {
  readsAs: { unit: 'choice', initial: 'volts', choices: stateWords.kinds },
  restLow: voltsOrOhmsEntry('0.4 V'),
  restHigh: voltsOrOhmsEntry('1.4 V'),
  operatedLow: voltsOrOhmsEntry('3.6 V'),
  operatedHigh: voltsOrOhmsEntry('4.4 V'),
  latched: yesOrNo,
  bothWays: yesOrNo,
  angleLow: angle('55°'),
  angleHigh: angle('75°'),
  atRest: voltsOrOhmsEntry('0.98 V'),
  operated: voltsOrOhmsEntry('4.02 V'),
  otherWay: voltsOrOhmsEntry('4.05 V'),
  backAtRest: voltsOrOhmsEntry('4.02 V'),
  keyCycled: voltsOrOhmsEntry('0.98 V'),
  changedAt: angle('66°'),
  stateUncertainty: voltsOrOhmsEntry('10 mV'),
  angleUncertainty: { unit: '°', low: 0, high: 45, initial: '2°' },
  contactLeads: { unit: 'Ω', low: 0, high: 10, initial: '', optional: true },
  stateSupply: { ...supply, initial: '', optional: true },
  stateStatedSupply: { ...supply, initial: '5 V' },
} as const satisfies Readonly<Record<StateEntry, Entry>>;

const windows = ['restLow', 'restHigh', 'operatedLow', 'operatedHigh'] as const;

/** Each reading with the state that it is of. */
const states: Readonly<
  Record<'atRest' | 'operated' | 'otherWay' | 'backAtRest' | 'keyCycled', TwoStateAt>
> = {
  atRest: 'rest',
  operated: 'operated',
  otherWay: 'operated-other-way',
  backAtRest: 'back-at-rest',
  keyCycled: 'key-cycled',
};

const readingNames = Object.keys(states) as readonly (keyof typeof states)[];

/** The form: both windows, how the sensor behaves, and what was read in each state. */
export const twoStatesForm: Form<typeof entries> = {
  groups: [
    { title: stateWords.readings, names: [...readingNames, 'changedAt'] },
    { title: stateWords.sensor, names: ['readsAs', 'latched', 'bothWays'] },
    { title: stateWords.windows, names: windows, across: 2 },
    { title: stateWords.angles, names: ['angleLow', 'angleHigh'] },
    {
      title: stateWords.further,
      names: [
        'stateUncertainty',
        'angleUncertainty',
        'contactLeads',
        'stateSupply',
        'stateStatedSupply',
      ],
      folded: true,
    },
  ],
  entries,
  readings: [...readingNames, 'changedAt', ...windows],
  labels: stateLabels,
  hints: stateHints,
  check,
};

type StateValues = Values<typeof entries>;

function check(values: StateValues): Refusals<typeof entries> {
  const refusals: Partial<Record<StateEntry, string>> = {};
  const { readsAs, angleLow, angleHigh } = values;
  const unit = readsAs === 'volts' ? 'V' : 'Ω';
  for (const name of [...windows, ...readingNames, 'stateUncertainty'] as const) {
    const read = values[name];
    if (read !== undefined && read.unit !== unit)
      refusals[name] = stateWords.needsUnit(written(read), stateWords.kinds[readsAs]);
  }
  for (const [low, high] of [
    ['restLow', 'restHigh'],
    ['operatedLow', 'operatedHigh'],
  ] as const) {
    const [from, to] = [values[low]?.value, values[high]?.value];
    if (from === undefined && (to ?? Number.POSITIVE_INFINITY) === Number.POSITIVE_INFINITY)
      refusals[low] ??= stateWords.needsLimit;
    if (from === Number.POSITIVE_INFINITY) refusals[low] ??= stateWords.endlessLow;
    if (from !== undefined && to !== undefined && to < from) refusals[high] ??= stateWords.belowLow;
  }
  if (!((values.stateUncertainty?.value ?? Number.POSITIVE_INFINITY) < Number.POSITIVE_INFINITY))
    refusals.stateUncertainty ??= stateWords.needsUncertainty;
  if ((angleLow === undefined) !== (angleHigh === undefined))
    refusals[angleLow === undefined ? 'angleLow' : 'angleHigh'] = stateWords.needsAngle;
  else if (angleLow !== undefined && angleHigh !== undefined && angleHigh < angleLow)
    refusals.angleHigh = stateWords.belowLow;
  if (Object.keys(refusals).length > 0) return refusals;
  const { rest, operated } = limitsOf(values);
  return isBelow(rest, operated) || isBelow(operated, rest)
    ? {}
    : { operatedLow: stateWords.overlap };
}

function written({ unit, value }: VoltsOrOhms): string {
  return value === Number.POSITIVE_INFINITY ? 'OL' : `${value}\u00a0${unit}`;
}

function isBelow(one: ReadingLimits, other: ReadingLimits): boolean {
  return (one.high ?? Number.POSITIVE_INFINITY) < (other.low ?? Number.NEGATIVE_INFINITY);
}

/** What it must read in each state, in the unit of the readings. */
function limitsOf({ restLow, restHigh, operatedLow, operatedHigh }: StateValues): {
  readonly rest: ReadingLimits;
  readonly operated: ReadingLimits;
} {
  const limits = (low: VoltsOrOhms | undefined, high: VoltsOrOhms | undefined): ReadingLimits => ({
    ...(low && { low: low.value }),
    // Endless ohms are no upper limit.
    ...(high && high.value < Number.POSITIVE_INFINITY && { high: high.value }),
  });
  return { rest: limits(restLow, restHigh), operated: limits(operatedLow, operatedHigh) };
}

/** What the readings of a sensor of two states say. */
export interface JudgedStates {
  readonly judgement: Judgement<TwoStateCheck, TwoStateAdvice, TwoStateUnsaid>;
  readonly readings: readonly TwoStateReading[];
  readonly unit: 'V' | 'Ω';
  /** In volts or ohms, as they were entered. */
  readonly rest: ReadingLimits;
  readonly operated: ReadingLimits;
  readonly latched: boolean;
  readonly bothWays: boolean;
}

export function twoStates(values: StateValues): JudgedStates {
  const { readsAs, angleLow, angleHigh, changedAt, contactLeads } = values;
  const { stateSupply, stateStatedSupply, stateUncertainty } = values;
  const limits = limitsOf(values);
  const latched = values.latched === 'yes';
  const bothWays = values.bothWays === 'yes';
  const isRatio = readsAs === 'volts' && stateSupply !== undefined;
  const parts = (window: ReadingLimits): ReadingLimits =>
    Object.fromEntries(
      Object.entries(window).map(([name, volts]) => [name, volts / stateStatedSupply]),
    );
  const kind: TwoStateSensor['kind'] = isRatio ? 'ratio' : readsAs;
  const readings = readingNames.flatMap((name): readonly TwoStateReading[] => {
    const read = values[name];
    if (!read) return [];
    return [
      {
        state: states[name],
        value: read.value,
        uncertainty: stateUncertainty?.value ?? 0,
        ...(isRatio && { supply: stateSupply }),
        ...(readsAs === 'ohms' && contactLeads !== undefined && { leads: contactLeads }),
        ...(name === 'operated' &&
          changedAt !== undefined && {
            changedAt,
            angleUncertainty: values.angleUncertainty,
          }),
      },
    ];
  });
  const judgement = judgeTwoState(
    {
      kind,
      rest: isRatio ? parts(limits.rest) : limits.rest,
      operated: isRatio ? parts(limits.operated) : limits.operated,
      latched,
      bothWays,
      ...(angleLow !== undefined &&
        angleHigh !== undefined && { changesBetween: { low: angleLow, high: angleHigh } }),
    },
    readings,
  );
  return {
    judgement,
    readings,
    unit: readsAs === 'volts' ? 'V' : 'Ω',
    ...limits,
    latched,
    bothWays,
  };
}
