import {
  type Circuit,
  checkFields,
  checkText,
  formatQuantity,
  type Mistake,
  operatingPoint,
  type Position,
} from '@truesweep/core';
import { workingRules as rules, mistakeWorkingWords as words } from '@truesweep/wording/working';
import { call, power, product, quotient, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { giveParts, unmarked } from './legs.js';
import { checkShort, checkStar, findBeyond, findStar, starOf } from './star.js';

/**
 * The currents and the heat that a wrong connection makes with the wiper at a place, each lead's way followed to where all meet.
 *
 * @param circuit The right hook-up of whole parts without a pull-up; SI units.
 * @param mistake The right connection, exchanged leads, the signal's far end on ground, or supply and ground leads that touch.
 * @param position Where the wiper stands: fraction of the track, 0 to 1.
 * @returns The answer is the heat of the track as if all of it carried the largest current in it, W; of leads that touch the limiter's, W, or without a limiter the current, A.
 * @throws InputError as `operatingPoint` does; `no-working` for other mistakes and circuits, and where nothing at all limits the current.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const connection = { supply: 'wiper', ground: 'bottom', signal: 'top' } as const;
 * explainMistake(circuit, { kind: 'exchanged-leads', connection }, 0.1).answer.value // => ≈ 0.05555185
 */
export function explainMistake(circuit: Circuit, mistake: Mistake, position: Position): Working {
  operatingPoint(circuit, position);
  checkStar(circuit);
  checkMistake(circuit, mistake, position);
  if (mistake.kind === 'shorted-leads' && !mistake.leads.includes('signal'))
    return workOut(words.titleAnywhere(mistake), (sheet) => {
      findShort(sheet, circuit);
      return { conclusion: words.through };
    });
  const wired = starOf(mistake);
  if (!wired || wired.signalTouches) refuseWorking('mistake.kind', `is ${mistake.kind}`);
  const title = words.title(mistake, formatQuantity(position, '%', { trim: true }));
  return workOut(title, (sheet) => {
    const x = sheet.give({ symbol: 'x', meaning: words.x, value: position, unit: '%' });
    const star = findStar(sheet, circuit, wired, x);
    const { connection } = wired;
    const beyond = findBeyond(sheet, star);
    const { ground, signal, limiter, track, load } = star;
    const all = [...(limiter === undefined ? [] : [limiter]), ...star.supply, beyond];
    if (all.every((symbol) => sheet.value(symbol) === 0))
      refuseWorking('circuit.limiter', 'is 0 Ω, and nothing else limits the current');
    const find = (symbol: string, meaning: string, formula: ReturnType<typeof sum>) =>
      sheet.find({ symbol, meaning, unit: 'A', formula, rule: rules.kirchhoff });
    sheet.find({
      symbol: 'I',
      meaning: words.sourceCurrent,
      unit: 'A',
      formula: quotient(star.source, sum(...all)),
      rule: rules.ohm,
    });
    const currents: Record<string, string> = { [connection.supply]: 'I', [connection.ground]: 'I' };
    if (signal !== undefined) {
      const both = sum(ground, signal);
      find('I_g', words.groundCurrent, quotient(product('I', signal), both));
      find('I_m', words.signalCurrent, quotient(product('I', ground), both));
      currents[connection.ground] = 'I_g';
      currents[connection.signal] = 'I_m';
      if (load !== undefined)
        sheet.find({
          symbol: 'V',
          meaning: words.output,
          unit: 'V',
          formula: product('I_m', load),
          rule: rules.ohm,
        });
    }
    if (limiter !== undefined) findLimiterHeat(sheet, limiter, 'I');
    const inTrack = ['top', 'bottom'].flatMap((terminal) => currents[terminal] ?? []);
    const same = [...new Set(inTrack)];
    sheet.find({
      symbol: 'I_t',
      meaning: words.trackCurrent,
      unit: 'A',
      formula: same.length > 1 ? call('max', ...same) : sum(...same),
      rule: rules.comparison,
    });
    sheet.find({
      symbol: 'P_t',
      meaning: words.trackHeat,
      unit: 'W',
      formula: product(power('I_t', 2), track),
      rule: rules.joule,
    });
    const lead = (['supply', 'ground', 'signal'] as const).find(
      (one) => connection[one] === 'wiper',
    )!;
    // A signal lead without a load carries nothing.
    return currents.wiper === undefined ? {} : { conclusion: words.wiperCurrent(lead) };
  });
}

/** Refuses what is no mistake, by path. */
function checkMistake(circuit: Circuit, mistake: Mistake, position: Position): void {
  checkFields(mistake, 'mistake', {
    kind: checkText,
    ...Object.fromEntries(
      ['connection', 'lead', 'leads', 'terminals', 'to', 'position', 'from', 'volts'].map(
        (name) => [`${name}?`, () => {}],
      ),
    ),
  });
  if (mistake.kind === 'none') return;
  const wrong =
    mistake.kind === 'exchanged-leads' ? { connection: mistake.connection } : { faults: [mistake] };
  operatingPoint({ ...circuit, ...wrong }, position);
}

function findLimiterHeat(sheet: Sheet, limiter: string, current: string): void {
  sheet.find({
    symbol: 'P_s',
    meaning: words.limiterHeat,
    unit: 'W',
    formula: product(power(current, 2), limiter),
    rule: rules.joule,
  });
}

/** Supply and ground leads that touch at the sensor. */
function findShort(sheet: Sheet, circuit: Circuit): void {
  checkShort(circuit);
  const { source, above, below } = giveParts(sheet, circuit, unmarked);
  const ways = [...above, ...below].filter((symbol) => /^R_(i|s|sup|gnd)$/.test(symbol));
  if (ways.length === 0)
    refuseWorking('circuit.limiter', 'is 0 Ω, and nothing else limits the current');
  sheet.find({
    symbol: 'I',
    meaning: words.shortCurrent,
    unit: 'A',
    formula: quotient(source, sum(...ways)),
    rule: rules.ohm,
  });
  if (ways.includes('R_s')) findLimiterHeat(sheet, 'R_s', 'I');
}
