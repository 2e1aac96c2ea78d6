import type { Circuit, OperatingPoint } from '@truesweep/core';

/** What `CircuitDrawing` and `circuitSvg` draw. */
export interface CircuitDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  readonly circuit: Circuit;
  /** The circuit's operating points with the throttle at its stops, for the reading and the currents. */
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
}
