import { column } from '../column.js';
import { finiteBetween, present } from '../guard.js';
import type { ShaftReadings } from './shape.js';

/** Refuses columns of different lengths, a value that is no number and an impossible uncertainty. */
export function checkReadings(readings: ShaftReadings): void {
  present(readings, 'readings', 'the readings { shaft, ratio }');
  const { shaft, ratio, uncertainty } = readings;
  column(shaft, shaft?.length, 'readings.shaft');
  column(ratio, shaft.length, 'readings.ratio');
  if (uncertainty !== undefined) finiteBetween(uncertainty, 0, 1e12, 'readings.uncertainty');
}
