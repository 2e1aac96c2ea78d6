import { InputError } from '../errors.js';
import { finiteBetween, oneOf, positive, present, resistance } from '../guard.js';
import type { Circuit } from './circuit.js';
import type { CircuitFault } from './faults.js';

/** How a value is refused; the words that it may be; or the rules of its fields, those ending in ? optional. */
type Rule =
  | ((value: unknown, path: string) => void)
  | string[]
  | { readonly [field: string]: Rule };

/** Up to a million volts: far beyond any bench, and every product of the solver stays finite. */
const volts = (value: unknown, path: string) => finiteBetween(value, 0, 1e6, path, 'V');
const place = (value: unknown, path: string) => finiteBetween(value, 0, 1, path);
const lead = ['supply', 'ground', 'signal'];
const terminal = ['bottom', 'wiper', 'top'];
const side = ['source', 'sensor'];

const circuitRule: Rule = {
  source: {
    volts,
    'ohms?': resistance,
    'currentLimit?': (value: unknown, path: string) => positive(value, path, 'A'),
  },
  limiter: resistance,
  'leads?': { 'supply?': resistance, 'ground?': resistance, 'signal?': resistance },
  sensor: {
    track: resistance,
    'bottomResidual?': resistance,
    'topResidual?': resistance,
    'contact?': resistance,
    'terminalResistors?': { 'bottom?': resistance, 'wiper?': resistance, 'top?': resistance },
    'closedPosition?': place,
    'openPosition?': place,
  },
  load: {
    'pullDown?': resistance,
    'pullUp?': (value: unknown, path: string) => {
      const rest: Rule = 'from' in Object(value) ? { from: side } : { volts };
      check(value, path, { ohms: resistance, ...rest });
    },
    'common?': side,
  },
  'connection?': (value: unknown, path: string) => {
    check(value, path, { supply: terminal, ground: terminal, signal: terminal });
    if (new Set(Object.values(value as object)).size === 3) return;
    throw new InputError(
      'not-a-permutation',
      path,
      `${path} puts two leads on one terminal; each lead has a terminal of its own.`,
    );
  },
};

const faultRules: Readonly<Record<CircuitFault['kind'], Rule>> = {
  'broken-lead': { lead },
  'shorted-leads': { leads: { 0: lead, 1: lead } },
  'shorted-terminals': { terminals: { 0: terminal, 1: terminal } },
  'shorted-signal': { to: ['source', 'supply', 'ground'] },
  'broken-track': { position: place },
  'shorted-track': { from: place, to: place },
  'lifted-wiper': {},
  'no-limiter': {},
  'wrong-source': { volts },
  'reversed-source': {},
};

/**
 * Refuses a circuit with a missing or impossible part.
 *
 * @throws InputError with the path of the field, such as `circuit.sensor.track`.
 */
export function checkCircuit(circuit: Circuit, path = 'circuit'): void {
  check(circuit, path, circuitRule);
  circuit.faults?.forEach((fault, i) => {
    const at = `${path}.faults[${i}]`;
    check(fault, at, { kind: Object.keys(faultRules) });
    check(fault, at, faultRules[fault.kind]);
  });
}

function check(value: unknown, path: string, rule: Rule): void {
  if (typeof rule === 'function') rule(value, path);
  else if (Array.isArray(rule)) oneOf(value, rule, path);
  else {
    if (Object(value) !== value)
      present(value, path, `an object { ${Object.keys(rule).join(', ')} }`);
    for (const name in rule) {
      const optional = name.endsWith('?');
      const field = optional ? name.slice(0, -1) : name;
      const part = (value as Record<string, unknown>)[field];
      if (optional && part === undefined) continue;
      check(part, field < 'A' ? `${path}[${field}]` : `${path}.${field}`, rule[name]!);
    }
  }
}
