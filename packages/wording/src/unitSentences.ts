import { formatQuantity, type UnitThatFits } from '@truesweep/core';
import { say } from './say.js';
import { whole } from './whole.js';

/**
 * What the columns may be written in that are in no unit that they can have been taken for, a sentence for each.
 *
 * @example
 * unitSentences([{ column: 'time', unit: 'ms' }])[0].startsWith('The times can’t be seconds') // => true
 */
export function unitSentences(units: readonly UnitThatFits[]): readonly string[] {
  return whole(units, 'units', () => {
    const of = (column: UnitThatFits['column']): readonly string[] =>
      units.filter((one) => one.column === column).map(unitName);
    const [signals, times] = [of('signal'), of('time')];
    return [
      ...(signals.length > 0
        ? [say`The readings can’t be volts of this hook-up; they may be in ${anyOf(signals)}.`]
        : []),
      ...(times.length > 0
        ? [say`The times can’t be seconds: no hand is so slow; they may be in ${anyOf(times)}.`]
        : []),
    ];
  });
}

/**
 * What takes a column for one in a unit that fits.
 *
 * @example
 * takeUnitWords({ column: 'time', unit: 'ms' }) // => 'Read the times in ms'
 */
export function takeUnitWords(unit: UnitThatFits): string {
  return whole(unit, 'unit', () => {
    const column = { time: 'times', signal: 'signal' }[unit.column];
    const bits = unit.bits === undefined ? '' : say` of ${unit.bits} bits`;
    return say`Read the ${column} in ${unit.unit}${bits}`;
  });
}

function unitName({ unit, bits = 0, voltsPerUnit = 0 }: UnitThatFits): string {
  const each = formatQuantity(voltsPerUnit, 'V');
  if (unit === 'counts')
    return say`counts of ${bits} bits (of ${each} each, were the converter fed by the source)`;
  return unit === '%' ? say`% of the source (of ${each} each)` : say`${unit}`;
}

function anyOf(names: readonly string[]): string {
  return names.length > 1 ? say`${names.slice(0, -1).join(', ')} or ${names.at(-1)!}` : names[0]!;
}
