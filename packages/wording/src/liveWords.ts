import {
  type DeliberateTest,
  formatQuantity,
  type Hint,
  type HintCode,
  type Missing,
} from '@truesweep/core';
import { say } from './say.js';
import { whole } from './whole.js';

const hintSentences: Readonly<Record<HintCode, (measured: string, limit: string) => string>> = {
  'stroke-too-fast': (measured, limit) =>
    say`Too fast: a tenth of the travel took ${measured}; take ${limit} or more, so that each place is seen.`,
  'short-of-open': (measured, limit) =>
    say`You turned round at ${measured} of the travel; go on to the open stop (${limit} or more).`,
  clipped: (measured) =>
    say`Clipped: ${measured} readings stand at the end of the recorder's range, where a departure can't show. Choose a wider range.`,
  'recorder-too-slow': (measured, limit) =>
    say`Too few samples: one every ${measured}; a dropout shows with one every ${limit} or oftener.`,
  smoothed: (measured, limit) =>
    say`Smoothed over ${measured} (at most ${limit}): switch averaging off, or short dropouts are lost.`,
  noisy: (measured, limit) =>
    say`Too noisy: nothing smaller than ${measured} of the span can show (at most ${limit}). Shorten the leads, join the grounds.`,
  hum: (measured, limit) =>
    say`Hum from the mains: nothing smaller than ${measured} of the span can show (at most ${limit}). Keep leads away from mains cables, run the recorder from its battery.`,
  'too-coarse': (measured, limit) =>
    say`Too coarse: a step of the recorder hides what is smaller than ${measured} of the span (at most ${limit}). Choose a narrower range.`,
  'supply-sags': (measured, limit) =>
    say`The supply strays by ${measured} (at most ${limit}): look at its leads and its clips.`,
};

/**
 * What to do better in the running recording, as a sentence.
 *
 * @example
 * hintSentence({ hint: 'supply-sags', at: 4.2, measured: 0.08, limit: { most: 0.02 }, unit: '1' }) // => 'The supply strays by 8\u00a0% (at most 2\u00a0%): look at its leads and its clips.'
 */
export function hintSentence(hint: Hint): string {
  return whole(hint, 'hint', () => {
    const { unit, measured, limit } = hint;
    const text = (value: number): string =>
      unit === 'count'
        ? say`${value}`
        : formatQuantity(value, unit === '1' ? '%' : unit, { trim: true });
    const bound = 'most' in limit ? limit.most : limit.least;
    return hintSentences[hint.hint](text(measured), text(bound));
  });
}

/** What stands on the trace beside a hint, in two or three words. */
export const hintLabels: Readonly<Record<HintCode, string>> = {
  'stroke-too-fast': 'too fast',
  'short-of-open': 'not open',
  clipped: 'clipped',
  'recorder-too-slow': 'too few samples',
  smoothed: 'smoothed',
  noisy: 'too noisy',
  hum: 'hum',
  'too-coarse': 'too coarse',
  'supply-sags': 'supply strays',
};

const testAsks: Readonly<Record<DeliberateTest, string>> = {
  'harness-flexed': 'hold the shaft still and flex the harness and its plug',
  'housing-tapped': 'hold the shaft still and tap the housing',
  warmed: 'hold the shaft still and warm the sensor',
};

/**
 * What is still asked of a recording, as a part of a sentence.
 *
 * @example
 * missingText({ missing: 'sweeps', count: 2 }) // => '2 more slow sweeps, open and back'
 */
export function missingText(missing: Missing): string {
  return whole(missing, 'missing', () => {
    switch (missing.missing) {
      case 'sweeps':
        return missing.count === 1
          ? '1 more slow sweep, open and back'
          : say`${missing.count} more slow sweeps, open and back`;
      case 'snaps':
        return missing.count === 1
          ? '1 snap: open, let go'
          : say`${missing.count} snaps: open, let go`;
      default:
        return testAsks[missing.test];
    }
  });
}
