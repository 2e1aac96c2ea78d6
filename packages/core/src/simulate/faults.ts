import type { Fraction, Ohms, Position, Seconds, Travel, Volts } from '../units.js';

/** Wear or dirt at one place of the track: the contact's resistance is high there. */
export interface WornSpot {
  readonly kind: 'worn-spot';
  /** Middle of the spot. */
  readonly travel: Travel;
  /** Length of the spot along the travel. */
  readonly width: Travel;
  /** Contact resistance on the spot, Ω; ∞ where the wiper lifts. */
  readonly ohms: Ohms;
  /** Chance that a pass meets it, 0 to 1; 1 when left out. */
  readonly chance?: Fraction;
}

/** The signal's connection opens for a while, whatever the throttle does. */
export interface LooseConnection {
  readonly kind: 'loose-connection';
  readonly at: readonly { readonly time: Seconds; readonly seconds: Seconds }[];
}

/** A foreign voltage is added for a while. */
export interface Interference {
  readonly kind: 'interference';
  readonly at: readonly {
    readonly time: Seconds;
    readonly seconds: Seconds;
    readonly volts: Volts;
  }[];
}

/** From one travel on the wiper picks off another place of the track than it should. */
export interface ShiftedTrack {
  readonly kind: 'shifted-track';
  readonly travel: Travel;
  readonly shift: Position;
}

/** The output stays where it was while the wiper crosses a stretch, then jumps. */
export interface DeadSpot {
  readonly kind: 'dead-spot';
  readonly from: Travel;
  readonly to: Travel;
}

/** The output scatters while the wiper moves over a stretch. */
export interface RoughTrack {
  readonly kind: 'rough-track';
  readonly from: Travel;
  readonly to: Travel;
  /** Standard deviation of the scatter, V. */
  readonly volts: Volts;
}

export type SimulatedFault =
  | WornSpot
  | LooseConnection
  | Interference
  | ShiftedTrack
  | DeadSpot
  | RoughTrack;
