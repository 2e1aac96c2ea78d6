import { adviseInstruments, type Circuit, type InstrumentAdvice } from '@truesweep/core';
import {
  entryHints,
  entryLabels,
  instrumentWords,
  spotHints,
  spotLabels,
} from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';
import { hookUpEntries } from './hookUp.js';

const { source, limiter, track, closedPosition, openPosition } = hookUpEntries;

const entries = {
  travel: { unit: '%', low: 0, high: 1, initial: '30 %' },
  width: { unit: '%', low: 0.0001, high: 0.5, initial: '1 %' },
  stroke: { unit: 's', low: 0.1, high: 60, initial: '2 s' },
  source,
  limiter,
  track,
  closedPosition,
  openPosition,
  load: { unit: 'Ω', low: 100, high: 1e9, initial: '1 MΩ', optional: true },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: a worn spot, and the hook-up that it is looked for on. */
export const whichInstrumentForm: Form<typeof entries> = {
  groups: [
    { title: instrumentWords.spot, names: ['travel', 'width', 'stroke'] },
    {
      title: instrumentWords.hookUp,
      names: ['source', 'limiter', 'track', 'closedPosition', 'openPosition', 'load'],
    },
  ],
  entries,
  labels: { ...entryLabels, ...spotLabels },
  hints: { ...entryHints, ...spotHints },
};

const passes = 3;

/** A worn spot with the hook-up that it is looked for on. */
export type SoughtValues = Values<typeof entries>;

/** The hook-up without an instrument. */
export function soughtCircuit(values: SoughtValues): Circuit {
  const { load } = values;
  return {
    source: { volts: values.source },
    limiter: values.limiter,
    sensor: {
      track: values.track,
      closedPosition: values.closedPosition,
      openPosition: values.openPosition,
    },
    load: load === undefined ? {} : { pullDown: load },
  };
}

/** What the core advises for a worn spot on a hook-up. */
export function whichInstrument(values: SoughtValues): InstrumentAdvice {
  const { stroke, travel, width } = values;
  return adviseInstruments(soughtCircuit(values), { travel, width, travelTime: stroke, passes });
}
