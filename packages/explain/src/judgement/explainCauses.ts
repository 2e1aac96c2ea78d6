import type { CauseFactors, Score } from '@truesweep/core';
import { workingRules as rules, causesWorkingWords as words } from '@truesweep/wording/working';
import { call, negative, product, quotient, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { workOutOf } from './workOutOf.js';

type Cause = CauseFactors['sources'][number];

/**
 * What speaks for track, connection and interference as causes of a sweep's departures: of each explanation how common it is beforehand, how well
 * forms fit, and how well times and places fit; from these its weight.
 *
 * @param explanations A score's.
 * @returns The answer is the weight of the likeliest cause, 0 to 1, before it is taken into account that departures may be none.
 * @throws InputError `no-working` without explanations; `missing` for some that lack a part, `not-finite` for numbers that are none.
 *
 * @example
 * const track = { sources: ['track'], before: 0.38, form: -3, place: 2, weight: 0.95 } as const;
 * const connection = { sources: ['connection'], before: 0.34, form: -3, place: -1, weight: 0.05 } as const;
 * explainCauses([track, connection]).answer.value // => ≈ 0.957353
 */
export function explainCauses(explanations: NonNullable<Score['explanations']>): Working {
  return workOutOf(
    explanations,
    'explanations',
    () => words.title,
    (sheet) => {
      if (explanations.length === 0) refuseWorking('explanations', 'are none');
      // From the likeliest on, so that no exponential overflows: a factor common to all changes no weight.
      const most = Math.max(...explanations.map(({ form, place }) => form + place));
      sheet.give({ symbol: 'l', meaning: words.most, value: most, unit: '1' }, 'found');
      const rows = explanations.map(({ sources, before, form, place }) => {
        const mark = sources.map((source) => source[0]).join('');
        const given = [
          [`b_${mark}`, words.before(sources), before, '%'],
          [`f_${mark}`, words.form(sources), form, '1'],
          [`r_${mark}`, words.place(sources), place, '1'],
        ] as const;
        for (const [symbol, meaning, value, unit] of given)
          sheet.give({ symbol, meaning, value, unit }, 'found');
        const [b, f, r] = given.map(([symbol]) => symbol) as [string, string, string];
        const weight = `w_${mark}`;
        sheet.find({
          symbol: weight,
          meaning: words.weight(sources),
          unit: '1',
          formula: product(b, call('exp', sum(f, r, negative('l')))),
          rule: rules.bayes,
        });
        return { sources, weight, row: { name: words.name(sources), symbols: [b, f, r, weight] } };
      });
      sheet.table({
        finds: words.table,
        columns: words.columns,
        rows: rows.map(({ row }) => row),
        rule: rules.bayes,
      });
      sheet.find({
        symbol: 'w',
        meaning: words.all,
        unit: '1',
        formula: sum(...rows.map(({ weight }) => weight)),
        rule: rules.bayes,
      });
      const shares = (['interference', 'connection', 'track'] as const)
        .filter((cause) => rows.some(({ sources }) => sources.includes(cause)))
        .map((cause) => findShare(cause));
      return { answer: shares.reduce((a, b) => (sheet.value(b) > sheet.value(a) ? b : a)) };

      function findShare(cause: Cause): string {
        const symbol = `p_${cause[0]}`;
        const parts = rows
          .filter(({ sources }) => sources.includes(cause))
          .map(({ sources, weight }) =>
            sources.length > 1 ? quotient(weight, sources.length) : { symbol: weight },
          );
        sheet.find({
          symbol,
          meaning: words.share(cause),
          unit: '%',
          formula: quotient(sum(...parts), 'w'),
          rule: rules.bayes,
        });
        return symbol;
      }
    },
  );
}
