import { CircuitDrawing } from './CircuitDrawing.js';
import type { CircuitDrawingProps } from './circuitDrawingProps.js';
import { elementText } from './elementText.js';

/**
 * A bench circuit as a wiring diagram: what `CircuitDrawing` draws, as the text of an `svg` element. It needs no Preact, and its namespace stands
 * in it, so that it can be written to a file or put into a page as it is.
 *
 * @example
 * import { operatingPoint } from '@truesweep/core';
 *
 * const circuit = { source: { volts: 6 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
 * const [closed, open] = [operatingPoint(circuit, 0), operatingPoint(circuit, 1)];
 * const svg = circuitSvg({ id: 'bench', circuit, closed, open });
 * svg.includes('<title id="bench-title">The sensor on the bench</title>') // => true
 */
export function circuitSvg(props: CircuitDrawingProps): string {
  return elementText(CircuitDrawing(props));
}
