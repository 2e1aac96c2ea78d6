import { finiteBetween, positive, present, resistance } from '../guard.js';
import type { Circuit } from './circuit.js';

/** Far beyond any bench; keeps every product of the solver finite. */
const highestVolts = 1e6;

/**
 * Refuses a circuit with a missing or impossible part.
 *
 * @throws InputError with the path of the field, such as `circuit.sensor.track`.
 */
export function checkCircuit(circuit: Circuit, path = 'circuit'): void {
  present(circuit, path, 'a circuit with source, limiter, sensor and load');
  present(
    circuit.source,
    `${path}.source`,
    'the supply that feeds the sensor, such as { volts: 5 }',
  );
  finiteBetween(circuit.source.volts, 0, highestVolts, `${path}.source.volts`, 'V');
  optional(circuit.source.ohms, `${path}.source.ohms`, resistance);
  optional(circuit.source.currentLimit, `${path}.source.currentLimit`, (value, at) =>
    positive(value, at, 'A'),
  );
  resistance(circuit.limiter, `${path}.limiter`);
  for (const lead of ['supply', 'ground', 'signal'] as const) {
    optional(circuit.leads?.[lead], `${path}.leads.${lead}`, resistance);
  }
  checkSensor(circuit, `${path}.sensor`);
  present(
    circuit.load,
    `${path}.load`,
    'what hangs on the signal lead, such as { pullDown: 10e6 }',
  );
  optional(circuit.load.pullDown, `${path}.load.pullDown`, resistance);
  const { pullUp } = circuit.load;
  if (pullUp === undefined) return;
  present(
    pullUp,
    `${path}.load.pullUp`,
    'a resistor to a voltage, such as { ohms: 10e3, volts: 5 }',
  );
  resistance(pullUp.ohms, `${path}.load.pullUp.ohms`);
  finiteBetween(pullUp.volts, 0, highestVolts, `${path}.load.pullUp.volts`, 'V');
}

function checkSensor({ sensor }: Circuit, path: string): void {
  present(sensor, path, 'a sensor with its track, such as { track: 5000 }');
  resistance(sensor.track, `${path}.track`);
  for (const part of ['bottomResidual', 'topResidual', 'contact'] as const) {
    optional(sensor[part], `${path}.${part}`, resistance);
  }
  for (const stop of ['closedPosition', 'openPosition'] as const) {
    optional(sensor[stop], `${path}.${stop}`, (value, at) => finiteBetween(value, 0, 1, at));
  }
}

function optional(
  value: unknown,
  path: string,
  check: (value: unknown, path: string) => number,
): void {
  if (value !== undefined) check(value, path);
}
