import { InputError } from '@truesweep/core';
import { unitPowers } from './delimitedOptions.js';
import { isNoReading } from './lineKind.js';
import { placeAt } from './placeAt.js';
import { type FieldBounds, fieldText } from './scanFields.js';
import { scanNumber } from './scanNumber.js';
import type { RowLayout } from './scanRows.js';

/** A field that a row needs; without a role where the length of the row is wrong. */
interface WrongField {
  readonly index: number;
  readonly role?: 'time' | 'signal' | 'supply';
}

/** Refuses a row: says which of its fields is missing, too many, or no finite number, and where. */
export function refuseField(
  bytes: Uint8Array,
  start: number,
  bounds: FieldBounds,
  layout: RowLayout,
  path: string,
): never {
  const { index, role } = firstWrong(bytes, bounds, layout);
  const at = index < bounds.count ? bounds.starts[index]! : bounds.end;
  const place = placeAt(bytes, start, at);
  if (role === undefined) {
    const wrong = `Line ${place.line} has ${bounds.count} fields; every row must have ${layout.fields}`;
    const code = bounds.count > layout.fields ? 'extra-field' : 'missing-field';
    throw new InputError(code, path, `${wrong}.`, place);
  }
  const text = index < bounds.count ? fieldText(bytes, bounds, index) : '';
  const isInfinite = Math.abs(readField(bytes, bounds, layout, { index, role })) === Infinity;
  const { code, wrong } = describe(text, isInfinite);
  const sign = layout.decimal === '.' ? 'point' : 'comma';
  throw new InputError(
    code,
    path,
    `On line ${place.line} the ${role} ${wrong}; every row needs a number in ${layout.columns[role]?.unit} there, with a decimal ${sign}.`,
    place,
  );
}

function firstWrong(bytes: Uint8Array, bounds: FieldBounds, layout: RowLayout): WrongField {
  const { columns, fields } = layout;
  if (bounds.used > fields) return { index: fields };
  const wrong = (['time', 'signal', 'supply'] as const)
    .flatMap((role) => {
      const column = columns[role];
      return column ? [{ role, index: column.index }] : [];
    })
    .filter((field) => !Number.isFinite(readField(bytes, bounds, layout, field)))
    .sort((one, other) => one.index - other.index);
  return wrong[0] ?? { index: bounds.count };
}

function readField(
  bytes: Uint8Array,
  { starts, ends, count }: FieldBounds,
  { columns, decimal }: RowLayout,
  { index, role }: Required<WrongField>,
): number {
  if (index >= count) return Number.NaN;
  const shift = unitPowers[columns[role]?.unit ?? 'V'];
  return scanNumber(bytes, starts[index]!, ends[index]!, decimal.charCodeAt(0), shift);
}

function describe(text: string, isInfinite: boolean): { code: string; wrong: string } {
  if (text === '') return { code: 'missing-field', wrong: 'is missing' };
  const shown = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  if (isInfinite || /^[+-]?(inf|infinity|∞)$/i.test(text)) {
    return { code: 'not-finite', wrong: `is “${shown}”, which is not finite` };
  }
  const kind = isNoReading(text) ? 'no reading' : 'no number';
  return { code: 'not-a-number', wrong: `is “${shown}”, which is ${kind}` };
}
