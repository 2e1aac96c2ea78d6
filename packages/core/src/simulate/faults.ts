import type { Fraction, Ohms, Position, Seconds, Travel, Volts } from '../units.js';

/** Wear or dirt at one place of the track: the contact's resistance is high there. */
export interface WornSpot {
  readonly kind: 'worn-spot';
  /** Middle of the spot: travel, 0 closed to 1 open. */
  readonly travel: Travel;
  /** Length of the spot along the travel, above 0, at most 1. */
  readonly width: Travel;
  /** Contact resistance on the spot, Ω, 0 or more; ∞ where the wiper lifts. */
  readonly ohms: Ohms;
  /** Chance that a pass meets it, 0 to 1; 1 when left out. */
  readonly chance?: Fraction;
}

/** The signal's connection opens for a while, whatever the throttle does. */
export interface LooseConnection {
  readonly kind: 'loose-connection';
  /** When it opens, s from the recording's beginning, and for how many seconds, above 0. */
  readonly at: readonly { readonly time: Seconds; readonly seconds: Seconds }[];
}

/** A foreign voltage is added for a while. */
export interface Interference {
  readonly kind: 'interference';
  /** When it begins, s from the recording's beginning, for how many seconds, above 0, and the voltage that is added, V, of either sign. */
  readonly at: readonly {
    readonly time: Seconds;
    readonly seconds: Seconds;
    readonly volts: Volts;
  }[];
}

/** From one travel on the wiper picks off another place of the track than it should. */
export interface ShiftedTrack {
  readonly kind: 'shifted-track';
  /** From this travel on, 0 closed to 1 open. */
  readonly travel: Travel;
  /** How far away the wiper picks off, fraction of the track, from −1 to 1. */
  readonly shift: Position;
}

/** The output stays where it was while the wiper crosses a stretch, then jumps. */
export interface DeadSpot {
  readonly kind: 'dead-spot';
  /** Where it begins: travel, 0 closed to 1 open. */
  readonly from: Travel;
  /** Where it ends: travel, above `from`, at most 1. */
  readonly to: Travel;
}

/** The output scatters while the wiper moves over a stretch. */
export interface RoughTrack {
  readonly kind: 'rough-track';
  /** Where it begins: travel, 0 closed to 1 open. */
  readonly from: Travel;
  /** Where it ends: travel, above `from`, at most 1. */
  readonly to: Travel;
  /** Standard deviation of the scatter, V, 0 or more. */
  readonly volts: Volts;
}

/** What can be wrong with a simulated sensor, its leads or its surroundings; its `kind` tells which. */
export type SimulatedFault =
  | WornSpot
  | LooseConnection
  | Interference
  | ShiftedTrack
  | DeadSpot
  | RoughTrack;
