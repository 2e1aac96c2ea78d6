import type { Curve } from '@truesweep/core';
import type { Point } from './circuitLayout.js';
import type { Plot } from './plot.js';
import { type VoltAxis, voltAxis } from './voltAxis.js';

/** Where everything of the strip lies that shows how far a curve is below another. */
export interface DifferenceLayout extends VoltAxis {
  readonly height: number;
  readonly plot: Plot;
  readonly line: readonly Point[];
  /** The largest difference, V, without its sign. */
  readonly largest: number;
}

/** Places how far a curve lies below another, at the same travels, in a strip between these sides; `across` has the places along it. */
export function differenceLayout(
  curve: Curve,
  compared: Curve,
  across: readonly Point[],
  { left, right }: Plot,
): DifferenceLayout {
  const plot = { left, right, top: 30, bottom: 106 };
  const volts = Array.from(compared.volts, (value, i) => value - (curve.volts[i] ?? 0));
  const low = volts.reduce((least, value) => Math.min(least, value), 0);
  const high = volts.reduce((most, value) => Math.max(most, value), 0);
  const axis = voltAxis(low, high, 3, plot);
  return {
    ...axis,
    height: 150,
    plot,
    line: across.map(({ x }, i) => ({ x, y: axis.y(volts[i] ?? 0) })),
    largest: Math.max(-low, high),
  };
}
