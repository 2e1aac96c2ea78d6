import { InputError } from '../errors.js';
import { finiteBetween, oneOf, positive, present, resistance } from '../guard.js';
import type { Circuit } from './circuit.js';
import type { CircuitFault } from './faults.js';
import type { Lead, Terminal } from './terminals.js';

/** Far beyond any bench; keeps every product of the solver finite. */
const highestVolts = 1e6;
const leads: readonly Lead[] = ['supply', 'ground', 'signal'];
const terminals: readonly Terminal[] = ['bottom', 'wiper', 'top'];

/**
 * Refuses a circuit with a missing or impossible part.
 *
 * @throws InputError with the path of the field, such as `circuit.sensor.track`.
 */
export function checkCircuit(circuit: Circuit, path = 'circuit'): void {
  present(circuit, path, 'a circuit with source, limiter, sensor and load');
  const { source, load } = circuit;
  present(source, `${path}.source`, 'the supply that feeds the sensor, such as { volts: 5 }');
  voltage(source.volts, `${path}.source.volts`);
  optional(source.ohms, `${path}.source.ohms`, resistance);
  optional(source.currentLimit, `${path}.source.currentLimit`, (value, at) =>
    positive(value, at, 'A'),
  );
  resistance(circuit.limiter, `${path}.limiter`);
  for (const lead of leads) optional(circuit.leads?.[lead], `${path}.leads.${lead}`, resistance);
  checkSensor(circuit, `${path}.sensor`);
  present(load, `${path}.load`, 'what hangs on the signal lead, such as { pullDown: 10e6 }');
  optional(load.pullDown, `${path}.load.pullDown`, resistance);
  optional(load.common, `${path}.load.common`, (value, at) =>
    oneOf(value, ['source', 'sensor'], at),
  );
  if (load.pullUp !== undefined) checkPullUp(load.pullUp, `${path}.load.pullUp`);
  if (circuit.connection !== undefined) checkConnection(circuit.connection, `${path}.connection`);
  circuit.faults?.forEach((fault, i) => {
    checkFault(fault, `${path}.faults[${i}]`);
  });
}

function checkSensor({ sensor }: Circuit, path: string): void {
  present(sensor, path, 'a sensor with its track, such as { track: 5000 }');
  resistance(sensor.track, `${path}.track`);
  for (const part of ['bottomResidual', 'topResidual', 'contact'] as const) {
    optional(sensor[part], `${path}.${part}`, resistance);
  }
  for (const terminal of terminals) {
    optional(
      sensor.terminalResistors?.[terminal],
      `${path}.terminalResistors.${terminal}`,
      resistance,
    );
  }
  for (const stop of ['closedPosition', 'openPosition'] as const) {
    optional(sensor[stop], `${path}.${stop}`, place);
  }
}

function checkPullUp(pullUp: NonNullable<Circuit['load']['pullUp']>, path: string): void {
  present(pullUp, path, 'a resistor to a voltage, such as { ohms: 10e3, volts: 5 }');
  resistance(pullUp.ohms, `${path}.ohms`);
  if ('from' in pullUp) oneOf(pullUp.from, ['source', 'sensor'], `${path}.from`);
  else voltage(pullUp.volts, `${path}.volts`);
}

function checkConnection(connection: Circuit['connection'], path: string): void {
  present(connection, path, 'the terminal of each lead: { supply, ground, signal }');
  for (const lead of leads) oneOf(connection?.[lead], terminals, `${path}.${lead}`);
  if (new Set(Object.values(connection ?? {})).size === leads.length) return;
  throw new InputError(
    'not-a-permutation',
    path,
    `${path} puts two leads on one terminal; each lead has a terminal of its own.`,
  );
}

function checkFault(fault: CircuitFault, path: string): void {
  present(fault, path, 'a fault, such as { kind: "lifted-wiper" }');
  const kinds: Record<CircuitFault['kind'], (fault: never) => void> = {
    'broken-lead': ({ lead }: { lead: Lead }) => oneOf(lead, leads, `${path}.lead`),
    'shorted-leads': (it: { leads: readonly Lead[] }) => pair(it.leads, leads, `${path}.leads`),
    'shorted-terminals': (it: { terminals: readonly Terminal[] }) =>
      pair(it.terminals, terminals, `${path}.terminals`),
    'shorted-signal': ({ to }: { to: string }) =>
      oneOf(to, ['source', 'supply', 'ground'], `${path}.to`),
    'broken-track': ({ position }: { position: number }) => place(position, `${path}.position`),
    'shorted-track': ({ from, to }: { from: number; to: number }) => {
      place(from, `${path}.from`);
      place(to, `${path}.to`);
    },
    'lifted-wiper': () => undefined,
    'no-limiter': () => undefined,
    'wrong-source': ({ volts }: { volts: number }) => voltage(volts, `${path}.volts`),
    'reversed-source': () => undefined,
  };
  oneOf(fault.kind, Object.keys(kinds), `${path}.kind`);
  kinds[fault.kind](fault as never);
}

function pair(values: readonly string[], allowed: readonly string[], path: string): void {
  oneOf(values?.[0], allowed, `${path}[0]`);
  oneOf(values?.[1], allowed, `${path}[1]`);
}

function voltage(value: unknown, path: string): number {
  return finiteBetween(value, 0, highestVolts, path, 'V');
}

function place(value: unknown, path: string): number {
  return finiteBetween(value, 0, 1, path);
}

function optional(
  value: unknown,
  path: string,
  check: (value: unknown, path: string) => unknown,
): void {
  if (value !== undefined) check(value, path);
}
