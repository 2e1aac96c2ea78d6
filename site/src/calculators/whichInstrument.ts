import {
  adviseInstruments,
  type Circuit,
  exampleInstruments,
  type InstrumentAdvice,
  type Logger,
} from '@truesweep/core';
import {
  entryHints,
  entryLabels,
  instrumentWords,
  ownRecorderHints,
  ownRecorderLabels,
  spotHints,
  spotLabels,
} from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';
import type { Form, Values } from '../forms/form.js';
import { hookUpEntries } from './hookUpEntries.js';

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
  ownInterval: { unit: 's', low: 1e-9, high: 10, initial: '', optional: true },
  ownStep: { unit: 'V', low: 1e-6, high: 10, initial: '10 mV' },
  ownRange: { unit: 'V', low: 0.01, high: 1000, initial: '10 V' },
  ownInput: { unit: 'Ω', low: 100, high: 1e12, initial: '10 MΩ' },
} as const satisfies Readonly<Record<string, Entry>>;

/** The form: a worn spot, and the hook-up that it is looked for on. */
export const whichInstrumentForm: Form<typeof entries> = {
  groups: [
    { title: instrumentWords.spot, names: ['travel', 'width', 'stroke'] },
    {
      title: instrumentWords.hookUp,
      names: ['source', 'limiter', 'track', 'closedPosition', 'openPosition', 'load'],
    },
    {
      title: instrumentWords.own,
      names: ['ownInterval', 'ownStep', 'ownRange', 'ownInput'],
      folded: true,
    },
  ],
  entries,
  labels: { ...entryLabels, ...spotLabels, ...ownRecorderLabels },
  hints: { ...entryHints, ...spotHints, ...ownRecorderHints },
};

export const passes = 3;

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
  const own = ownRecorder(values);
  return adviseInstruments(
    soughtCircuit(values),
    { travel, width, travelTime: stroke, passes },
    own ? [own, ...exampleInstruments] : exampleInstruments,
  );
}

/** The recorder that was entered; undefined where none was. */
export function ownRecorder(values: SoughtValues): Logger | undefined {
  const { ownInterval, ownStep, ownRange, ownInput } = values;
  if (ownInterval === undefined) return undefined;
  return {
    kind: 'logger',
    name: instrumentWords.ownName,
    inputOhms: ownInput,
    range: { low: 0, high: ownRange },
    bits: Math.min(32, Math.max(1, Math.round(Math.log2(ownRange / ownStep)))),
    interval: ownInterval,
  };
}
