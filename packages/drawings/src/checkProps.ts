import {
  type Circuit,
  checkExpectation,
  checkFields,
  checkScore,
  checkText,
  type FieldRule,
  type FieldRules,
  type Finding,
  InputError,
  listOf,
  operatingPoint,
  type SweepColumns,
} from '@truesweep/core';
import { nodeLabels, partLabels } from '@truesweep/wording';

/** Refuses a value, with what it must be. */
export function refuse(value: unknown, path: string, wanted: string): never {
  const isGone = value === undefined || value === null;
  const shown = isGone ? 'missing' : typeof value === 'number' ? `${value}` : `a ${typeof value}`;
  throw new InputError(
    isGone ? 'missing' : typeof value === 'number' ? 'out-of-range' : 'not-finite',
    path,
    `${path} is ${shown}; it must be ${wanted}.`,
  );
}

/** What a framework hands to any component beside its own properties. */
const ofFramework: FieldRules = { 'children?': () => {}, 'key?': () => {}, 'ref?': () => {} };

/** Refuses properties that break their rules, and those that a component doesn't know. */
export function checkProps(props: object, rules: FieldRules): void {
  checkFields(props, 'props', { ...rules, ...ofFramework });
}

export const number: FieldRule = (value, path) => {
  if (typeof value !== 'number' || !(Math.abs(value) <= 1e12)) {
    refuse(value, path, 'a number between −10¹² and 10¹²');
  }
};

/** How wide a drawing is. */
export const drawingWidth: FieldRule = (value, path) => {
  if (typeof value !== 'number' || !(value >= 240 && value <= 4000)) {
    refuse(value, path, 'a number from 240 to 4000');
  }
};

/** A range of readings, from low to high. */
export const voltRange: FieldRule = (value, path) => {
  checkFields(value, path, { low: number, high: number });
  const { low, high } = value as { readonly low: number; readonly high: number };
  if (!(low < high)) refuse(high, `${path}.high`, `above ${path}.low`);
};

const determined: FieldRule = (value, path) => {
  if (typeof value === 'number') return number(value, path);
  checkFields(value, path, {
    kind: ['floating', 'undetermined', 'unbounded'],
    reason: checkText,
  });
};

/** Parts and nodes that are numbered where a fault makes more than one of them. */
const numbered = /^(track(Cut|Above|Below|Short)|short)\d+$/;

/** Every field of a group whose names are these, or those of numbered parts. */
const eachOf =
  (names: object, rule: FieldRule): FieldRule =>
  (value, path) => {
    const given = typeof value === 'object' && value !== null ? Object.keys(value) : [];
    const known = [...Object.keys(names), ...given.filter((name) => numbered.test(name))];
    checkFields(value, path, Object.fromEntries(known.map((name) => [`${name}?`, rule])));
  };

/** A rule by a check of core, whose refusals are told of the property instead of what the check calls it. */
const by =
  (named: string, check: (value: unknown) => void): FieldRule =>
  (value, path) => {
    try {
      check(value);
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      const told = (text: string) =>
        text.startsWith(named) ? path + text.slice(named.length) : text;
      const { code, place, cause } = error;
      throw new InputError(code, told(error.path), told(error.message), place, { cause });
    }
  };

export const circuit = by('circuit', (value) => operatingPoint(value as Circuit, 0));

export const point: FieldRules = {
  position: number,
  output: determined,
  sourceState: ['constant-voltage', 'constant-current'],
  nodes: eachOf(nodeLabels, determined),
  parts: eachOf(partLabels, { amps: determined, watts: determined }),
  trackHeat: { above: determined, below: determined },
};

export const curve = by('it.curve', (value) => checkExpectation({ curve: value }, 'it', ['curve']));

export const windows: FieldRule = (value, path) =>
  checkExpectation({ windows: value }, path.replace(/\.windows$/, ''), ['windows']);

export const findings: FieldRule = (value, path) =>
  checkScore({ findings: value as Finding[] }, path.replace(/\.findings$/, ''), ['findings']);

export const numbers: FieldRule = (value, path) => {
  if (!ArrayBuffer.isView(value) && !Array.isArray(value)) refuse(value, path, 'a list of numbers');
  // Plain lists as they are: a copy would meet what their getters throw.
  const list = Array.isArray(value) ? value : Array.from(value as unknown as ArrayLike<number>);
  listOf(number)(list, path);
};

export const columns: FieldRule = (value, path) => {
  checkFields(value, path, {
    start: number,
    end: number,
    column: numbers,
    low: numbers,
    high: numbers,
  });
  const { start, end, column, low, high } = value as SweepColumns;
  if (!(start < end)) refuse(end, `${path}.end`, `after ${path}.start`);
  for (const [name, list] of Object.entries({ low, high })) {
    if (list.length === column.length && list.length > 0) continue;
    throw new InputError(
      'length-mismatch',
      `${path}.${name}`,
      `${path}.${name} must hold as many numbers as ${path}.column, 1 or more.`,
    );
  }
};
