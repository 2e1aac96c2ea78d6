import { elementText } from './elementText.js';
import { TravelMapDrawing } from './TravelMapDrawing.js';
import type { TravelMapDrawingProps } from './travelMapDrawingProps.js';

/**
 * The findings over the travel, pass by pass: what `TravelMapDrawing` draws, as the text of an `svg` element. It needs no Preact, and its namespace stands
 * in it, so that it can be written to a file or put into a page as it is.
 *
 * @example
 * const score = { strokes: [], findings: [], spots: [], coverage: { opening: [1, 0], closing: [0, 0] } };
 * travelMapSvg({ id: 'map', score }).includes('nothing is marked') // => true
 */
export function travelMapSvg(props: TravelMapDrawingProps): string {
  return elementText(TravelMapDrawing(props));
}
