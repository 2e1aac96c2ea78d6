import { InputError } from '../errors.js';
import { finiteBetween, oneOf, positive, present, resistance } from '../guard.js';
import type { Circuit } from './circuit.js';
import type { CircuitFault } from './faults.js';
import type { Lead, Terminal } from './terminals.js';

/** Refuses a wrong value by the path of its field. */
type Rule = (value: unknown, path: string) => unknown;
type Rules = Readonly<Record<string, Rule>>;

const leads: readonly Lead[] = ['supply', 'ground', 'signal'];
const terminals: readonly Terminal[] = ['bottom', 'wiper', 'top'];

/** Up to a million volts: far beyond any bench, and every product of the solver stays finite. */
const voltage: Rule = (value, path) => finiteBetween(value, 0, 1e6, path, 'V');
const place: Rule = (value, path) => finiteBetween(value, 0, 1, path);
const word =
  (...allowed: readonly string[]): Rule =>
  (value, path) =>
    oneOf(value, allowed, path);
const optional =
  (rule: Rule): Rule =>
  (value, path) =>
    value === undefined || rule(value, path);
const group =
  (what: string, rules: Rules): Rule =>
  (value, path) => {
    present(value, path, what);
    for (const [name, rule] of Object.entries(rules)) {
      rule((value as Record<string, unknown>)[name], `${path}.${name}`);
    }
  };
const pairOf =
  (rule: Rule): Rule =>
  (value, path) => {
    for (const i of [0, 1]) rule((value as readonly unknown[] | undefined)?.[i], `${path}[${i}]`);
  };
const same = (names: readonly string[], rule: Rule): Rules =>
  Object.fromEntries(names.map((name) => [name, rule]));

const faultRules: Readonly<Record<CircuitFault['kind'], Rules>> = {
  'broken-lead': { lead: word(...leads) },
  'shorted-leads': { leads: pairOf(word(...leads)) },
  'shorted-terminals': { terminals: pairOf(word(...terminals)) },
  'shorted-signal': { to: word('source', 'supply', 'ground') },
  'broken-track': { position: place },
  'shorted-track': { from: place, to: place },
  'lifted-wiper': {},
  'no-limiter': {},
  'wrong-source': { volts: voltage },
  'reversed-source': {},
};

const faultRule: Rule = (fault, path) => {
  group('a fault, such as { kind: "lifted-wiper" }', {
    kind: word(...Object.keys(faultRules)),
  })(fault, path);
  group('', faultRules[(fault as CircuitFault).kind])(fault, path);
};

const pullUpRule: Rule = (pullUp, path) => {
  const isFed = typeof pullUp === 'object' && pullUp !== null && 'from' in pullUp;
  group('a resistor to a voltage, such as { ohms: 10e3, volts: 5 }', {
    ohms: resistance,
    ...(isFed ? { from: word('source', 'sensor') } : { volts: voltage }),
  })(pullUp, path);
};

const connectionRule: Rule = (connection, path) => {
  group('the terminal of each lead: { supply, ground, signal }', same(leads, word(...terminals)))(
    connection,
    path,
  );
  if (new Set(Object.values(connection as object)).size === leads.length) return;
  throw new InputError(
    'not-a-permutation',
    path,
    `${path} puts two leads on one terminal; each lead has a terminal of its own.`,
  );
};

const circuitRule = group('a circuit with source, limiter, sensor and load', {
  source: group('the supply that feeds the sensor, such as { volts: 5 }', {
    volts: voltage,
    ohms: optional(resistance),
    currentLimit: optional((value, path) => positive(value, path, 'A')),
  }),
  limiter: resistance,
  leads: optional(group('the resistance of each lead', same(leads, optional(resistance)))),
  sensor: group('a sensor with its track, such as { track: 5000 }', {
    track: resistance,
    ...same(['bottomResidual', 'topResidual', 'contact'], optional(resistance)),
    terminalResistors: optional(
      group('a resistance by terminal', same(terminals, optional(resistance))),
    ),
    ...same(['closedPosition', 'openPosition'], optional(place)),
  }),
  load: group('what hangs on the signal lead, such as { pullDown: 10e6 }', {
    pullDown: optional(resistance),
    pullUp: optional(pullUpRule),
    common: optional(word('source', 'sensor')),
  }),
  connection: optional(connectionRule),
});

/**
 * Refuses a circuit with a missing or impossible part.
 *
 * @throws InputError with the path of the field, such as `circuit.sensor.track`.
 */
export function checkCircuit(circuit: Circuit, path = 'circuit'): void {
  circuitRule(circuit, path);
  circuit.faults?.forEach((fault, i) => {
    faultRule(fault, `${path}.faults[${i}]`);
  });
}
