import { formatMeasure, type MeasureUnit } from '@truesweep/core/measures';

/** Decimal places that a page writes a measure with. */
const places: Readonly<Partial<Record<MeasureUnit, number>>> = {
  '°C': 1,
  K: 2,
  kPa: 1,
};

/** A temperature, a difference or a pressure as a page writes it. */
export function measureText(value: number, unit: '°C' | 'K' | 'kPa'): string {
  const [number = '', symbol = ''] = formatMeasure(value, unit, places[unit] ?? 1).split(/\s/);
  return `${number.replace(/\.?0+$/, '')}\u00a0${symbol}`;
}
