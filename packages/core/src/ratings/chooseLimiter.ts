import { bisection } from '../bisection.js';
import { checkCircuit } from '../circuit/checkCircuit.js';
import { type Circuit, positionAt } from '../circuit/circuit.js';
import { isDetermined } from '../circuit/determined.js';
import { InputError } from '../errors.js';
import { outputFunction } from '../expectation/outputFunction.js';
import { checkFields, type FieldRules } from '../fields.js';
import { between } from '../guard.js';
import { type PreferredRounding, preferredValue, roundings } from '../quantity/preferredValue.js';
import { type PreferredSeries, seriesNames } from '../quantity/preferredValues.js';
import type { Fraction, Ohms, Volts, Watts } from '../units.js';
import { checkRatings, checkRatingValues, type RatingChecks } from './checkRatings.js';
import type { RatingCheck } from './compareRating.js';
import type { Ratings } from './ratings.js';
import { type Mistake, mistakes, someVolts, withMistake } from './wrongConnections.js';

/** What the limiter is wanted to leave and to be. */
export interface LimiterWish {
  /** IEC 60063 series to choose from; E24 when left out. */
  readonly series?: PreferredSeries;
  /** How the smallest value is rounded to the series; `up` when left out, the only one that surely protects. */
  readonly rounding?: PreferredRounding;
  /** Fraction of the span without a limiter that must remain, 0 to 1; no such wish when left out. */
  readonly span?: Fraction;
  /** Another source voltage whose heat in the limiter is told too, V, above 0; none when left out. */
  readonly otherSource?: Volts;
}

/** What decides a limiter: the mistake, the part, and by how much it misses or just keeps its rating. */
export interface Binding {
  /** Under which mistake. */
  readonly mistake: Mistake;
  /** Which part. */
  readonly part: keyof RatingChecks;
  /** Its worst case beside its rating. */
  readonly check: RatingCheck;
  /** Value over the rating that it is held to, a ratio without unit; left out where the value is unbounded. */
  readonly ratio?: number;
}

/** What a limiter costs. */
export interface LimiterPrice {
  /** Fraction of the span without it that is lost, 0 to 1. */
  readonly spanLost: Fraction;
  /** At mid-travel with the limiter, V per unit of the wiper's position; any. */
  readonly sensitivity: number;
  /** The same without the limiter, V per unit of the wiper's position; any. */
  readonly sensitivityWithout: number;
  /** By how much the instrument's noise grows against the span: a ratio, 1 or more. */
  readonly noiseGrowth: number;
}

/** A chosen limiter. */
export interface LimiterChoice {
  /** Whether the wish for a span is kept as well. */
  readonly kind: 'chosen' | 'span-too-small';
  /** The smallest resistance that keeps every given rating, Ω; 0 where none binds. */
  readonly smallest: Ohms;
  /** The preferred value, Ω, 0 or more. */
  readonly preferred: Ohms;
  /** Whether the preferred value itself keeps every given rating. */
  readonly keepsRatings: boolean;
  /** What keeps it from being smaller; left out where nothing does. */
  readonly binding?: Binding;
  /**
   * Where the span is too small, and only there: what is over its rating, and by how much, with the largest limiter, Ω, 0 or more, that
   * leaves the span.
   */
  readonly overAtSpan?: { readonly limiter: Ohms; readonly binding: Binding };
  /** Worst heat in the preferred value under any of the mistakes, W. */
  readonly heat: Watts;
  /** The same on the other source voltage, W, 0 or more; left out where none was named. */
  readonly heatOnOtherSource?: Watts;
  /** The usual power rating above that heat, W; left out beyond 10 W. */
  readonly powerRating?: Watts;
  /** What the preferred value costs. */
  readonly price: LimiterPrice;
  /** Ratings that were not given, so that nothing was judged by them. */
  readonly notGiven: readonly (keyof RatingChecks)[];
  /** Mistakes that no limiter in the supply lead protects from. */
  readonly notProtected: readonly Mistake[];
}

/** No limiter keeps the ratings: the part that stays over its rating, whatever the resistance. */
export interface NoLimiter {
  readonly kind: 'impossible';
  /** What stays over its rating. */
  readonly binding: Binding;
}

const wishRules: FieldRules = {
  'series?': seriesNames,
  'rounding?': roundings,
  'span?': between(0, 1),
  'otherSource?': someVolts,
};

/** Less than this is no span, V. */
const leastSpan = 1e-9;

/** Beyond this no limiter is looked for. */
const largest: Ohms = 1e6;
/** Usual power ratings of resistors, W (common practice, no source). */
const usualPowers: readonly Watts[] = [0.125, 0.25, 0.5, 1, 2, 3, 5, 10];

/**
 * Chooses the limiter: the smallest resistance with which, at the planned source voltage, no wrong connection
 * takes a part over its short-term rating and normal use keeps the continuous ones; then the preferred value.
 *
 * Method: the worst case over all wiper positions falls as the limiter rises, so the border is bisected.
 *
 * @param circuit The right hook-up; its own limiter is left out of account.
 * @param ratings What track, wiper and source may bear; a rating not given is not judged.
 * @throws InputError for a wrong circuit, rating or wish.
 *
 * @example
 * const bench = { source: { volts: 5 }, limiter: 0, sensor: { track: 5000 }, load: { pullDown: 10e6 } };
 * const choice = chooseLimiter(bench, { wiper: { amps: 0.001, shortTerm: 0.01 } });
 * choice.smallest.toFixed(3) // => '500.000'
 * choice.preferred // => 510
 * choice.price.spanLost.toFixed(3) // => '0.093'
 */
export function chooseLimiter(
  circuit: Circuit,
  ratings: Ratings,
  wish: LimiterWish = {},
): LimiterChoice | NoLimiter {
  checkCircuit(circuit);
  checkRatingValues(ratings);
  checkFields(wish, 'wish', wishRules);
  const { connection: _, faults: __, ...right } = circuit;
  if (spanOf({ ...right, limiter: 0 }) < leastSpan) {
    throw new InputError(
      'no-span',
      'circuit',
      'Without a limiter the readings at both stops are equal; give a circuit that feeds a sensor that moves.',
    );
  }
  const found = smallestLimiter(right, ratings);
  if ('stuck' in found) return { kind: 'impossible', binding: found.stuck };
  const { border, deciding } = found;
  const series = wish.series ?? 'E24';
  const preferred = preferredValue(Math.max(border, 1), series, wish.rounding ?? 'up');
  const chosen = { ...right, limiter: preferred };
  const price = priceOf(right, preferred);
  const binding =
    border > 0 ? tightest(bindingsOf({ ...right, limiter: border }, ratings, deciding)) : undefined;
  const heat = worstHeat(chosen);
  const powerRating = usualPowers.find((watts) => watts >= heat);
  const tooSmall = 1 - price.spanLost < (wish.span ?? 0);
  return {
    kind: tooSmall ? 'span-too-small' : 'chosen',
    smallest: border,
    preferred,
    keepsRatings: !bindingsOf(chosen, ratings, deciding).some(isOver),
    ...(binding && { binding }),
    ...(tooSmall && overAtSpan(right, ratings, wish.span!)),
    heat,
    ...(wish.otherSource !== undefined && {
      heatOnOtherSource: worstHeat({
        ...chosen,
        source: { ...right.source, volts: wish.otherSource },
      }),
    }),
    ...(powerRating !== undefined && { powerRating }),
    price,
    notGiven: (['track', 'wiper', 'source'] as const).filter((part) => !ratings[part]),
    notProtected: [bypass],
  };
}

/** The signal lead on the source's plus: the limiter is not in that way. */
const bypass: Mistake = { kind: 'shorted-signal', to: 'source' };

function protectedMistakes(): readonly Mistake[] {
  return mistakes().filter(
    (mistake) => !(mistake.kind === 'shorted-signal' && mistake.to === 'source'),
  );
}

/** The smallest limiter with the mistakes that decide it, or what stays over its rating whatever the limiter. */
type Smallest =
  | { readonly border: Ohms; readonly deciding: readonly Mistake[] }
  | { readonly stuck: Binding };

/** Bisects the border; what stays over its rating at the largest limiter can't be helped by one. */
function smallestLimiter(right: Circuit, ratings: Ratings): Smallest {
  const overAt = (limiter: Ohms, among: readonly Mistake[]): readonly Binding[] =>
    bindingsOf({ ...right, limiter }, ratings, among).filter(isOver);
  let over = overAt(0, protectedMistakes());
  if (over.length === 0) return { border: 0, deciding: [] };
  const mistakesOf = (bindings: readonly Binding[]) => [
    ...new Set(bindings.map(({ mistake }) => mistake)),
  ];
  const [stuck] = overAt(largest, mistakesOf(over));
  if (stuck) return { stuck };
  // Even steps of the logarithm, beginning at 0 Ω.
  const limiterAt = (part: number): Ohms => Math.expm1(part * Math.log1p(largest));
  const staysOver = (part: number): boolean => {
    // What keeps its ratings with one limiter keeps them with every larger one: only the others are asked again.
    const still = overAt(limiterAt(part), mistakesOf(over));
    if (still.length > 0) over = still;
    return still.length > 0;
  };
  const [, high] = bisection(staysOver, 0, 1, 1e-10);
  return { border: limiterAt(high), deciding: mistakesOf(over) };
}

/** The largest limiter that leaves a span, and what is worst over its rating then. */
function overAtSpan(
  right: Circuit,
  ratings: Ratings,
  span: Fraction,
): Pick<LimiterChoice, 'overAtSpan'> {
  const leaves = (at: Ohms): boolean => 1 - priceOf(right, at).spanLost >= span;
  const [limiter] = bisection(leaves, 0, largest, 1e-9);
  const binding = tightest(bindingsOf({ ...right, limiter }, ratings, protectedMistakes()));
  return binding && binding.ratio! > 1 ? { overAtSpan: { limiter, binding } } : {};
}

/** Each part under each mistake beside its rating. */
function bindingsOf(
  circuit: Circuit,
  ratings: Ratings,
  among: readonly Mistake[],
): readonly Binding[] {
  return among.flatMap((mistake) => {
    const checks = checkRatings(withMistake(circuit, mistake), ratings);
    return (['track', 'wiper', 'source'] as const).map((part) => {
      const check = checks[part];
      const limit = mistake.kind === 'none' ? check.continuous : check.shortTerm;
      const known = limit !== undefined && isDetermined(check.value);
      return { mistake, part, check, ...(known && { ratio: (check.value as number) / limit }) };
    });
  });
}

/** Normal use is held to the continuous ratings, a mistake to the short-term ones. */
function isOver({ mistake, check: { outcome } }: Binding): boolean {
  // `over-continuous` and `within-short-term` are over a continuous rating.
  return outcome === 'over' || (mistake.kind === 'none' && /^(over|within)-/.test(outcome));
}

/** The mistake and part that comes nearest to its rating. */
function tightest(bindings: readonly Binding[]): Binding | undefined {
  let nearest: Binding | undefined;
  for (const binding of bindings) {
    if ((binding.ratio ?? 0) > (nearest?.ratio ?? 0)) nearest = binding;
  }
  return nearest;
}

function worstHeat(circuit: Circuit): Watts {
  let most = 0;
  for (const mistake of protectedMistakes()) {
    const { value } = checkRatings(withMistake(circuit, mistake), {}).limiter;
    if (isDetermined(value)) most = Math.max(most, value);
  }
  return most;
}

/** How far the readings at both stops lie apart, V. */
function spanOf(circuit: Circuit): Volts {
  const output = outputFunction(circuit);
  return Math.abs(output(positionAt(circuit.sensor, 1)) - output(positionAt(circuit.sensor, 0)));
}

function priceOf(right: Circuit, limiter: Ohms): LimiterPrice {
  const slope = (at: Circuit): number => {
    const output = outputFunction(at);
    const middle = positionAt(at.sensor, 0.5);
    const [above, below] = [Math.min(1, middle + 1e-4), Math.max(0, middle - 1e-4)];
    return (output(above) - output(below)) / (above - below);
  };
  const [without, limited] = [
    { ...right, limiter: 0 },
    { ...right, limiter },
  ];
  const kept = spanOf(limited) / spanOf(without);
  return {
    spanLost: 1 - kept,
    sensitivity: slope(limited),
    sensitivityWithout: slope(without),
    noiseGrowth: 1 / kept,
  };
}
