import { adviseInstruments, type InstrumentAdvice } from '@truesweep/core';
import { type SpotEntry, spotLabels } from '@truesweep/wording';
import { type Entry, type RefusalsOf, readEntries } from './entry.js';

export const spotEntries: Readonly<Record<SpotEntry, Entry>> = {
  spotSource: { unit: 'V', low: 0.1, high: 60, initial: '5 V' },
  spotLimiter: { unit: 'Ω', low: 0, high: 1e6, initial: '1 kΩ' },
  spotTrack: { unit: 'Ω', low: 10, high: 10e6, initial: '5 kΩ' },
  spotClosed: { unit: '%', low: 0, high: 1, initial: '10 %' },
  spotOpen: { unit: '%', low: 0, high: 1, initial: '90 %' },
  spotLoad: { unit: 'Ω', low: 100, high: 1e9, initial: '1 MΩ', optional: true },
  spotTravel: { unit: '%', low: 0, high: 1, initial: '30 %' },
  spotWidth: { unit: '%', low: 0.0001, high: 0.5, initial: '1 %' },
  spotStroke: { unit: 's', low: 0.1, high: 60, initial: '2 s' },
};

/** The entries as the form groups them. */
export const spotGroups = {
  spot: ['spotTravel', 'spotWidth', 'spotStroke'],
  hookUp: ['spotSource', 'spotLimiter', 'spotTrack', 'spotClosed', 'spotOpen', 'spotLoad'],
} as const satisfies Record<string, readonly SpotEntry[]>;

export const spotNames: readonly SpotEntry[] = Object.values(spotGroups).flat();

/** What stands in the form, as it was typed. */
export type SpotTexts = Readonly<Record<SpotEntry, string>>;

export const initialSpot = Object.fromEntries(
  spotNames.map((name) => [name, spotEntries[name].initial]),
) as SpotTexts;

const passes = 3;

/** What the core advises for a form, or why its entries can't be used. */
export function adviceFor(
  texts: SpotTexts,
): InstrumentAdvice | { readonly refusals: RefusalsOf<SpotEntry> } {
  const { values, refusals } = readEntries(spotNames, spotEntries, spotLabels, texts);
  if (Object.keys(refusals).length > 0) return { refusals };
  const { spotLoad, ...given } = values as Required<typeof values>;
  return adviseInstruments(
    {
      source: { volts: given.spotSource },
      limiter: given.spotLimiter,
      sensor: {
        track: given.spotTrack,
        closedPosition: given.spotClosed,
        openPosition: given.spotOpen,
      },
      load: spotLoad === undefined ? {} : { pullDown: spotLoad },
    },
    {
      travel: given.spotTravel,
      width: given.spotWidth,
      travelTime: given.spotStroke,
      passes,
    },
  );
}
