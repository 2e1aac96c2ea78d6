import type { AbruptDeparture, Finding, Hint, Stretch, Sweep, Volts } from '@truesweep/core';
import type { WatchedSoFar } from '@truesweep/jobs';
import type { LiveReading } from '@truesweep/recordings';

/** All that is shown of a recording while it runs. */
export interface LiveState {
  /** Where it comes from. */
  readonly source: string;
  /** Rate of a serial line, baud, and whether it is still tried. */
  readonly rate?: { readonly baud: number; readonly isTried: boolean };
  /** Whether it is gone at the moment. */
  readonly isLost: boolean;
  /** Samples so far, and from the first to the last, s. */
  readonly samples: number;
  readonly seconds: number;
  readonly reading: LiveReading;
  /** The latest seconds; left out before there are two samples. */
  readonly latest?: Sweep;
  /** Lowest and highest reading to be expected, of a dropout too. */
  readonly range: [low: Volts, high: Volts];
  readonly findings: readonly (Finding | AbruptDeparture)[];
  readonly found: number;
  readonly hints: readonly Hint[];
  /** What is there so far, judged as a whole; left out before that can be done. */
  readonly soFar?: WatchedSoFar;
  /** The deliberate test that runs. */
  readonly test?: Stretch['kind'];
}
