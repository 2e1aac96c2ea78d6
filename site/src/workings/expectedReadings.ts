import { positionAt } from '@truesweep/core';
import {
  explainLoadingError,
  explainOperatingPoint,
  explainUncertainty,
  explainWindow,
} from '@truesweep/explain';
import type { expectedReadings } from '../calculators/expectedReadings.js';
import { tolerancesOf, wholeCircuit } from '../calculators/hookUp.js';
import { type Written, written } from './written.js';

/** The readings at both stops, their windows, what makes them uncertain, and what the load takes. */
export function workings(values: Parameters<typeof expectedReadings>[0]): readonly Written[] {
  const circuit = wholeCircuit(values);
  const tolerances = tolerancesOf(values);
  const { sensor } = circuit;
  return written(
    () => explainOperatingPoint(circuit, positionAt(sensor, 1)),
    () => explainOperatingPoint(circuit, positionAt(sensor, 0)),
    () => explainWindow(circuit, tolerances, 'open'),
    () => explainWindow(circuit, tolerances, 'closed'),
    () => explainUncertainty(circuit, tolerances, 1),
    () => explainLoadingError(circuit),
  );
}
