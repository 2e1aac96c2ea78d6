import type { CheckOutcome } from '@truesweep/core';
import { workingRules as rules, endWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, product, quotient } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import { unitNames } from '../quantity.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { workOutOf } from './workOutOf.js';

/** A check that a measured value was held against limits by, of a sweep or of a single reading. */
export interface LimitsCheck {
  /** How it came out. */
  readonly outcome: CheckOutcome;
  /** The unit of all its numbers, as checks name it; `1` is a fraction. */
  readonly unit: string;
  /** What was measured, in `unit`, any; no working is written where it is left out. */
  readonly measured?: number;
  /** The lowest value that is right, in `unit`, any; none when left out. */
  readonly lowLimit?: number;
  /** The highest value that is right, in `unit`, any; none when left out. */
  readonly highLimit?: number;
  /** Standard uncertainty of what was measured, in `unit`, 0 or more; not known when left out. */
  readonly uncertainty?: number;
}

/**
 * How a measured value stands to its limits: by how much it lies inside or outside, in its own unit and in standard uncertainties, and with
 * which probability the true value lies within.
 *
 * @param check A check with a measured value and its uncertainty.
 * @param what What was measured, in words.
 * @returns The answer is the probability that the true value lies within the limits; without an uncertainty the distance to the nearer limit.
 * @throws InputError `no-working` for a check without a measured value or without limits, `missing` for one that lacks a part.
 *
 * @example
 * const endCheck = { outcome: 'conforms', unit: 'V', measured: 0.5, lowLimit: 0.4, highLimit: 0.6, uncertainty: 0.05 } as const;
 * explainLimits(endCheck, 'the closed reading').answer.value // => ≈ 0.9544997
 */
export function explainLimits(check: LimitsCheck, what: string): Working {
  return workOutOf(
    check,
    'check',
    () => words.title(what),
    (sheet) => {
      const { measured, lowLimit, highLimit, uncertainty, outcome } = check;
      const unit = unitOf(check.unit);
      if (measured === undefined || !Number.isFinite(measured))
        refuseWorking('check.measured', 'is none');
      if (lowLimit === undefined && highLimit === undefined) refuseWorking('check', 'has no limit');
      const isKnown = uncertainty !== undefined && uncertainty > 0;
      sheet.give(
        {
          symbol: 'y',
          meaning: words.measured,
          value: measured,
          unit,
          ...(isKnown && { uncertainty }),
        },
        'found',
      );
      const ends = [
        ['y_lo', words.low, lowLimit, 'm_lo', difference('y', 'y_lo')],
        ['y_hi', words.high, highLimit, 'm_hi', difference('y_hi', 'y')],
      ] as const;
      const there = ends.filter(([, , limit]) => limit !== undefined);
      for (const [symbol, meaning, limit] of there)
        sheet.give({ symbol, meaning, value: limit!, unit }, 'found');
      sheet.find({
        symbol: 'm',
        meaning: words.margin,
        unit,
        formula:
          there.length > 1 ? call('min', ...there.map(([, , , , margin]) => margin)) : there[0]![4],
        rule: rules.difference,
      });
      sheet.give({ symbol: 'm_0', meaning: words.nothing, value: 0, unit });
      sheet.compare({
        finds: words.inside,
        left: 'm',
        relation: '≥',
        right: 'm_0',
        so: (holds) => (holds ? words.isInside : words.isOutside),
        rule: rules.acceptance,
      });
      const conclusion = words.outcomes[outcome];
      if (!isKnown) return { conclusion };
      sheet.give({ symbol: 'u', meaning: words.uncertainty, value: uncertainty, unit }, 'found');
      sheet.find({
        symbol: 'U',
        meaning: words.expanded,
        unit,
        formula: product(2, 'u'),
        rule: rules.coverageFactor,
      });
      const inUncertainties = (symbol: string, meaning: string, above: string, below: string) => {
        const formula = quotient(difference(above, below), 'u');
        sheet.find({ symbol, meaning, unit: '1', formula, rule: rules.normal });
      };
      if (lowLimit !== undefined) inUncertainties('z_lo', words.aboveLow, 'y_lo', 'y');
      if (highLimit !== undefined) inUncertainties('z_hi', words.belowHigh, 'y_hi', 'y');
      sheet.find({
        symbol: 'p',
        meaning: words.conformance,
        unit: '%',
        formula: difference(
          highLimit === undefined ? 1 : call('Φ', 'z_hi'),
          ...(lowLimit === undefined ? [] : [call('Φ', 'z_lo')]),
        ),
        rule: rules.normal,
      });
      return { conclusion };
    },
  );
}

/** A check's plain number is a fraction, a count one without unit. */
function unitOf(name: unknown): WorkingUnit {
  if (name === '1') return '%';
  if (name === 'count') return '1';
  const unit = Object.keys(unitNames).find((one) => one === name);
  return unit
    ? (unit as WorkingUnit)
    : refuseWorking('check.unit', 'is none of those that are written');
}
