import { type Assumption, listOf, type RankedInstrument, type Unproved } from '@truesweep/core';
import { codeOf, texts } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * Headings and short words of a comparison of instruments.
 *
 * @example
 * instrumentWords.instrument // => 'Instrument'
 */
export const instrumentWords = {
  comparison: 'Instruments, the best first',
  instrument: 'Instrument',
  onePass: 'one pass',
  allPasses: 'all passes',
  shortest: '95 % from',
  loads: 'loads',
  sees: 'shows it',
  blank: '(blank)',
  hookUp: 'Sensor and hook-up',
  spot: 'The spot and the hand',
  own: 'A recorder of your own',
  ownName: 'your recorder',
  assumed: 'Assumed, for it was not told',
  setting: 'To see it surely',
  meterOnly: 'With a digital meter alone',
  digits: 'What the digital meter shows over one such stroke (V)',
} as const satisfies Record<string, string>;

/**
 * Words of simulated displays.
 *
 * @example
 * displayWords.play // => 'Play the stroke'
 */
export const displayWords = {
  title: 'What digits, a needle and a trace show of one stroke past the spot',
  moment: 'Moment of the stroke',
  play: 'Play the stroke',
  blank: '–',
} as const satisfies Record<string, string>;

/**
 * Why an instrument stands where it stands.
 *
 * @example
 * sightLabels['too-slow'] // => 'too slow'
 */
export const sightLabels: Readonly<Record<RankedInstrument['reason'], string>> = {
  surely: 'surely',
  'by-chance': 'by chance',
  'too-slow': 'too slow',
  'too-coarse': 'too coarse',
};

/**
 * What a result rests on that nobody told.
 *
 * @example
 * assumptionSentences['dead-time-0'] // => 'no dead time between conversions'
 */
export const assumptionSentences: Readonly<Record<Assumption, string>> = {
  'dead-time-0': 'no dead time between conversions',
  'every-conversion-shown': 'every conversion shown',
  'movement-usual': "a needle's movement of 1 Hz, damped by 0.7",
  'eye-notices-2-percent': 'an eye that notices 2 % of full scale',
  'three-steps-noticed': 'a departure of three steps stands out',
  'signal-at-rest': 'a signal at rest but for the dropout',
  'bandwidth-unlimited': 'no limit of bandwidth',
  'no-filter': 'no filter before the converter',
  'input-capacitance-0': 'no capacitance of input and cable',
};

/**
 * What a digital meter cannot prove.
 *
 * @example
 * unprovedLabels['snap-closing'] // => 'what happens as the throttle snaps shut'
 */
export const unprovedLabels: Readonly<Record<Unproved, string>> = {
  'short-dropouts': 'dropouts shorter than a conversion',
  'while-moving': 'what comes only while the wiper moves',
  'snap-closing': 'what happens as the throttle snaps shut',
  'scatter-of-closed': 'how well the closed reading repeats',
};

/**
 * What is looked for, above a comparison of instruments.
 *
 * @example
 * soughtSentence({ width: '1 %', travel: '30 %', lasts: '20 ms', depth: '1.4 V' }).includes('20 ms') // => true
 */
export function soughtSentence(sought: {
  readonly width: string;
  readonly travel: string;
  readonly lasts: string;
  readonly depth: string;
}): string {
  return whole(sought, 'sought', () => {
    return say`A worn spot of ${sought.width} at ${sought.travel} of the travel keeps the contact open for ${sought.lasts} at this speed; the signal then falls by about ${sought.depth}.`;
  });
}

/**
 * Which instruments show what is looked for.
 *
 * @example
 * shownBySentence(3, { surely: ['logger'], byChance: [], never: ['digital meter'] }) // => 'In 3 passes it shows surely on: logger. It does not show on: digital meter.'
 */
export function shownBySentence(
  passes: number,
  names: {
    readonly surely: readonly string[];
    readonly byChance: readonly string[];
    readonly never: readonly string[];
  },
): string {
  return whole(names, 'names', () => {
    const { surely, byChance, never } = names;
    for (const [name, list] of Object.entries({ surely, byChance, never }))
      texts(list, `names.${name}`);
    const times = passes === 1 ? 'one pass' : say`${passes} passes`;
    return [
      surely.length > 0
        ? say`In ${times} it shows surely on: ${surely.join('; ')}.`
        : say`In ${times} it shows surely on none of these instruments.`,
      ...(byChance.length > 0 ? [say`By chance on: ${byChance.join('; ')}.`] : []),
      ...(never.length > 0 ? [say`It does not show on: ${never.join('; ')}.`] : []),
    ].join(' ');
  });
}

/**
 * How to set an oscilloscope or a logger.
 *
 * @example
 * const setting = { interval: '4 ms', timePerDivision: '500 ms', memory: '1251', voltsPerDivision: '1 V', probe: 1 as const };
 * settingSentence({ ...setting, trigger: 'falling through 200 mV' }).includes('×1') // => true
 */
export function settingSentence(setting: {
  readonly interval: string;
  readonly timePerDivision: string;
  readonly memory: string;
  readonly voltsPerDivision: string;
  readonly trigger: string;
  readonly probe: 1 | 10;
}): string {
  return whole(setting, 'setting', () => {
    return say`Sample every ${setting.interval} or faster: ${setting.timePerDivision} per division with at least ${setting.memory} samples in a record, ${setting.voltsPerDivision} per division, a ×${setting.probe} probe, direct coupling (DC); to stop on a dropout, trigger on the signal ${setting.trigger}.`;
  });
}

/**
 * What a trigger waits for.
 *
 * @example
 * triggerWords.level('falling', '200 mV') // => 'falling through 200 mV'
 */
export const triggerWords = {
  level: (slope: 'falling' | 'rising', volts: string): string => say`${slope} through ${volts}`,
  pulse: (shorterThan: string): string => say`leaving its level for less than ${shorterThan}`,
} as const;

/**
 * How to look with a digital meter alone.
 *
 * @example
 * stepByStepSentence({ step: '0.5 %', steps: 200, wait: '640 ms', total: '128 s' }).includes('200 steps') // => true
 */
export function stepByStepSentence(way: {
  readonly step: string;
  readonly steps: number;
  readonly wait: string;
  readonly total: string;
}): string {
  return whole(way, 'way', () => {
    return say`Turn by ${way.step} of the travel at a time (${way.steps} steps) and wait ${way.wait} at each, ${way.total} in all one way; a reading that strays from its neighbours is a spot.`;
  });
}

/**
 * Said where the steps that a spot asks for are finer than a hand sets.
 *
 * @example
 * const way = { step: '0.5 %', steps: 200, narrowest: '5 %', width: '1 %', shownBy: ['logger'] };
 * notByHandSentence(way).includes('which no hand sets') // => true
 */
export function notByHandSentence(way: {
  readonly step: string;
  readonly steps: number;
  readonly narrowest: string;
  readonly width: string;
  readonly shownBy: readonly string[];
}): string {
  return whole(way, 'way', () => {
    texts(way.shownBy, 'way.shownBy');
    const proof =
      way.shownBy.length > 0 ? way.shownBy.join('; ') : 'a recorder that is set as above';
    return say`To step over no spot of ${way.width} would take ${way.steps} steps of ${way.step} of the travel, which no hand sets. Between steps by hand a spot narrower than ${way.narrowest} can lie unseen: a meter alone does not prove that no spot of ${way.width} is there. These do: ${proof}.`;
  });
}

/**
 * What stays unproved, as a sentence.
 *
 * @example
 * unprovedSentence(['while-moving']) // => 'Unproved then: what comes only while the wiper moves.'
 */
export function unprovedSentence(unproved: readonly Unproved[]): string {
  listOf(codeOf(unprovedLabels))(unproved, 'unproved');
  return say`Unproved then: ${unproved.map((one) => unprovedLabels[one]).join('; ')}.`;
}

/**
 * Said where nothing but the instrument loads the signal.
 *
 * @example
 * addLoadSentence.includes('load') // => true
 */
export const addLoadSentence =
  'Add a deliberate load from signal to common, such as 1 MΩ: it pulls the signal away while the contact is open.';
