import { say } from './say.js';

/** The entries that tell a potentiometer from a contactless sensor. */
export type ContactlessEntry =
  | 'endToEnd'
  | 'endToEndReversed'
  | 'oneToWiper'
  | 'otherToWiper'
  | 'oneMoved'
  | 'otherMoved'
  | 'ohmmeter'
  | 'fedFrom'
  | 'throughResistor'
  | 'takes'
  | 'worksFrom';

/**
 * What each entry of three unknown terminals is called.
 *
 * @example
 * contactlessLabels.endToEndReversed // => 'The same, the leads changed over'
 */
export const contactlessLabels: Readonly<Record<ContactlessEntry, string>> = {
  endToEnd: 'From end to end',
  endToEndReversed: 'The same, the leads changed over',
  oneToWiper: 'From one end to the third terminal',
  otherToWiper: 'From the other end to it',
  oneMoved: 'From the one end, the shaft moved',
  otherMoved: 'From the other end, the shaft moved',
  ohmmeter: 'Uncertainty of the ohmmeter',
  fedFrom: 'Fed from',
  throughResistor: 'Through a resistor of',
  takes: 'Current that it takes',
  worksFrom: 'Lowest supply that it works at',
};

/**
 * What each entry of three unknown terminals means, in one line.
 *
 * @example
 * contactlessHints.takes // => 'From its data sheet; a contactless one takes some 10 mA (from memory).'
 */
export const contactlessHints: Readonly<Record<ContactlessEntry, string>> = {
  endToEnd: 'Unplugged, the two terminals farthest apart in ohms; OL where the meter shows that.',
  endToEndReversed: 'In the same range of the meter.',
  oneToWiper: 'The shaft at rest.',
  otherToWiper: 'The shaft still there.',
  oneMoved: 'Leave both empty where it can’t be moved.',
  otherMoved: 'The shaft held in that new place.',
  ohmmeter: 'Standard uncertainty as a part of the reading.',
  fedFrom: 'What the resistor would be fed from on the bench.',
  throughResistor: 'The limiting resistor of a potentiometer’s hook-up.',
  takes: 'From its data sheet; a contactless one takes some 10 mA (from memory).',
  worksFrom: 'From its data sheet, often 4.5 V of a 5 V part (from memory).',
};

/**
 * Words of the page that tells a potentiometer from a contactless sensor.
 *
 * @example
 * contactlessWords.conclusions['not-one'] // => 'This is no potentiometer.'
 */
export const contactlessWords = {
  readings: 'An ohmmeter between the three terminals',
  moved: 'The same with the shaft moved',
  starving: 'What a limiting resistor leaves a contactless one',
  conclusions: {
    potentiometer: 'This is a potentiometer.',
    'not-one': 'This is no potentiometer.',
    'cannot-tell': 'These readings can’t tell whether it is a potentiometer.',
  },
  reasons: {
    'depends-on-polarity':
      'End to end reads differently with the leads changed over: something active lies between.',
    'does-not-split':
      'The two parts don’t make up the whole: the third terminal is not on a track between the ends.',
    'ends-open': 'Nothing connects end to end: a broken track, or none at all.',
    'wiper-open': 'Nothing connects to the third terminal.',
    'wiper-far-from-track':
      'More lies in series with the third terminal than the whole track has: a worn or dirty contact, or no wiper.',
    'does-not-follow': 'The shaft was moved, and neither part followed.',
    splits: 'The two parts and what lies in series with the wiper make up end to end.',
    follows: 'One part grew by what the other lost.',
  },
  goOn: 'Go on with its terminals, then plan the hook-up.',
  refuse:
    'None of the throttle’s calculators are for it: ohms between its terminals mean nothing. Test it plugged in, as the machine’s service manual says.',
  starved: (resistor: string, left: string, needs: string): string =>
    say`Through ${resistor} a contactless one would have ${left} of the ${needs} that it needs: it starves, and reads like a broken one.`,
  fed: (resistor: string, left: string): string =>
    say`Through ${resistor} a contactless one keeps ${left}, enough to work.`,
  largest: (resistor: string): string =>
    say`The largest resistor that leaves it enough is ${resistor}.`,
  needsBoth: 'Enter both readings with the shaft moved, or neither.',
  numbers: 'The parts',
  what: 'What',
  value: 'Value',
  sum: 'Both parts together',
  difference: 'Leads changed over, difference',
} as const;
