import type { Position, Volts } from '../units.js';
import type { Lead, Terminal } from './terminals.js';

/** Something wrong with a hook-up or a sensor, as a change of the circuit's elements. */
export type CircuitFault =
  /** A lead conducts nothing. */
  | {
      readonly kind: 'broken-lead';
      /** Which lead. */
      readonly lead: Lead;
    }
  /** Two leads touch each other at the sensor. */
  | {
      readonly kind: 'shorted-leads';
      /** Which two leads. */
      readonly leads: readonly [Lead, Lead];
    }
  /** Two terminals of the sensor touch each other. */
  | {
      readonly kind: 'shorted-terminals';
      /** Which two terminals. */
      readonly terminals: readonly [Terminal, Terminal];
    }
  /** The instrument's end of the signal lead touches the source's plus, the supply lead behind the limiter, or the source's minus. */
  | {
      readonly kind: 'shorted-signal';
      /** Which of the three it touches. */
      readonly to: 'source' | 'supply' | 'ground';
    }
  /** The track conducts nothing at one place. */
  | {
      readonly kind: 'broken-track';
      /** Where: fraction of the track, 0 at its bottom terminal to 1 at its top. */
      readonly position: Position;
    }
  /** A stretch of the track is bridged by 0 Ω. */
  | {
      readonly kind: 'shorted-track';
      /** Where the bridge begins, fraction of the track, 0 to 1. */
      readonly from: Position;
      /** Where it ends, fraction of the track, from `from` to 1. */
      readonly to: Position;
    }
  /** The wiper touches nothing. */
  | { readonly kind: 'lifted-wiper' }
  /** The limiter was left out: 0 Ω. */
  | { readonly kind: 'no-limiter' }
  /** Another source voltage than the planned one. */
  | {
      readonly kind: 'wrong-source';
      /** The voltage that is there instead, V, 0 to 10⁶. */
      readonly volts: Volts;
    }
  /** The source's plus and minus are exchanged; voltages still count from where its minus should be. */
  | { readonly kind: 'reversed-source' };
