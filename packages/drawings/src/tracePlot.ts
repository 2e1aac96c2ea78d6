import { InputError } from '@truesweep/core';

/** Where the axes of a trace's drawing stand in it, in units of the drawing: pixels where it is shown as wide as it says. */
export interface TracePlot {
  /** The drawing's width, units of the drawing. */
  readonly width: number;
  /** The drawing's height, units of the drawing. */
  readonly height: number;
  /** Where its stretch of time begins, px from its left edge where it is shown as wide as it says. */
  readonly left: number;
  /** Where its stretch of time ends, px from its left edge where it is shown as wide as it says. */
  readonly right: number;
  /** Where its highest reading stands, units of the drawing from its upper edge. */
  readonly top: number;
  /** Where its lowest reading stands, units of the drawing from its upper edge. */
  readonly bottom: number;
}

/** The width on paper, and of a drawing that is told none. */
const usualWidth = 760;
/** Narrower drawings have no room beside the axes: the stops are named inside. */
const roomBeside = 520;

/**
 * Where the axes of a trace's drawing of some width stand: for who turns a place on the screen into a time and a reading.
 *
 * @param width Of the drawing, 240 to 4000; 760 when left out. Its words keep their size of 13.
 * @throws InputError for a width beyond these.
 *
 * @example
 * const { left, right } = tracePlot(360);
 * [left, right] // => [44, 354]
 */
export function tracePlot(width: number = usualWidth): TracePlot {
  if (typeof width !== 'number' || !(width >= 240 && width <= 4000)) {
    throw new InputError('out-of-range', 'width', 'width must be a number from 240 to 4000.');
  }
  return width < roomBeside
    ? { width, height: 300, left: 44, right: Math.floor(width) - 6, top: 48, bottom: 258 }
    : { width, height: 360, left: 48, right: Math.floor(width) - 56, top: 48, bottom: 316 };
}

/** Whether a drawing has room for words beside its axes. */
export function hasRoomBeside({ width }: TracePlot): boolean {
  return width >= roomBeside;
}

/**
 * Into how many columns the drawing of a trace parts its stretch of time, one for each unit of its width.
 *
 * @param width Of the drawing, 240 to 4000; 760 when left out.
 * @throws InputError for a width beyond these.
 *
 * @example
 * traceColumns() // => 656
 */
export function traceColumns(width?: number): number {
  const { left, right } = tracePlot(width);
  return right - left;
}
