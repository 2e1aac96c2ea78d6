import { positionAt } from '@truesweep/core';
import {
  explainOperatingPoint,
  explainUncertainty,
  explainWindow,
  type Working,
  whereWritten,
} from '@truesweep/explain';
import { type Job, jobCircuit, jobTolerances } from '@truesweep/jobs';

/** How the readings at both stops, their windows and what makes them uncertain come about. */
export function expectWorkings(job: Job): readonly Working[] {
  const circuit = jobCircuit(job);
  const tolerances = jobTolerances(job);
  const at = (travel: 0 | 1) => positionAt(circuit.sensor, travel);
  return whereWritten(
    () => explainOperatingPoint(circuit, at(0)),
    () => explainOperatingPoint(circuit, at(1)),
    () => explainWindow(circuit, tolerances, 'closed'),
    () => explainWindow(circuit, tolerances, 'open'),
    () => explainUncertainty(circuit, tolerances, 0),
    () => explainUncertainty(circuit, tolerances, 1),
  );
}
