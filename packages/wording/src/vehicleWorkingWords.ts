import { say } from './say.js';
import { whole } from './whole.js';

/** What the working of a reading carried between bench and vehicle says. */
export const carryWorkingWords = {
  title: (reading: string, to: keyof typeof sides): string =>
    whole(to, 'to', () => say`From ${reading} to what ${sides[to]} shows`),
  reading: (at: keyof typeof sides): string => whole(at, 'at', () => say`reading of ${sides[at]}`),
  bench: 'bench',
  vehicle: 'vehicle',
  ratio: 'Reading as a part of the vehicle’s reference',
  opening: 'As the control unit counts it, growing as the throttle opens',
  held: 'Held between nothing and all of it',
  count: 'Byte that the control unit sends',
  percent: 'Throttle position that a scan tool shows',
  same: 'The sensor is the same on both; only what feeds and loads it differs.',
} as const;

const sides = { bench: 'the bench', vehicle: 'the vehicle' } as const;

/** What the working of drops in supply and ground says. */
export const dropWorkingWords = {
  title: 'Drops in the sensor’s supply and ground',
  given: {
    U_ref: 'reference at the control unit, above its ground pin',
    U_sen: 'reference at the sensor’s supply terminal, above its ground terminal',
    U_gnd: 'sensor’s ground terminal above the control unit’s ground pin',
    most: 'largest error that doesn’t matter, as a part of the reference',
  },
  supply: 'What the supply lead drops',
  bottom: 'Change of the reading at the bottom of the track, by the ground’s drop',
  top: 'Change of the reading at the top of the track, by the supply’s drop',
  worst: 'Larger of the two',
  matters: 'Whether it matters',
  does: 'It does: mend the wiring before the sensor is judged on the vehicle.',
  doesNot: 'It doesn’t: look for the error elsewhere.',
} as const;

/** What the working of a turn to a wanted closed reading says. */
export const settingWorkingWords = {
  title: (wanted: string): string =>
    say`How far to turn the sensor for a closed reading of ${wanted}`,
  given: {
    U: 'closed reading now',
    U_w: 'wanted closed reading',
    U_2: 'reading after the turn',
    φ_2: 'how far the body was turned for the second reading',
    φ: 'angle of the throttle from stop to stop',
    S: 'rise of the reading over the whole travel',
    u: 'standard uncertainty of each reading',
  },
  perVolt: 'Degrees for each volt',
  turn: 'How far to turn',
  share: 'Wanted change as a part of the change between the two readings',
  uncertainty: 'Standard uncertainty of the turn',
  expanded: 'How far the turn may be off, for about 95 %',
  second:
    'Turn so far from where the first reading was taken: the way that was counted positive between the two readings where it is above 0, the other way where it is below.',
  slope:
    'Turn so far from here: positive the way that moves the reading as opening the throttle does.',
  notDetermined: 'tell no slope: the readings do not differ by more than their uncertainty',
} as const;
