import { InputError } from '../errors.js';
import { checkFields, checkKind, type FieldRules, listOf } from '../fields.js';
import { above0, between, resistance } from '../guard.js';
import type { Circuit } from './circuit.js';
import type { CircuitFault } from './faults.js';

/** Up to a million volts: far beyond any bench, and every product of the solver stays finite. */
const volts = between(0, 1e6, 'V');
const place = between(0, 1);
const lead = ['supply', 'ground', 'signal'];
const terminal = ['bottom', 'wiper', 'top'];
const side = ['source', 'sensor'];

const source: FieldRules = { volts, 'ohms?': resistance, 'currentLimit?': above0('A') };
const leads: FieldRules = {
  'supply?': resistance,
  'ground?': resistance,
  'signal?': resistance,
};
/** A limiter is a part that is there; what is broken is a lead. */
const finiteResistance = (value: unknown, path: string): void => {
  resistance(value, path);
  between(0, 1e18, 'Ω')(value, path);
};

export const sensorRules: FieldRules = {
  track: resistance,
  'bottomResidual?': resistance,
  'topResidual?': resistance,
  'contact?': resistance,
  'terminalResistors?': { 'bottom?': resistance, 'wiper?': resistance, 'top?': resistance },
  'closedPosition?': place,
  'openPosition?': place,
};
export const pullUpRule = (value: unknown, path: string): void => {
  const rest: FieldRules =
    Object(value) === value && 'from' in (value as object) ? { from: side } : { volts };
  checkFields(value, path, { ohms: resistance, ...rest });
};
export const loadRules: FieldRules = {
  'pullDown?': resistance,
  'pullUp?': pullUpRule,
  'common?': side,
};

/** All of a circuit but its sensor. */
export const hookupRules: FieldRules = {
  source,
  limiter: finiteResistance,
  'leads?': leads,
  load: loadRules,
  'connection?': (value, path) => {
    checkFields(value, path, { supply: terminal, ground: terminal, signal: terminal });
    if (new Set(Object.values(value as object)).size === 3) return;
    throw new InputError(
      'not-a-permutation',
      path,
      `${path} puts two leads on one terminal; each lead has a terminal of its own.`,
    );
  },
  'faults?': listOf(checkFault, 0, 100),
};

/** The fields of each kind of fault. */
const faultRules = {
  'broken-lead': { lead },
  'shorted-leads': { leads: listOf(lead, 2, 2) },
  'shorted-terminals': { terminals: listOf(terminal, 2, 2) },
  'shorted-signal': { to: ['source', 'supply', 'ground'] },
  'broken-track': { position: place },
  'shorted-track': { from: place, to: place },
  'lifted-wiper': {},
  'no-limiter': {},
  'wrong-source': { volts },
  'reversed-source': {},
} satisfies Readonly<Record<CircuitFault['kind'], FieldRules>>;

const circuitRules: FieldRules = { ...hookupRules, sensor: sensorRules };

/** Refuses a fault of no known kind, or with fields of another. */
function checkFault(value: unknown, path: string): void {
  checkKind(value, path, faultRules);
}

/**
 * Refuses a circuit with a missing or impossible part.
 *
 * @throws InputError with the path of the field, such as `circuit.sensor.track`.
 */
export function checkCircuit(circuit: Circuit, path = 'circuit'): void {
  checkFields(circuit, path, circuitRules);
}
