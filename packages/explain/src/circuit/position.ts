import {
  circuitWorkingWords,
  workingRules as rules,
  inverseWorkingWords as words,
} from '@truesweep/wording/working';
import { difference, negative, power, product, quotient, root, sum } from '../expression.js';
import type { Sheet } from '../workOut.js';
import { findLoad, findSignal, type giveParts, type Marks } from './legs.js';

/**
 * Works out from a reading where the wiper stands: the load's current follows from the reading, with it the voltage at the wiper's place, and
 * the currents there give a quadratic in the resistance below it. Says the symbol of the place.
 */
export function findPosition(
  sheet: Sheet,
  parts: ReturnType<typeof giveParts>,
  reading: string,
  marks: Marks,
): string {
  const { of, meaning } = marks;
  const { source, above, below, track, signal, pullDown, pullUp } = parts;
  const all = of('R');
  sheet.find({
    symbol: all,
    meaning: meaning(words.all),
    unit: 'Ω',
    formula: sum(...above, track, ...below),
    rule: rules.series,
  });
  const between = findSignal(sheet, signal, marks);
  const load = findLoad(sheet, pullDown, pullUp, marks);
  const down = of('R_d');
  const amps = load && findLoadCurrent(sheet, load, reading, marks);
  if (load && amps !== undefined && amps.value !== 0) {
    const place = between === undefined ? reading : of('V_p');
    if (between !== undefined) {
      sheet.find({
        symbol: place,
        meaning: meaning(circuitWorkingWords.finds.V_p),
        unit: 'V',
        formula: sum(reading, product(amps.symbol, between)),
        rule: rules.ohm,
      });
    }
    const half = of('U');
    const square = root(sum(power(half, 2), product(4, amps.symbol, place, all)));
    const rest = sheet.find({
      symbol: half,
      meaning: meaning(words.remainder),
      unit: 'V',
      formula: difference(source, product(amps.symbol, all)),
      rule: rules.ohm,
    });
    sheet.find({
      symbol: down,
      meaning: meaning(circuitWorkingWords.finds.R_d),
      unit: 'Ω',
      // Of the two ways to write the root the one that adds: the other would lose digits.
      formula:
        rest > 0
          ? quotient(product(2, place, all), sum(half, square))
          : quotient(difference(square, half), product(2, amps.symbol)),
      rule: rules.quadratic,
    });
  } else {
    sheet.find({
      symbol: down,
      meaning: meaning(circuitWorkingWords.finds.R_d),
      unit: 'Ω',
      formula: quotient(product(reading, all), source),
      rule: rules.divider,
    });
  }
  const x = of('x');
  sheet.find({
    symbol: x,
    meaning: meaning(words.place),
    unit: '%',
    formula: quotient(sum(down, ...below.map(negative)), track),
    rule: rules.series,
  });
  return x;
}

function findLoadCurrent(
  sheet: Sheet,
  load: { readonly ohms: string; readonly volts?: string },
  reading: string,
  { of, meaning }: Marks,
) {
  const symbol = of('I_L');
  const value = sheet.find({
    symbol,
    meaning: meaning(words.loadCurrent),
    unit: 'A',
    formula: quotient(
      load.volts === undefined ? { symbol: reading } : difference(reading, load.volts),
      load.ohms,
    ),
    rule: rules.ohm,
  });
  return { symbol, value };
}
