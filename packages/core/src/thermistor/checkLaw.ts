import { InputError } from '../errors.js';
import { checkKind, type FieldRules, listOf } from '../fields.js';
import { between, finiteBetween, positive } from '../guard.js';
import type { Celsius, Ohms } from '../units.js';
import type { ThermistorLaw, ThermistorRow } from './law.js';

/** Where water freezes, K. */
export const zero = 273.15;

const celsius = between(-273, 2000, '°C');
const ohms = between(1e-6, 1e12, 'Ω');
const coefficient = between(-1, 1);
const row: FieldRules = { temperature: celsius, ohms, 'low?': ohms, 'high?': ohms };

const kinds: Readonly<Record<ThermistorLaw['kind'], FieldRules>> = {
  table: { rows: listOf(row, 2, 1000) },
  'steinhart-hart': {
    a: coefficient,
    b: between(1e-12, 1),
    c: coefficient,
    lowest: celsius,
    highest: celsius,
  },
  b: {
    b: between(10, 1e5, 'K'),
    ohms,
    from: celsius,
    to: celsius,
    'lowest?': celsius,
    'highest?': celsius,
  },
};

/** Refuses what is no thermistor's law. */
export function checkLaw(law: ThermistorLaw, path: string): void {
  checkKind(law, path, kinds as Readonly<Record<string, FieldRules>>);
  if (law.kind === 'table') {
    checkRows(law.rows, `${path}.rows`);
    return;
  }
  const { lowest, highest } = rangeOf(law);
  if (law.kind === 'b' && law.from === law.to) {
    refuse(`${path}.to`, `is the first temperature again, ${law.to} °C; a B belongs to two`);
  }
  if (!(lowest < highest)) {
    refuse(`${path}.highest`, `is ${highest} °C; it must be above the lowest, ${lowest} °C`);
  }
  if (law.kind === 'b' || law.c >= 0) return;
  // Below 0 the curve turns back: it must not within its range.
  const turn = -2 * law.b * Math.sqrt(law.b / (-27 * law.c));
  for (const end of [lowest, highest]) {
    if (Math.abs(1 / (end + zero) - law.a) < -turn) continue;
    refuse(`${path}.c`, `is ${law.c}, by which the curve turns back within its range`);
  }
}

function checkRows(rows: readonly ThermistorRow[], path: string): void {
  const [first] = rows;
  rows.forEach((at, i) => {
    const { low = at.ohms, high = at.ohms } = at;
    const here = `${path}[${i}]`;
    if (
      (at.low === undefined) !== (first!.low === undefined) ||
      (at.high === undefined) !== (at.low === undefined)
    ) {
      refuse(
        here,
        'has not the same limits as the others; give low and high in every row, or in none',
      );
    }
    if (low > at.ohms || high < at.ohms) {
      refuse(here, `has ${at.ohms} Ω outside its limits, ${low} to ${high} Ω; it must lie within`);
    }
    const before = rows[i - 1];
    if (!before) return;
    if (!(at.temperature > before.temperature)) {
      refuse(`${here}.temperature`, 'must be above that of the row before');
    }
    const falls =
      at.ohms < before.ohms &&
      low < (before.low ?? before.ohms) &&
      high < (before.high ?? before.ohms);
    if (!falls)
      refuse(`${here}.ohms`, 'and its limits must be below those of the row before: an NTC falls');
  });
}

/** The range of temperatures that a law holds in. */
export function rangeOf(law: ThermistorLaw): {
  readonly lowest: Celsius;
  readonly highest: Celsius;
} {
  if (law.kind === 'table') {
    return { lowest: law.rows[0]!.temperature, highest: law.rows.at(-1)!.temperature };
  }
  if (law.kind === 'steinhart-hart') return law;
  const { from, to, lowest = Math.min(from, to), highest = Math.max(from, to) } = law;
  return { lowest, highest };
}

/** Refuses a temperature beyond the law's range: nothing is extrapolated. */
export function withinLaw(law: ThermistorLaw, temperature: Celsius, path: string): void {
  finiteBetween(temperature, -273, 2000, path, '°C');
  const { lowest, highest } = rangeOf(law);
  if (temperature >= lowest && temperature <= highest) return;
  throw new InputError(
    'out-of-range',
    path,
    `${path} is ${temperature} °C; the sensor's law holds from ${lowest} to ${highest} °C, and nothing is extrapolated.`,
  );
}

/** Refuses what is no resistance of a part. */
export const someOhms = (value: Ohms, path: string): Ohms => positive(value, path, 'Ω');

function refuse(path: string, wrong: string): never {
  throw new InputError('out-of-order', path, `${path} ${wrong}.`);
}
