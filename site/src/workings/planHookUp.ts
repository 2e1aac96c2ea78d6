import { positionAt, wrongConnections } from '@truesweep/core';
import { explainLimiter, explainMistake, explainOperatingPoint } from '@truesweep/explain';
import { benchCircuit } from '../calculators/hookUp.js';
import { type PlanValues, ratingsOf, wishOf } from '../calculators/planHookUp.js';
import { type Written, written } from './written.js';

/** The limiting resistor, the right reading, and each wrong connection where it is worst for the wiper. */
export function workings(values: PlanValues): readonly Written[] {
  const circuit = benchCircuit(values);
  const ratings = ratingsOf(values);
  return written(
    () => explainLimiter(circuit, ratings, wishOf(values)),
    () => explainOperatingPoint(circuit, positionAt(circuit.sensor, 1)),
    ...wrongConnections(circuit, ratings)
      .filter(({ mistake }) => mistake.kind !== 'none')
      .map(
        ({ mistake, planned }) =>
          () =>
            explainMistake(circuit, mistake, planned.ratings.wiper.position),
      ),
  );
}
