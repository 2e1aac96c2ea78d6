import type { Circuit, OperatingPoint } from '@truesweep/core';

/** What `CircuitDrawing` and `circuitSvg` draw. */
export interface CircuitDrawingProps {
  /** Begins the `id` of the drawing's elements; once in a page. */
  readonly id: string;
  /** The circuit that is drawn, with the value of each part. */
  readonly circuit: Circuit;
  /** Its operating point with the throttle at the closed stop, for the reading and the currents. */
  readonly closed: OperatingPoint;
  /** The same at the open stop. */
  readonly open: OperatingPoint;
}
