import type { Volts } from '../units.js';
import type { DigitalMeter } from './instrument.js';
import { usualRangeChange } from './usualValues.js';

/** The range that a meter reads a steady voltage on: the held one, else the lowest that holds it; nothing where it is over range. */
export function rangeFor(meter: DigitalMeter, volts: Volts): Volts | undefined {
  const { ranges, heldRange, rangeChange = usualRangeChange } = meter;
  const size = Math.abs(volts);
  if (heldRange !== undefined) return size <= heldRange ? heldRange : undefined;
  return ranges.find((range) => size <= range * Math.min(1, rangeChange.up));
}
