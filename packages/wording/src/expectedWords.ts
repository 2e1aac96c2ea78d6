import { say } from './say.js';

/**
 * Headings and sentences of what a sensor must read, by its kind.
 *
 * @example
 * expectedWords.between('5.5', '6.8 kΩ') // => '5.5 to 6.8 kΩ'
 */
export const expectedWords = {
  temperature: 'Temperature',
  resistance: 'Resistance',
  voltage: 'On the pull-up',
  shown: 'A scan tool shows',
  port: 'At the port',
  open: 'open',
  absolute: 'Absolute',
  ratio: 'Of the supply',
  rest: 'At rest',
  operated: 'Operated',
  otherWay: 'Operated the other way',
  back: 'Back at rest',
  keyCycled: 'After the key was off and on',
  changesBetween: 'Angle at which it changes',
  output: (supply: string): string => say`Output at ${supply}`,
  air: (pressure: string, spread: string): string =>
    say`The air at the bench: ${pressure} ± ${spread}.`,
  settles: (seconds: string): string =>
    say`Leave it in its bath: from 20 °C into boiling water it needs ${seconds} until it is within 0.1 K.`,
  faults: (broken: string, shorted: string): string =>
    say`A break shows ${broken} there, a short ${shorted}.`,
  between: (low: string, high: string): string => say`${low} to ${high}`,
  atLeast: (low: string): string => say`at least ${low}`,
  atMost: (high: string): string => say`at most ${high}`,
} as const;
