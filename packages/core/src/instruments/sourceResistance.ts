import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { inParallel } from '../circuit/inParallel.js';
import { outputFunction } from '../expectation/outputFunction.js';
import { finiteBetween } from '../guard.js';
import type { Ohms, Travel } from '../units.js';

/**
 * The resistance that an instrument sees looking back into a hook-up (Thévenin), which depends on the wiper's place and on the limiter: what
 * settling, cable and input resistance act upon. Whatever loads the hook-up has already counts as part of it; a current limit that acts does not.
 *
 * @throws InputError for a wrong circuit, `travel`, or `no-output` where the output has no single value.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 4000 }, load: {} };
 * sourceResistance(circuit, 0.5) // => ≈ 1200
 */
export function sourceResistance(circuit: Circuit, travel: Travel): Ohms {
  checkCircuit(circuit);
  finiteBetween(travel, 0, 1, 'travel');
  const position = positionAt(circuit.sensor, travel);
  const open = outputFunction(circuit)(position);
  const { load, source, sensor } = circuit;
  const probe = Number.isFinite(sensor.track) && sensor.track > 0 ? sensor.track : 1000;
  if (load.pullUp === undefined) {
    // From a volt beyond the source, so that the step is large wherever the wiper stands.
    const volts = source.volts + 1;
    const loaded = outputFunction({
      ...circuit,
      load: { ...load, pullUp: { ohms: probe, volts } },
    });
    const drawn = (volts - loaded(position)) / probe;
    return (loaded(position) - open) / drawn;
  }
  const loaded = outputFunction({
    ...circuit,
    load: { ...load, pullDown: inParallel(load.pullDown, probe) },
  })(position);
  if (loaded > 0 || loaded < 0) return (open - loaded) / (loaded / probe);
  // What stands at 0 V is held there by 0 Ω, or no source gives anything: then one of 1 V tells.
  if (source.volts > 0) return 0;
  return sourceResistance({ ...circuit, source: { ...source, volts: 1 } }, travel);
}
