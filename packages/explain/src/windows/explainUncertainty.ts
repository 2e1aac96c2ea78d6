import {
  type Circuit,
  formatQuantity,
  outputUncertainty,
  positionAt,
  type Tolerances,
  type Travel,
} from '@truesweep/core';
import { workingRules as rules, budgetWorkingWords as words } from '@truesweep/wording/working';
import {
  checkLegs,
  findLegs,
  giveParts,
  type LegSymbols,
  pulledFrom,
  unmarked,
} from '../circuit/legs.js';
import { findOutput } from '../circuit/output.js';
import {
  call,
  difference,
  type Expression,
  negative,
  power,
  product,
  quotient,
  root,
  sum,
} from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { addedBy, checkOwnPullUp, shareOf, toleranceOf, tolerantParts } from './tolerances.js';

/**
 * How uncertain the expected reading is for the parts' tolerances: how the reading answers to each part, what each adds, and all of it together.
 *
 * @param circuit The right connection of whole parts; SI units.
 * @param tolerances Fractions of the nominal values, at least one above 0.
 * @param travel 0 closed to 1 open.
 * @returns The answer is the standard uncertainty, V.
 * @throws InputError as `outputUncertainty` does; `no-working` without any tolerance, and for a circuit whose ways don't all meet at the wiper.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: {} };
 * explainUncertainty(circuit, { source: 0.02, openPosition: 0.01 }, 1).answer.value // => ≈ 0.0645497
 */
export function explainUncertainty(
  circuit: Circuit,
  tolerances: Tolerances,
  travel: Travel,
): Working {
  outputUncertainty(circuit, tolerances, travel);
  checkLegs(circuit, 'circuit');
  checkOwnPullUp(circuit);
  const { closedPosition = 0, openPosition = 0 } = tolerances;
  const tolerant = tolerantParts(circuit, tolerances);
  const shares = [
    ['closedPosition', 'x_c', closedPosition, 1 - travel],
    ['openPosition', 'x_o', openPosition, travel],
  ] as const;
  const stops = shares.filter(([, , width, share]) => width * share > 0);
  if (tolerant.length + stops.length === 0) refuseWorking('tolerances', 'are all 0');
  return workOut(words.title(formatQuantity(travel, '%', { trim: true })), (sheet) => {
    const parts = giveParts(sheet, circuit, unmarked);
    const x = sheet.give({
      symbol: 'x',
      meaning: words.x,
      value: positionAt(circuit.sensor, travel),
      unit: '%',
    });
    for (const { name, symbol, tolerance } of tolerant)
      sheet.give({
        symbol: toleranceOf(symbol),
        meaning: words.halfWidth(name),
        value: tolerance,
        unit: '%',
      });
    for (const [name, symbol, width, share] of stops) {
      sheet.give({
        symbol: toleranceOf(symbol),
        meaning: words.halfWidth(name),
        value: width,
        unit: '%',
      });
      sheet.give({
        symbol: shareOf(symbol),
        meaning: words.shareOf(name),
        value: share,
        unit: '%',
      });
    }
    const legs = findLegs(sheet, parts, x, unmarked);
    findOutput(sheet, legs, 'thevenin', unmarked);
    const answers = findAnswers(sheet, legs, parts, x);
    const add = (name: keyof typeof words.parts, symbol: string, reach: Expression) => {
      const added = addedBy(symbol);
      sheet.find({
        symbol: added,
        meaning: words.adds(name),
        unit: 'V',
        formula: quotient(call('abs', reach), root(3)),
        rule: rules.rectangular,
      });
      return { name: words.parts[name], symbols: [added] };
    };
    const rows = [
      ...tolerant.map(({ name, symbol }) =>
        add(name, symbol, product(answers(symbol), toleranceOf(symbol), symbol)),
      ),
      ...stops.map(([name, symbol]) =>
        add(name, symbol, product(answers('x'), toleranceOf(symbol), shareOf(symbol))),
      ),
    ];
    sheet.table({ finds: words.budget, columns: words.columns, rows, rule: rules.rectangular });
    sheet.find({
      symbol: 'u',
      meaning: words.combined,
      unit: 'V',
      formula: root(sum(...rows.map(({ symbols: [added] }) => power(added!, 2)))),
      rule: rules.rootSumOfSquares,
    });
    return {};
  });
}

/** How the reading answers to the legs, found on the sheet; gives how it answers to a part. */
function findAnswers(
  sheet: Sheet,
  { source, up, down, track, load }: LegSymbols,
  parts: ReturnType<typeof giveParts>,
  x: string,
): (symbol: string) => Expression {
  const both = sum(up, down);
  const bare = load ? 'V_0' : 'V';
  const find = (symbol: string, meaning: string, unit: 'V/Ω' | '1', formula: Expression): void => {
    sheet.find({ symbol, meaning, unit, formula, rule: rules.derivative });
  };
  if (load) {
    find('k', words.share, '1', quotient(load.ohms, sum('R_w', load.ohms)));
    find('k_w', words.answersSignal, 'V/Ω', quotient(pulledFrom('V', load), sum('R_w', load.ohms)));
  }
  const [up2, down2] = [quotient(negative(bare), both), quotient(difference(source, bare), both)];
  const through = (direct: Expression, other: string): Expression =>
    load ? sum(product('k', direct), product('k_w', power(quotient(other, both), 2))) : direct;
  find('k_u', words.answersUp, 'V/Ω', through(up2, down));
  find('k_d', words.answersDown, 'V/Ω', through(down2, up));
  const { pullUp, pullDown } = parts;
  if (load) {
    find('k_L', words.answersLoad, 'V/Ω', quotient(difference(bare, 'V'), sum('R_w', load.ohms)));
    if (load.volts !== undefined)
      find('k_E', words.answersLoadVolts, '1', quotient('R_w', sum('R_w', load.ohms)));
  }
  return (symbol) => {
    if (symbol === 'x') return product(track, difference('k_d', 'k_u'));
    if (symbol === source) {
      const direct = quotient(down, both);
      return load ? product('k', direct) : direct;
    }
    if (symbol === track) return sum(product(difference(1, x), 'k_u'), product(x, 'k_d'));
    if (parts.above.includes(symbol)) return sum('k_u');
    if (parts.below.includes(symbol)) return sum('k_d');
    if (parts.signal.includes(symbol)) return load ? sum('k_w') : product(0, 'k_d');
    if (symbol === load?.ohms) return sum('k_L');
    if (symbol === load?.volts) return sum('k_E');
    // Pull-up and pull-down together are the load.
    const [ohms, volts] = [pullUp!.ohms, pullUp!.volts];
    const pair = sum(ohms, pullDown!);
    if (symbol === volts) return product('k_E', quotient(pullDown!, pair));
    const ofOhms = product('k_L', power(quotient(load!.ohms, symbol), 2));
    return symbol === ohms
      ? difference(ofOhms, product('k_E', quotient('E_L', pair)))
      : sum(ofOhms, product('k_E', quotient(product(volts, ohms), power(pair, 2))));
  };
}
