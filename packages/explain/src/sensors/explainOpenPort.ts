import {
  type PressureSensor,
  type PressureSource,
  pressureRatio,
  stationPressure,
  type Volts,
} from '@truesweep/core';
import { workingRules as rules, pressureWorkingWords as words } from '@truesweep/wording/working';
import { difference, power, product, quotient, sum } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import { refuseWorking } from '../refuseWorking.js';
import { whole } from '../whole.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { rowsAround } from './rowsAround.js';

/**
 * What a pressure sensor's output must be with its port open to the air: by what is known of the air's pressure, the sensor's line and the
 * measured supply.
 *
 * @param sensor The sensor; a gauge sensor's open port is at 0 Pa whatever the air's pressure is.
 * @param air What the air's pressure is known from: a barometer, an altimeter setting with the height, or the height alone.
 * @param supply The supply as measured at the sensor, V, above 0.
 * @returns The answer is the output, V.
 * @throws InputError as `stationPressure` and `pressureRatio` do; `no-working` for a supply that is no finite number above 0.
 *
 * @example
 * const response = { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15000, highest: 115000 } as const;
 * const air = { kind: 'altitude', altitude: 1000 } as const;
 * explainOpenPort({ reference: 'absolute', response }, air, 5).answer.value // => ≈ 3.569355
 */
export function explainOpenPort(
  sensor: PressureSensor,
  air: PressureSource,
  supply: Volts,
): Working {
  const { pressure } = stationPressure(air);
  const isGauge = whole(sensor, 'sensor', () => sensor.reference === 'gauge');
  pressureRatio(sensor, isGauge ? 0 : pressure);
  if (!(supply > 0 && supply < Infinity)) refuseWorking('supply', 'is no voltage above 0');
  return workOut(words.title, (sheet) => {
    if (isGauge) sheet.give({ symbol: 'p', meaning: words.gauge, value: 0, unit: 'Pa' });
    else findAir(sheet, air);
    findRatio(sheet, sensor, sheet.value('p'));
    sheet.give({ symbol: 'U_s', meaning: words.given.U_s, value: supply, unit: 'V' });
    sheet.find({
      symbol: 'V',
      meaning: words.output,
      unit: 'V',
      formula: product('U_s', 'r'),
      rule: rules.ratiometric,
    });
    const isByHeight = !isGauge && air.kind === 'altitude';
    return isByHeight ? { conclusion: words.weather } : {};
  });
}

type Given = readonly [symbol: keyof typeof words.given, value: number, unit: WorkingUnit];

function giveAll(sheet: Sheet, given: readonly Given[]): void {
  for (const [symbol, value, unit] of given)
    sheet.give({ symbol, meaning: words.given[symbol], value, unit });
}

function findAir(sheet: Sheet, air: PressureSource): void {
  if (air.kind === 'barometer') {
    giveAll(sheet, [['p', air.pressure, 'Pa']]);
    return;
  }
  giveAll(sheet, [
    ['H', air.altitude, 'm'],
    ['p_0', 101_325, 'Pa'],
    ['T_0', 288.15, 'K'],
    ['λ', 0.0065, 'K/m'],
    ['g', 9.80665, 'm/s²'],
    ['R_a', 287.05287, 'J/(kg·K)'],
  ]);
  sheet.find({
    symbol: 'n',
    meaning: words.exponent,
    unit: '1',
    formula: quotient('g', product('R_a', 'λ')),
    rule: rules.standardAtmosphere,
  });
  if (air.kind === 'altimeter-setting') giveAll(sheet, [['QNH', air.setting, 'Pa']]);
  const atSea = air.kind === 'altitude' ? 1 : power(quotient('QNH', 'p_0'), quotient(1, 'n'));
  sheet.find({
    symbol: 'f',
    meaning: words.fallen,
    unit: '1',
    formula: difference(atSea, quotient(product('λ', 'H'), 'T_0')),
    rule: rules.standardAtmosphere,
  });
  sheet.find({
    symbol: 'p',
    meaning: air.kind === 'altitude' ? words.pressure : words.station,
    unit: 'Pa',
    formula: product('p_0', power('f', 'n')),
    rule: rules.standardAtmosphere,
  });
}

function findRatio(sheet: Sheet, { response }: PressureSensor, pressure: number): void {
  const find = (formula: ReturnType<typeof sum>) =>
    sheet.find({ symbol: 'r', meaning: words.ratio, unit: '%', formula, rule: rules.straightLine });
  if (response.kind === 'line') {
    giveAll(sheet, [
      ['K_1', response.gain, '1/Pa'],
      ['K_2', response.offset, '%'],
    ]);
    find(sum(product('K_1', 'p'), 'K_2'));
    return;
  }
  const [one, two] = rowsAround(response.rows, (row) => row.pressure >= pressure);
  giveAll(sheet, [
    ['p_1', one.pressure, 'Pa'],
    ['r_1', one.ratio, '%'],
    ['p_2', two.pressure, 'Pa'],
    ['r_2', two.ratio, '%'],
  ]);
  const slope = quotient(difference('r_2', 'r_1'), difference('p_2', 'p_1'));
  find(sum('r_1', product(slope, difference('p', 'p_1'))));
}
