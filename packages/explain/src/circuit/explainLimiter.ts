import {
  type Binding,
  type Circuit,
  chooseLimiter,
  formatQuantity,
  type LimiterWish,
  type Ratings,
} from '@truesweep/core';
import { workingRules as rules, limiterWorkingWords as words } from '@truesweep/wording/working';
import { difference, type Expression, power, product, quotient, root, sum } from '../expression.js';
import { refuseWorking } from '../refuseWorking.js';
import type { Working } from '../working.js';
import { type Sheet, workOut } from '../workOut.js';
import { giveParts, unmarked } from './legs.js';
import { checkShort, checkStar, findBeyond, findStar, starOf } from './star.js';

/**
 * Why a limiting resistor is as large as it is: which mistake decides, which current its rating allows there, what that asks of the resistor,
 * and which preferred value follows.
 *
 * @param circuit The right hook-up of whole parts without a pull-up; its own limiter is left out of account.
 * @param ratings What track, wiper and source may bear.
 * @param wish As `chooseLimiter`'s.
 * @returns The answer is the smallest limiting resistor that keeps the ratings, Ω; the preferred value is held against it.
 * @throws InputError as `chooseLimiter` does; `no-working` where no rating asks for a limiter or none can keep it, and where a mistake decides
 * whose ways don't meet at the wiper.
 *
 * @example
 * const bench = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * explainLimiter(bench, { wiper: { amps: 0.001, shortTerm: 0.01 } }).answer.value // => ≈ 500
 */
export function explainLimiter(
  circuit: Circuit,
  ratings: Ratings,
  wish: LimiterWish = {},
): Working {
  const choice = chooseLimiter(circuit, ratings, wish);
  const bare: Circuit = { ...circuit, limiter: 0 };
  checkStar(bare);
  if (choice.kind === 'impossible') refuseWorking('ratings', words.impossible);
  const { binding = refuseWorking('ratings', words.noNeed), preferred } = choice;
  return workOut(words.title, (sheet) => {
    const share = findWays(sheet, bare, binding);
    const current = giveRating(sheet, binding);
    sheet.find({
      symbol: 'R_min',
      meaning: words.least,
      unit: 'Ω',
      formula: difference(
        quotient(share.share ? product(share.share, 'E') : 'E', current),
        ...(share.rest === undefined ? [] : [share.rest]),
      ),
      rule: rules.ohm,
    });
    sheet.give({
      symbol: 'R_s',
      meaning: words.preferred[wish.rounding ?? 'up'](wish.series ?? 'E24'),
      value: preferred,
      unit: 'Ω',
    });
    findHeat(sheet, share.inShort, choice.heat);
    const value = formatQuantity(preferred, 'Ω', { trim: true });
    const rating = choice.powerRating;
    const taken =
      rating === undefined
        ? words.does(value)
        : words.doesOfPower(value, formatQuantity(rating, 'W', { trim: true }));
    sheet.compare({
      finds: words.keeps,
      left: 'R_s',
      relation: '≥',
      right: 'R_min',
      so: (holds) =>
        !holds ? words.doesNot : choice.kind === 'span-too-small' ? words.leavesLess : taken,
      rule: rules.preferred,
    });
    return {
      answer: 'R_min',
      conclusion:
        binding.mistake.kind === 'none' ? words.normalUse : words.deciding(binding.mistake),
    };
  });
}

/** The heat where supply and ground touch, if that is the worst for the resistor, as it is where nothing else is in the way. */
function findHeat(sheet: Sheet, inShort: readonly string[], worst: number): void {
  const volts = sheet.value('E');
  const all = [...inShort, 'R_s'].reduce((sum, symbol) => sum + sheet.value(symbol), 0);
  const heat = (volts / all) ** 2 * sheet.value('R_s');
  if (Math.abs(heat - worst) > 1e-13 * worst) return;
  sheet.find({
    symbol: 'P_s',
    meaning: words.heat,
    unit: 'W',
    formula: product(power(quotient('E', sum(...inShort, 'R_s')), 2), 'R_s'),
    rule: rules.joule,
  });
}

interface Ways {
  /** The part of the source's current that the deciding part carries, where that is not all of it. */
  readonly share?: Expression;
  /** What is in the way besides the limiter; nothing where that is nothing. */
  readonly rest?: string;
  /** What is in the way besides the limiter where supply and ground touch. */
  readonly inShort: readonly string[];
}

/** Works out what is in the current's way besides the limiter under the mistake that decides, the wiper where it is worst. */
function findWays(sheet: Sheet, circuit: Circuit, { mistake, part, check }: Binding): Ways {
  const { source, leads = {} } = circuit;
  const inShort = [
    ...(source.ohms ? ['R_i'] : []),
    ...(leads.supply ? ['R_sup'] : []),
    ...(leads.ground ? ['R_gnd'] : []),
  ];
  if (mistake.kind === 'shorted-leads' && !mistake.leads.includes('signal')) {
    checkShort(circuit);
    giveParts(sheet, circuit, unmarked);
    return { inShort, ...withRest(sheet, inShort) };
  }
  const wired = starOf(mistake) ?? refuseWorking('ratings', words.elsewhere);
  const x = sheet.give(
    { symbol: 'x', meaning: words.place, value: check.position, unit: '%' },
    'found',
  );
  const star = findStar(sheet, circuit, wired, x);
  const beyond = findBeyond(sheet, star);
  const share = part === 'wiper' || part === 'track' ? star.carries[part] : undefined;
  return {
    inShort,
    ...(share && { share }),
    ...withRest(sheet, [...star.supply, beyond]),
  };
}

function withRest(sheet: Sheet, ways: readonly string[]): Pick<Ways, 'rest'> {
  if (ways.length === 0) return {};
  sheet.find({
    symbol: 'R_r',
    meaning: words.rest,
    unit: 'Ω',
    formula: sum(...ways),
    rule: rules.series,
  });
  return { rest: 'R_r' };
}

/** Gives the rating that decides; says the symbol of the current that it allows. */
function giveRating(sheet: Sheet, { mistake, part, check }: Binding): string {
  const isNormal = mistake.kind === 'none';
  const rating = (isNormal ? check.continuous : check.shortTerm)!;
  const isContinuous = rating === check.continuous;
  if (part !== 'track') {
    const named = part === 'wiper' ? 'wiper' : 'source';
    const meaning = (isContinuous ? words.continuousCurrent : words.maxCurrent)[named];
    return sheet.give({ symbol: 'I_max', meaning, value: rating, unit: 'A' });
  }
  sheet.give({ symbol: 'P_max', meaning: words.trackPower, value: rating, unit: 'W' });
  sheet.find({
    symbol: 'I_max',
    meaning: words.trackCurrent,
    unit: 'A',
    formula: root(quotient('P_max', 'R_t')),
    rule: rules.joule,
  });
  return 'I_max';
}
