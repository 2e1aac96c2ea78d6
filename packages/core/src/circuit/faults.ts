import type { Position, Volts } from '../units.js';
import type { Lead, Terminal } from './terminals.js';

/** Something wrong with a hook-up or a sensor, as a change of the circuit's elements. */
export type CircuitFault =
  /** A lead conducts nothing. */
  | { readonly kind: 'broken-lead'; readonly lead: Lead }
  /** Two leads touch each other at the sensor. */
  | { readonly kind: 'shorted-leads'; readonly leads: readonly [Lead, Lead] }
  /** Two terminals of the sensor touch each other. */
  | { readonly kind: 'shorted-terminals'; readonly terminals: readonly [Terminal, Terminal] }
  /** The instrument's end of the signal lead touches the source's plus, the supply lead behind the limiter, or the source's minus. */
  | { readonly kind: 'shorted-signal'; readonly to: 'source' | 'supply' | 'ground' }
  /** The track conducts nothing at one place. */
  | { readonly kind: 'broken-track'; readonly position: Position }
  /** A stretch of the track is bridged by 0 Ω. */
  | { readonly kind: 'shorted-track'; readonly from: Position; readonly to: Position }
  /** The wiper touches nothing. */
  | { readonly kind: 'lifted-wiper' }
  /** The limiter was left out: 0 Ω. */
  | { readonly kind: 'no-limiter' }
  /** Another source voltage than the planned one. */
  | { readonly kind: 'wrong-source'; readonly volts: Volts }
  /** The source's plus and minus are exchanged; voltages still count from where its minus should be. */
  | { readonly kind: 'reversed-source' };
