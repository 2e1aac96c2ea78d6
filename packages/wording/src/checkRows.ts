import { type Check, checkScore } from '@truesweep/core';
import { checkLabels, limitSourceLabels, outcomeLabels } from './checks.js';
import { formatAlike } from './formatAlike.js';
import { say } from './say.js';
import { limitsSentence, scoreLabels } from './scoreLabels.js';
import { whole } from './whole.js';

/**
 * The checks as rows of a table, its head first: what was measured, its limit, the margin, how it came out.
 *
 * @example
 * const departures = { check: 'departures', unit: 'count', measured: 2, highLimit: 0, margin: -2, outcome: 'fails', limitFrom: 'criteria' } as const;
 * checkRows([departures])[1] // => ['Departures', '2', '≤ 0', '−2', 'fails']
 */
export function checkRows(checks: readonly Check[]): readonly (readonly string[])[] {
  checkScore({ checks }, 'score', ['checks']);
  const { checks: title, measured, limit, margin, outcome } = scoreLabels;
  const head = [title, measured, limit, margin, outcome];
  return whole(checks, 'checks', () => [head, ...checks.map(row)]);
}

/**
 * Where the limits of the checks came from.
 *
 * @example
 * limitSources([]) // => 'Limits: all are criteria. ± is twice the standard uncertainty.'
 */
export function limitSources(checks: readonly Check[]): string {
  checkScore({ checks }, 'score', ['checks']);
  const limited = checks.filter(({ lowLimit, highLimit }) => (lowLimit ?? highLimit) !== undefined);
  const others = new Set(limited.map(({ limitFrom }) => limitFrom));
  others.delete('criteria');
  return whole(checks, 'checks', () => {
    const named = [...others].map((source) => ({
      source: limitSourceLabels[source],
      checks: limited
        .filter(({ limitFrom }) => limitFrom === source)
        .map(({ check }) => checkLabels[check].toLowerCase()),
    }));
    return limitsSentence(named);
  });
}

function row(check: Check): readonly string[] {
  const { measured, uncertainty, lowLimit, highLimit, margin } = check;
  const expanded = uncertainty === undefined ? undefined : 2 * uncertainty;
  const given = [measured, expanded, lowLimit, highLimit, margin];
  const [value, spread, low, high, distance] = written(given, check.unit);
  return [
    checkLabels[check.check],
    value && spread ? say`${value.number} ± ${spread.whole}` : (value?.whole ?? '–'),
    limitText(low, high),
    distance?.whole ?? '–',
    outcomeLabels[check.outcome],
  ];
}

function limitText(low: Written | undefined, high: Written | undefined): string {
  if (low && high) return say`${low.number}–${high.whole}`;
  if (high) return say`≤ ${high.whole}`;
  return low ? say`≥ ${low.whole}` : '–';
}

interface Written {
  readonly number: string;
  readonly whole: string;
}

/** The numbers of one check in one unit with equal decimals; undefined stays undefined. */
function written(
  values: readonly (number | undefined)[],
  unit: Check['unit'],
): readonly (Written | undefined)[] {
  if (unit === 'count') {
    return values.map((value) => {
      if (value === undefined) return undefined;
      const number = String(value).replace('-', '−');
      return { number, whole: number };
    });
  }
  const known = values.filter((value) => value !== undefined);
  const { numbers, unit: shown } = formatAlike(known, unit === '1' ? '%' : unit);
  let next = 0;
  return values.map((value) => {
    if (value === undefined) return undefined;
    const number = numbers[next++] ?? '';
    return { number, whole: say`${number} ${shown}` };
  });
}
