import type { Fraction, Ohms, Position } from '../units.js';

/** The stop at which the throttle was held while the ohmmeter was read. */
export type Stop = 'closed' | 'open';

/** Two of the sensor's terminals, by the caller's names. */
export type TerminalPair = readonly [string, string];

/** One reading of an ohmmeter between two terminals. */
export interface PinReading {
  /** The two terminals that the meter was held to, by the names given to them. */
  readonly between: TerminalPair;
  /** At which stop the throttle was held. */
  readonly at: Stop;
  /** Ω, 0 to 10¹²; `Infinity` where the meter shows over-range (OL). */
  readonly ohms: Ohms;
}

/** The largest error of the ohmmeter: a part of the reading and a constant part (counts, leads). */
export interface OhmmeterTolerance {
  /** ± fraction of the reading, 0 to 0.5. */
  readonly fraction: Fraction;
  /** ± Ω, 0 to 10⁶. */
  readonly ohms: Ohms;
}

/** The likeliest value and between which values it lies for the meter's tolerance. */
export interface Estimate<Unit extends number> {
  /** The likeliest value, in its unit. */
  readonly value: Unit;
  /** The lowest value for the meter's tolerance, in its unit. */
  readonly low: Unit;
  /** The highest value for the meter's tolerance, in its unit. */
  readonly high: Unit;
}

/** A track with its wiper, found among the terminals. */
export interface TrackPins {
  /** The wiper's terminal. */
  readonly wiper: string;
  /** Both ends of the track; first the one that the wiper leaves as the throttle opens, where that shows. */
  readonly ends: TerminalPair;
  /** The end that the wiper is nearer at the closed than at the open stop; left out where the readings don't show it. */
  readonly closedEnd?: string;
  /** Resistance between the ends, residuals (and a second track on the same ends) included, Ω. */
  readonly track: Estimate<Ohms>;
  /**
   * What lies between the track and the wiper's terminal: contact and a fixed resistor in the output, Ω. `low` above 0
   * shows that there is something. Left out where a second track on the same ends hides it.
   */
  readonly series?: Estimate<Ohms>;
  /** Where the wiper stands at the closed stop, as the fraction of `track` between it and the first end, 0 to 1. */
  readonly closedPosition: Estimate<Position>;
  /** Where the wiper stands at the open stop, as the fraction of `track` between it and the first end, 0 to 1. */
  readonly openPosition: Estimate<Position>;
}

/** A contact between two terminals that is made at one stop only. */
export interface IdleSwitch {
  /** The two terminals that it joins. */
  readonly terminals: TerminalPair;
  /** The stop at which it joins them. */
  readonly madeAt: Stop;
}

/** A reading that is still wanted. */
export interface WantedReading {
  /** The two terminals to hold the meter to. */
  readonly between: TerminalPair;
  /** At which stop to hold the throttle. */
  readonly at: Stop;
}

/** What no ohmmeter reading here decides: the wiring diagram, or a circuit with its feed, must. */
export type Undecided =
  /** Which end the vehicle feeds: a rising output is usual, falling ones exist. */
  | 'fed-end'
  /** Which end the wiper is near at closed. */
  | 'closed-end'
  /** How two tracks on the same ends share the resistance, and what is in series with each wiper. */
  | 'single-tracks';

interface FoundTracks {
  /** Terminals that two tracks have in common: none, one or both ends. */
  readonly shared: readonly string[];
  /** Contacts that are made at one stop only. */
  readonly switches: readonly IdleSwitch[];
  /** Terminals that are part of neither a track nor a switch. */
  readonly apart: readonly string[];
  /** What the readings leave open, as codes. */
  readonly undecided: readonly Undecided[];
}

/** What a set of ohmmeter readings says a sensor is. */
export type PinResult =
  | (FoundTracks & {
      readonly kind: 'potentiometer';
      /** The one track. */
      readonly tracks: readonly [TrackPins];
    })
  | (FoundTracks & {
      readonly kind: 'two-tracks';
      /** Both tracks. */
      readonly tracks: readonly [TrackPins, TrackPins];
    })
  /** No path where the track should be; `wiper` where the readings show which terminal still finds a part of it. */
  | {
      readonly kind: 'broken-track';
      /** The wiper's terminal; left out where the readings don't show which it is. */
      readonly wiper?: string;
    }
  /** Two terminals keep their resistance, the third has no path to either at the stops named. */
  | {
      readonly kind: 'lifted-wiper';
      /** The wiper's terminal. */
      readonly wiper: string;
      /** Both ends of the track. */
      readonly ends: TerminalPair;
      /** The stops at which it has no path; one or both. */
      readonly at: readonly Stop[];
    }
  /** Two terminals whose resistance follows the throttle; a terminal `apart` may be the far end of a broken track. */
  | {
      readonly kind: 'rheostat';
      /** The two terminals. */
      readonly terminals: TerminalPair;
      /** Their resistance with the throttle closed, Ω, 0 or more. */
      readonly closed: Ohms;
      /** Their resistance with the throttle open, Ω, 0 or more. */
      readonly open: Ohms;
      /** Terminals without a path to them. */
      readonly apart: readonly string[];
    }
  /** Terminals joined at both stops. */
  | {
      readonly kind: 'shorted';
      /** The pairs that are joined. */
      readonly joined: readonly TerminalPair[];
      /** Terminals that are joined to none. */
      readonly apart: readonly string[];
    }
  /** Contacts only: a throttle switch. */
  | {
      readonly kind: 'idle-switch';
      /** The contacts, with the stop at which each is made. */
      readonly switches: readonly IdleSwitch[];
      /** Terminals that are part of no contact. */
      readonly apart: readonly string[];
    }
  /**
   * Nothing conducts (a Hall or inductive sensor may look so), one resistance that doesn't follow the throttle, or
   * resistances that follow it as no track and wiper do.
   */
  | {
      readonly kind: 'not-a-potentiometer';
      /** Which of the three it is, in that order. */
      readonly reason: 'no-connection' | 'constant' | 'unlike-a-track';
    }
  /** More than one arrangement fits: readings are missing, nothing moved beyond the meter's error, or it is too coarse. */
  | {
      readonly kind: 'not-enough-readings';
      /** Which of the three it is, in that order. */
      readonly reason: 'missing' | 'no-movement' | 'several-fit';
      /** The readings that are still wanted. */
      readonly missing: readonly WantedReading[];
      /** Terminals that may still be the wiper; empty where that wasn't narrowed down. */
      readonly wiperMayBe: readonly string[];
    }
  /** Between these three terminals, one resistance is larger than both others together: no network does that. */
  | {
      readonly kind: 'contradictory';
      /** The three terminals. */
      readonly terminals: readonly [string, string, string];
      /** The stop at which they were read so. */
      readonly at: Stop;
    };

/** How the resistance of a pair followed the throttle, beyond the meter's error: the evidence. */
export interface PairChange {
  /** The pair. */
  readonly between: TerminalPair;
  /** Its resistance at the closed stop, Ω, 0 or more, `Infinity` over range; left out where it was not read. */
  readonly closed?: Ohms;
  /** Its resistance at the open stop, Ω, 0 or more, `Infinity` over range; left out where it was not read. */
  readonly open?: Ohms;
  /** What it does as the throttle opens, beyond the meter's error. */
  readonly change: 'none' | 'rises' | 'falls' | 'unknown';
}

/** What the readings say, with the evidence pair by pair. */
export type PinFinding = PinResult & {
  /** Every pair of the terminals that were named. */
  readonly evidence: readonly PairChange[];
};
