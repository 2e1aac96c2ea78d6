import type { AnswerUnit, AnswerValue, ChoicePart, QuantityPart, WrongValue } from './exercise.js';

/** A wrong answer with the mistake behind it; left out where it is no number above 0 of its kind. */
type Mistaken = readonly [value: number, mistake: string];

/** A pocket calculator's three digits: half a unit of the third is at most this part of a value. */
const threeDigits = 0.005;
/** A temperature worked out of values with three digits, K. */
const kelvins = 0.5;

/** How far an answer may lie from a value. */
function toleranceOf(unit: AnswerUnit, value: number, extra: number): number {
  if (unit === '1') return 0.25;
  return extra + (unit === '°C' ? kelvins : threeDigits * Math.abs(value));
}

/**
 * Asks for a value. Wrong answers within three tolerances of the right one, or within both tolerances of another wrong one, are left out:
 * nobody could tell which mistake was made.
 *
 * @param extra Tolerance that is added to that of three digits, where the way to the answer costs more; in the part's unit.
 * @param least So many wrong answers must stay; without them there is no such part.
 */
export function quantityPart(
  { id, asks, unit, value }: Pick<QuantityPart, 'id' | 'asks' | 'unit' | 'value'>,
  mistaken: readonly Mistaken[],
  { extra = 0, least = 2 } = {},
): QuantityPart | undefined {
  const wrong: WrongValue[] = [];
  const right: AnswerValue = { value, tolerance: toleranceOf(unit, value, extra) };
  for (const [it, mistake] of mistaken) {
    const one = { value: it, tolerance: toleranceOf(unit, it, extra), mistake };
    if (!isSensible(unit, it) || isNear(right, one, 3)) continue;
    if (!wrong.some((other) => isNear(other, one, 2))) wrong.push(one);
  }
  if (!isSensible(unit, value) || wrong.length < least) return undefined;
  return { id, kind: 'quantity', asks, unit, ...right, wrong };
}

/** Whether two values are so near that so many of the wider tolerance reach from one to the other. */
function isNear(one: AnswerValue, other: AnswerValue, times: number): boolean {
  return Math.abs(one.value - other.value) <= times * Math.max(one.tolerance, other.tolerance);
}

/** Below 2 % a bare number could be meant as a fraction or as percent. */
function isSensible(unit: AnswerUnit, value: number): boolean {
  if (!Number.isFinite(value)) return false;
  if (unit === '%') return value >= 0.02 && value <= 1;
  if (unit === '1') return Number.isInteger(value) && value > 0;
  return unit === '°C' || value > 0;
}

/** Asks for one of several options. */
export function choicePart(
  { id, asks, right }: Pick<ChoicePart, 'id' | 'asks' | 'right'>,
  options: readonly { readonly id: string; readonly text: string; readonly mistake: string }[],
): ChoicePart {
  return {
    id,
    kind: 'choice',
    asks,
    options: options.map(({ id: option, text }) => ({ id: option, text })),
    right,
    wrong: options
      .filter((one) => one.id !== right)
      .map(({ id: option, mistake }) => ({ option, mistake })),
  };
}
