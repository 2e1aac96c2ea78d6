import { type CaptureQuality, type Criteria, normalQuantile, type Volts } from '@truesweep/core';
import { workingRules as rules, visibleWorkingWords as words } from '@truesweep/wording/working';
import { call, type Expression, product, quotient } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import type { Rule, Working } from '../working.js';
import { workOutOf } from './workOutOf.js';

/**
 * Why a departure must be so large to count as visible in a recording: the limits by noise, the recorder's steps, the span and the mains' ripple,
 * the largest of which decides.
 *
 * @param quality What the score says of the recording.
 * @param span Between the expected closed and open reading, V; its sign is of no account.
 * @param criteria What it was judged by.
 * @returns The answer is the smallest visible departure, V.
 * @throws InputError `missing` for a quality or criteria that lack a part, `not-finite` for numbers that are none.
 *
 * @example
 * const quality = { samples: 10_000, noise: 0.002, resolution: 0.005 };
 * explainVisible(quality, 4, { falseDepartures: 0.005, visibleSteps: 3, visibleSpan: 0.015, visibleRipple: 2.5 }).answer.value // => ≈ 0.06
 */
export function explainVisible(
  quality: Pick<CaptureQuality, 'samples' | 'noise' | 'resolution' | 'ripple'>,
  span: Volts,
  criteria: Pick<Criteria, 'falseDepartures' | 'visibleSteps' | 'visibleSpan' | 'visibleRipple'>,
): Working {
  return workOutOf(
    { quality, criteria },
    'quality',
    () => words.title,
    (sheet) => {
      const { samples, noise, resolution, ripple } = quality;
      const give = (
        symbol: keyof typeof words.given,
        value: number,
        unit: WorkingUnit,
        from?: 'found',
      ) => sheet.give({ symbol, meaning: words.given[symbol], value, unit }, from);
      const limit = (symbol: string, meaning: string, formula: Expression, rule: Rule) =>
        sheet.find({ symbol, meaning, unit: 'V', formula, rule });
      give('n', samples, '1');
      give('p_f', criteria.falseDepartures, '%');
      const tail = sheet.find({
        symbol: 'p_1',
        meaning: words.tail,
        unit: '1',
        formula: quotient('p_f', product(2, 'n')),
        rule: rules.falseAlarms,
      });
      sheet.give(
        { symbol: 'k', meaning: words.given.k, value: normalQuantile(tail), unit: '1' },
        'found',
      );
      give('σ', noise, 'V', 'found');
      limit('d_σ', words.byNoise, product('k', 'σ'), rules.falseAlarms);
      give('q', resolution, 'V', 'found');
      give('n_q', criteria.visibleSteps, '1');
      limit('d_q', words.bySteps, product('n_q', 'q'), rules.criterion);
      give('U_sp', Math.abs(span), 'V', 'found');
      give('f_sp', criteria.visibleSpan, '%');
      limit('d_sp', words.bySpan, product('f_sp', 'U_sp'), rules.criterion);
      const limits = ['d_σ', 'd_q', 'd_sp'];
      if (ripple) {
        give('U_r', ripple.volts, 'V', 'found');
        give('n_r', criteria.visibleRipple, '1');
        limit('d_r', words.byRipple, product('n_r', 'U_r'), rules.criterion);
        limits.push('d_r');
      }
      limit('d_v', words.visible, call('max', ...limits), rules.comparison);
      return {};
    },
  );
}
