import { checkFields } from '../fields.js';
import { finiteBetween } from '../guard.js';
import type { Position, Travel } from '../units.js';
import { sensorRules } from './checkCircuit.js';
import { positionAt as positionOf, type Sensor } from './circuit.js';

/**
 * The wiper's place on the track at a given travel: the straight line between the two stops.
 *
 * @param sensor The sensor, for its positions at the stops.
 * @param travel 0 at the closed stop, 1 at the open stop.
 *
 * @example
 * positionAt({ track: 5000, closedPosition: 0.1, openPosition: 0.9 }, 0.5) // => 0.5
 */
export function positionAt(sensor: Sensor, travel: Travel): Position {
  checkFields(sensor, 'sensor', sensorRules);
  return positionOf(sensor, finiteBetween(travel, 0, 1, 'travel'));
}
