import { type Determined, formatQuantity, isDetermined, type QuantityUnit } from '@truesweep/core';
import { drawingWords } from '@truesweep/wording';

/** A quantity as it is written in a drawing: three digits and its unit, or in words why it has none. */
export function quantityText(value: Determined<number> | undefined, unit: QuantityUnit): string {
  if (value === undefined || !isDetermined(value)) return drawingWords.noSingleValue;
  return formatQuantity(value, unit, { trim: true });
}
