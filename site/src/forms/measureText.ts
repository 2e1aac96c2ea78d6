import { formatMeasure, type MeasureUnit } from '@truesweep/core/measures';

/** Decimal places that a page writes a measure with. */
const places = {
  '°C': 1,
  K: 2,
  kPa: 1,
  m: 0,
} as const satisfies Partial<Record<MeasureUnit, number>>;

/** A temperature, a difference, a pressure or a height as a page writes it. */
export function measureText(value: number, unit: keyof typeof places): string {
  const [number = '', symbol = ''] = formatMeasure(value, unit, places[unit]).split(/\s/);
  return `${number.replace(/\.0+$|(?<=\..*)0+$/, '')}\u00a0${symbol}`;
}
