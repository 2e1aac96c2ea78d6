import { type CaptureQuality, type Finding, formatQuantity } from '@truesweep/core';
import { workingRules as rules, findingWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, quotient } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import type { Working } from '../working.js';
import { workOutOf } from './workOutOf.js';

/**
 * How a finding shows: how it stands to the smallest visible departure, what the odds for it are, how long it lasts and how many samples that is.
 *
 * @param finding One of a score's findings.
 * @param quality The same score's.
 * @returns The answer is the number of samples that it lasts.
 * @throws InputError `missing` for a finding or a quality that lacks a part, `not-finite` for numbers that are none.
 *
 * @example
 * const finding = { kind: 'dropout', start: 1, end: 1.02, travel: 0.4, depth: -1.5, depthOfSpan: 0.4, depthOfSource: 0.3, went: 'to-rest-level', during: 'opening' } as const;
 * explainFinding(finding, { visible: 0.06, interval: 0.001 }).answer.value // => ≈ 20
 */
export function explainFinding(
  finding: Finding,
  quality: Pick<CaptureQuality, 'visible' | 'interval'>,
): Working {
  const title = () =>
    words.title(
      words.spoken[finding.kind],
      formatQuantity(finding.travel, '%', { digits: 3 }),
      formatQuantity(finding.start, 's', { digits: 4 }),
    );
  return workOutOf({ finding, quality }, 'finding', title, (sheet) => {
    const { kind, start, end, depth, evidence } = finding;
    const { visible, interval } = quality;
    const give = (symbol: keyof typeof words.given, value: number, unit: WorkingUnit) =>
      sheet.give({ symbol, meaning: words.given[symbol], value, unit }, 'found');
    give('d', Math.abs(depth), 'V');
    give('d_v', visible, 'V');
    sheet.compare({
      finds: words.visible,
      left: 'd',
      relation: '>',
      right: 'd_v',
      so: (holds) => (holds ? words.isVisible : words.isNotVisible),
      rule: rules.falseAlarms,
    });
    if (evidence !== undefined) {
      give('e', evidence, '1');
      sheet.find({
        symbol: 'O',
        meaning: words.odds,
        unit: '1',
        formula: quotient('e', call('ln', 10)),
        rule: rules.logarithm,
      });
    }
    sheet.give({ symbol: 't_1', meaning: words.given.t_1, value: start, unit: 's' });
    sheet.give({ symbol: 't_2', meaning: words.given.t_2, value: end, unit: 's' });
    give('T', interval, 's');
    sheet.find({
      symbol: 't_d',
      meaning: kind === 'step' ? words.leap : words.seconds,
      unit: 's',
      formula: difference('t_2', 't_1'),
      rule: rules.difference,
    });
    sheet.find({
      symbol: 'm',
      meaning: words.samples,
      unit: '1',
      formula: call('round', quotient('t_d', 'T')),
      rule: rules.samples,
    });
    return { conclusion: words.kinds[kind] };
  });
}
