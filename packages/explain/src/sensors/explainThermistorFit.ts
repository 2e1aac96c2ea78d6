import { fitThermistor, type ThermistorPoint } from '@truesweep/core';
import { workingRules as rules, fitWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, power, product, quotient, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';

/**
 * A thermistor's law through two measured points (one B) or three (Steinhart and Hart's coefficients).
 *
 * @param points Two or three.
 * @returns The answer is B, K, of two points; of three the coefficient a, per K, after c and b.
 * @throws InputError as `fitThermistor` does; `no-working` for more points, which a least squares fit takes.
 *
 * @example
 * const points = [{ temperature: 25, ohms: 10_000 }, { temperature: 85, ohms: 1070 }];
 * explainThermistorFit(points).answer.value // => ≈ 3977.514
 */
export function explainThermistorFit(points: readonly ThermistorPoint[]): Working {
  fitThermistor(points);
  if (points.length > 3) refuseWorking('points', 'are more than three');
  return workOut(words.title, (sheet) => {
    sheet.give({ symbol: 'T_0', meaning: words.zero, value: 273.15, unit: 'K' });
    for (const [i, { temperature, ohms }] of points.entries()) {
      const [t, kelvins, number] = [`t_${i + 1}`, `T_${i + 1}`, i + 1];
      sheet.give({ symbol: t, meaning: words.temperature(number), value: temperature, unit: '°C' });
      sheet.give({ symbol: `R_${number}`, meaning: words.ohms(number), value: ohms, unit: 'Ω' });
      sheet.find({
        symbol: kelvins,
        meaning: words.kelvins(number),
        unit: 'K',
        formula: sum(t, 'T_0'),
        rule: rules.celsius,
      });
    }
    if (points.length === 2) findB(sheet);
    else findCoefficients(sheet);
    return {};
  });
}

function findB(sheet: Sheet): void {
  sheet.find({
    symbol: 'B',
    meaning: words.b,
    unit: 'K',
    formula: quotient(
      call('ln', quotient('R_1', 'R_2')),
      difference(quotient(1, 'T_1'), quotient(1, 'T_2')),
    ),
    rule: rules.thermistorB,
  });
}

/** The three equations solved by divided differences. */
function findCoefficients(sheet: Sheet): void {
  sheet.give({ symbol: 'R_Ω', meaning: words.unit, value: 1, unit: 'Ω' });
  const find = (
    symbol: string,
    meaning: string,
    unit: '1' | '1/K',
    formula: ReturnType<typeof sum>,
  ) => sheet.find({ symbol, meaning, unit, formula, rule: rules.steinhartHart });
  for (const i of [1, 2, 3]) {
    find(`l_${i}`, words.logarithm(i), '1', call('ln', quotient(`R_${i}`, 'R_Ω')));
    find(`y_${i}`, words.inverse(i), '1/K', quotient(1, `T_${i}`));
  }
  for (const i of [2, 3])
    find(
      `g_${i}`,
      words.slope(i),
      '1/K',
      quotient(difference(`y_${i}`, 'y_1'), difference(`l_${i}`, 'l_1')),
    );
  find(
    'c',
    words.c,
    '1/K',
    quotient(
      quotient(difference('g_3', 'g_2'), difference('l_3', 'l_2')),
      sum('l_1', 'l_2', 'l_3'),
    ),
  );
  find(
    'b',
    words.second,
    '1/K',
    difference('g_2', product('c', sum(power('l_1', 2), product('l_1', 'l_2'), power('l_2', 2)))),
  );
  find(
    'a',
    words.first,
    '1/K',
    difference('y_1', product('b', 'l_1'), product('c', power('l_1', 3))),
  );
}
