import type { Ohms, Volts } from '@truesweep/core';

/** What `HookUpPicture` draws. */
export interface HookUpPictureProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The source's voltage, V, any. */
  readonly source: Volts;
  /** The limiting resistor, Ω, 0 or more. */
  readonly limiter: Ohms;
  /** The track's resistance, Ω, above 0. */
  readonly track: Ohms;
  /** What watches the wiper: a trace for the sweep, or digits for the stops; a trace when left out. */
  readonly instrument?: 'trace' | 'digits';
  /** What the digits show, V, any; 0 when left out. */
  readonly reading?: Volts;
  /** What the sensor's terminals are called; by what they are for when left out. */
  readonly terminals?: {
    readonly supply: string;
    readonly ground: string;
    readonly signal: string;
  };
}
