import {
  absoluteThrottlePercent,
  type Circuit,
  carryToBench,
  carryToVehicle,
  chooseLimiter,
  closedSetting,
  coilCurrent,
  type Determined,
  defaultCriteria,
  dirtEffect,
  dividerVolts,
  expectation,
  expectedWindows,
  fitThermistor,
  type Instrument,
  isInputError,
  judgeReading,
  loadingErrors,
  type Mistake,
  type ModelledDropout,
  operatingPoint,
  outputUncertainty,
  type PressureSource,
  positionAtOutput,
  pressureRatio,
  resistanceAt,
  scoreSweep,
  sightOf,
  simulateSweep,
  stationPressure,
  supplyAndGroundDrop,
  type ThermistorLaw,
  type Tolerances,
  wrongConnections,
} from '@truesweep/core';
import {
  explainCarriedReading,
  explainCauses,
  explainClosedSetting,
  explainCoil,
  explainDirt,
  explainDropoutChance,
  explainFinding,
  explainLimiter,
  explainLimits,
  explainLoadingError,
  explainMistake,
  explainOpenPort,
  explainOperatingPoint,
  explainPlace,
  explainPosition,
  explainSupplyDrop,
  explainThermistor,
  explainThermistorFit,
  explainTrack,
  explainUncertainty,
  explainVisible,
  explainWindow,
  type Working,
  workingText,
} from '@truesweep/explain';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { soak } from '../counts.js';
import { areAlike, evaluated, halfDigit, inSi, numericLines } from './printedLines.js';

/** How often each result is worked out, and of how many of these every printed line is read back by mathjs, which takes longer. */
const cases = 2000 * soak;
const readBack = 60 * soak;

/** As people and instruments write numbers. */
const written = (value: number): number => Number(value.toPrecision(9));
const real = (min: number, max: number) =>
  fc.double({ min, max, noNaN: true, noDefaultInfinity: true }).map(written);
/** Evenly over the logarithm. */
const size = (min: number, max: number) =>
  real(Math.log(min), Math.log(max)).map((log) => written(Math.exp(log)));
const orNone = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: undefined });

const circuits: fc.Arbitrary<Circuit> = fc
  .record({
    volts: real(1, 24),
    inner: orNone(size(0.01, 50)),
    limiter: fc.oneof(fc.constant(0), size(10, 10e3)),
    track: size(500, 50e3),
    // Rising outputs and falling ones.
    ends: fc.oneof(fc.tuple(real(0, 0.3), real(0.6, 1)), fc.tuple(real(0.6, 1), real(0, 0.3))),
    bottomResidual: orNone(size(1, 100)),
    topResidual: orNone(size(1, 100)),
    contact: orNone(size(1, 500)),
    leads: orNone(
      fc.record({ supply: size(0.01, 1), ground: size(0.01, 1), signal: size(0.01, 1) }),
    ),
    pullDown: orNone(size(1e3, 10e6)),
    pullUp: orNone(fc.record({ ohms: size(1e3, 10e6), volts: real(1, 24) })),
  })
  .map(({ volts, inner, limiter, track, ends, leads, pullDown, pullUp, ...rest }) => {
    const given = (record: object) =>
      Object.fromEntries(Object.entries(record).filter(([, value]) => value !== undefined));
    return {
      source: { volts, ...given({ ohms: inner }) },
      limiter,
      ...(leads && { leads }),
      sensor: { track, closedPosition: ends[0], openPosition: ends[1], ...given(rest) },
      load: given({ pullDown, pullUp }),
    } as Circuit;
  });

const withoutPullUp = circuits.map(({ load: { pullUp: _, ...load }, ...circuit }) => ({
  ...circuit,
  load,
}));
const loaded = fc
  .tuple(withoutPullUp, size(1e3, 1e6))
  .map(([circuit, pullDown]): Circuit => ({ ...circuit, load: { pullDown } }));

const tolerance = orNone(real(0.001, 0.3));
const tolerances = fc
  .record({
    source: tolerance,
    limiter: tolerance,
    track: tolerance,
    contact: tolerance,
    pullDown: tolerance,
    closedPosition: orNone(real(0.001, 0.1)),
    openPosition: orNone(real(0.001, 0.1)),
  })
  .map(
    (all) =>
      Object.fromEntries(
        Object.entries(all).filter(([, value]) => value !== undefined),
      ) as Tolerances,
  );

const number = (value: Determined<number>): number => value as number;

/** Holds the answer of a working against what core gives, relative to the scale of what it was made from. */
function agree(working: Working, answer: number, wanted: number, scale = 0): void {
  const bound = 1e-12 * Math.max(Math.abs(wanted), scale);
  if (!(Math.abs(answer - wanted) <= bound))
    expect.fail(`${answer} instead of ${wanted} in:\n${workingText(working).join('\n')}`);
}

/** A working and what core gives; nothing where none is written for it, which is refused by its own code. */
type Case = () => readonly [working: Working, answer: number, wanted: number, scale?: number][];

function orRefused<T>(make: () => T): T | undefined {
  try {
    return make();
  } catch (error) {
    if (isInputError(error) && error.code === 'no-working') return undefined;
    throw error;
  }
}

/** Works out so many random cases, holds each against core and reads the printed lines of some back. */
function holds(arbitrary: fc.Arbitrary<Case>, leastWritten = 0.9): void {
  let [asked, worked] = [0, 0];
  fc.assert(
    fc.property(arbitrary, (make) => {
      asked++;
      const found = orRefused(make);
      // What is refused is no case.
      fc.pre(found !== undefined);
      worked++;
      for (const [working, answer, wanted, scale] of found!) {
        agree(working, answer, wanted, scale);
        if (worked <= readBack) readsBack(working);
      }
    }),
    { numRuns: cases },
  );
  expect(worked / asked).toBeGreaterThan(leastWritten);
}

/** Every printed line of numbers, put in again, gives the printed result within the digits shown. */
function readsBack(working: Working): void {
  const lines = numericLines(workingText(working));
  const withNumbers = working.steps.filter(
    (step) => step.kind === 'calculation' && step.inputs.length > 0,
  );
  expect(lines).toHaveLength(withNumbers.length);
  for (const [line, printed] of lines) {
    const [one, other] = [evaluated(line), evaluated(printed)];
    expect(areAlike(one, other), `${line} is of another unit than ${printed}`).toBe(true);
    const [found, shown] = [inSi(one), inSi(other)];
    const half = halfDigit(printed);
    // What is no finite number compares as no difference: it must not pass.
    if (!(Math.abs(found - shown) <= half * (1 + 1e-6)))
      expect.fail(`${line} is ${found}, printed as ${printed}`);
  }
}

const of = (working: Working, symbol: string) =>
  [
    ...working.given,
    ...working.steps.flatMap((step) => (step.kind === 'calculation' ? [step.result] : [])),
  ].find((one) => one.symbol === symbol)?.value as number;

/** The mistakes that a working is written for, and some that none is. */
const mistakes = wrongConnections({
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: {},
})
  .map(({ mistake }) => mistake)
  .filter(({ kind }) => /^(none|exchanged-leads|shorted-leads|shorted-signal)$/.test(kind));

function withMistake(circuit: Circuit, mistake: Mistake): Circuit {
  if (mistake.kind === 'none') return circuit;
  return mistake.kind === 'exchanged-leads'
    ? { ...circuit, connection: mistake.connection }
    : { ...circuit, faults: [mistake] };
}

/** What the comparisons of a reading's working come to, by the rule that decides (simple acceptance). */
function outcomeBy(working: Working): string {
  const holds = new Map(
    working.steps.flatMap((step) =>
      step.kind === 'comparison' ? [[step.left.symbol, /^[≥≤]$/.test(step.relation)]] : [],
    ) as [string, boolean][],
  );
  const isFine = holds.get('W') ?? true;
  if (!holds.get('m')) return !holds.get('m_o') ? 'fails' : isFine ? 'marginal' : 'cannot-tell';
  // Between limits that are too near only what is farther inside than U is told.
  return isFine || of(working, 'm') >= of(working, 'U') ? 'conforms' : 'cannot-tell';
}

describe('worked out and computed by core they agree to 1e-12, and printed lines read back', () => {
  test('operating point, by Thévenin and by Millman', () => {
    holds(
      fc.tuple(circuits, real(0, 1)).map(([circuit, position]) => () => {
        const wanted = number(operatingPoint(circuit, position).output);
        return (['thevenin', 'millman'] as const).map((method) => {
          const working = explainOperatingPoint(circuit, position, method);
          return [working, working.answer.value, wanted, circuit.source.volts];
        });
      }),
    );
  });

  test('loading error', () => {
    holds(
      loaded.map((circuit) => () => {
        const working = explainLoadingError(circuit);
        const { volts } = loadingErrors(circuit).fromUnloaded;
        const ends = working.steps.filter((step) => step.kind === 'comparison');
        // Away from the stops both slopes are alike where the error is largest.
        for (const step of ends) expect(step.relation).toBe('≈');
        return [[working, working.answer.value, volts, circuit.source.volts]];
      }),
    );
  });

  test('windows of the closed and the open reading', () => {
    holds(
      fc
        .tuple(circuits, tolerances, fc.constantFrom('closed', 'open'))
        .map(([circuit, allowed, stop]) => () => {
          const working = explainWindow(circuit, allowed, stop as 'closed' | 'open');
          const { low, high } = expectedWindows(circuit, allowed)[stop as 'closed' | 'open'];
          const scale = circuit.source.volts;
          return [
            [working, of(working, 'V_lo'), low, scale],
            [working, working.answer.value, high, scale],
          ];
        }),
      0.7,
    );
  });

  test('uncertainty of the expected reading', () => {
    holds(
      fc.tuple(circuits, tolerances, real(0, 1)).map(([circuit, allowed, travel]) => () => {
        const working = explainUncertainty(circuit, allowed, travel);
        const { uncertainty } = outputUncertainty(circuit, allowed, travel);
        return [[working, working.answer.value, uncertainty, 1e-3 * circuit.source.volts]];
      }),
    );
  });

  test('currents and heat of wrong connections', () => {
    holds(
      fc
        .tuple(withoutPullUp, real(0.001, 0.999), fc.nat())
        .map(([circuit, position, which]) => () => {
          const mistake = mistakes[which % mistakes.length]!;
          const working = explainMistake(circuit, mistake, position);
          const wrong = withMistake(circuit, mistake);
          const { parts } = operatingPoint(wrong, position);
          const source = Math.abs(number(parts.source!.amps));
          const found: [Working, number, number, number?][] = [[working, of(working, 'I'), source]];
          if (circuit.limiter > 0)
            found.push([working, of(working, 'P_s'), number(parts.limiter!.watts)]);
          if (mistake.kind === 'shorted-leads') return found;
          const pieces = [parts.trackAbove!, parts.trackBelow!].map(({ amps }) =>
            Math.abs(number(amps)),
          );
          const track = Math.max(...pieces) ** 2 * circuit.sensor.track;
          found.push([working, working.answer.value, track, source ** 2 * circuit.sensor.track]);
          return found;
        }),
      0.6,
    );
  });

  test('inverse: from a reading to the wiper’s place', () => {
    holds(
      fc.tuple(circuits, real(0.02, 0.98)).map(([circuit, position]) => () => {
        const volts = number(operatingPoint(circuit, position).output);
        const working = explainPosition(circuit, volts);
        const place = positionAtOutput(circuit, { volts });
        expect(place.kind).toBe('position');
        // Bisection and root both end at the last figure of the reading.
        const turned = number(operatingPoint(circuit, working.answer.value).output);
        return [[working, turned, volts, circuit.source.volts]];
      }),
    );
  });

  test('from bench to vehicle and back, with the scan tool’s percent', () => {
    holds(
      fc
        .tuple(circuits, circuits, real(0.05, 0.95), fc.constantFrom('rising', 'falling'))
        .map(([bench, other, position, sense]) => () => {
          const { sensor: _, ...vehicle } = other;
          const volts = number(operatingPoint(bench, position).output);
          const there = carryToVehicle({ volts }, bench, vehicle);
          const working = explainCarriedReading(
            { volts, to: 'vehicle', sense: sense as 'rising' | 'falling' },
            bench,
            vehicle,
          );
          expect(there.kind).toBe('carried');
          if (there.kind !== 'carried') return [];
          const { percent } = absoluteThrottlePercent(there.ratio, sense as 'rising' | 'falling');
          const back = explainCarriedReading({ volts: there.volts, to: 'bench' }, bench, vehicle);
          const home = carryToBench({ volts: there.volts }, bench, vehicle);
          return [
            [working, working.answer.value, there.volts, vehicle.source.volts],
            [working, of(working, 'p'), percent / 100],
            [
              back,
              back.answer.value,
              home.kind === 'carried' ? home.volts : Number.NaN,
              bench.source.volts,
            ],
          ];
        }),
      0.8,
    );
  });

  test('drops in supply and ground', () => {
    holds(
      fc.tuple(real(4, 6), real(3.5, 6), real(-0.3, 0.5)).map(([reference, at, ground]) => () => {
        const readings = { reference, referenceAtSensor: at, sensorGround: ground };
        const working = explainSupplyDrop(readings);
        const { worstError, bottomError, topError } = supplyAndGroundDrop(readings);
        return [
          [working, working.answer.value, worstError],
          [working, of(working, 'e_b'), bottomError],
          [working, of(working, 'e_t'), topError],
        ];
      }),
    );
  });

  test('turn to a wanted closed reading', () => {
    const by = fc.oneof(
      fc.record({
        kind: fc.constant('second-reading' as const),
        degrees: real(0.5, 20),
        volts: real(0.8, 2),
      }),
      fc.record({
        kind: fc.constant('slope' as const),
        degreesOfTravel: real(50, 100),
        voltsPerTravel: fc.oneof(real(2, 5), real(-5, -2)),
      }),
    );
    holds(
      fc
        .tuple(real(0.3, 0.7), real(0.3, 0.9), by, orNone(size(1e-4, 1e-2)))
        .map(([reading, wanted, how, uncertainty]) => () => {
          const working = explainClosedSetting(reading, wanted, how, uncertainty);
          const setting = closedSetting(reading, wanted, how, uncertainty);
          if (setting.kind !== 'turn') throw new Error(setting.kind);
          const found: [Working, number, number, number?][] = [
            [working, working.answer.value, setting.degrees],
          ];
          if (uncertainty !== undefined)
            found.push([working, of(working, 'u_α'), setting.uncertainty]);
          return found;
        }),
    );
  });

  test('an instrument’s chance to show a dropout', () => {
    const instruments: fc.Arbitrary<Instrument> = fc.oneof(
      fc
        .record({
          aperture: size(1e-3, 0.5),
          deadTime: orNone(size(1e-3, 0.5)),
          counts: fc.constantFrom(1999, 3999, 19999),
          displayInterval: orNone(real(1, 2)),
        })
        .map(
          ({ deadTime, displayInterval, ...rest }) =>
            ({
              kind: 'digital-meter',
              name: 'Meter',
              inputOhms: 1e7,
              ranges: [4, 40],
              ...rest,
              ...(deadTime !== undefined && { deadTime }),
              ...(displayInterval !== undefined && { displayInterval }),
            }) as Instrument,
        ),
      fc
        .record({
          interval: size(1e-5, 0.1),
          bits: fc.integer({ min: 6, max: 16 }),
          filter: orNone(size(1e-5, 1e-2)),
        })
        .map(
          ({ filter, ...rest }) =>
            ({
              kind: 'logger',
              name: 'Logger',
              inputOhms: 1e6,
              range: { low: 0, high: 5 },
              ...rest,
              ...(filter !== undefined && { filter }),
            }) as Instrument,
        ),
      fc
        .record({
          record: size(0.1, 100),
          memory: fc.integer({ min: 100, max: 100_000 }),
          keepsPeaks: fc.boolean(),
          bandwidth: orNone(size(1e3, 1e8)),
        })
        .map(
          ({ bandwidth, ...rest }) =>
            ({
              kind: 'oscilloscope',
              name: 'Oscilloscope',
              inputOhms: 1e6,
              range: { low: 0, high: 8 },
              bits: 8,
              fastest: 1e-5,
              ...rest,
              ...(bandwidth !== undefined && { bandwidth }),
            }) as Instrument,
        ),
      fc
        .record({
          interval: size(1e-4, 1e-2),
          debounce: fc.oneof(fc.constant(0), size(1e-3, 1e-2)),
        })
        .map(
          (rest) =>
            ({
              kind: 'control-unit',
              name: 'Unit',
              limits: { low: 0.2, high: 4.8 },
              ...rest,
            }) as Instrument,
        ),
    );
    const dropouts: fc.Arbitrary<ModelledDropout> = fc
      .record({
        seconds: size(1e-4, 0.1),
        from: real(0.5, 3.9),
        to: fc.constantFrom(0, 5),
        fall: orNone(size(1e-4, 1e-2)),
        recovery: orNone(size(1e-4, 1e-2)),
        slope: orNone(real(0.1, 5)),
      })
      .map(
        (all) =>
          Object.fromEntries(
            Object.entries(all).filter(([, value]) => value !== undefined),
          ) as unknown as ModelledDropout,
      );
    holds(
      fc
        .tuple(instruments, dropouts, fc.integer({ min: 1, max: 9 }))
        .map(([instrument, dropout, passes]) => () => {
          const working = explainDropoutChance(instrument, dropout, passes);
          const { chanceInPasses, chance } = sightOf(instrument, dropout, passes);
          return [
            [working, working.answer.value, chanceInPasses, 1],
            [working, of(working, 'p'), chance, 1],
          ];
        }),
    );
  });

  test('a thermistor on its pull-up', () => {
    const laws: fc.Arbitrary<ThermistorLaw> = fc.oneof(
      fc.record({ b: real(2500, 5000), ohms: size(500, 100e3) }).map(({ b, ohms }) => ({
        kind: 'b' as const,
        b,
        ohms,
        from: 0,
        to: 100,
      })),
      fc.record({ top: size(2e3, 50e3), step: real(1.3, 3) }).map(({ top, step }) => ({
        kind: 'table' as const,
        rows: [0, 20, 50, 100].map((temperature, i) => ({ temperature, ohms: top / step ** i })),
      })),
      fc.record({ c: real(5e-8, 3e-7) }).map(({ c }) => ({
        kind: 'steinhart-hart' as const,
        a: 1.4e-3,
        b: 2.37e-4,
        c,
        lowest: 0,
        highest: 100,
      })),
    );
    holds(
      fc
        .tuple(laws, real(0, 100), real(4, 6), size(500, 10e3), orNone(size(1e5, 1e8)))
        .map(([law, temperature, supply, pullUp, meter]) => () => {
          const divider = { supply, pullUp, ...(meter !== undefined && { meter }) };
          const working = explainThermistor(divider, law, temperature);
          const met = working.steps.filter((step) => step.kind === 'comparison');
          for (const step of met) expect(step.relation).toBe('≈');
          const wanted = dividerVolts(divider, resistanceAt(law, temperature));
          return [[working, working.answer.value, wanted]];
        }),
    );
  });

  test('a pressure sensor’s open port at a height', () => {
    const altitude = real(-500, 6000);
    const airs: fc.Arbitrary<PressureSource> = fc.oneof(
      fc.record({ kind: fc.constant('altitude' as const), altitude }),
      fc.record({
        kind: fc.constant('barometer' as const),
        pressure: real(5e4, 1.1e5),
        uncertainty: fc.constant(100),
      }),
      fc.record({
        kind: fc.constant('altimeter-setting' as const),
        setting: real(9e4, 1.06e5),
        uncertainty: fc.constant(100),
        altitude,
      }),
    );
    const responses = fc.oneof(
      fc.record({ gain: real(5e-6, 1e-5), offset: real(-0.2, 0.1) }).map((line) => ({
        kind: 'line' as const,
        ...line,
        lowest: 0,
        highest: 120e3,
      })),
      fc.record({ first: real(0.02, 0.2), last: real(0.7, 0.98) }).map(({ first, last }) => ({
        kind: 'table' as const,
        rows: [
          { pressure: 0, ratio: first },
          { pressure: 60e3, ratio: (first + last) / 2.1 },
          { pressure: 120e3, ratio: last },
        ],
      })),
    );
    holds(
      fc
        .tuple(responses, fc.constantFrom('absolute' as const, 'gauge' as const), airs, real(4, 6))
        .map(([response, reference, air, supply]) => () => {
          const sensor = { reference, response };
          const working = explainOpenPort(sensor, air, supply);
          const pressure = reference === 'gauge' ? 0 : stationPressure(air).pressure;
          const wanted = pressureRatio(sensor, pressure).nominal * supply;
          return [[working, working.answer.value, wanted, supply]];
        }),
    );
  });

  test('dirt in the contact', () => {
    holds(
      fc.tuple(loaded, real(0, 1), size(10, 1e6)).map(([circuit, travel, ohms]) => () => {
        const working = explainDirt(circuit, travel, ohms);
        const { dirty } = dirtEffect(circuit, travel, ohms);
        if (dirty.kind !== 'change') throw new Error(dirty.kind);
        return [[working, working.answer.value, dirty.volts, circuit.source.volts]];
      }),
    );
  });

  test('the track by an ohmmeter', () => {
    holds(
      fc.tuple(size(500, 50e3), real(0.02, 0.98), size(1, 500)).map(([track, x, contact]) => () => {
        const readings = {
          ends: track,
          toWiper: x * track + contact,
          fromWiper: (1 - x) * track + contact,
        };
        const working = explainTrack(readings);
        return [
          [working, working.answer.value, x, 1],
          [working, of(working, 'R_c'), contact, track],
        ];
      }),
    );
  });

  test('a coil', () => {
    holds(
      fc
        .tuple(
          size(0.1, 1e4),
          real(-20, 150),
          real(1, 30),
          fc.constantFrom('copper' as const, 'aluminium' as const),
        )
        .map(([ohms, temperature, volts, kind]) => () => {
          const coil = { ohms, temperature, volts, conductor: { kind } };
          const working = explainCoil(coil);
          const current = coilCurrent(coil);
          return [
            [working, working.answer.value, current.amps],
            [working, of(working, 'P'), current.watts],
          ];
        }),
    );
  });

  test('a thermistor’s law through two points and through three', () => {
    holds(
      fc
        .tuple(size(2e3, 50e3), real(2800, 4500), real(1.001, 1.05))
        .map(([cold, b, bend]) => () => {
          // As real parts are: B grows a little with temperature.
          const ohms = (from: number, celsius: number, to: number, by: number) =>
            from * Math.exp(by * (1 / (to + 273.15) - 1 / (celsius + 273.15)));
          const middle = ohms(cold, 0, 25, b);
          const points = [
            { temperature: 0, ohms: cold },
            { temperature: 25, ohms: middle },
            { temperature: 60, ohms: ohms(middle, 25, 60, b * bend) },
          ];
          const ofTwo = explainThermistorFit(points.slice(0, 2));
          const { law: line } = fitThermistor(points.slice(0, 2));
          const ofThree = explainThermistorFit(points);
          const { law } = fitThermistor(points);
          if (line.kind !== 'b' || law.kind !== 'steinhart-hart') throw new Error(law.kind);
          // Two ways to solve three equations lose digits of the small coefficients differently.
          const [first, second, third] = [law.a, law.b * 10, law.c * 1000].map(Math.abs);
          const scale = Math.max(first!, second!, third!);
          return [
            [ofTwo, ofTwo.answer.value, line.b],
            [ofThree, ofThree.answer.value, law.a, scale],
            [ofThree, of(ofThree, 'b'), law.b, scale / 10],
            [ofThree, of(ofThree, 'c'), law.c, scale / 1000],
          ];
        }),
    );
  });

  test('a reading held against its limits', () => {
    holds(
      fc
        .tuple(real(0, 5), real(0, 2.5), real(2.5, 5), size(1e-3, 1), fc.nat(2))
        .map(([measured, low, high, uncertainty, sides]) => () => {
          const limits = {
            ...(sides !== 1 && { low }),
            ...(sides !== 2 && { high }),
          };
          const inputs = [{ name: 'meter', sensitivity: 1, uncertainty }];
          const judged = judgeReading({ measured, ...limits, inputs });
          const working = explainLimits(
            {
              outcome: judged.outcome,
              unit: 'V',
              measured,
              uncertainty,
              ...(sides !== 1 && { lowLimit: low }),
              ...(sides !== 2 && { highLimit: high }),
            },
            'Closed reading',
            { kind: 'reading' },
          );
          expect(outcomeBy(working)).toBe(judged.outcome);
          return [
            // A probability is between 0 and 1: that is its scale.
            [working, working.answer.value, judged.conformance, 1],
            [working, of(working, 'm'), judged.margin, 5],
          ];
        }),
    );
  });
});

test('the limiting resistor that is worked out takes the part that decides to its rating, to 1e-12', () => {
  let worked = 0;
  fc.assert(
    fc.property(
      fc.tuple(withoutPullUp, size(1e-3, 0.05), size(0.01, 0.5), fc.nat(2)),
      ([circuit, amps, watts, which]) => {
        const ratings = [
          { wiper: { amps: amps / 10, shortTerm: amps } },
          { track: { watts: watts / 2, shortTerm: watts } },
          { source: { amps: amps * 2, shortTerm: amps * 3 } },
        ][which]!;
        const choice = chooseLimiter(circuit, ratings);
        const working = orRefused(() => explainLimiter(circuit, ratings));
        if (!working) return;
        worked++;
        const limiter = working.answer.value;
        if (worked <= readBack) readsBack(working);
        if (choice.kind === 'impossible') throw new Error('A working for what can’t be.');
        const heat = of(working, 'P_s');
        if (heat !== undefined) agree(working, heat, choice.heat);
        // Core's own is found by bisection, over the logarithm from 0 Ω to 1 MΩ.
        expect(Math.abs(limiter - choice.smallest)).toBeLessThanOrEqual(2e-9 * (1 + limiter));
        const { mistake, part, check } = choice.binding!;
        const { continuous, shortTerm, position } = check;
        const wrong = withMistake({ ...circuit, limiter: Math.max(0, limiter) }, mistake);
        const { parts } = operatingPoint(wrong, position);
        const through = (name: keyof typeof parts) => Math.abs(number(parts[name]!.amps));
        const value =
          part === 'track'
            ? Math.max(through('trackAbove'), through('trackBelow')) ** 2 * circuit.sensor.track
            : through(part === 'wiper' ? 'contact' : 'source');
        const rating = (mistake.kind === 'none' ? continuous : shortTerm)!;
        agree(working, value, rating);
      },
    ),
    { numRuns: cases / 20 },
  );
  expect(worked).toBeGreaterThan(cases / 20 / 5);
});

test('what a judged sweep says is worked out from what it found', () => {
  const circuit: Circuit = {
    source: { volts: 5 },
    limiter: 1000,
    sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
    load: { pullDown: 1e6 },
  };
  const expected = expectation(circuit, { closedPosition: 0.03, openPosition: 0.03, source: 0.01 });
  const span = expected.windows.open.nominal - expected.windows.closed.nominal;
  let [places, causes] = [0, 0];
  for (let seed = 1; seed <= 20 * soak; seed++) {
    const { sweep } = simulateSweep({
      circuit,
      movements: [1, 2, 3].flatMap(() => [
        { kind: 'turn' as const, to: 1, seconds: 0.8 },
        { kind: 'turn' as const, to: 0, seconds: 0.8 },
        { kind: 'hold' as const, seconds: 0.3 },
      ]),
      faults: [
        {
          kind: 'worn-spot',
          travel: 0.2 + 0.03 * (seed % 20),
          width: 0.02,
          ohms: Number.POSITIVE_INFINITY,
        },
      ],
      recorder: { interval: 0.001, noise: 0.002 },
      seed,
    });
    const score = scoreSweep(sweep, expected);
    const visible = explainVisible(score.quality, span, defaultCriteria);
    agree(visible, visible.answer.value, score.quality.visible);
    readsBack(visible);
    for (const finding of score.findings) {
      const working = explainFinding(finding, score.quality);
      readsBack(working);
      agree(
        working,
        working.answer.value,
        Math.round((finding.end - finding.start) / score.quality.interval),
      );
    }
    for (const spot of score.spots) {
      const working = explainPlace(spot, score.findings, defaultCriteria);
      readsBack(working);
      agree(working, working.answer.value, (spot.seen + 1) / (spot.passes + 2));
      places++;
    }
    if (!score.explanations) continue;
    causes++;
    const working = explainCauses(score.explanations);
    readsBack(working);
    const shares = new Map<string, number>();
    for (const { sources, weight } of score.explanations)
      for (const source of sources)
        shares.set(source, (shares.get(source) ?? 0) + weight / sources.length);
    // Weights are told to nine places.
    expect(Math.abs(working.answer.value - Math.max(...shares.values()))).toBeLessThan(3e-9);
  }
  expect(places).toBeGreaterThan(10 * soak);
  expect(causes).toBeGreaterThan(10 * soak);
});
