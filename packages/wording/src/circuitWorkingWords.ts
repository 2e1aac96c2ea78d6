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
    R_u: 'resistance from the wiper’s place up to the source',
    R_d: 'resistance from the wiper’s place down to common',
    R_w: 'resistance that the load sees: both ways side by side, and what lies between the wiper’s place and the load',
    R_side: 'both ways side by side',
    R_k: 'resistance between the wiper’s place and the load',
    V_0: 'reading without a load',
    E_L: 'voltage of the pull-up and the pull-down alone',
    R_p: 'pull-up and pull-down side by side',
    V_p: 'voltage at the wiper’s place',
    V: 'reading',
  },
} as const;
