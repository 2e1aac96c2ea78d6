import type { Curve, ExpectedWindows } from '@truesweep/core';
import type { CurveMarker } from './curveLayout.js';

/** What `CurveDrawing` and `curveSvg` draw. */
export interface CurveDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The curve that is drawn: V over travel. */
  readonly curve: Curve;
  /** Windows of both stops, drawn as bars; none when left out. */
  readonly windows?: ExpectedWindows;
  /** Places that are pointed out; none when left out. */
  readonly markers?: readonly CurveMarker[];
  /**
   * A curve to compare with, V over the same travels: drawn dashed, and below, in a strip of its own, by how much `curve` is lower. None
   * when left out.
   */
  readonly compared?: Curve;
}
