import { formatQuantity, type UnitThatFits } from '@truesweep/core';

/**
 * What the columns may be written in that are in no unit that they can have been taken for, a sentence for each.
 *
 * @example
 * unitSentences([{ column: 'time', unit: 'ms' }])[0].startsWith('The times can’t be seconds') // => true
 */
export function unitSentences(units: readonly UnitThatFits[]): readonly string[] {
  const of = (column: UnitThatFits['column']): readonly string[] =>
    units.filter((one) => one.column === column).map(unitName);
  const [signals, times] = [of('signal'), of('time')];
  return [
    ...(signals.length > 0
      ? [`The readings can’t be volts of this hook-up; they may be in ${anyOf(signals)}.`]
      : []),
    ...(times.length > 0
      ? [`The times can’t be seconds: no hand is so slow; they may be in ${anyOf(times)}.`]
      : []),
  ];
}

/**
 * What takes a column for one in a unit that fits.
 *
 * @example
 * takeUnitWords({ column: 'time', unit: 'ms' }) // => 'Read the times in ms'
 */
export function takeUnitWords(unit: UnitThatFits): string {
  const column = unit.column === 'time' ? 'times' : 'signal';
  const bits = unit.bits === undefined ? '' : ` of ${unit.bits} bits`;
  return `Read the ${column} in ${unit.unit}${bits}`;
}

function unitName({ unit, bits, voltsPerUnit = 0 }: UnitThatFits): string {
  const each = formatQuantity(voltsPerUnit, 'V');
  if (unit === 'counts')
    return `counts of ${bits} bits (of ${each} each, were the converter fed by the source)`;
  return unit === '%' ? `% of the source (of ${each} each)` : unit;
}

function anyOf(names: readonly string[]): string {
  return names.length > 1 ? `${names.slice(0, -1).join(', ')} or ${names.at(-1)}` : names[0]!;
}
