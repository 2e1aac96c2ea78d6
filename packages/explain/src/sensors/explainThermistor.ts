import {
  type Celsius,
  dividerVolts,
  formatMeasure,
  type PullUpDivider,
  resistanceAt,
  type ThermistorLaw,
} from '@truesweep/core';
import { workingRules as rules, thermistorWorkingWords as words } from '@truesweep/wording/working';
import { call, difference, power, product, quotient, sum } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { rowsAround } from './rowsAround.js';

/**
 * The voltage across a thermistor on its pull-up: from the temperature by the law to the resistance, from there by the divider.
 *
 * @param divider What feeds it, and the meter beside it; `undefined` for the resistance alone.
 * @param law The sensor's law.
 * @param temperature °C, within the range of the law.
 * @returns The answer is the voltage, V; without a divider the resistance, Ω. Of Steinhart and Hart's law the resistance is found by the library and held against the law.
 * @throws InputError as `resistanceAt` and `dividerVolts` do.
 *
 * @example
 * const law = { kind: 'b', b: 3640, ohms: 2044, from: 20, to: 100 } as const;
 * explainThermistor({ supply: 5, pullUp: 1000 }, law, 20).answer.value // => ≈ 3.357424
 */
export function explainThermistor(
  divider: PullUpDivider | undefined,
  law: ThermistorLaw,
  temperature: Celsius,
): Working {
  const ohms = resistanceAt(law, temperature);
  if (divider) dividerVolts(divider, ohms);
  const at = formatMeasure(temperature, '°C', 1);
  return workOut(divider ? words.title(at) : words.titleOhms(at), (sheet) => {
    const give = (symbol: keyof typeof words.given, value: number, unit: WorkingUnit) =>
      sheet.give({ symbol, meaning: words.given[symbol], value, unit });
    give('t', temperature, '°C');
    give('T_0', 273.15, 'K');
    findKelvins(sheet, 'T', 't', words.kelvin);
    if (law.kind === 'steinhart-hart') findByCoefficients(sheet, law, ohms);
    else findByB(sheet, law, temperature);
    if (!divider) return {};
    const { supply, pullUp, meter } = divider;
    give('U_s', supply, 'V');
    give('R_pu', pullUp, 'Ω');
    if (meter !== undefined) {
      give('R_m', meter, 'Ω');
      sheet.find({
        symbol: 'R_p',
        meaning: words.beside,
        unit: 'Ω',
        formula: quotient(product('R', 'R_m'), sum('R', 'R_m')),
        rule: rules.parallel,
      });
    }
    const below = meter === undefined ? 'R' : 'R_p';
    sheet.find({
      symbol: 'V',
      meaning: words.volts,
      unit: 'V',
      formula: quotient(product('U_s', below), sum('R_pu', below)),
      rule: rules.divider,
    });
    return {};
  });
}

function findKelvins(sheet: Sheet, symbol: string, celsius: string, meaning: string): void {
  sheet.find({ symbol, meaning, unit: 'K', formula: sum(celsius, 'T_0'), rule: rules.celsius });
}

/** By one B, or between two rows of a table, where the logarithm is a straight line over 1/T. */
function findByB(
  sheet: Sheet,
  law: Exclude<ThermistorLaw, { readonly kind: 'steinhart-hart' }>,
  temperature: Celsius,
): void {
  const give = (symbol: keyof typeof words.given, value: number, unit: WorkingUnit) =>
    sheet.give({ symbol, meaning: words.given[symbol], value, unit });
  if (law.kind === 'b') {
    give('B', law.b, 'K');
    give('R_1', law.ohms, 'Ω');
    give('t_1', law.from, '°C');
  } else {
    const [one, two] = rowsAround(law.rows, (row) => row.temperature >= temperature);
    give('t_1', one.temperature, '°C');
    give('R_1', one.ohms, 'Ω');
    give('t_2', two.temperature, '°C');
    give('R_2', two.ohms, 'Ω');
  }
  findKelvins(sheet, 'T_1', 't_1', words.kelvinOf(words.first));
  if (law.kind === 'table') {
    findKelvins(sheet, 'T_2', 't_2', words.kelvinOf(words.second));
    sheet.find({
      symbol: 'B',
      meaning: words.between,
      unit: 'K',
      formula: quotient(
        call('ln', quotient('R_2', 'R_1')),
        difference(quotient(1, 'T_2'), quotient(1, 'T_1')),
      ),
      rule: rules.thermistorTable,
    });
  }
  sheet.find({
    symbol: 'R',
    meaning: words.law,
    unit: 'Ω',
    formula: product(
      'R_1',
      call('exp', product('B', difference(quotient(1, 'T'), quotient(1, 'T_1')))),
    ),
    rule: law.kind === 'b' ? rules.thermistorB : rules.thermistorTable,
  });
}

/** By Steinhart and Hart's coefficients: the logarithm found is put into the law. */
function findByCoefficients(
  sheet: Sheet,
  { a, b, c }: Extract<ThermistorLaw, { readonly kind: 'steinhart-hart' }>,
  ohms: number,
): void {
  const coefficients = { a, b, c };
  for (const symbol of ['a', 'b', 'c'] as const)
    sheet.give({ symbol, meaning: words.given[symbol], value: coefficients[symbol], unit: '1/K' });
  sheet.give({ symbol: 'l', meaning: words.given.l, value: Math.log(ohms), unit: '1' }, 'found');
  sheet.find({
    symbol: 'y_T',
    meaning: words.inverse,
    unit: '1/K',
    formula: quotient(1, 'T'),
    rule: rules.steinhartHart,
  });
  sheet.find({
    symbol: 'y',
    meaning: words.byLaw,
    unit: '1/K',
    formula: sum('a', product('b', 'l'), product('c', power('l', 3))),
    rule: rules.steinhartHart,
  });
  sheet.compare({
    finds: words.met,
    left: 'y',
    relation: '≈',
    right: 'y_T',
    so: (holds) => (holds ? words.meets : words.meetsNot),
    rule: rules.steinhartHart,
  });
  sheet.give({ symbol: 'R_Ω', meaning: words.given.Ω, value: 1, unit: 'Ω' });
  sheet.find({
    symbol: 'R',
    meaning: words.law,
    unit: 'Ω',
    formula: product('R_Ω', call('exp', 'l')),
    rule: rules.steinhartHart,
  });
}
