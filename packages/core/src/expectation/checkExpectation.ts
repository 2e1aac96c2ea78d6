import { checkCircuit } from '../circuit/checkCircuit.js';
import type { Circuit } from '../circuit/circuit.js';
import { column, timeColumn } from '../column.js';
import { checkFields, type FieldRules, listOf } from '../fields.js';
import { between, finiteBetween, text } from '../guard.js';
import type { Expectation } from './expectation.js';
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

/**
 * Refuses what is no expectation, such as one that came from another program: a missing, unknown or impossible field.
 *
 * @param value What `expectation` gave.
 * @param path What it is called in refusals.
 * @param only The fields that are looked at, where only a part is needed; all when left out.
 * @throws InputError with the path of the field, such as `expected.windows.closed.low`.
 *
 * @example
 * let path;
 * try {
 *   checkExpectation({ curve: { travel: [0, 1], volts: [0, Number.NaN] } }, 'expected', ['curve']);
 * } catch (error) {
 *   path = error.path;
 * }
 * path // => 'expected.curve.volts[1]'
 */
export function checkExpectation(
  value: Partial<Record<keyof Expectation, unknown>>,
  path = 'expected',
  only?: readonly (keyof Expectation)[],
): void {
  text(path, 'path');
  const known = Object.keys(expectationRules).map((name) => name.replace('?', ''));
  if (only !== undefined) listOf(known)(only, 'only');
  const rules = Object.entries(expectationRules).filter(
    ([name]) => only?.includes(name.replace('?', '') as keyof Expectation) ?? true,
  );
  checkFields(value, path, Object.fromEntries(rules));
}
