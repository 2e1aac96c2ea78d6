import { type Criteria, type Finding, formatQuantity, type Spot } from '@truesweep/core';
import { workingRules as rules, placeWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, quotient, sum } from '../expression.js';
import type { Working } from '../working.js';
import { workOutOf } from './workOutOf.js';

/**
 * Why departures are one place of the travel: how far each lies from the next, beside what counts as one place; where the place is, and how
 * faithfully its passes showed it.
 *
 * @param spot One of a score's spots.
 * @param findings The same score's.
 * @param criteria What it was judged by.
 * @returns The answer is the place, a fraction of the travel: the mean of one departure for each pass.
 * @throws InputError `missing` for a spot or findings that lack a part, `not-finite` for numbers that are none.
 *
 * @example
 * const finding = { kind: 'dropout', start: 1, end: 1.02, depth: -1.5, depthOfSpan: 0.4, depthOfSource: 0.3, went: 'to-rest-level', during: 'opening' } as const;
 * const findings = [{ ...finding, travel: 0.4 }, { ...finding, travel: 0.41 }];
 * explainPlace({ travel: 0.405, findings: [0, 1], passes: 4, seen: 2 }, findings, { sameTravel: 0.03 }).answer.value // => ≈ 0.405
 */
export function explainPlace(
  spot: Spot,
  findings: readonly Finding[],
  criteria: Pick<Criteria, 'sameTravel'>,
): Working {
  const title = () => words.title(formatQuantity(spot.travel, '%', { digits: 3 }));
  return workOutOf({ spot, findings, criteria }, 'spot', title, (sheet) => {
    const ordered = spot.findings.toSorted((a, b) => findings[a]!.travel - findings[b]!.travel);
    const symbols = ordered.map((number) =>
      sheet.give(
        {
          symbol: `s_${number + 1}`,
          meaning: words.departure(number + 1),
          value: findings[number]!.travel,
          unit: '%',
        },
        'found',
      ),
    );
    sheet.give({ symbol: 's_same', meaning: words.same, value: criteria.sameTravel, unit: '%' });
    if (symbols.length > 1) {
      const gaps = symbols.slice(1).map((symbol, i) => difference(symbol, symbols[i]!));
      sheet.find({
        symbol: 'Δs',
        meaning: words.apart,
        unit: '%',
        formula: gaps.length > 1 ? call('max', ...gaps) : gaps[0]!,
        rule: rules.difference,
      });
      sheet.compare({
        finds: words.near,
        left: 'Δs',
        relation: '≤',
        right: 's_same',
        so: (holds) => (holds ? words.isNear : words.isWide),
        rule: rules.criterion,
      });
    }
    sheet.give({ symbol: 'm', meaning: words.seen, value: spot.seen, unit: '1' });
    sheet.give({ symbol: 'n', meaning: words.passes, value: spot.passes, unit: '1' });
    sheet.find({
      symbol: 'p',
      meaning: words.share,
      unit: '%',
      formula: quotient(sum('m', 1), sum('n', 2)),
      rule: rules.laplace,
    });
    sheet.find({
      symbol: 's',
      meaning: words.mean,
      unit: '%',
      formula: quotient(sum(...symbols), symbols.length),
      rule: rules.mean,
    });
    return ordered.length === 1 ? { conclusion: words.one } : {};
  });
}
