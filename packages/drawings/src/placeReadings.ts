import type { CheckOutcome } from '@truesweep/core';
import type { Plot } from './plot.js';

/** A reading in a diagram: its place, its bars, and whether an arrow says that it lies beyond the edge. */
export interface PlacedReading {
  readonly number: number;
  readonly outcome: CheckOutcome;
  readonly x: number;
  readonly y: number;
  /** Ends of the bars, from left to right and from bottom to top; the same where there is none. */
  readonly across: readonly [from: number, to: number];
  readonly up: readonly [from: number, to: number];
  /** Beyond which edge it lies; left out where it lies in the plot. */
  readonly beyond?: 'top' | 'bottom';
  /** Whether its number stands free of those before, and on which side: that away from the band where there is room. */
  readonly isNumbered: boolean;
  readonly onLeft: boolean;
}

/** A reading by its values. */
export interface ValuedReading {
  readonly outcome: CheckOutcome;
  readonly at: number;
  readonly atUncertainty: number;
  readonly value: number;
  readonly uncertainty: number;
}

/** Numbers closer than this to each other, or to the plot's edge, would cover each other or leave the drawing. */
const numberRoom = { x: 18, y: 14 };

/**
 * Places readings in a plot; what lies beyond it stands at its edge.
 *
 * @param x Where a place of the axis lies.
 * @param y Where a value lies; not asked for what is no finite number above `least`.
 * @param isRising Whether the band rises: what stands above it has room on the left then.
 * @param least What the values must be above to have a place: 0 on an axis of logarithms.
 */
export function placeReadings(
  readings: readonly ValuedReading[],
  plot: Plot,
  x: (at: number) => number,
  y: (value: number) => number,
  isRising: boolean,
  least = -Infinity,
): readonly PlacedReading[] {
  const inside = (at: number) => Math.min(plot.right, Math.max(plot.left, x(at)));
  const height = (value: number) => {
    if (value === Infinity) return plot.top;
    return value > least ? Math.min(plot.bottom, Math.max(plot.top, y(value))) : plot.bottom;
  };
  const isBelow = (value: number) => value <= least || y(value) > plot.bottom + 0.5;
  const isAbove = (value: number) => value === Infinity || y(value) < plot.top - 0.5;
  const placed: PlacedReading[] = [];
  readings.forEach(({ outcome, at, atUncertainty, value, uncertainty }, i) => {
    const beyond = isBelow(value) ? 'bottom' : isAbove(value) ? 'top' : undefined;
    const [px, py] = [inside(at), height(value)];
    const isNumbered = placed.every(
      (other) => Math.abs(other.x - px) >= numberRoom.x || Math.abs(other.y - py) >= numberRoom.y,
    );
    placed.push({
      number: i + 1,
      outcome,
      x: px,
      y: py,
      across: [inside(at - 2 * atUncertainty), inside(at + 2 * atUncertainty)],
      up: [height(value - 2 * uncertainty), height(value + 2 * uncertainty)],
      ...(beyond && { beyond }),
      isNumbered,
      onLeft: isRising ? px > plot.left + numberRoom.x : px > plot.right - numberRoom.x,
    });
  });
  return placed;
}
