import { type Determined, formatQuantity, isDetermined, type QuantityUnit } from '@truesweep/core';

/** The number of a value. A lesson's circuits are whole: one without a value is a mistake in the lesson. */
export function numberOf(value: Determined<number> | undefined): number {
  if (value !== undefined && isDetermined(value)) return value;
  throw new Error(`A lesson's circuit has no value: ${value?.reason ?? 'no such part'}.`);
}

/** A value as a lesson writes it. */
export function textOf(value: Determined<number> | undefined, unit: QuantityUnit): string {
  return formatQuantity(numberOf(value), unit, { trim: true });
}
