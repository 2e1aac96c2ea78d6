import { InputError } from './errors.js';
import { checkFields, type FieldRule } from './fields.js';
import { between, shown, wholeBetween } from './guard.js';
import type { Fraction, Seconds, Travel } from './units.js';

/**
 * The limits that a sweep is judged by, as data. Span is the difference between the expected closed and open
 * readings. All defaults are common practice without a published source unless said otherwise.
 */
export interface Criteria {
  /** Which set of limits this is; another number comes with other fields. Default: 1. */
  readonly version: 1;
  /** Chance of one false departure in a whole recording of noise, 0 to 1. Default: 0.5 %. */
  readonly falseDepartures: Fraction;
  /** A departure is visible from this many steps of the recorder's resolution on; above 0. Default: 3. */
  readonly visibleSteps: number;
  /** A departure is visible from this fraction of the span on; 0 to 1. Default: 1.5 %. */
  readonly visibleSpan: Fraction;
  /** A departure is visible from this many times the amplitude of mains ripple on; above 0. Default: 2.5. */
  readonly visibleRipple: number;
  /** The recording must leave `samplesInDropout` samples in a dropout of this length, s; above 0. Default: 0.015. */
  readonly dropout: Seconds;
  /** How many samples those are; a whole number, 1 or more. Default: 2. */
  readonly samplesInDropout: number;
  /** So many passes must have had a clean look at each tenth of the travel, either way; a whole number, 1 or more. Default: 1. */
  readonly looks: number;
  /** The recording must show departures of this fraction of the span; 0 to 1. Default: 5 %. */
  readonly coarsestVisible: Fraction;
  /** A departure of this fraction of the span or more is deep; 0 to 1. Default: 10 %. */
  readonly deepDeparture: Fraction;
  /** Departures this close in travel count as one place; 0 to 1. Default: 3 %. */
  readonly sameTravel: Travel;
  /** The recorded supply may stray by this fraction of itself; 0 to 1. Default: 5 %. */
  readonly supplyStray: Fraction;
  /**
   * Whether an end reading conforms anywhere inside its window (`simple`) or only where its expanded uncertainty U = 2u lies inside as
   * well (`guarded`); JCGM 106:2012, clause 8, from memory. Default: `simple`.
   */
  readonly endAcceptance: 'simple' | 'guarded';
  /** How far outside its window an end reading is still marginal, as a fraction of the span; 0 to 1. Default: 2.5 %. */
  readonly endMarginal: Fraction;
  /** Scatter of the closed reading that is normal, as a fraction of the span; 0 to 1. Default: 3 %. */
  readonly closedNormal: Fraction;
  /** Scatter of the closed reading that is still marginal, as a fraction of the span; from `closedNormal` to 1. Default: 7 %. */
  readonly closedMarginal: Fraction;
  /** Returns to the closed stop that are needed to judge its scatter; a whole number, 2 or more. Default: 3. */
  readonly returns: number;
}

/**
 * The limits that hold where a job names no others.
 *
 * @example
 * defaultCriteria.dropout // => 0.015
 */
export const defaultCriteria: Criteria = {
  version: 1,
  falseDepartures: 0.005,
  visibleSteps: 3,
  visibleSpan: 0.015,
  visibleRipple: 2.5,
  dropout: 0.015,
  samplesInDropout: 2,
  looks: 1,
  coarsestVisible: 0.05,
  deepDeparture: 0.1,
  sameTravel: 0.03,
  supplyStray: 0.05,
  endAcceptance: 'simple',
  endMarginal: 0.025,
  closedNormal: 0.03,
  closedMarginal: 0.07,
  returns: 3,
};

/** The criteria that are numbers. */
export type NumberCriterion = Exclude<keyof Criteria, 'version' | 'endAcceptance'>;

/**
 * The lowest and the highest value that each limit may have, in its own unit, both included. A fraction above the highest is most likely a
 * percentage, a time above it milliseconds; beyond the lowest the limit would let noise through or nothing at all.
 *
 * @example
 * criteriaBounds.dropout // => [0.0001, 1]
 */
export const criteriaBounds: Readonly<Record<NumberCriterion, readonly [number, number]>> = {
  falseDepartures: [1e-9, 0.1],
  visibleSteps: [0.1, 1000],
  visibleSpan: [0, 0.5],
  visibleRipple: [0.1, 1000],
  dropout: [1e-4, 1],
  samplesInDropout: [1, 1000],
  looks: [1, 1000],
  coarsestVisible: [0.001, 0.5],
  deepDeparture: [0.001, 0.9],
  sameTravel: [0.001, 0.5],
  supplyStray: [0, 0.5],
  endMarginal: [0, 0.5],
  closedNormal: [0, 0.5],
  closedMarginal: [0, 0.5],
  returns: [2, 1000],
};

/**
 * The loosest value of a limit with which a sweep may still pass, and whether a higher or a lower one is looser: two to four times the default,
 * for counts one less or as few as can be; beyond it a fault that stalls an engine would not be seen. Common practice, no source. Other limits only
 * part failing from marginal, or causes.
 */
const loosest = {
  // What is visible grows with its logarithm: by a third.
  falseDepartures: [1e-5, 'lower'],
  visibleSteps: [10, 'higher'],
  visibleSpan: [0.05, 'higher'],
  visibleRipple: [6, 'higher'],
  dropout: [0.05, 'higher'],
  samplesInDropout: [1, 'lower'],
  looks: [1, 'lower'],
  coarsestVisible: [0.1, 'higher'],
  supplyStray: [0.15, 'higher'],
  closedNormal: [0.08, 'higher'],
  closedMarginal: [0.15, 'higher'],
  returns: [2, 'lower'],
} as const satisfies Partial<Record<NumberCriterion, readonly [number, 'higher' | 'lower']>>;

/** A limit that is looser than its default, and whether too loose for a pass. */
export interface LoosenedCriterion {
  /** Which one. */
  readonly name: keyof typeof loosest;
  /** Its value, in its own unit, within its bounds. */
  readonly value: number;
  /** The loosest with which a sweep may pass, in the same unit. */
  readonly loosest: number;
  /** Whether the value is beyond that. */
  readonly tooLoose: boolean;
}

/**
 * The limits that are looser than their defaults, in the order of {@link Criteria}: a verdict by them lets through what others would not.
 *
 * @throws InputError as {@link wholeCriteria} does.
 *
 * @example
 * loosenedCriteria({ ...defaultCriteria, visibleSpan: 0.1 })[0] // => { name: 'visibleSpan', value: 0.1, loosest: 0.05, tooLoose: true }
 * loosenedCriteria(defaultCriteria) // => []
 */
export function loosenedCriteria(given: Criteria): readonly LoosenedCriterion[] {
  const criteria = wholeCriteria(given);
  return Object.entries(loosest).flatMap(([key, [bound, looser]]) => {
    const name = key as LoosenedCriterion['name'];
    const value = criteria[name];
    const isBeyond = (limit: number): boolean =>
      looser === 'higher' ? value > limit : value < limit;
    return isBeyond(defaultCriteria[name])
      ? [{ name, value, loosest: bound, tooLoose: isBeyond(bound) }]
      : [];
  });
}

/** The limits that are counts. */
export const countCriteria: readonly string[] = ['samplesInDropout', 'looks', 'returns'];

/**
 * Criteria that may name some limits only, with the defaults for the rest.
 *
 * @throws InputError with the path of the field, such as `criteria.sameTravel`: for a value outside its bounds, an unknown name, another
 * version, or `closedMarginal` below `closedNormal`.
 *
 * @example
 * wholeCriteria({ dropout: 0.02 }).dropout // => 0.02
 * wholeCriteria({ dropout: 0.02 }).returns // => 3
 */
export function wholeCriteria(given: Partial<Criteria>): Criteria {
  const rules: Record<string, FieldRule> = {
    'version?': (value) => {
      if (value === 1) return;
      const wrong = `criteria.version is ${shown(value)}; this program reads version 1.`;
      throw new InputError('not-a-version', 'criteria.version', wrong);
    },
    'endAcceptance?': ['simple', 'guarded'],
  };
  for (const [name, [low, high]] of Object.entries(criteriaBounds)) {
    rules[`${name}?`] = countCriteria.includes(name) ? wholeBetween(low, high) : between(low, high);
  }
  checkFields(given, 'criteria', rules);
  const named = Object.entries(given).filter(([, value]) => value !== undefined);
  const criteria: Criteria = { ...defaultCriteria, ...Object.fromEntries(named) };
  const { closedNormal, closedMarginal } = criteria;
  if (closedMarginal >= closedNormal) return criteria;
  throw new InputError(
    'out-of-order',
    'criteria.closedMarginal',
    `criteria.closedMarginal is ${closedMarginal}; it must be at least closedNormal, ${closedNormal}.`,
  );
}
