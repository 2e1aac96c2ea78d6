import type { Circuit, Position, Volts } from '@truesweep/core';
import { partsOf } from './legs.js';

/** The reading of a circuit whose ways all meet at the wiper, V: in plain numbers, to choose among many of them. */
export function outputAt(circuit: Circuit, position: Position): Volts {
  const { source, sensor, load } = circuit;
  const { above, below, signal } = partsOf(circuit);
  const total = (parts: typeof above) => parts.reduce((sum, [, ohms]) => sum + ohms, 0);
  const up = total(above) + (1 - position) * sensor.track;
  const down = total(below) + position * sensor.track;
  const unloaded = (source.volts * down) / (up + down);
  const seen = (up * down) / (up + down) + total(signal);
  const { pullDown = Infinity, pullUp } = load;
  const [ofDown, ofUp] = [1 / pullDown, pullUp ? 1 / pullUp.ohms : 0];
  const pulled = pullUp && 'volts' in pullUp ? pullUp.volts * ofUp : 0;
  return (unloaded + pulled * seen) / (1 + (ofDown + ofUp) * seen);
}
