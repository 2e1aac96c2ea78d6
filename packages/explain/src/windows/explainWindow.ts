import { type Circuit, expectedWindows, positionAt, type Tolerances } from '@truesweep/core';
import { workingRules as rules, windowWorkingWords as words } from '@truesweep/wording/working';
import { checkLegs, findLegs, giveParts, marked, unmarked } from '../circuit/legs.js';
import { findOutput } from '../circuit/output.js';
import { outputAt } from '../circuit/outputAt.js';
import { call, difference, type Expression, type Operand, product, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { usualDigits, writeQuantity } from '../writeQuantity.js';
import { checkOwnPullUp, type TolerantPart, toleranceOf, tolerantParts } from './tolerances.js';

/** A combination of ends of tolerances: for each part with one, and for the wiper's place, −1 or 1. */
interface Corner {
  readonly circuit: Circuit;
  readonly position: number;
  readonly signs: ReadonlyMap<string, number>;
}

/**
 * Between which readings a sound sensor's lies at a stop: at which ends of their tolerances the parts make the lowest and the highest one, and what
 * these are.
 *
 * @param circuit The right connection of whole parts; SI units.
 * @param tolerances Fractions of the nominal values.
 * @param stop At which stop.
 * @returns The answer is the highest reading, V; the lowest stands before it.
 * @throws InputError as `expectedWindows` does; `no-working` where an extreme lies between the ends of tolerances (a pull-up can bring that
 * about), and for a circuit whose ways don't all meet at the wiper.
 *
 * @example
 * const circuit = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000, closedPosition: 0.1 }, load: {} };
 * explainWindow(circuit, { closedPosition: 0.01 }, 'closed').answer.value // => ≈ 0.55
 */
export function explainWindow(
  circuit: Circuit,
  tolerances: Tolerances,
  stop: 'closed' | 'open',
): Working {
  const window = expectedWindows(circuit, tolerances)[stop];
  checkLegs(circuit, 'circuit');
  checkOwnPullUp(circuit);
  const travel = stop === 'closed' ? 0 : 1;
  const reach = tolerances[positionOf(stop)] ?? 0;
  const tolerant = tolerantParts(circuit, tolerances);
  const place = positionAt(circuit.sensor, travel);
  const found = cornersOf(circuit, tolerant, place, reach).map((corner) => ({
    ...corner,
    volts: outputAt(corner.circuit, corner.position),
  }));
  const lowest = found.reduce((least, one) => (one.volts < least.volts ? one : least));
  const highest = found.reduce((most, one) => (one.volts > most.volts ? one : most));
  const slack = 1e-13 * circuit.source.volts;
  if (lowest.volts - window.low > slack || window.high - highest.volts > slack)
    refuseWorking('circuit.load.pullUp', 'makes an extreme between the ends of the tolerances');
  return workOut(words.title(stop), (sheet) => {
    const parts = giveParts(sheet, circuit, unmarked);
    sheet.give({ symbol: 'x', meaning: words.place(stop), value: place, unit: '%' });
    for (const { name, symbol, tolerance } of tolerant)
      sheet.give({
        symbol: toleranceOf(symbol),
        meaning: words.tolerance(name),
        value: tolerance,
        unit: '%',
      });
    if (reach > 0)
      sheet.give({
        symbol: 't_x',
        meaning: words.tolerance(positionOf(stop)),
        value: reach,
        unit: '%',
      });
    const ends = (
      [
        ['lo', words.least, lowest],
        ['hi', words.most, highest],
      ] as const
    ).map(([mark, where, corner]) => findCorner(sheet, parts, stop, tolerant, corner, mark, where));
    const [low, high] = ends.map((value) => writeQuantity({ value, unit: 'V' }, usualDigits));
    return { conclusion: words.says(low!, high!) };
  });
}

/** All combinations of ends. */
function cornersOf(
  circuit: Circuit,
  tolerant: readonly (TolerantPart & { readonly tolerance: number })[],
  position: number,
  reach: number,
): readonly Corner[] {
  const places = reach > 0 ? [-1, 1] : [0];
  const begun = places.map((sign) => ({
    circuit,
    position: Math.min(1, Math.max(0, position + sign * reach)),
    signs: new Map([['x', sign]]),
  }));
  return tolerant.reduce<readonly Corner[]>(
    (corners, part) =>
      corners.flatMap((corner) =>
        [-1, 1].map((sign) => ({
          ...corner,
          circuit: part.withValue(
            corner.circuit,
            part.value(circuit)! * (1 + sign * part.tolerance),
          ),
          signs: new Map([...corner.signs, [part.symbol, sign]]),
        })),
      ),
    begun,
  );
}

/** Works out the reading at a corner; says it. */
function findCorner(
  sheet: Sheet,
  parts: ReturnType<typeof giveParts>,
  stop: 'closed' | 'open',
  tolerant: readonly TolerantPart[],
  { signs }: Corner,
  mark: string,
  where: string,
): number {
  const marks = marked(mark, where);
  const { of, meaning } = marks;
  const ends = new Map<string, string>();
  for (const { name, symbol, unit } of tolerant) {
    ends.set(symbol, of(symbol));
    sheet.find({
      symbol: of(symbol),
      meaning: meaning(words.atEnd(name)),
      unit,
      formula: product(symbol, shifted(1, signs.get(symbol)!, toleranceOf(symbol))),
      rule: rules.corners,
    });
  }
  const sign = signs.get('x')!;
  if (sign !== 0) {
    ends.set('x', of('x'));
    const moved = shifted('x', sign, 't_x');
    sheet.find({
      symbol: of('x'),
      meaning: meaning(words.atEnd(positionOf(stop))),
      unit: '%',
      formula: sign < 0 ? call('max', 0, moved) : call('min', 1, moved),
      rule: rules.corners,
    });
  }
  const at = (symbol: string): string => ends.get(symbol) ?? symbol;
  const legs = findLegs(
    sheet,
    {
      ...parts,
      source: at(parts.source),
      above: parts.above.map(at),
      track: at(parts.track),
      below: parts.below.map(at),
      signal: parts.signal.map(at),
      ...(parts.pullDown !== undefined && { pullDown: at(parts.pullDown) }),
      ...(parts.pullUp && {
        pullUp: { ohms: at(parts.pullUp.ohms), volts: at(parts.pullUp.volts) },
      }),
    },
    at('x'),
    marks,
  );
  return sheet.value(findOutput(sheet, legs, 'thevenin', marks));
}

function shifted(from: Operand, sign: number, by: string): Expression {
  return sign < 0 ? difference(from, by) : sum(from, by);
}

const positionOf = (stop: 'closed' | 'open') =>
  stop === 'closed' ? ('closedPosition' as const) : ('openPosition' as const);
