import type { UncertainInput } from '../statistics/combineUncertainties.js';
import type { Ohms } from '../units.js';
import type { ReadingLimits } from './checkLimits.js';
import { compareWithin, toldLimits } from './compareWithin.js';

/** What an ohmmeter showed. */
export interface OhmsReading {
  /** What it showed, Ω, 0 or more; Infinity where it showed no connection. */
  readonly ohms: Ohms;
  /** Standard uncertainty of the resistance once the leads are off, Ω, 0 or more. */
  readonly uncertainty: Ohms;
  /** What the test leads alone read, Ω, 0 to 100; 0 where the meter took them off. Left out they are not known: 0 to 0.2 Ω, all alike likely. */
  readonly leads?: Ohms;
}

/** What can make a resistance uncertain: the meter, and leads that nobody measured. */
export type OhmsSource = 'meter' | 'leads';

/** The most that a meter's pair of test leads has; meters' manuals state 0.1 to 0.2 Ω. */
const mostOfLeads = 0.2;

/**
 * What a check tells of a resistance, its leads taken off, beside its limits; ∞ Ω is above any upper limit, whatever the meter.
 *
 * @param more What makes it uncertain besides meter and leads.
 */
export function compareOhms<Source extends string = never>(
  { ohms, uncertainty, leads }: OhmsReading,
  limits: ReadingLimits,
  more: readonly UncertainInput<Source>[] = [],
) {
  if (ohms === Infinity) {
    const isRight = limits.high === undefined;
    return {
      measured: ohms,
      ...toldLimits(limits),
      outcome: isRight ? ('conforms' as const) : ('fails' as const),
      uncertainty: 0,
      margin: isRight ? Infinity : -Infinity,
      conformance: isRight ? 1 : 0,
    };
  }
  const ofLeads = leads === undefined ? mostOfLeads / Math.sqrt(12) : 0;
  // Leads that are taken off too much leave a short, not a resistance below 0 Ω.
  return compareWithin<OhmsSource | Source>(
    Math.max(0, ohms - (leads ?? mostOfLeads / 2)),
    limits,
    [
      { name: 'meter', sensitivity: 1, uncertainty },
      { name: 'leads', sensitivity: 1, uncertainty: ofLeads },
      ...more,
    ],
  );
}
