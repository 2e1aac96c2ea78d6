import { CurveDrawing } from './CurveDrawing.js';
import type { CurveDrawingProps } from './curveDrawingProps.js';
import { elementText } from './elementText.js';

/**
 * The expected reading over travel as a diagram: what `CurveDrawing` draws, as the text of an `svg` element. It needs no Preact, and its namespace stands
 * in it, so that it can be written to a file or put into a page as it is.
 *
 * @example
 * import { expectedCurve } from '@truesweep/core';
 *
 * const circuit = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const svg = curveSvg({ id: 'line', curve: expectedCurve(circuit) });
 * svg.includes('The reading goes from 0\u00a0V closed to 5\u00a0V open.') // => true
 */
export function curveSvg(props: CurveDrawingProps): string {
  return elementText(CurveDrawing(props));
}
