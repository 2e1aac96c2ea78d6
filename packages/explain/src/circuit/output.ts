import { workingRules as rules, circuitWorkingWords as words } from '@truesweep/wording/working';
import { product, quotient, sum } from '../expression.js';
import type { Sheet } from '../workOut.js';
import type { LegSymbols, Marks } from './legs.js';

/** Which theorem a reading is worked out by. */
export type CircuitMethod = 'thevenin' | 'millman';

/**
 * Works out the reading from the legs that meet at the wiper; says the reading's symbol. A leg without resistance has no conductance: then
 * the whole hook-up is taken as one source, whichever way was asked for.
 */
export function findOutput(
  sheet: Sheet,
  legs: LegSymbols,
  method: CircuitMethod,
  marks: Marks,
  output = marks.of('V'),
): string {
  const { up, down, load, signal } = legs;
  const hasConductances = sheet.value(up) > 0 && sheet.value(down) > 0;
  const isMillman = method === 'millman' && hasConductances && load;
  if (isMillman) byMillman(sheet, legs, load, signal, marks, output);
  else byThevenin(sheet, legs, marks, output);
  return output;
}

function byThevenin(sheet: Sheet, legs: LegSymbols, { of, meaning }: Marks, output: string): void {
  const { source, up, down, signal, load } = legs;
  const unloaded = quotient(product(source, down), sum(up, down));
  if (!load) {
    sheet.find({
      symbol: output,
      meaning: meaning(words.finds.V),
      unit: 'V',
      formula: unloaded,
      rule: rules.divider,
    });
    return;
  }
  const [bare, seen] = [of('V_0'), of('R_w')];
  sheet.find({
    symbol: bare,
    meaning: meaning(words.finds.V_0),
    unit: 'V',
    formula: unloaded,
    rule: rules.divider,
  });
  const side = quotient(product(up, down), sum(up, down));
  sheet.find({
    symbol: seen,
    meaning: meaning(signal === undefined ? words.finds.R_side : words.finds.R_w),
    unit: 'Ω',
    formula: signal === undefined ? side : sum(side, signal),
    rule: rules.thevenin,
  });
  const all = sum(seen, load.ohms);
  sheet.find({
    symbol: output,
    meaning: meaning(words.finds.V),
    unit: 'V',
    formula:
      load.volts === undefined
        ? quotient(product(bare, load.ohms), all)
        : quotient(sum(product(bare, load.ohms), product(load.volts, seen)), all),
    rule: rules.thevenin,
  });
}

function byMillman(
  sheet: Sheet,
  { source, up, down }: LegSymbols,
  load: NonNullable<LegSymbols['load']>,
  signal: string | undefined,
  { of, meaning }: Marks,
  output: string,
): void {
  const third = signal === undefined ? sum(load.ohms) : sum(signal, load.ohms);
  const place = signal === undefined ? output : of('V_p');
  const fed = [quotient(source, up), ...(load.volts ? [quotient(load.volts, third)] : [])];
  sheet.find({
    symbol: place,
    meaning: meaning(signal === undefined ? words.finds.V : words.finds.V_p),
    unit: 'V',
    formula: quotient(sum(...fed), sum(quotient(1, up), quotient(1, down), quotient(1, third))),
    rule: rules.millman,
  });
  if (signal === undefined) return;
  sheet.find({
    symbol: output,
    meaning: meaning(words.finds.V),
    unit: 'V',
    formula:
      load.volts === undefined
        ? quotient(product(place, load.ohms), third)
        : quotient(sum(product(place, load.ohms), product(load.volts, signal)), third),
    rule: rules.divider,
  });
}
