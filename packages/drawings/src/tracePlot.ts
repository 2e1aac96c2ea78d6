import { InputError } from '@truesweep/core';

/** Size of a trace's drawing, and where its axes stand in it. */
export const size = { width: 760, height: 360 } as const;
export const plot = { left: 48, right: 704, top: 48, bottom: 316 } as const;

/**
 * Into how many columns a trace's drawing parts its stretch of time.
 *
 * @example
 * traceColumns // => 656
 */
export const traceColumns: number = plot.right - plot.left;

/**
 * Where a place in a trace's drawing lies in its stretch of time: 0 at its beginning, 1 at its end.
 *
 * @param across Of the drawing's width, 0 at its left edge, 1 at its right one.
 *
 * @example
 * tracePart(48 / 760) // => 0
 */
export function tracePart(across: number): number {
  if (typeof across !== 'number' || !(Math.abs(across) <= 1e6)) {
    throw new InputError('not-finite', 'across', 'across must be a part of the width, 0 to 1.');
  }
  return (across * size.width - plot.left) / traceColumns;
}
