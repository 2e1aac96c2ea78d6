import type { Fraction } from '../units.js';

/** Readings against the shaft's place, in the order in which they were taken. */
export interface ShaftReadings {
  /** Place of the shaft at each reading: travel, degrees or whatever else grows evenly as it turns. */
  readonly shaft: Float64Array;
  /** The readings as fractions of the voltage across the end terminals. */
  readonly ratio: Float64Array;
  /** Standard uncertainty of a reading, as such a fraction, 0 or more; no result has one where it is left out. */
  readonly uncertainty?: Fraction;
}

/** Readings as they may be handed in: their columns are copied once where they are not Float64Arrays already. */
export type ShaftReadingsLike = Pick<ShaftReadings, 'uncertainty'> &
  Readonly<Record<'shaft' | 'ratio', ArrayLike<number>>>;

/** The line ratio = intercept + slope · shaft. */
export interface ReferenceLine {
  /** The ratio where the shaft's place is 0. */
  readonly intercept: Fraction;
  /** Change of the ratio per unit of the shaft's place; any. */
  readonly slope: number;
}

/** A largest deviation of readings, as a fraction of the voltage across the end terminals. */
export interface ShapeError {
  readonly kind: 'judged';
  /** The deviation, fraction of the voltage across the end terminals; from 0 up where it has no sign. */
  readonly value: Fraction;
  /** Place of the shaft where it stands, in the unit of that place. */
  readonly at: number;
  /** Its standard uncertainty, fraction of that voltage, 0 or more; left out where the readings' own is not known. */
  readonly uncertainty?: Fraction;
}

/** A largest deviation from a straight line, with that line. */
export interface Linearity extends ShapeError {
  /** The line that the deviation is counted from. */
  readonly line: ReferenceLine;
}

/** Why something of a shape can't be told. */
export type ShapeReason =
  /** Nobody knows where the shaft was: only time and voltage were recorded. */
  | 'no-shaft'
  /** The shaft stood still. */
  | 'no-movement'
  /** The voltage across the end terminals was neither recorded nor stated, nor does a circuit give it. */
  | 'no-supply'
  /** More than a tenth of the range lies between two neighbouring places with readings. */
  | 'places-too-far-apart'
  /** The output changes over the range by no more than it scatters either side: it is dead, or not this shaft's. */
  | 'output-does-not-follow'
  /** The hook-up gives one reading at two places or more, so that no place follows from it. */
  | 'ambiguous-output'
  /** Absolute linearity needs a point of the theoretical line. */
  | 'no-index-point'
  /** Absolute linearity needs the theoretical electrical travel. */
  | 'no-electrical-travel'
  /** Nothing was read over the theoretical electrical travel. */
  | 'no-readings'
  /** No circuit was given, so that neither the load nor the loaded curve is known. */
  | 'no-circuit'
  /** No place was passed both ways. */
  | 'one-way'
  /** Windows with two readings or more cover less than nine tenths of the range. */
  | 'too-few-readings';

/** Something that these readings can't tell. */
export interface NotJudged {
  readonly kind: 'not-judged';
  /** Why, as a code. */
  readonly reason: ShapeReason;
}

export function notJudged(reason: ShapeReason): NotJudged {
  return { kind: 'not-judged', reason };
}
