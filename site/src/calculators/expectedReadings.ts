import {
  type ExpectedWindows,
  expectedCurve,
  expectedWindows,
  type OperatingPoint,
  operatingPoint,
  positionAt,
} from '@truesweep/core';
import type { HookUp } from './hookUp.js';

/** What the page shows for a hook-up. */
export interface Readings {
  readonly windows: ExpectedWindows;
  /** Output at each quarter of travel. */
  readonly quarters: readonly { readonly travel: number; readonly volts: number }[];
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
}

export function expectedReadings({ circuit, tolerances }: HookUp): Readings {
  const { travel, volts } = expectedCurve(circuit, 5);
  const at = (stop: number) => operatingPoint(circuit, positionAt(circuit.sensor, stop));
  return {
    windows: expectedWindows(circuit, tolerances),
    quarters: Array.from(travel, (fraction, i) => ({ travel: fraction, volts: volts[i] ?? 0 })),
    closed: at(0),
    open: at(1),
  };
}
