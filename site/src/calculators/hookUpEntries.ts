import type { HookUpEntry } from '@truesweep/wording';
import type { Entry } from '../forms/entry.js';

const tolerance = (initial: string): Entry => ({ unit: '%', low: 0, high: 0.5, initial });
const lead: Entry = { unit: 'Ω', low: 0, high: 1e6, initial: '0 Ω' };

/** The entries of a hook-up; a form takes those that it needs. */
export const hookUpEntries = {
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
} as const satisfies Readonly<Record<HookUpEntry, Entry>>;

const { source, limiter, track, input, closedPosition, openPosition } = hookUpEntries;

/** The entries of a plain bench. */
export const benchEntries = { source, limiter, track, input, closedPosition, openPosition };

/** Their names as they stand in a form. */
export const benchNames = [
  'source',
  'limiter',
  'track',
  'input',
  'closedPosition',
  'openPosition',
] as const satisfies readonly HookUpEntry[];
