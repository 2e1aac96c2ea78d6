import type { Ohms } from '../units.js';
import { compareReading, type JudgedReading } from './judgeReading.js';

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
 * A resistance, its leads taken off, beside its limits; ∞ Ω is above any upper limit, whatever the meter.
 *
 * @param more What makes it uncertain besides meter and leads.
 */
export function compareOhms<Source extends string = never>(
  { ohms, uncertainty, leads }: OhmsReading,
  low: Ohms | undefined,
  high: Ohms | undefined,
  more: readonly {
    readonly name: Source;
    readonly sensitivity: number;
    uncertainty: number;
  }[] = [],
): JudgedReading<OhmsSource | Source> & { readonly measured: Ohms } {
  if (ohms === Infinity) {
    const isRight = high === undefined;
    return {
      measured: ohms,
      outcome: isRight ? 'conforms' : 'fails',
      uncertainty: 0,
      margin: isRight ? Infinity : -Infinity,
      conformance: isRight ? 1 : 0,
    };
  }
  // Leads that are taken off too much leave a short, not a resistance below 0 Ω.
  const measured = Math.max(0, ohms - (leads ?? mostOfLeads / 2));
  const inputs = [
    { name: 'meter', sensitivity: 1, uncertainty },
    {
      name: 'leads',
      sensitivity: 1,
      uncertainty: leads === undefined ? mostOfLeads / Math.sqrt(12) : 0,
    },
    ...more,
  ] as const;
  return {
    measured,
    ...compareReading<OhmsSource | Source>({
      measured,
      inputs,
      ...(low !== undefined && { low }),
      ...(high !== undefined && { high }),
    }),
  };
}
