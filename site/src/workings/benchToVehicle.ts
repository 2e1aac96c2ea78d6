import { explainCarriedReading } from '@truesweep/explain';
import { type benchToVehicle, onBoth } from '../calculators/benchToVehicle.js';
import { type Written, written } from './written.js';

/** The bench's reading on the vehicle, with the scan tool's percent, and the stated one on the bench. */
export function workings(values: Parameters<typeof benchToVehicle>[0]): readonly Written[] {
  const { bench, vehicle, sense } = onBoth(values);
  const { benchReading, vehicleReading } = values;
  return written(
    () => explainCarriedReading({ volts: benchReading, to: 'vehicle', sense }, bench, vehicle),
    () => explainCarriedReading({ volts: vehicleReading, to: 'bench' }, bench, vehicle),
  );
}
