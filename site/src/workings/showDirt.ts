import { positionAt } from '@truesweep/core';
import { explainDirt, explainOperatingPoint } from '@truesweep/explain';
import { benchCircuit } from '../calculators/hookUp.js';
import type { showDirt } from '../calculators/showDirt.js';
import { type Written, written } from './written.js';

/** What the dirt moves, and the clean reading there. */
export function workings(values: Parameters<typeof showDirt>[0]): readonly Written[] {
  const circuit = benchCircuit(values);
  return written(
    () => explainDirt(circuit, values.dirtTravel, values.dirt),
    () => explainOperatingPoint(circuit, positionAt(circuit.sensor, values.dirtTravel)),
  );
}
