import { type Determined, formatQuantity, isDetermined, type QuantityUnit } from '@truesweep/core';
import { indeterminateReasons } from '@truesweep/wording';

/** A quantity as a page writes it: three digits and the unit, or the reason why it has no value. */
export function quantityText(value: Determined<number>, unit: QuantityUnit): string {
  return isDetermined(value)
    ? formatQuantity(value, unit, { trim: true })
    : indeterminateReasons[value.reason];
}
