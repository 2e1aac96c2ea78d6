import type { Curve, Finding } from '@truesweep/core';

/** One pass over the travel: the lowest and the highest reading at each place. */
export interface DrawnPass {
  /** Which way the throttle went. */
  readonly direction: 'opening' | 'closing';
  /** Places of the travel, 0 closed to 1 open; one or more. */
  readonly travel: ArrayLike<number>;
  /** The lowest reading at each, V. */
  readonly low: ArrayLike<number>;
  /** The highest reading at each, V; not below the lowest. */
  readonly high: ArrayLike<number>;
}

/** What `PassesDrawing` draws. */
export interface PassesDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The expected reading over travel. */
  readonly curve: Curve;
  /** The passes, laid over one another. */
  readonly passes: readonly DrawnPass[];
  /** Marked where they stand on the travel, numbered from 1 in this order; what has no place is left out. */
  readonly findings: readonly Finding[];
  /** The drawing's width, 240 to 4000; 760 when left out. */
  readonly width?: number;
}
