import {
  type ExpectedWindows,
  expectedCurve,
  type OperatingPoint,
  operatingPoint,
  positionAt,
  type Volts,
} from '@truesweep/core';
import { type Job, jobCircuit, jobExpectation } from '@truesweep/jobs';

/** What a sound sensor reads on a hook-up. */
export interface ExpectedReadings {
  readonly title: string;
  /** Travel, a fraction, and reading, V. */
  readonly curve: readonly { readonly travel: number; readonly volts: Volts }[];
  readonly windows: ExpectedWindows;
  /** Where the signal goes with the wiper lifted, V. */
  readonly restLevel?: Volts;
  /** Currents and heat with the throttle at each stop. */
  readonly closed: OperatingPoint;
  readonly open: OperatingPoint;
}

/** Readings from stop to stop, both included. */
const points = 11;

/** Works out curve, windows and currents of a job. */
export function expectedReadings(job: Job): ExpectedReadings {
  const circuit = jobCircuit(job);
  const { windows, restLevel } = jobExpectation(job);
  const { travel, volts } = expectedCurve(circuit, points);
  const at = (stop: 0 | 1): OperatingPoint =>
    operatingPoint(circuit, positionAt(circuit.sensor, stop));
  return {
    title: job.title,
    curve: Array.from(travel, (place, i) => ({ travel: place, volts: volts[i]! })),
    windows,
    ...(restLevel !== undefined && { restLevel }),
    closed: at(0),
    open: at(1),
  };
}
