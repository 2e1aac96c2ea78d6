import { type Criteria, type Finding, formatQuantity, type Spot } from '@truesweep/core';
import { workingRules as rules, placeWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, product, quotient, sum } from '../expression.js';
import type { Working } from '../working.js';
import { workOutOf } from './workOutOf.js';

/**
 * Why departures are one place of the travel: how far each lies from the next and all of them reach, beside what counts as one place; and how
 * faithfully its passes showed it.
 *
 * @param spot One of a score's spots.
 * @param findings The same score's.
 * @param criteria What it was judged by.
 * @returns The answer is how faithfully its passes showed it, 0 to 1.
 * @throws InputError `missing` for a spot or findings that lack a part, `not-finite` for numbers that are none.
 *
 * @example
 * const finding = { kind: 'dropout', start: 1, end: 1.02, depth: -1.5, depthOfSpan: 0.4, depthOfSource: 0.3, went: 'to-rest-level', during: 'opening' } as const;
 * const findings = [{ ...finding, travel: 0.4 }, { ...finding, travel: 0.41 }];
 * explainPlace({ travel: 0.405, findings: [0, 1], passes: 4, seen: 2 }, findings, { sameTravel: 0.03 }).answer.value // => ≈ 0.5
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
    sheet.give({ symbol: 's', meaning: words.placed, value: spot.travel, unit: '%' }, 'found');
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
      sheet.find({
        symbol: 'Δs_all',
        meaning: words.first,
        unit: '%',
        formula: difference(symbols.at(-1)!, symbols[0]!),
        rule: rules.difference,
      });
      sheet.find({
        symbol: 's_all',
        meaning: words.most,
        unit: '%',
        formula: product(2, 's_same'),
        rule: rules.criterion,
      });
      sheet.compare({
        finds: words.isSpot,
        left: 'Δs_all',
        relation: '≤',
        right: 's_all',
        so: (holds) => (holds ? words.reaches : words.isWide),
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
    return ordered.length === 1 ? { conclusion: words.one } : {};
  });
}
