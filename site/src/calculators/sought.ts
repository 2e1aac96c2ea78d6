import { adviseInstruments, type InstrumentAdvice } from '@truesweep/core';
import {
  entryHints,
  entryLabels,
  type HookUpEntry,
  type SpotEntry,
  spotHints,
  spotLabels,
} from '@truesweep/wording';
import { type Entry, initialTextsOf, type RefusalsOf, readEntries } from './entry.js';
import { entries } from './hookUp.js';

/** The entries as the form groups them. */
export const soughtGroups = {
  spot: ['travel', 'width', 'stroke'],
  hookUp: ['source', 'limiter', 'track', 'closedPosition', 'openPosition', 'load'],
} as const satisfies Record<string, readonly (SpotEntry | HookUpEntry)[]>;

/** An entry of the form: of the spot, or of the hook-up that it is looked for on. */
export type SoughtEntry = (typeof soughtGroups)[keyof typeof soughtGroups][number];

export const soughtNames: readonly SoughtEntry[] = Object.values(soughtGroups).flat();
export const soughtLabels: Readonly<Record<SoughtEntry, string>> = {
  ...entryLabels,
  ...spotLabels,
};
export const soughtHints: Readonly<Record<SoughtEntry, string>> = { ...entryHints, ...spotHints };

export const soughtEntries: Readonly<Record<SoughtEntry, Entry>> = {
  ...entries,
  load: { unit: 'Ω', low: 100, high: 1e9, initial: '1 MΩ', optional: true },
  travel: { unit: '%', low: 0, high: 1, initial: '30 %' },
  width: { unit: '%', low: 0.0001, high: 0.5, initial: '1 %' },
  stroke: { unit: 's', low: 0.1, high: 60, initial: '2 s' },
};

export const initialSought = initialTextsOf(soughtNames, soughtEntries);

const passes = 3;

/** What the core advises for a form, or why its entries can't be used. */
export function adviceFor(
  texts: Readonly<Record<SoughtEntry, string>>,
): InstrumentAdvice | { readonly refusals: RefusalsOf<SoughtEntry> } {
  const { values, refusals } = readEntries(soughtNames, soughtEntries, soughtLabels, texts);
  if (Object.keys(refusals).length > 0) return { refusals };
  const { load, ...given } = values as Required<typeof values>;
  const { source, limiter, track, closedPosition, openPosition, travel, width } = given;
  return adviseInstruments(
    {
      source: { volts: source },
      limiter,
      sensor: { track, closedPosition, openPosition },
      load: load === undefined ? {} : { pullDown: load },
    },
    { travel, width, travelTime: given.stroke, passes },
  );
}
