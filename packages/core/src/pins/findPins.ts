import { InputError } from '../errors.js';
import { checkFields, type FieldRule, listOf } from '../fields.js';
import { between, finiteBetween, oneOf, read, shown } from '../guard.js';
import { arrangementOf } from './arrangement.js';
import type { OhmmeterTolerance, PinFinding, PinReading } from './pinFinding.js';
import { changeOf, pairKey, pairsOf, pinTable } from './pinTable.js';

/**
 * Finds which terminal is which on an unmarked position sensor, from ohmmeter readings between its terminals at the
 * closed and at the open stop; or what else the readings show it to be.
 *
 * Every arrangement that could give the readings within the meter's error is tried; a terminal is named only where a
 * single one is left, so the answer can be `not-enough-readings` but not a guess. Readings below 10 Ω count as joined
 * (common practice, no source). Of two or three terminals any reading may be missing; of four to six all are needed.
 *
 * @param terminals The terminals by the caller's names, two to six, all different.
 * @param readings What the meter showed, each pair and stop once; `Infinity` for over-range (OL).
 * @param meter The largest error of the meter.
 * @returns What was found, with the change of each pair between the stops as evidence.
 * @throws InputError at `terminals…`, `readings[n]…` or `meter…`.
 *
 * @example
 * const read = (a, b, closed, open) => [
 *   { between: [a, b], at: 'closed', ohms: closed },
 *   { between: [a, b], at: 'open', ohms: open },
 * ];
 * const readings = [...read('1', '2', 5000, 5000), ...read('1', '3', 1300, 5300), ...read('2', '3', 5300, 1300)];
 * const found = findPins(['1', '2', '3'], readings, { fraction: 0.01, ohms: 1 });
 * found.kind // => 'potentiometer'
 * found.tracks[0].wiper // => '3'
 * found.tracks[0].closedEnd // => '1'
 * found.tracks[0].series.value // => ≈ 800
 * found.tracks[0].closedPosition.value // => ≈ 0.1
 */
export function findPins(
  terminals: readonly string[],
  readings: readonly PinReading[],
  meter: OhmmeterTolerance,
): PinFinding {
  checkTerminals(terminals);
  checkReadings(readings, terminals);
  checkFields(meter, 'meter', { fraction: between(0, 0.5), ohms: between(0, 1e6, 'Ω') });
  const table = pinTable(readings, meter);
  const evidence = pairsOf(terminals).map((pair) => {
    const closed = table.ohms(...pair, 'closed');
    const open = table.ohms(...pair, 'open');
    return {
      between: pair,
      ...(closed !== undefined && { closed }),
      ...(open !== undefined && { open }),
      change: changeOf(table, pair),
    };
  });
  return { ...arrangementOf(table, terminals), evidence };
}

function checkTerminals(terminals: readonly string[]): void {
  if (!Array.isArray(terminals) || terminals.length < 2 || terminals.length > 6) {
    throw new InputError(
      'out-of-range',
      'terminals',
      'terminals must be a list of two to six names.',
    );
  }
  for (let i = 0; i < terminals.length; i++) {
    const name = read(terminals, i, 'terminals');
    if (typeof name === 'string' && name !== '' && terminals.indexOf(name) === i) continue;
    const path = `terminals[${i}]`;
    throw new InputError(
      'not-a-name',
      path,
      `${path} is ${shown(name)}; each terminal needs a name of its own.`,
    );
  }
}

function checkReadings(readings: readonly PinReading[], terminals: readonly string[]): void {
  const name: FieldRule = (value, path) => oneOf(value, terminals, path);
  listOf({
    between: listOf(name, 2, 2),
    at: ['closed', 'open'],
    ohms: (value, path) => {
      if (value !== Number.POSITIVE_INFINITY) finiteBetween(value, 0, 1e12, path, 'Ω');
    },
  })(readings, 'readings');
  const seen = new Set<string>();
  readings.forEach((reading: PinReading, i) => {
    const path = `readings[${i}]`;
    const { between: pair, at } = reading;
    const [a, b] = pair;
    const key = pairKey(a, b, at);
    if (a === b || seen.has(key)) {
      throw new InputError(
        'duplicate',
        `${path}.between`,
        a === b
          ? `${path}.between names ${a} twice; a reading lies between two terminals.`
          : `${path} is a second reading between ${a} and ${b} at ${at}; give each once.`,
      );
    }
    seen.add(key);
  });
}
