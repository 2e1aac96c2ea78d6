import type { Mistake } from '@truesweep/core';
import { mistakeLabel } from './planWords.js';
import { say } from './say.js';
import { whole } from './whole.js';

const leads = { supply: 'supply', ground: 'ground', signal: 'signal' } as const;
const terminals = { top: 'top', bottom: 'bottom', wiper: 'wiper' } as const;
type Lead = keyof typeof leads;
type Terminal = keyof typeof terminals;

/** Right is said of a connection, wrong ones have names. */
const connectionOf = (mistake: Mistake): string =>
  whole(mistake, 'mistake', () =>
    mistake.kind === 'none' ? 'the right connection' : mistakeLabel(mistake),
  );

/** What the working of a wrong connection's currents and heat says. */
export const mistakeWorkingWords = {
  title: (mistake: Mistake, position: string): string =>
    say`Currents and heat, the wiper at ${position} of the track: ${connectionOf(mistake)}`,
  titleAnywhere: (mistake: Mistake): string => say`Currents and heat: ${mistakeLabel(mistake)}`,
  x: 'where the wiper stands, as a part of the track from its bottom end',
  leg: {
    top: 'Resistance from the wiper’s place to the top terminal',
    bottom: 'Resistance from the wiper’s place to the bottom terminal',
    wiper: 'Resistance from the wiper’s place to its terminal',
  },
  way: (lead: Lead, terminal: Terminal): string =>
    whole(
      { lead, terminal },
      'lead',
      () => say`Way of the ${leads[lead]} lead, which sits on the ${terminals[terminal]} terminal`,
    ),
  joined: (lead: 'supply' | 'ground'): string =>
    whole(
      lead,
      'lead',
      () =>
        say`From the wiper’s place to where signal and ${leads[lead]} leads touch: by the track and by the wiper side by side`,
    ),
  beyond:
    'Resistance that the source sees beyond the wiper’s place: the two other ways side by side',
  sourceCurrent: 'Current out of the source, through the limiting resistor and the supply lead',
  shortCurrent: 'Current out of the source: nothing but what lies before the sensor limits it',
  groundCurrent: 'Current back through the ground lead',
  signalCurrent: 'Current through the signal lead',
  output: 'Reading',
  limiterHeat: 'Heat in the limiting resistor',
  trackCurrent: 'Largest current in a piece of the track',
  trackHeat: 'Heat of the track as if all of it carried that current: what its power rating limits',
  wiperCurrent: (lead: Lead): string =>
    whole(lead, 'lead', () => say`The wiper carries the current of the ${leads[lead]} lead.`),
  through: 'Nothing goes through the sensor: the leads touch before it.',
} as const;

/** What the working of a limiting resistor says. */
export const limiterWorkingWords = {
  title: 'The limiting resistor',
  deciding: (mistake: Mistake): string => say`What decides: ${mistakeLabel(mistake)}`,
  maxCurrent: {
    wiper: 'largest current that the wiper may bear, for a moment',
    source: 'largest current that the source may give, for a moment',
  },
  continuousCurrent: {
    wiper: 'largest current that the wiper may bear',
    source: 'largest current that the source may give',
  },
  trackPower: 'largest power that the track may bear',
  trackCurrent: 'Current at which the whole track would take that power',
  place: 'where the wiper stands when it is worst, as a part of the track from its bottom end',
  rest: 'Resistance that is there besides the limiting resistor',
  least: 'Smallest limiting resistor that holds the current',
  preferred: {
    up: (series: string): string => say`next value up in the series ${series} (IEC 60063)`,
    nearest: (series: string): string => say`nearest value of the series ${series} (IEC 60063)`,
    down: (series: string): string => say`next value down in the series ${series} (IEC 60063)`,
  },
  heat: 'Heat in the preferred value where supply and ground touch, the worst for it',
  keeps: 'Whether the preferred value holds it',
  does: (value: string): string => say`Take ${value}.`,
  doesOfPower: (value: string, watts: string): string =>
    say`Take ${value}, rated for ${watts} or more.`,
  leavesLess: 'It does, but leaves less of the span than was wished: loosen one wish or the other.',
  normalUse: 'What decides: normal use on the right connection.',
  doesNot: 'It is below the smallest that holds; take a larger one.',
  noNeed: 'no rating that was given needs a limiting resistor',
  impossible: 'can’t be kept by any limiting resistor',
  elsewhere: 'is decided by a mistake whose ways don’t meet at the wiper',
} as const;
