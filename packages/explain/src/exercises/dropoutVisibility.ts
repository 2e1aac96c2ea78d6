import {
  chanceInPasses,
  chanceOfReading,
  defaultCriteria,
  type Readings,
  type Seconds,
  type Volts,
} from '@truesweep/core';
import { visibilityExerciseWords as words } from '@truesweep/wording/working';
import { call, difference, power, product, quotient, sum } from '../expression.js';
import { workOut } from '../workOut.js';
import { given } from './benchParts.js';
import type { Draws } from './draws.js';
import type { Draft, ExerciseLevel } from './exercise.js';
import { choicePart, quantityPart } from './parts.js';

/** Whether a recorder shows a dropout: one that samples, a meter over several passes, or from which depth on. */
export function dropoutVisibility(draw: Draws, level: ExerciseLevel): Draft | undefined {
  if (level === 'hard') return smallestVisible(draw);
  return level === 'easy' ? sampledOnce(draw) : averaged(draw);
}

function sampledOnce(draw: Draws): Draft {
  const interval = draw.one([0.005, 0.01, 0.02, 0.025, 0.05, 0.1, 0.2]);
  const length = interval * draw.stepped(0.1, 0.9, 0.05);
  const chance = chanceOfReading(length, { interval, aperture: 0, share: 0 });
  return {
    question: words.sampled(given(interval, 's'), given(length, 's')),
    hint: words.hintSampled,
    parts: [
      quantityPart({ id: 'chance', asks: words.asksChance, unit: '%', value: chance }, [
        [1 - chance, words.mistakes.missed],
        [length / (interval + length), words.mistakes.ofBoth],
        [1, words.mistakes.always],
        [chance / 2, words.mistakes.halved],
      ]),
    ],
    working: () =>
      workOut(words.titleChance, ({ give, find }) => {
        give({ symbol: 'T', meaning: words.finds.T, value: interval, unit: 's' });
        give({ symbol: 't_d', meaning: words.finds.t_d, value: length, unit: 's' });
        const formula = quotient('t_d', 'T');
        find({ symbol: 'p', meaning: words.finds.p, unit: '%', formula, rule: words.rules.phase });
        return {};
      }),
  };
}

function averaged(draw: Draws): Draft {
  const interval = draw.one([0.2, 0.25, 0.3, 0.4, 0.5]);
  const aperture = draw.one([0.02, 0.04, 0.05, 0.08, 0.1]);
  const share = draw.one([0.1, 0.15, 0.2, 0.25, 0.3]);
  const length = draw.one([0.01, 0.015, 0.02, 0.025, 0.03, 0.04, 0.05]);
  const passes = draw.stepped(2, 5, 1);
  const readings = { interval, aperture, share };
  const one = chanceOfReading(length, readings);
  const all = chanceInPasses(one, passes);
  const of = (seconds: Seconds) => seconds / interval;
  return {
    question: words.averaged({
      interval: given(interval, 's'),
      aperture: given(aperture, 's'),
      share: given(share, '%'),
      length: given(length, 's'),
    }),
    hint: words.hintAveraged,
    parts: [
      quantityPart({ id: 'one', asks: words.asksOne, unit: '%', value: one }, [
        [of(length), words.mistakes.forgotAperture],
        [of(aperture + length), words.mistakes.forgotShare],
        [of(aperture + length - share * aperture), words.mistakes.shareOnce],
        [1 - one, words.mistakes.missed],
      ]),
      quantityPart({ id: 'all', asks: words.asksAll(passes), unit: '%', value: all }, [
        [one, words.mistakes.onePass],
        [passes * one, words.mistakes.addedPasses],
        [one ** passes, words.mistakes.everyPass],
        [1 - all, words.mistakes.missed],
      ]),
    ],
    working: () => averagedWorking(length, readings, passes),
  };
}

function averagedWorking(length: Seconds, { interval, aperture, share }: Readings, passes: number) {
  return workOut(words.titleAll(passes), ({ give, find }) => {
    give({ symbol: 'T', meaning: words.finds.T, value: interval, unit: 's' });
    give({ symbol: 'a', meaning: words.finds.a, value: aperture, unit: 's' });
    give({ symbol: 'θ', meaning: words.finds.θ, value: share, unit: '%' });
    give({ symbol: 't_d', meaning: words.finds.t_d, value: length, unit: 's' });
    give({ symbol: 'n', meaning: words.finds.n, value: passes, unit: '1' });
    find({
      symbol: 'p_1',
      meaning: words.finds.p_1,
      unit: '%',
      formula: quotient(difference(sum('a', 't_d'), product(2, 'θ', 'a')), 'T'),
      rule: words.rules.phase,
    });
    find({
      symbol: 'p',
      meaning: words.finds.p_n,
      unit: '%',
      formula: difference(1, power(difference(1, 'p_1'), 'n')),
      rule: words.rules.passes,
    });
    return {};
  });
}

/** The three that set what is visible, each with what it comes to. */
interface Limits {
  readonly noise: Volts;
  readonly resolution: Volts;
  readonly span: Volts;
}

function smallestVisible(draw: Draws): Draft | undefined {
  const deviations = draw.one([4.5, 5, 5.5]);
  const noise = draw.stepped(0.001, 0.02, 0.001);
  const resolution = draw.one([0.001, 0.002, 0.005, 0.01, 0.02, 0.025]);
  const span = draw.stepped(2, 4, 0.1);
  const source = 5;
  const { visibleSteps, visibleSpan } = defaultCriteria;
  const limits: Limits = {
    noise: deviations * noise,
    resolution: visibleSteps * resolution,
    span: visibleSpan * span,
  };
  const sizes = Object.values(limits) as Volts[];
  const visible = Math.max(...sizes);
  const [, second = 0] = sizes.toSorted((a, b) => b - a);
  if (second >= 0.97 * visible) return undefined;
  const setBy = (Object.keys(limits) as (keyof Limits)[]).find((one) => limits[one] === visible)!;
  return {
    question: words.limits({
      source: given(source, 'V'),
      noise: given(noise, 'V'),
      resolution: given(resolution, 'V'),
      span: given(span, 'V'),
      deviations: given(deviations, '1'),
      steps: given(visibleSteps, '1'),
      part: given(visibleSpan, '%'),
    }),
    hint: words.hintLimits,
    parts: [
      quantityPart({ id: 'visible', asks: words.asksVisible, unit: 'V', value: visible }, [
        [Math.min(...sizes), words.mistakes.smallest],
        [sizes.reduce((a, b) => a + b), words.mistakes.addedLimits],
        [Math.hypot(...sizes), words.mistakes.rootOfSquares],
        [{ noise, resolution, span: visibleSpan * source }[setBy], words.mistakes[setBy]],
      ]),
      choicePart(
        { id: 'set-by', asks: words.asksSetBy, right: setBy },
        (['noise', 'resolution', 'span'] as const).map((id) => ({
          id,
          text: words.limitNames[id],
          mistake: words.notLargest(given(limits[id], 'V'), given(visible, 'V')),
        })),
      ),
    ],
    working: () =>
      workOut(words.titleVisible, ({ give, find }) => {
        give({ symbol: 'σ', meaning: words.finds.σ, value: noise, unit: 'V' });
        give({ symbol: 'k', meaning: words.finds.k, value: deviations, unit: '1' });
        give({ symbol: 'q', meaning: words.finds.q, value: resolution, unit: 'V' });
        give({ symbol: 'm', meaning: words.finds.m, value: visibleSteps, unit: '1' });
        give({ symbol: 'S', meaning: words.finds.S, value: span, unit: 'V' });
        give({ symbol: 's', meaning: words.finds.s, value: visibleSpan, unit: '%' });
        const limit = (symbol: 'D_n' | 'D_q' | 'D_s', one: string, other: string) =>
          find({
            symbol,
            meaning: words.finds[symbol],
            unit: 'V',
            formula: product(one, other),
            rule: words.rules.visible,
          });
        limit('D_n', 'k', 'σ');
        limit('D_q', 'm', 'q');
        limit('D_s', 's', 'S');
        find({
          symbol: 'D',
          meaning: words.finds.D,
          unit: 'V',
          formula: call('max', 'D_n', 'D_q', 'D_s'),
          rule: words.rules.visible,
        });
        return { conclusion: words.setBy(words.limitNames[setBy]) };
      }),
  };
}
