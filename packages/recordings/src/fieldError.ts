import { InputError, type InputErrorCode } from '@truesweep/core';
import { columnRoles } from './columnRoles.js';
import type { ColumnRole } from './delimitedOptions.js';
import { isNoReading } from './lineKind.js';
import { type LineStart, placeInLine } from './placeInLine.js';
import { readValue } from './readValue.js';
import type { RowLayout } from './rowLayout.js';
import { type FieldBounds, fieldText } from './scanFields.js';

/** A field that a row needs; without a role where the length of the row is wrong. */
interface WrongField {
  readonly index: number;
  readonly role?: ColumnRole;
}

/** What is wrong with a row: which of its fields is missing, too many, or no finite number, and where. */
export function fieldError(
  bytes: Uint8Array,
  line: LineStart,
  bounds: FieldBounds,
  layout: RowLayout,
  path: string,
): InputError {
  const { index, role } = firstWrong(bytes, bounds, layout);
  const at = index < bounds.count ? bounds.starts[index]! : bounds.end;
  const place = placeInLine(bytes, line, at);
  if (role === undefined) {
    const wrong = `Line ${place.line} has ${bounds.count} fields; every row must have ${layout.fields}`;
    const code = bounds.count > layout.fields ? 'extra-field' : 'missing-field';
    return new InputError(code, path, `${wrong}.`, place);
  }
  const text = index < bounds.count ? fieldText(bytes, bounds, index) : '';
  const isInfinite = Math.abs(readValue(bytes, bounds, layout, role)) === Infinity;
  const { code, wrong } = describe(text, isInfinite);
  return new InputError(
    code,
    path,
    `On line ${place.line} the ${roleNames[role]} ${wrong}; every row needs ${neededValue(role, layout)} there.`,
    place,
  );
}

const roleNames: Readonly<Record<ColumnRole, string>> = {
  time: 'time',
  signal: 'signal',
  supply: 'supply',
  second: "second track's signal",
  position: 'position',
};

function neededValue(role: ColumnRole, { columns, decimal }: RowLayout): string {
  const sign = decimal === '.' ? 'point' : 'comma';
  if (role === 'position') return `a number with a decimal ${sign}`;
  const unit = columns[role]?.unit;
  if (unit === 'clock') return 'a time of day or a date with its time, to the second or finer,';
  return `a number in ${unit} with a decimal ${sign}`;
}

function firstWrong(bytes: Uint8Array, bounds: FieldBounds, layout: RowLayout): WrongField {
  const { columns, fields } = layout;
  if (bounds.used > fields) return { index: fields };
  const wrong = columnRoles
    .flatMap((role) => {
      const column = columns[role];
      return column ? [{ role, index: column.index }] : [];
    })
    .filter(({ role }) => !Number.isFinite(readValue(bytes, bounds, layout, role)))
    .sort((one, other) => one.index - other.index);
  return wrong[0] ?? { index: bounds.count };
}

function describe(text: string, isInfinite: boolean): { code: InputErrorCode; wrong: string } {
  if (text === '') return { code: 'missing-field', wrong: 'is missing' };
  const shown = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  if (isInfinite || /^[+-]?(inf|infinity|∞)$/i.test(text)) {
    return { code: 'not-finite', wrong: `is “${shown}”, which is not finite` };
  }
  const kind = isNoReading(text) ? 'no reading' : 'no number';
  return { code: 'not-a-number', wrong: `is “${shown}”, which is ${kind}` };
}
