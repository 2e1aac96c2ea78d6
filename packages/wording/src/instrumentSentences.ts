import {
  formatQuantity,
  type InstrumentAdvice,
  type QuantityUnit,
  type Setting,
} from '@truesweep/core';
import {
  addLoadSentence,
  assumptionSentences,
  instrumentWords,
  notByHandSentence,
  settingSentence,
  shownBySentence,
  sightLabels,
  soughtSentence,
  stepByStepSentence,
  triggerWords,
  unprovedSentence,
} from './instrumentWords.js';
import { texts } from './rules.js';
import { say } from './say.js';
import { whole } from './whole.js';

/** What is said of instruments that look for a worn spot. */
export interface InstrumentSentences {
  /** What is looked for, and how it is swept over. */
  readonly sought: string;
  /** Which instruments show it, and which do not. */
  readonly shownBy: string;
  /** Headings, then a row an instrument, best first. */
  readonly rows: readonly (readonly string[])[];
  /** What was assumed of the instruments. */
  readonly assumed: string;
  /** How to set an oscilloscope or a logger. */
  readonly setting: string;
  /** How to look with a digital meter alone, and what stays unproved; empty where there is none. */
  readonly meterOnly: readonly string[];
  /** What it shows meanwhile, `(blank)` where it shows nothing. */
  readonly digits: string;
}

/**
 * What the core advises on instruments, in sentences and rows.
 *
 * @example
 * import { adviseInstruments } from '@truesweep/core';
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 1e6 } };
 * const advice = adviseInstruments(circuit, { travel: 0.3, width: 0.01, travelTime: 2, passes: 3 });
 * instrumentSentences(advice).rows[1][1] // => 'surely'
 */
export function instrumentSentences(advice: InstrumentAdvice): InstrumentSentences {
  return whole(advice, 'advice', () => saidOf(advice));
}

function saidOf(advice: InstrumentAdvice): InstrumentSentences {
  const { sought, ranked, setting, meterOnly, digits = [] } = advice;
  texts(digits, 'advice.digits');
  const words = instrumentWords;
  const assumed = new Set(ranked.flatMap(({ sight }) => sight.assumptions));
  const named = (...reasons: readonly string[]) =>
    ranked.filter(({ reason }) => reasons.includes(reason)).map(({ name }) => name);
  return {
    sought: soughtSentence({
      width: text(sought.width, '%'),
      travel: text(sought.travel, '%'),
      lasts: text(sought.width / sought.speed, 's'),
      depth: text(Math.max(...ranked.map(({ sight }) => sight.peak)), 'V'),
    }),
    shownBy: shownBySentence(sought.passes, {
      surely: named('surely'),
      byChance: named('by-chance'),
      never: named('too-slow', 'too-coarse'),
    }),
    rows: [
      [words.instrument, words.sees, words.onePass, words.allPasses, words.shortest, words.loads],
      ...ranked.map(({ name, sight, loading, reason }) => [
        say`${name}`,
        sightLabels[reason],
        text(sight.chance, '%'),
        text(sight.chanceInPasses, '%'),
        lasting(sight.shortest[1]?.inPasses ?? Number.POSITIVE_INFINITY),
        text(loading, 'V'),
      ]),
    ],
    assumed: say`${words.assumed}: ${[...assumed].map((one) => say`${assumptionSentences[one]}`).join('; ')}.`,
    setting: settingSentence({
      interval: text(setting.interval, 's'),
      timePerDivision: text(setting.timePerDivision, 's'),
      memory: say`${setting.memory}`,
      voltsPerDivision: text(setting.voltsPerDivision, 'V'),
      trigger: triggerText(setting.trigger),
      probe: setting.probe,
    }),
    meterOnly: meterOnly
      ? [
          stepByStepSentence({
            step: text((meterOnly.byHand ?? meterOnly).step, '%'),
            steps: (meterOnly.byHand ?? meterOnly).steps,
            wait: text(meterOnly.wait, 's'),
            total: text((meterOnly.byHand ?? meterOnly).total, 's'),
          }),
          ...(meterOnly.byHand
            ? [
                notByHandSentence({
                  step: text(meterOnly.step, '%'),
                  steps: meterOnly.steps,
                  narrowest: text(meterOnly.byHand.narrowest, '%'),
                  width: text(sought.width, '%'),
                  shownBy: named('surely'),
                }),
              ]
            : []),
          ...(meterOnly.addLoad ? [addLoadSentence] : []),
          unprovedSentence(meterOnly.unproved),
        ]
      : [],
    digits: digits.map((shown) => shown || words.blank).join(' '),
  };
}

function triggerText(trigger: Setting['trigger']): string {
  return trigger.kind === 'level'
    ? triggerWords.level(trigger.slope, text(trigger.volts, 'V'))
    : triggerWords.pulse(text(trigger.shorterThan, 's'));
}

function lasting(seconds: number): string {
  return seconds === Number.POSITIVE_INFINITY ? '–' : text(seconds, 's');
}

function text(value: number, unit: QuantityUnit): string {
  return formatQuantity(value, unit, { digits: 2, trim: true });
}
