import {
  chanceInPasses,
  chanceOfReading,
  chooseLimiter,
  defaultCriteria,
  dividerOhms,
  dividerVolts,
  expectedWindows,
  formatQuantity,
  operatingPoint,
  parseQuantity,
  preferredValue,
  type Ratings,
  temperatureAt,
  wrongConnections,
} from '@truesweep/core';
import {
  checkAnswer,
  type Exercise,
  type ExerciseTopic,
  exerciseLevels,
  exerciseTopics,
  makeExercise,
  type QuantityPart,
} from '@truesweep/explain';
import { describe, expect, test } from 'vitest';
import { soak } from '../counts.js';

/** A soak draws 30,000 exercises on each topic and simulates 10,000 sweeps. */
const seedsOf = (topic: ExerciseTopic): number => (topic === 'trace' ? 500 : 1500) * soak;

/** Exercises on a topic, levels in turns. */
function* exercisesOn(topic: ExerciseTopic, count: number): Generator<Exercise> {
  for (let seed = 0; seed < count; seed++)
    yield makeExercise(topic, exerciseLevels[seed % 3]!, seed);
}

/** What is wrong with an exercise, in words; nothing of a sound one. */
function* faultsIn(exercise: Exercise): Generator<string> {
  yield* textFaults(exercise);
  for (const value of exercise.working.given)
    if (!Number.isFinite(value.value)) yield `${value.symbol} is ${value.value}`;
  for (const part of exercise.parts) {
    if (part.kind === 'quantity') {
      yield* quantityFaults(exercise, part);
      continue;
    }
    if (checkAnswer(exercise, part.right, part.id).result !== 'right')
      yield `${part.right} is wrong`;
    const ids = part.options.map(({ id }) => id);
    if (new Set(ids).size < ids.length) yield 'two options are one';
    if (part.wrong.length !== ids.length - 1) yield 'an option has no mistake';
    for (const { option, mistake } of part.wrong) {
      const told = checkAnswer(exercise, option, part.id);
      if (told.result !== 'wrong' || told.mistake !== mistake) yield `${option} is not told`;
    }
  }
}

/** A number that neither a unit nor what is counted follows. */
const bare =
  /(?<![\w.])\d[\d.]*(?![\d.]*(?:[\u00a0 ](?:[mkMµ]?(?:Ω|V|A|W|s)|%|°C|K)(?!\w)| standard deviations| steps| passes))/;

function* textFaults({ question, hint, parts, working }: Exercise): Generator<string> {
  for (const text of [question, hint, working.title, ...parts.map(({ asks }) => asks)]) {
    if (/undefined|NaN|Infinity|\$\{| {2}/.test(text)) yield `“${text}” has a gap`;
    if (bare.test(text)) yield `“${text}” has a number without unit`;
  }
}

function* quantityFaults(exercise: Exercise, part: QuantityPart): Generator<string> {
  const { value, tolerance, wrong, unit } = part;
  if (!(Number.isFinite(value) && tolerance > 0)) yield `${value} ± ${tolerance}`;
  if (wrong.length === 0) yield 'no mistake is known';
  for (const [i, one] of wrong.entries()) {
    const reach = Math.max(tolerance, one.tolerance);
    if (!(Math.abs(one.value - value) > 3 * reach)) yield `${one.value} is near ${value}`;
    for (const other of wrong.slice(0, i))
      if (!(Math.abs(one.value - other.value) > one.tolerance + other.tolerance))
        yield `${one.value} is near ${other.value}`;
    for (const text of spellings(one.value, unit)) {
      const told = checkAnswer(exercise, text, part.id);
      if (told.result !== 'wrong' || told.mistake !== one.mistake)
        yield `${text} of ${one.value} is ${told.result}: ${told.sentence}`;
    }
  }
  for (const text of spellings(value, unit)) {
    const told = checkAnswer(exercise, text, part.id);
    if (told.result !== 'right') yield `${text} of ${value} is ${told.result}: ${told.sentence}`;
  }
}

/** Ways to write a value, the pocket calculator's three digits among them. */
function spellings(value: number, unit: QuantityPart['unit']): readonly string[] {
  const digits = (shifted: number, places = 3) => `${Number(shifted.toPrecision(places))}`;
  switch (unit) {
    case 'V':
      return [
        `${digits(value)} V`,
        `${digits(value, 7)}volts`,
        `${digits(1000 * value, 5)} mV`,
        `${value.toFixed(4).replace('.', ',')} V`,
        formatQuantity(value, 'V'),
      ];
    case 'Ω':
      return [
        `${digits(value)} ohms`,
        `${digits(value / 1000, 4)}k`,
        `${digits(value / 1000, 4)} kΩ`,
        formatQuantity(value, 'Ω'),
      ];
    case '%':
      return [`${digits(100 * value)} %`, `${digits(value)}`, formatQuantity(value, '%')];
    case '°C':
      return [
        `${value.toFixed(1)} °C`,
        `${value.toFixed(0)} degC`,
        `${((value * 9) / 5 + 32).toFixed(1)} °F`,
        `${(value + 273.15).toFixed(1)} K`,
      ];
    case '1':
      return [`${value}`, `${value} passes`];
  }
}

describe.each(exerciseTopics)('%s', (topic) => {
  test('no seed gives a question that is degenerate or ambiguous', () => {
    const found: string[] = [];
    for (const exercise of exercisesOn(topic, seedsOf(topic)))
      for (const fault of faultsIn(exercise))
        if (found.length < 10) found.push(`${exercise.level} ${exercise.seed}: ${fault}`);
    expect(found).toEqual([]);
  });

  test('one seed gives one exercise, and it is plain data', () => {
    for (const exercise of exercisesOn(topic, 9)) {
      expect(makeExercise(topic, exercise.level, exercise.seed)).toEqual(exercise);
      expect(JSON.parse(JSON.stringify(exercise))).toEqual(exercise);
    }
  });
});

/** The given values of a working by their symbols; 0 of what isn't there. */
const givenOf = ({ working }: Exercise) =>
  new Proxy(Object.fromEntries(working.given.map(({ symbol, value }) => [symbol, value])), {
    get: (values, symbol) => values[symbol as string] ?? 0,
  }) as Readonly<Record<string, number>>;

/** The value of a part that asks for one. */
const askedOf = ({ parts }: Exercise, id?: string): number =>
  (parts.find((part) => part.kind === 'quantity' && (id ?? part.id) === part.id) as QuantityPart)
    .value;

/** The hook-up that a working begins with. */
function circuitOf(exercise: Exercise) {
  const { E, R_s, R_t, R_L, R_pu, U_pu } = givenOf(exercise);
  return {
    source: { volts: E! },
    limiter: R_s!,
    sensor: { track: R_t! },
    load: {
      ...(R_L! > 0 && { pullDown: R_L! }),
      ...(R_pu! > 0 && { pullUp: { ohms: R_pu!, volts: U_pu! } }),
    },
  };
}

/** How far two values are apart, as a part of one. */
const apart = (one: number, other: number): number => Math.abs(one / other - 1);

const agreed = 1e-9;

/** What core says to an exercise, from what its working begins with. */
const byCore: Readonly<Record<string, (exercise: Exercise) => number>> = {
  loading: (exercise) => operatingPoint(circuitOf(exercise), givenOf(exercise).x!).output as number,
  'meter-loading': (exercise) => {
    const { x, p, R_m, U_r, I_r } = givenOf(exercise);
    const circuit = circuitOf(exercise);
    const output = (load: object) => operatingPoint({ ...circuit, load }, x!).output as number;
    const bare = output({});
    // Of the least input the part that it takes away must be the one that was wanted: what it is then is the answer itself.
    if (p! > 0)
      return (askedOf(exercise) * (1 - output({ pullDown: askedOf(exercise) }) / bare)) / p!;
    return R_m! > 0
      ? bare - output({ pullDown: R_m! })
      : 1 - output({ pullDown: U_r! / I_r! }) / bare;
  },
  windows: (exercise) => {
    const { x, d_x, d_E, d_s, d_t, d_L } = givenOf(exercise);
    const circuit = circuitOf(exercise);
    const sensor = { ...circuit.sensor, closedPosition: x! };
    const tolerances = {
      source: d_E!,
      limiter: d_s!,
      track: d_t!,
      pullDown: d_L!,
      closedPosition: d_x!,
    };
    const { closed } = expectedWindows({ ...circuit, sensor }, tolerances);
    return closed[exercise.parts[0]!.id as 'low' | 'high'];
  },
  'dropout-visibility': (exercise) => {
    const { T, a, θ, t_d, n, σ, k, q, S } = givenOf(exercise);
    const { visibleSteps, visibleSpan } = defaultCriteria;
    if (σ! > 0) return Math.max(k! * σ!, visibleSteps * q!, visibleSpan * S!);
    const chance = chanceOfReading(t_d!, { interval: T!, aperture: a!, share: θ! });
    return n! > 0 ? chanceInPasses(chance, n!) : chance;
  },
  thermistor: (exercise) => {
    const { E, R_pu, R, V, R_1, T_1, B } = givenOf(exercise);
    const divider = { supply: E!, pullUp: R_pu! };
    if (R! > 0) return dividerVolts(divider, R!);
    const ohms = dividerOhms(divider, V!);
    if (!(B! > 0)) return ohms;
    const law = {
      kind: 'b',
      b: B!,
      ohms: R_1!,
      from: T_1! - 273.15,
      to: 85,
      lowest: -20,
      highest: 120,
    } as const;
    return temperatureAt(law, ohms);
  },
};

test.each(Object.keys(byCore) as ExerciseTopic[])('answers on %s are core’s', (topic) => {
  for (const exercise of exercisesOn(topic, 300 * soak)) {
    const value = byCore[topic]!(exercise);
    const asked = askedOf(
      exercise,
      exercise.level === 'medium' && topic === 'dropout-visibility' ? 'all' : undefined,
    );
    expect(apart(asked, value), `${exercise.level} ${exercise.seed}`).toBeLessThan(agreed);
    expect(apart(exercise.working.answer.value, value)).toBeLessThan(agreed);
  }
});

/** The ratings that a question tells, and the hook-up that they are of. */
function ratedOf(exercise: Exercise) {
  const { E, R_i } = givenOf(exercise);
  const told = <Unit extends 'A' | 'W' | 'Ω'>(words: RegExp, unit: Unit) =>
    (words.exec(exercise.question) ?? []).slice(1).map((text) => parseQuantity(text, unit));
  const [track] = told(/track has (.+?Ω)/, 'Ω');
  const [amps, moment] = told(/wiper bears (.+?) for good and (.+?) for a moment/, 'A');
  const [watts, shortTerm] = told(/track bears (.+?) for good and (.+?) for a moment/, 'W');
  const ratings: Ratings = {
    ...(amps && { wiper: { amps, shortTerm: moment! } }),
    ...(watts && { track: { watts, shortTerm: shortTerm! } }),
  };
  const circuit = {
    source: { volts: E!, ohms: R_i! },
    limiter: 0,
    sensor: { track: track! },
    load: {},
  };
  return { circuit, ratings };
}

test('the smallest limiters are those that core chooses', () => {
  for (const exercise of exercisesOn('limiter', 12 * soak)) {
    const { circuit, ratings } = ratedOf(exercise);
    const value = askedOf(exercise);
    const choice = chooseLimiter(circuit, ratings);
    if (choice.kind === 'impossible') throw new Error(`No limiter for ${exercise.seed}.`);
    // Core bisects the logarithm of the resistance as far as this.
    expect(apart(value, choice.smallest), `${exercise.level} ${exercise.seed}`).toBeLessThan(2e-9);
    expect(exercise.working.answer.value).toBeCloseTo(value, 9);
    const preferred = exercise.parts.find(({ kind }) => kind === 'choice');
    expect(preferred).toMatchObject({ right: String(choice.preferred) });
    expect(preferredValue(value, 'E24', 'up')).toBe(choice.preferred);
  }
});

test('with the smallest limiter the worst wrong connection just keeps the ratings', () => {
  for (const exercise of exercisesOn('limiter', 30 * soak)) {
    const { circuit, ratings } = ratedOf(exercise);
    const rows = wrongConnections({ ...circuit, limiter: askedOf(exercise) }, ratings).filter(
      ({ mistake }) => !(mistake.kind === 'shorted-signal' && mistake.to === 'source'),
    );
    const ratios = rows.flatMap(({ planned }) =>
      (['wiper', 'track'] as const)
        .filter((part) => ratings[part])
        .map((part) => (planned.ratings[part].value as number) / ratings[part]!.shortTerm!),
    );
    expect(apart(Math.max(...ratios), 1), `${exercise.level} ${exercise.seed}`).toBeLessThan(
      agreed,
    );
  }
});
