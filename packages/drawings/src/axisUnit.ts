import { formatQuantity, type QuantityUnit } from '@truesweep/core';

/** The prefixed unit that an axis is written in, and what a quantity is divided by for it. */
export interface AxisUnit {
  readonly name: string;
  readonly divisor: number;
}

/** The unit that the largest value of an axis has by itself, so that all its ticks share one. */
export function axisUnit(largest: number, unit: QuantityUnit): AxisUnit {
  const [number = '', name = ''] = formatQuantity(largest, unit, { digits: 1 }).split('\u00a0');
  // Beyond every prefix the ticks have their powers of ten.
  if (largest === 0 || number.includes('e')) return { name, divisor: 1 };
  return { name, divisor: 10 ** Math.round(Math.log10(largest / Number(number))) };
}
