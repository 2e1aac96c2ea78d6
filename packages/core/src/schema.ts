import * as v from 'valibot';
import type { Circuit } from './circuit/circuit.js';
import { type Criteria, countCriteria, criteriaBounds, type NumberCriterion } from './criteria.js';
import type { Tolerances } from './expectation/tolerances.js';
import { leastAbove0, mostAbove0 } from './guard.js';
import type { Ratings } from './ratings/ratings.js';

const maybe = v.exactOptional;
const infinity = Number.POSITIVE_INFINITY;

const numberBetween = (low: number, high: number, unit = '') => {
  const wanted = `It must be a number from ${low} to ${high}${unit}.`;
  return v.pipe(v.number(wanted), v.minValue(low, wanted), v.maxValue(high, wanted));
};
const numberAbove0 = (unit = '') => {
  const wanted = `It must be a number above 0${unit}, from 1e-30 to 1e30.`;
  return v.pipe(v.number(wanted), v.minValue(leastAbove0, wanted), v.maxValue(mostAbove0, wanted));
};
/** A limit between its bounds. */
const criterion = (name: NumberCriterion) => {
  const [low, high] = criteriaBounds[name];
  const isCount = countCriteria.includes(name);
  const wanted = `It must be a ${isCount ? 'whole ' : ''}number from ${low} to ${high}.`;
  return v.pipe(
    v.number(wanted),
    v.check((value) => !isCount || Number.isInteger(value), wanted),
    v.minValue(low, wanted),
    v.maxValue(high, wanted),
  );
};
const oneOf = <const Words extends readonly string[]>(...words: Words) =>
  v.picklist(words, `It must be one of: ${words.join(', ')}.`);

const ohmsWanted = 'It must be a resistance: 0 Ω, or from 1e-12 to 1e18 Ω.';
/** JSON has no infinity, but what a program hands on may hold ∞ Ω, which stands for no connection. */
const ohms = v.pipe(
  v.number(ohmsWanted),
  v.check(
    (value) => value === 0 || value === infinity || (value >= 1e-12 && value <= 1e18),
    ohmsWanted,
  ),
);
const volts = numberBetween(0, 1e6, ' V');
const fraction = numberBetween(0, 1);
const celsius = numberBetween(-273.15, 1e4, ' °C');
const lead = oneOf('supply', 'ground', 'signal');
const terminal = oneOf('bottom', 'wiper', 'top');

/** An object with these fields and no others: in a saved file an unknown name is a mistyped one. */
const group = <const Entries extends v.ObjectEntries>(what: string, entries: Entries) =>
  v.strictObject(entries, ({ expected, path }) => {
    if (!path) return `It must be ${what}, as an object.`;
    return expected === 'never'
      ? `There is no such field here; there are ${Object.keys(entries).join(', ')}.`
      : `It is missing: ${what} needs it.`;
  });

const pairOf = <Word extends v.GenericSchema>(word: Word, what: string) =>
  v.pipe(v.strictTuple([word, word], `It must be a list of two ${what}.`), v.readonly());

const fault = v.variant(
  'kind',
  [
    v.strictObject({ kind: v.literal('broken-lead'), lead }),
    v.strictObject({ kind: v.literal('shorted-leads'), leads: pairOf(lead, 'leads') }),
    v.strictObject({
      kind: v.literal('shorted-terminals'),
      terminals: pairOf(terminal, 'terminals'),
    }),
    v.strictObject({
      kind: v.literal('shorted-signal'),
      to: oneOf('source', 'supply', 'ground'),
    }),
    v.strictObject({ kind: v.literal('broken-track'), position: fraction }),
    v.strictObject({ kind: v.literal('shorted-track'), from: fraction, to: fraction }),
    v.strictObject({ kind: v.literal('lifted-wiper') }),
    v.strictObject({ kind: v.literal('no-limiter') }),
    v.strictObject({ kind: v.literal('wrong-source'), volts }),
    v.strictObject({ kind: v.literal('reversed-source') }),
  ],
  'It must be a fault, such as { "kind": "lifted-wiper" }.',
);

const ownPullUp = group('a pull-up', { ohms, volts });
const fedPullUp = group('a pull-up', { ohms, from: oneOf('source', 'sensor') });
/** Decided by the field `from`, so that a refusal has the path of the field that is wrong. */
const pullUp = v.lazy<typeof ownPullUp | typeof fedPullUp>((input) =>
  typeof input === 'object' && input !== null && 'from' in input ? fedPullUp : ownPullUp,
);

const connection = v.pipe(
  group('the terminal of each lead', { supply: terminal, ground: terminal, signal: terminal }),
  v.check(
    (leads) => new Set(Object.values(leads)).size === 3,
    'It puts two leads on one terminal; each lead has a terminal of its own.',
  ),
);

/**
 * Reads unknown JSON as a {@link Circuit}, with its connection and faults: all values in SI units, no unknown fields.
 * What it accepts, every function of core accepts. A refusal is a valibot issue with the field's path and a sentence.
 *
 * @example
 * import { safeParse } from 'valibot';
 * import { circuitSchema } from '@truesweep/core/schema';
 * const circuit = { source: { volts: 5 }, limiter: -1, sensor: { track: 5000 }, load: {} };
 * safeParse(circuitSchema, { ...circuit, limiter: 1000 }).success // => true
 * safeParse(circuitSchema, circuit).issues[0].path[0].key // => 'limiter'
 */
export const circuitSchema = group('a circuit', {
  source: group('a source', {
    volts,
    ohms: maybe(ohms),
    currentLimit: maybe(numberAbove0(' A')),
  }),
  limiter: v.pipe(
    ohms,
    v.ltValue(infinity, 'It must be finite: a limiter is a part that is there.'),
  ),
  leads: maybe(
    group('the leads', { supply: maybe(ohms), ground: maybe(ohms), signal: maybe(ohms) }),
  ),
  sensor: group('a sensor', {
    track: ohms,
    bottomResidual: maybe(ohms),
    topResidual: maybe(ohms),
    contact: maybe(ohms),
    terminalResistors: maybe(
      group('the resistors built in', {
        bottom: maybe(ohms),
        wiper: maybe(ohms),
        top: maybe(ohms),
      }),
    ),
    closedPosition: maybe(fraction),
    openPosition: maybe(fraction),
  }),
  load: group('a load', {
    pullDown: maybe(ohms),
    pullUp: maybe(pullUp),
    common: maybe(oneOf('source', 'sensor')),
  }),
  connection: maybe(connection),
  faults: maybe(v.pipe(v.array(fault, 'It must be a list of faults.'), v.readonly())),
}) satisfies v.GenericSchema<unknown, Circuit>;

/**
 * Reads unknown JSON as {@link Tolerances}: fractions from 0 to 1.
 *
 * @example
 * import { safeParse } from 'valibot';
 * import { tolerancesSchema } from '@truesweep/core/schema';
 * safeParse(tolerancesSchema, { track: 0.2 }).success // => true
 * safeParse(tolerancesSchema, { track: 20 }).issues[0].message // => 'It must be a number from 0 to 1.'
 */
export const tolerancesSchema = group('tolerances', {
  source: maybe(fraction),
  limiter: maybe(fraction),
  track: maybe(fraction),
  bottomResidual: maybe(fraction),
  topResidual: maybe(fraction),
  contact: maybe(fraction),
  pullDown: maybe(fraction),
  pullUp: maybe(fraction),
  pullUpVolts: maybe(fraction),
  closedPosition: maybe(fraction),
  openPosition: maybe(fraction),
}) satisfies v.GenericSchema<unknown, Tolerances>;

const powerRating = v.pipe(
  group('a power rating', {
    watts: numberAbove0(' W'),
    shortTerm: maybe(numberAbove0(' W')),
    fullTo: maybe(celsius),
    zeroAt: maybe(celsius),
  }),
  v.forward(
    v.check(
      ({ fullTo, zeroAt }) => (fullTo === undefined) === (zeroAt === undefined),
      'fullTo and zeroAt belong together: give both or neither.',
    ),
    ['zeroAt'],
  ),
  v.forward(
    v.check(
      ({ fullTo, zeroAt }) => fullTo === undefined || zeroAt === undefined || zeroAt > fullTo,
      'It must be above fullTo.',
    ),
    ['zeroAt'],
  ),
);

const currentRating = group('a current rating', {
  amps: numberAbove0(' A'),
  shortTerm: maybe(numberAbove0(' A')),
});

/**
 * Reads unknown JSON as {@link Ratings}: W, A and °C.
 *
 * @example
 * import { safeParse } from 'valibot';
 * import { ratingsSchema } from '@truesweep/core/schema';
 * safeParse(ratingsSchema, { wiper: { amps: 0.01 } }).success // => true
 * safeParse(ratingsSchema, { wiper: { amps: 0 } }).issues[0].message // => 'It must be a number above 0 A, from 1e-30 to 1e30.'
 */
export const ratingsSchema = v.pipe(
  group('ratings', {
    track: maybe(powerRating),
    wiper: maybe(currentRating),
    limiter: maybe(powerRating),
    source: maybe(currentRating),
    ambient: maybe(celsius),
  }),
  v.forward(
    v.check(
      ({ track, limiter, ambient }) =>
        ambient !== undefined || (track?.fullTo === undefined && limiter?.fullTo === undefined),
      'It is missing: a rating that falls with temperature needs it, in °C.',
    ),
    ['ambient'],
  ),
) satisfies v.GenericSchema<unknown, Ratings>;

/**
 * Reads unknown JSON as {@link Criteria}: every limit, as fractions, seconds and numbers.
 *
 * @example
 * import { safeParse } from 'valibot';
 * import { defaultCriteria } from '@truesweep/core';
 * import { criteriaSchema } from '@truesweep/core/schema';
 * safeParse(criteriaSchema, defaultCriteria).success // => true
 * safeParse(criteriaSchema, { ...defaultCriteria, returns: 1 }).issues[0].message // => 'It must be a whole number from 2 to 1000.'
 */
export const criteriaSchema = v.pipe(
  group('the criteria', {
    version: v.literal(1, 'It must be 1: this program reads version 1.'),
    falseDepartures: criterion('falseDepartures'),
    visibleSteps: criterion('visibleSteps'),
    visibleSpan: criterion('visibleSpan'),
    visibleRipple: criterion('visibleRipple'),
    dropout: criterion('dropout'),
    samplesInDropout: criterion('samplesInDropout'),
    looks: criterion('looks'),
    coarsestVisible: criterion('coarsestVisible'),
    deepDeparture: criterion('deepDeparture'),
    sameTravel: criterion('sameTravel'),
    supplyStray: criterion('supplyStray'),
    endAcceptance: oneOf('simple', 'guarded'),
    endMarginal: criterion('endMarginal'),
    closedNormal: criterion('closedNormal'),
    closedMarginal: criterion('closedMarginal'),
    returns: criterion('returns'),
  }),
  v.forward(
    v.check(
      ({ closedNormal, closedMarginal }) => closedMarginal >= closedNormal,
      'It must be at least closedNormal.',
    ),
    ['closedMarginal'],
  ),
) satisfies v.GenericSchema<unknown, Criteria>;
