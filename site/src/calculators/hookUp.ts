import type { Circuit, Tolerances } from '@truesweep/core';
import { entryLabels, type HookUpEntry } from '@truesweep/wording';
import {
  boundsOfEntry,
  type Entry,
  initialTextsOf,
  type RefusalsOf,
  readEntries,
} from './entry.js';

const tolerance = (initial: string): Entry => ({ unit: '%', low: 0, high: 0.5, initial });
const lead: Entry = { unit: 'Ω', low: 0, high: 1e6, initial: '0 Ω' };

export const entries: Readonly<Record<HookUpEntry, Entry>> = {
  source: { unit: 'V', low: 0.1, high: 60, initial: '5 V' },
  limiter: { unit: 'Ω', low: 0, high: 1e6, initial: '1 kΩ' },
  track: { unit: 'Ω', low: 10, high: 10e6, initial: '5 kΩ' },
  input: { unit: 'Ω', low: 100, high: 1e12, initial: '10 MΩ' },
  closedPosition: { unit: '%', low: 0, high: 1, initial: '10 %' },
  openPosition: { unit: '%', low: 0, high: 1, initial: '90 %' },
  sourceTolerance: tolerance('1 %'),
  limiterTolerance: tolerance('5 %'),
  trackTolerance: tolerance('20 %'),
  positionTolerance: tolerance('2 %'),
  supplyLead: lead,
  groundLead: lead,
  contact: lead,
  pullUp: { unit: 'Ω', low: 10, high: 10e6, initial: '', optional: true },
  pullUpVolts: { unit: 'V', low: 0, high: 60, initial: '5 V' },
};

/** The entries as the form groups them. */
export const groups = {
  parts: ['source', 'limiter', 'track', 'input', 'closedPosition', 'openPosition'],
  tolerances: ['sourceTolerance', 'limiterTolerance', 'trackTolerance', 'positionTolerance'],
  furtherParts: ['supplyLead', 'groundLead', 'contact', 'pullUp', 'pullUpVolts'],
} as const satisfies Record<string, readonly HookUpEntry[]>;

export const entryNames: readonly HookUpEntry[] = Object.values(groups).flat();

/** What stands in the form, as it was typed. */
export type HookUpTexts = Readonly<Record<HookUpEntry, string>>;

export const initialTexts: HookUpTexts = initialTextsOf(entryNames, entries);

export interface HookUp {
  readonly circuit: Circuit;
  readonly tolerances: Tolerances;
}

/** Why an entry can't be used, by its name. */
export type Refusals = RefusalsOf<HookUpEntry>;

/** The lowest and the highest value of an entry, written with their unit. */
export function boundsOf(name: HookUpEntry): readonly [low: string, high: string] {
  return boundsOfEntry(entries[name]);
}

/** Reads the whole form into a hook-up, or into the refusals of all entries that can't be used. */
export function readHookUp(texts: HookUpTexts): HookUp | { readonly refusals: Refusals } {
  const { values, refusals } = readEntries(entryNames, entries, entryLabels, texts);
  if (Object.keys(refusals).length > 0) return { refusals };
  const { pullUp, ...given } = values as Required<typeof values>;
  return {
    circuit: {
      source: { volts: given.source },
      limiter: given.limiter,
      leads: { supply: given.supplyLead, ground: given.groundLead },
      sensor: {
        track: given.track,
        contact: given.contact,
        closedPosition: given.closedPosition,
        openPosition: given.openPosition,
      },
      load: {
        pullDown: given.input,
        ...(pullUp !== undefined && { pullUp: { ohms: pullUp, volts: given.pullUpVolts } }),
      },
    },
    tolerances: {
      source: given.sourceTolerance,
      limiter: given.limiterTolerance,
      track: given.trackTolerance,
      closedPosition: given.positionTolerance,
      openPosition: given.positionTolerance,
    },
  };
}
