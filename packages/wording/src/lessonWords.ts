import { say } from './say.js';

/**
 * Words of the lessons' sliders and frames.
 *
 * @example
 * lessonWords.steps // => 'With these values, step by step'
 */
export const lessonWords = {
  figure: 'Move it and see',
  steps: 'With these values, step by step',
  notFetched: 'The steps could not be fetched. Try again with a connection.',
  wiper: 'Wiper, up the track',
  track: 'Track, from end to end',
  load: 'Load, from the signal to common',
  limiter: 'Limiting resistor',
  wiperAtMistake: 'Wiper, while a lead sits wrongly',
  meterInput: 'Input resistance of the meter',
  dropoutLength: 'Length of the dropout',
  dirt: 'Dirt under the wiper',
  passes: 'Passes that show a dropout, of six',
  spread: 'How far apart they lie, in travel',
  temperature: 'Temperature of the sensor',
  pullUp: 'Pull-up',
} as const;

/**
 * What is said below the figure of a lesson; every quantity is written with its unit.
 *
 * @example
 * lessonSentences.noTrack('5 kΩ', '1 mA') // => 'The 5 kΩ of the track take no part in that; they set the current through it, 1 mA.'
 */
export const lessonSentences = {
  divided: (position: string, source: string, reading: string): string =>
    say`With the wiper at ${position} of the track the signal has ${position} of the ${source}: ${reading}.`,
  noTrack: (track: string, amps: string): string =>
    say`The ${track} of the track take no part in that; they set the current through it, ${amps}.`,
  costs: (limiter: string, open: string, without: string): string =>
    say`It costs reading: with ${limiter} in series a sound sensor reads ${open} at the open stop, where it reads ${without} without a limiting resistor.`,
  protects: (position: string, amps: string, without: string): string =>
    say`It holds a mistake down: with the ground lead on the wiper’s terminal and the wiper at ${position} of the track, ${amps} flow through the wiper. Without it there would be ${without}.`,
  nothingElse: 'nothing to hold the current down',
  metered: (input: string, shown: string, bare: string): string =>
    say`At the open stop a meter of ${input} shows ${shown}, where ${bare} stand without it.`,
  missed: (seconds: string, chance: string): string =>
    say`A dropout of ${seconds} in the middle of the travel shows on its display with a chance of ${chance} on each pass.`,
  dirty: (dirt: string, clean: string, dirty: string, part: string): string =>
    say`Where the spot is, a clean contact reads ${clean}; with ${dirt} of dirt it reads ${dirty}. That is ${part} of the span between the stops.`,
  lifted: (level: string): string =>
    say`Where the wiper touches nothing, the load alone decides: the signal goes to ${level}.`,
  seen: (seen: string): string =>
    say`The throttle was opened and closed three times, six passes in all; ${seen} of them show a dropout.`,
  sound: 'The throttle was opened and closed three times; no pass shows a dropout.',
  judged: (verdict: string, says: string): string => say`${verdict}. ${says}`,
  warm: (temperature: string, ohms: string): string =>
    say`At ${temperature} this sensor has ${ohms}.`,
  across: (supply: string, pullUp: string, volts: string): string =>
    say`On ${supply} through a pull-up of ${pullUp} it has ${volts} across it.`,
} as const;
