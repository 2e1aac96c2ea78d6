import type { Curve, ExpectedWindows } from '@truesweep/core';
import type { CurveMarker } from './curveLayout.js';

/** What `CurveDrawing` and `curveSvg` draw. */
export interface CurveDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  readonly curve: Curve;
  readonly windows?: ExpectedWindows;
  readonly markers?: readonly CurveMarker[];
}
