import { checkCircuit } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { checkFields, checkKind, type FieldRules, listOf } from '../fields.js';
import { between, finiteBetween, resistance } from '../guard.js';
import { noMoreThan } from '../noMoreThan.js';
import type { SweepPlan } from './simulateSweep.js';

/** A plan asks for no more samples than these: what some 500 MB hold. */
export const mostSamples = 1e7;
/** Stretches of faults that lie in time are looked for in each sample: so many looks are taken. */
const mostLooks = 1e9;

const part = between(0, 1);
const volts = between(-1e6, 1e6, 'V');
const moment = between(-1e6, 1e6, 's');
const duration = between(0, 1e6, 's');
const someTime = between(1e-6, 1e6, 's');
const someSize = between(0, 1e6);

const movements: Readonly<Record<SweepPlan['movements'][number]['kind'], FieldRules>> = {
  hold: { seconds: duration },
  turn: { to: part, seconds: someTime, 'unevenness?': part },
  snap: { seconds: someTime, restitution: between(0, 0.9) },
};

/** A fault may reach beyond a stop. */
const place = between(-1, 2);
const stretch = { from: place, to: place };

const faults: Readonly<Record<NonNullable<SweepPlan['faults']>[number]['kind'], FieldRules>> = {
  'worn-spot': { travel: place, width: between(0, 2), ohms: resistance, 'chance?': part },
  'loose-connection': { at: listOf({ time: moment, seconds: duration }, 0, 10_000) },
  interference: { at: listOf({ time: moment, seconds: duration, volts }, 0, 10_000) },
  'shifted-track': { travel: place, shift: between(-1, 1) },
  'dead-spot': stretch,
  'rough-track': { from: place, to: place, volts: someSize },
};

const recorderRules: FieldRules = {
  interval: between(1e-9, 1e6, 's'),
  'noise?': someSize,
  'resolution?': someSize,
  'range?': (value, path) => {
    checkFields(value, path, { low: volts, high: volts });
    const { low, high } = value as { low: number; high: number };
    finiteBetween(high, low, 1e6, `${path}.high`, 'V');
  },
  'hum?': { volts, hertz: between(0, 1e9, 'Hz') },
  'capacitance?': between(0, 1e6, 'F'),
};

const planRules: FieldRules = {
  circuit: (value, path) => checkCircuit(value as Circuit, path),
  movements: listOf((value, path) => checkKind(value, path, movements), 0, 10_000),
  recorder: recorderRules,
  'faults?': listOf((value, path) => checkKind(value, path, faults), 0, 1000),
  seed: between(-(2 ** 53), 2 ** 53),
};

/** Refuses a plan with a missing or impossible part, or one that asks for too much work. */
export function checkPlan(plan: SweepPlan): void {
  checkFields(plan, 'plan', planRules);
  const seconds = plan.movements.reduce((sum, movement) => sum + movement.seconds, 0);
  const looks = (plan.faults ?? []).reduce(
    (sum, fault) => sum + ('at' in fault ? fault.at.length : 1),
    0,
  );
  noMoreThan(
    mostLooks,
    (looks * seconds) / plan.recorder.interval,
    'plan.faults',
    'looks for faults',
  );
}
