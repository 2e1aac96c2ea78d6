import { coilCurrent, conductorConstant, type FedCoil } from '@truesweep/core';
import { workingRules as rules, coilWorkingWords as words } from '@truesweep/wording/working';
import { product, quotient, sum } from '../expression.js';
import type { WorkingUnit } from '../quantity.js';
import type { Working } from '../working.js';
import { workOut } from '../workOut.js';

/**
 * What flows in a coil at a temperature: its resistance grown with that, the current, and the heat.
 *
 * @param coil The coil, what feeds it, and how warm it is.
 * @returns The answer is the current, A, once it has risen.
 * @throws InputError as `coilCurrent` does.
 *
 * @example
 * explainCoil({ ohms: 4, volts: 12, temperature: 20 }).answer.value // => ≈ 3
 */
export function explainCoil(coil: FedCoil): Working {
  coilCurrent(coil);
  const { ohms, at = 20, conductor = { kind: 'copper' }, temperature, volts } = coil;
  return workOut(words.title, (sheet) => {
    const give = (symbol: keyof typeof words.given, value: number, unit: WorkingUnit) =>
      sheet.give({ symbol, meaning: words.given[symbol], value, unit });
    give('R_1', ohms, 'Ω');
    give('t_1', at, '°C');
    give('t', temperature, '°C');
    sheet.give(
      { symbol: 'k', meaning: words.given.k, value: conductorConstant(conductor), unit: '°C' },
      conductor.kind === 'conductivity' ? 'found' : undefined,
    );
    sheet.find({
      symbol: 'R',
      meaning: words.resistance,
      unit: 'Ω',
      formula: quotient(product('R_1', sum('k', 't')), sum('k', 't_1')),
      rule: rules.winding,
    });
    give('U', volts, 'V');
    sheet.find({
      symbol: 'I',
      meaning: words.current,
      unit: 'A',
      formula: quotient('U', 'R'),
      rule: rules.ohm,
    });
    sheet.find({
      symbol: 'P',
      meaning: words.heat,
      unit: 'W',
      formula: product('U', 'I'),
      rule: rules.joule,
    });
    return { answer: 'I' };
  });
}
