import {
  criteriaBounds,
  formatQuantity,
  InputError,
  type InputErrorCode,
  type NumberCriterion,
  parseQuantity,
  type QuantityUnit,
  quantityPattern,
} from '@truesweep/core';
import * as v from 'valibot';
import { attempt } from './attempt.js';
import { jsonSchemaOf } from './jsonSchemaOf.js';
import { refusal, shown } from './refusal.js';

/** What a quantity may be: a sentence's end, the test for it, and the same in the words of JSON Schema. */
interface Range {
  readonly wanted: string;
  readonly holds: (value: number) => boolean;
  /** What a number may be; alternatives where it is more than one stretch. */
  readonly limits: readonly Readonly<Record<string, number>>[];
}

const between = (low: number, high: number, unit: QuantityUnit): Range => ({
  wanted: `from ${formatQuantity(low, unit, { trim: true })} to ${formatQuantity(high, unit, { trim: true })}`,
  holds: (value) => value >= low && value <= high,
  limits: [{ minimum: low, maximum: high }],
});

const above0 = (unit: QuantityUnit): Range => ({
  wanted: `above 0 ${unit}`,
  holds: (value) => value >= 1e-30 && value <= 1e30,
  limits: [{ minimum: 1e-30, maximum: 1e30 }],
});

const fractionRange: Range = {
  wanted: 'a fraction from 0 to 1, or a text such as "5 %"',
  holds: (value) => value >= 0 && value <= 1,
  limits: [{ minimum: 0, maximum: 1 }],
};

/** Resistances that the core computes with. */
const ohmsRange: Range = {
  wanted: '0 Ω, or from 1 pΩ to 10¹⁸ Ω',
  holds: (value) => value === 0 || (value >= 1e-12 && value <= 1e18),
  limits: [
    { minimum: 0, maximum: 0 },
    { minimum: 1e-12, maximum: 1e18 },
  ],
};

/** A number in the SI unit, or a text such as `4k7`, read into the SI unit. */
function quantityField(
  unit: QuantityUnit,
  range: Range,
  prepare = (text: string) => text,
  pattern?: string,
) {
  const isFraction = unit === '%';
  return v.pipe(
    v.unknown(),
    v.rawTransform<unknown, number>(({ dataset, addIssue, NEVER }) => {
      const refuse = (code: InputErrorCode, predicate: string) => {
        addIssue({ message: refusal(code, predicate) });
        return NEVER;
      };
      const given = dataset.value;
      const value =
        typeof given === 'string' ? attempt(() => parseQuantity(prepare(given), unit)) : given;
      if (value instanceof InputError) return refuse(value.code, `can't be read: ${value.message}`);
      if (typeof value !== 'number') {
        const right = isFraction
          ? 'a fraction such as 0.05, or a text such as "5 %"'
          : `a number in ${unit} or a text with its unit`;
        return refuse('not-a-quantity', `is ${shown(given)}; it must be ${right}.`);
      }
      if (isFraction && typeof given === 'string' && /\d\s*$/.test(given)) {
        const [bare, hundredfold] = [value, 100 * value].map((one) =>
          formatQuantity(one, '%', { digits: 12, trim: true }),
        );
        const right =
          'write the one that is meant with its %, or a fraction without quotation marks';
        return refuse(
          'ambiguous-fraction',
          `is ${shown(given)}, which can be read as ${bare} or ${hundredfold}; ${right}.`,
        );
      }
      if (range.holds(value)) return value;
      const code = value < 0 ? 'negative' : 'out-of-range';
      return refuse(code, `is ${shown(given)}; it must be ${range.wanted}.`);
    }),
    jsonSchemaOf({
      description: `${isFraction ? 'A fraction' : `A number in ${unit}`}, or a text with its unit; ${range.wanted}.`,
      anyOf: [
        ...range.limits.map((limits) => ({ type: 'number', ...limits })),
        { type: 'string', pattern: pattern ?? quantityPattern(unit, !isFraction) },
      ],
    }),
  );
}

/** A resistance: `4700`, `"4k7"`. */
export const ohmsField = quantityField('Ω', ohmsRange);
/** A resistance that can't be left at 0 Ω. */
export const someOhmsField = quantityField('Ω', {
  wanted: 'from 1 pΩ to 10¹⁸ Ω',
  holds: (value) => value >= 1e-12 && value <= 1e18,
  limits: [{ minimum: 1e-12, maximum: 1e18 }],
});
/** A resistance, or `OL` and `open` as an ohmmeter shows a break: ∞ Ω, and back again. */
export const anyOhmsField = v.union(
  [
    v.pipe(
      v.custom<number>(
        (value) => value === Infinity || /^\s*(ol|open)\s*$/i.test(String(value)),
        () => refusal('not-a-quantity', 'is no resistance; write one such as "2.5 kΩ", or "open".'),
      ),
      v.transform(() => Infinity),
      jsonSchemaOf({ enum: ['open', 'OL'] }),
    ),
    ohmsField,
  ],
  ({ input }) =>
    refusal(
      'not-a-quantity',
      `is ${shown(input)}; it must be a resistance such as "2.5 kΩ", or "open".`,
    ),
);
/** Standard uncertainties, 0 or more. */
export const uncertainOhmsField = quantityField('Ω', {
  wanted: '0 Ω or more',
  holds: (value) => value >= 0 && value <= 1e12,
  limits: [{ minimum: 0, maximum: 1e12 }],
});
export const uncertainVoltsField = quantityField('V', between(0, 1e6, 'V'));
/** A voltage of a source: `5`, `"5 V"`. */
export const sourceVoltsField = quantityField('V', between(0, 1e6, 'V'));
/** A voltage of either sign. */
export const signedVoltsField = quantityField('V', between(-1e6, 1e6, 'V'));
/** A voltage above 0 V. */
export const someVoltsField = quantityField('V', above0('V'));
/** What a full-scale sample of a sound recording stands for. */
export const fullScaleField = quantityField('V', between(1e-12, 1e6, 'V'));
export const ampsField = quantityField('A', above0('A'));
export const hertzField = quantityField('Hz', above0('Hz'));
export const secondsField = quantityField('s', above0('s'));
/** A moment of a recording, on its own clock. */
export const momentField = quantityField('s', between(-1e12, 1e12, 's'));
/** A fraction: `0.05`, `"5 %"`. */
export const fractionField = quantityField('%', fractionRange);
/** A tolerance to both sides: `0.05`, `"5 %"`, `"±5 %"`. */
export const toleranceField = quantityField(
  '%',
  fractionRange,
  (text) => text.trim().replace(/^±/, ''),
  quantityPattern('%', false).replace('^\\s*', '^\\s*(?:±\\s*)?'),
);

/** A limit of the criteria: a fraction or a time, between its bounds. */
export function criterionField(name: NumberCriterion, unit: '%' | 's') {
  const [low, high] = criteriaBounds[name];
  return quantityField(unit, between(low, high, unit));
}
