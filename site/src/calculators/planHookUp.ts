import {
  type Amps,
  type Circuit,
  type CurrentRating,
  chooseLimiter,
  type LimiterWish,
  type OperatingPoint,
  type PowerRating,
  type Ratings,
  type Watts,
  wrongConnections,
} from '@truesweep/core';
import {
  connectionRows,
  entryHints,
  entryLabels,
  limiterAdviceSentences,
  planHints,
  planLabels,
  planTitles,
  readingsWords,
} from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';
import { workElsewhere } from '../forms/workElsewhere.js';
import { atStops, benchCircuit } from './hookUp.js';
import { benchEntries, benchNames } from './hookUpEntries.js';

const entries = {
  ...benchEntries,
  wiperCurrent: { unit: 'A', low: 1e-6, high: 1, initial: '5 mA', optional: true },
  trackPower: { unit: 'W', low: 1e-3, high: 100, initial: '200 mW', optional: true },
  sourceCurrent: { unit: 'A', low: 1e-6, high: 100, initial: '', optional: true },
  spanKept: { unit: '%', low: 0, high: 1, initial: '', optional: true },
  otherSource: { unit: 'V', low: 0.1, high: 60, initial: '12 V', optional: true },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: the parts at hand, what they bear, and what is wished. */
export const planHookUpForm: Form<typeof entries> = {
  groups: [
    {
      title: readingsWords.parts,
      names: benchNames,
    },
    { title: planTitles.ratings, names: ['wiperCurrent', 'trackPower', 'sourceCurrent'] },
    { title: planTitles.wishes, names: ['spanKept', 'otherSource'] },
  ],
  entries,
  labels: { ...entryLabels, ...planLabels },
  hints: { ...entryHints, ...planHints },
};

/** A planned hook-up: the limiter's choice, and what right and wrong connections do with the limiter at hand. */
export interface HookUpPlan {
  readonly circuit: Circuit;
  /** What to choose, in sentences. */
  readonly sentences: readonly string[];
  /** The connections' table with its head, in texts: far less to hand over than all of their numbers. */
  readonly connections: readonly (readonly string[])[];
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
}

export type PlanValues = Values<typeof entries>;

export function planHookUp(values: PlanValues): HookUpPlan {
  const circuit = benchCircuit(values);
  const { otherSource } = values;
  const ratings = ratingsOf(values);
  const choice = chooseLimiter(circuit, ratings, wishOf(values));
  return {
    circuit,
    sentences: limiterAdviceSentences(choice, circuit.limiter),
    connections: connectionRows(wrongConnections(circuit, ratings, otherSource)),
    ...atStops(circuit),
  };
}

/** What the parts at hand may bear. */
export function ratingsOf({ wiperCurrent, trackPower, sourceCurrent }: PlanValues): Ratings {
  return {
    ...(wiperCurrent !== undefined && { wiper: current(wiperCurrent) }),
    ...(trackPower !== undefined && { track: power(trackPower) }),
    ...(sourceCurrent !== undefined && { source: current(sourceCurrent) }),
  };
}

/** What the limiting resistor shall leave. */
export function wishOf({ spanKept, otherSource }: PlanValues): LimiterWish {
  return {
    ...(spanKept !== undefined && { span: spanKept }),
    ...(otherSource !== undefined && { otherSource }),
  };
}

/** The same in a worker: the circuit is solved some thousand times. */
export const askHookUp = workElsewhere('plan-the-hook-up', import.meta.url, planHookUp);

/** A continuous rating alone is kept by every mistake too: what the part stands for a moment isn't known. */
function current(amps: Amps): CurrentRating {
  return { amps, shortTerm: amps };
}

function power(watts: Watts): PowerRating {
  return { watts, shortTerm: watts };
}
