import {
  type Curve,
  type ExpectedWindows,
  expectedCurve,
  expectedWindows,
  type OperatingPoint,
  operatingPoint,
  positionAt,
  type Volts,
} from '@truesweep/core';
import type { HookUp } from './hookUp.js';

/** What the page shows for a hook-up. */
export interface Readings extends HookUp {
  readonly curve: Curve;
  readonly windows: ExpectedWindows;
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
  /** The open reading straight from the source, with no limiting resistor and no load, V. */
  readonly straight: Volts;
}

export function expectedReadings(hookUp: HookUp): Readings {
  const { circuit, tolerances } = hookUp;
  const at = (stop: number) => operatingPoint(circuit, positionAt(circuit.sensor, stop));
  return {
    ...hookUp,
    curve: expectedCurve(circuit),
    windows: expectedWindows(circuit, tolerances),
    closed: at(0),
    open: at(1),
    straight: circuit.source.volts * positionAt(circuit.sensor, 1),
  };
}
