import {
  checkFields,
  type FieldRule,
  type FieldRules,
  InputError,
  listOf,
  type SweepColumns,
} from '@truesweep/core';

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

export const number = (value: unknown, path: string): void => {
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
