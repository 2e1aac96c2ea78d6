import {
  type BenchLoadChoice,
  type Circuit,
  chooseBenchLoad,
  type DirtEffect,
  dirtEffect,
  type OperatingPoint,
} from '@truesweep/core';
import {
  dirtHints,
  dirtLabels,
  dirtWords,
  entryHints,
  entryLabels,
  readingsWords,
} from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';
import { workElsewhere } from '../forms/workElsewhere.js';
import { atStops, benchCircuit } from './hookUp.js';
import { benchEntries, benchNames } from './hookUpEntries.js';

const entries = {
  dirtTravel: { unit: '%', low: 0, high: 1, initial: '5 %' },
  dirt: { unit: 'Ω', low: 1, high: 1e9, initial: '10 kΩ', overRange: true },
  visibleChange: { unit: 'V', low: 1e-6, high: 60, initial: '200 mV' },
  wiperLimit: { unit: 'A', low: 1e-9, high: 1, initial: '1 mA', optional: true },
  loadingLimit: { unit: '%', low: 0, high: 1, initial: '', optional: true },
  ...benchEntries,
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: the dirt, the limits and the hook-up. */
export const showDirtForm: Form<typeof entries> = {
  groups: [
    { title: dirtWords.dirt, names: ['dirtTravel', 'dirt', 'visibleChange'] },
    { title: dirtWords.limits, names: ['wiperLimit', 'loadingLimit'] },
    {
      title: readingsWords.parts,
      names: benchNames,
    },
  ],
  entries,
  labels: { ...entryLabels, ...dirtLabels },
  hints: { ...entryHints, ...dirtHints },
};

/** What dirt does on a hook-up, and the load that makes it visible. */
export interface ShownDirt {
  readonly circuit: Circuit;
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
  readonly effect: DirtEffect;
  readonly choice: BenchLoadChoice;
}

export function showDirt(values: Values<typeof entries>): ShownDirt {
  const { dirtTravel, dirt, visibleChange, wiperLimit, loadingLimit } = values;
  const circuit = benchCircuit(values);
  return {
    circuit,
    ...atStops(circuit),
    effect: dirtEffect(circuit, dirtTravel, dirt),
    choice: chooseBenchLoad(circuit, {
      travels: [dirtTravel],
      dirt,
      visible: visibleChange,
      ...(wiperLimit !== undefined && { wiperCurrent: wiperLimit }),
      ...(loadingLimit !== undefined && { loadingError: loadingLimit }),
    }),
  };
}

/** The same in a worker: three loads are searched for. */
export const askDirt = workElsewhere('make-dirt-visible', import.meta.url, showDirt);
