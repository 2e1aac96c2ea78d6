import { checkCircuit } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { column, timeColumn } from '../column.js';
import { checkFields, type FieldRules } from '../fields.js';
import { between, finiteBetween } from '../guard.js';
import type { Curve } from './expectedCurve.js';
import type { ReadingWindow } from './expectedWindows.js';

/** What arithmetic may make of a voltage of up to 10⁶ V. */
const most = 2e6;
const volts = between(-most, most, 'V');

const expectationRules: FieldRules = {
  curve: (value, path) => {
    checkFields(value, path, { travel: timeColumn, volts: () => {} });
    const curve = value as Curve;
    column(curve.volts, curve.travel.length, `${path}.volts`);
  },
  windows: { closed: checkWindow, open: checkWindow, readingUncertainty: between(0, most, 'V') },
  'restLevel?': volts,
  circuit: (value, path) => checkCircuit(value as Circuit, path),
};

/** Refuses a window that is none: its ends out of order, or no numbers. */
export function checkWindow(value: unknown, path: string): void {
  checkFields(value, path, { low: volts, nominal: volts, high: volts });
  const { low, high } = value as ReadingWindow;
  finiteBetween(high, low, most, `${path}.high`, 'V');
}

/** Refuses an expectation with a missing or impossible part, by path. */
export function checkExpectation(value: unknown, path = 'expected'): void {
  checkFields(value, path, expectationRules);
}
