import { say } from './say.js';

/** What the working of a reading at the bench says. */
export const circuitWorkingWords = {
  title: (position: string): string => say`The reading with the wiper at ${position} of the track`,
  given: {
    E: 'voltage of the source',
    R_i: 'resistance inside the source',
    R_s: 'limiting resistor',
    R_sup: 'supply lead',
    R_gnd: 'ground lead',
    R_sig: 'signal lead',
    R_t: 'track, from end to end',
    R_top: 'end residual at the top of the track',
    R_bot: 'end residual at the bottom of the track',
    'R_top,b': 'resistor built in behind the top terminal',
    'R_bot,b': 'resistor built in behind the bottom terminal',
    'R_wip,b': 'resistor built in behind the wiper’s terminal',
    R_c: 'contact of the wiper',
    R_L: 'load from the signal to common',
    R_pu: 'pull-up of the signal',
    U_pu: 'voltage that the pull-up leads to',
    x: 'where the wiper stands, as a part of the track from its bottom end',
  },
  finds: {
    R_u: 'Resistance from the wiper’s place up to the source',
    R_d: 'Resistance from the wiper’s place down to common',
    R_w: 'Resistance that the load sees: both ways side by side, and what lies between the wiper’s place and the load',
    R_side: 'Resistance that the load sees: both ways side by side',
    R_k: 'Resistance between the wiper’s place and the load',
    V_0: 'Reading without the load',
    E_L: 'Voltage of the pull-up and the pull-down by themselves',
    R_p: 'Pull-up and pull-down side by side',
    V_p: 'Voltage at the wiper’s place',
    V: 'Reading',
  },
} as const;

/** What the working of a loading error says. */
export const loadingWorkingWords = {
  title: (position: string): string =>
    say`What the load changes where it changes most, at ${position} of the track`,
  x: 'where the load bends the reading most, found by search',
  slopeWithout: 'How fast the reading rises over the track without the load',
  slopeOfResistance: 'How fast the resistance that the load sees changes over the track',
  slopeWith: 'How fast the reading rises over the track with the load',
  why: 'Why it is most here: both readings rise alike, so that the gap between them neither grows nor shrinks',
  alike: 'To one side of this place the gap still grows, to the other it shrinks.',
  error: 'Reading without the load less the reading with it',
  atStop: 'The gap grows up to the stop, where it is most.',
} as const;

/** What the working from a reading to the wiper's place says. */
export const inverseWorkingWords = {
  title: (reading: string): string => say`Where the wiper stands when it reads ${reading}`,
  reading: 'reading',
  place: 'Where the wiper stands, as a part of the track from its bottom end',
  all: 'Resistance from the source through the whole track to common',
  loadCurrent: 'Current into the load',
  remainder: 'What the source would have left if the load’s current went through all of it',
  noPlace: {
    impossible: 'no place of the track gives',
    ambiguous: 'more than one place of the track gives',
    insensitive: 'every place of the track gives',
  },
} as const;

/** What the working of dirt in the contact says. */
export const dirtWorkingWords = {
  title: (dirt: string): string => say`What ${dirt} of dirt in the contact moves`,
  x: 'where the wiper stands, as a part of the track from its bottom end',
  dirt: 'resistance of the dirt',
  change: 'By how much the dirt changes the reading: it divides with the load',
} as const;

/** What the working of an ohmmeter's readings says. */
export const trackWorkingWords = {
  title: 'The track by an ohmmeter',
  titleAt: {
    closed: 'The track by an ohmmeter, throttle closed',
    open: 'The track by an ohmmeter, throttle open',
  },
  given: {
    R_ab: 'reading between the ends of the track',
    R_aw: 'reading from the first end to the wiper',
    R_wb: 'reading from the wiper to the other end',
  },
  contact: 'What lies between the track and the wiper’s terminal: both readings go through it',
  scatter: 'The contact comes out below 0 Ω: the readings scatter by more than it has. Read again.',
  place: 'Where the wiper stands, as a part of the track from the first end',
} as const;
