import type { Fraction, Seconds, Travel } from '../units.js';

/** Foreign pulses last hardly longer than this. */
export const longestPulse: Seconds = 8e-3;

/** A contact that may break: the wiper's or its lead's, which leaves the load's rest level, or that of a feed lead. */
export type Contact = 'wiper' | 'supply' | 'ground';

/** Which part of the way to a broken contact's level a departure went, and within how many spans that counts as all of it. */
export interface Goal {
  readonly part: Fraction;
  readonly slack: number;
  readonly isFull: boolean;
}

export type Goals = Readonly<Partial<Record<Contact, Goal>>>;

/** What of a finding speaks for one cause or another. */
export interface ContactEvent {
  /** Number of the finding. */
  readonly finding: number;
  readonly time: Seconds;
  readonly travel: Travel;
  /** How much travel it goes over. */
  readonly extent: Travel;
  /** How fast the throttle moved, travel per second; 0 while it rested. */
  readonly speed: number;
  /** Number of the pass, or none while the throttle rested. */
  readonly pass: number | undefined;
  /** A step or a dead spot, which hardly anything but a track makes; a rough patch, which foreign bursts look like. */
  readonly jump: boolean;
  readonly scatter?: boolean;
  /** Of a step: what the stops' readings say of a feed lead that came to resist, logarithm of the odds. */
  readonly lead?: number;
  /** How far it went, spans, and which broken contact's level it went to, or toward. */
  readonly depth: number;
  readonly goals: Goals;
  /** Whether it surely lasted longer than foreign pulses do, or surely shorter; left out where samples do not tell. */
  readonly long?: boolean;
  /** What was done to the sensor meanwhile, where the recording says so. */
  readonly stretch?: 'harness-flexed' | 'housing-tapped';
}

/** A movement over a stretch of travel. */
export interface Pass {
  readonly low: Travel;
  readonly high: Travel;
  /** A closing by the spring: so fast that it may well miss a spot. */
  readonly snap: boolean;
}

/** The time that a recording spent, as far as causes need it. */
export interface TimeSpent {
  readonly whole: Seconds;
  readonly resting: Seconds;
  readonly flexed: Seconds;
  readonly tapped: Seconds;
}

/** The weight of each hypothesis about the departures; they add up to 1. */
export interface CauseWeights {
  readonly track: Fraction;
  readonly connection: Fraction;
  readonly interference: Fraction;
}

/** All that speaks for one cause of the departures or another. */
export interface ContactEvidence {
  readonly events: readonly ContactEvent[];
  readonly passes: readonly Pass[];
  readonly spent: TimeSpent;
  /** Departures this close in travel count as one place. */
  readonly sameTravel: Travel;
}
