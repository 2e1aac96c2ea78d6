import type { CheckOutcome } from '@truesweep/core';
import { workingRules as rules, endWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, product, quotient } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import { unitNames } from '../quantity.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import type { Sheet } from '../workOut.js';
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

/** How far outside its limits a value is still no failure. */
export type Tolerated =
  /** Three standard uncertainties, as of single readings. */
  | { readonly kind: 'reading' }
  /** The larger of two standard uncertainties and a part of the span, as of the readings at a sweep's ends. */
  | {
      readonly kind: 'end';
      /** Between the expected closed and open reading, V; its sign is of no account. */
      readonly span: number;
      /** The part of it, a fraction, 0 to 1. */
      readonly part: number;
    };

/**
 * How a measured value stands to its limits: by how much it lies inside or outside, in its own unit and in standard uncertainties, how far
 * outside is tolerated, and with which probability the true value lies within.
 *
 * @param check A check with a measured value.
 * @param what What was measured, in words.
 * @param tolerated What is tolerated outside the limits; not told when left out.
 * @returns The answer is the probability that the true value lies within the limits; without an uncertainty, or without knowing what is
 * tolerated, the distance to the nearer limit.
 * @throws InputError `no-working` for a check without a measured value or without limits, `missing` for one that lacks a part.
 *
 * @example
 * const endCheck = { outcome: 'conforms', unit: 'V', measured: 0.5, lowLimit: 0.4, highLimit: 0.6, uncertainty: 0.05 } as const;
 * explainLimits(endCheck, 'Closed reading', { kind: 'reading' }).answer.value // => ≈ 0.9544997
 */
export function explainLimits(check: LimitsCheck, what: string, tolerated?: Tolerated): Working {
  return workOutOf(
    { check, tolerated },
    'check',
    () => words.title(what),
    (sheet) => {
      const { measured, lowLimit, highLimit, uncertainty = 0, outcome } = check;
      const unit = unitOf(check.unit);
      if (measured === undefined || !Number.isFinite(measured))
        refuseWorking('check.measured', 'is none');
      if (lowLimit === undefined && highLimit === undefined) refuseWorking('check', 'has no limit');
      const give = (symbol: string, meaning: string, value: number): string =>
        sheet.give({ symbol, meaning, value, unit }, 'found');
      const isKnown = uncertainty > 0 && tolerated !== undefined;
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
      const margins = [
        ...(lowLimit === undefined ? [] : [difference('y', give('y_lo', words.low, lowLimit))]),
        ...(highLimit === undefined ? [] : [difference(give('y_hi', words.high, highLimit), 'y')]),
      ];
      sheet.find({
        symbol: 'm',
        meaning: words.margin,
        unit,
        formula: margins.length > 1 ? call('min', ...margins) : margins[0]!,
        rule: rules.difference,
      });
      sheet.give({ symbol: 'm_0', meaning: words.nothing, value: 0, unit });
      const isInside = sheet.compare({
        finds: words.inside,
        left: 'm',
        relation: '≥',
        right: 'm_0',
        so: (holds) => (holds ? words.isInside : words.isOutside),
        rule: rules.limits,
      });
      if (!isKnown) return { conclusion: words.outcomes[outcome] };
      give('u', words.uncertainty, uncertainty);
      const isFine = findDecision(sheet, check, unit, tolerated, isInside);
      findConformance(sheet, check);
      const why = outcome === 'cannot-tell' && !isFine ? words.narrow : words.outcomes[outcome];
      return { conclusion: why };
    },
  );
}

/** What decides beside the place: what is tolerated outside, and whether the limits are wide enough to tell; says the latter. */
function findDecision(
  sheet: Sheet,
  { lowLimit, highLimit }: LimitsCheck,
  unit: WorkingUnit,
  tolerated: Tolerated,
  isInside: boolean,
): boolean {
  sheet.find({
    symbol: 'U',
    meaning: words.expanded,
    unit,
    formula: product(2, 'u'),
    rule: rules.coverageFactor,
  });
  if (!isInside) {
    if (tolerated.kind === 'end') {
      sheet.give(
        { symbol: 'U_sp', meaning: words.span, value: Math.abs(tolerated.span), unit },
        'found',
      );
      sheet.give({ symbol: 'f', meaning: words.part, value: tolerated.part, unit: '%' });
    }
    sheet.find({
      symbol: 'm_t',
      meaning: words.tolerated,
      unit,
      formula: tolerated.kind === 'end' ? call('max', 'U', product('f', 'U_sp')) : product(3, 'u'),
      rule: rules.rejection,
    });
    sheet.find({
      symbol: 'm_o',
      meaning: words.outside,
      unit,
      formula: call('abs', 'm'),
      rule: rules.difference,
    });
    sheet.compare({
      finds: words.isTolerated,
      left: 'm_o',
      relation: '≤',
      right: 'm_t',
      so: (holds) => (holds ? words.isWithin : words.isBeyond),
      rule: rules.rejection,
    });
  }
  const single = lowLimit === undefined ? 'y_hi' : highLimit === undefined ? 'y_lo' : undefined;
  sheet.find({
    symbol: 'W',
    meaning: single === undefined ? words.width : words.fromNothing,
    unit,
    formula: single === undefined ? difference('y_hi', 'y_lo') : call('abs', single),
    rule: rules.difference,
  });
  sheet.find({
    symbol: 'W_4',
    meaning: words.needed,
    unit,
    formula: product(4, 'U'),
    rule: rules.fineEnough,
  });
  return sheet.compare({
    finds: words.isFine,
    left: 'W',
    relation: '≥',
    right: 'W_4',
    so: (holds) => (holds ? words.fine : words.narrow),
    rule: rules.fineEnough,
  });
}

function findConformance(sheet: Sheet, { lowLimit, highLimit }: LimitsCheck): void {
  const inUncertainties = (symbol: string, meaning: string, limit: string) => {
    const formula = quotient(difference(limit, 'y'), 'u');
    sheet.find({ symbol, meaning, unit: '1', formula, rule: rules.normal });
  };
  if (lowLimit !== undefined) inUncertainties('z_lo', words.fromLow, 'y_lo');
  if (highLimit !== undefined) inUncertainties('z_hi', words.fromHigh, 'y_hi');
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
