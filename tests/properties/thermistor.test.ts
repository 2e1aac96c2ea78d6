import {
  choosePullUp,
  dividerOhms,
  dividerSlope,
  dividerVolts,
  fitThermistor,
  InputError,
  judgeThermistor,
  operatingPoint,
  pullUpFromPairs,
  relativeSlopeAt,
  resistanceAt,
  resistanceBand,
  selfHeating,
  type ThermistorLaw,
  temperatureAt,
  timeInBath,
} from '@truesweep/core';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { randomNumbers } from '../../packages/core/src/statistics/randomNumbers.js';
import { soak } from '../counts.js';
import { nodalAnalysis } from './nodalAnalysis.js';

const runs = { numRuns: 300 * soak };

const bLaw = fc
  .record({
    b: fc.double({ min: 2000, max: 5000, noNaN: true }),
    ohms: fc.double({ min: 100, max: 1e6, noNaN: true }),
    from: fc.double({ min: 0, max: 40, noNaN: true }),
    span: fc.double({ min: 20, max: 90, noNaN: true }),
  })
  .map(
    ({ b, ohms, from, span }): ThermistorLaw => ({
      ...{ kind: 'b', b, ohms, from, to: from + span, lowest: -40, highest: 150 },
    }),
  );
/** Laws near real ones: c of either sign and nothing. */
const steinhartHart = fc
  .record({
    a: fc.double({ min: 5e-4, max: 2e-3, noNaN: true }),
    b: fc.double({ min: 1.8e-4, max: 4e-4, noNaN: true }),
    c: fc.oneof(
      fc.double({ min: 1e-9, max: 4e-7, noNaN: true }),
      fc.double({ min: -1e-8, max: 1e-8, noNaN: true }),
      fc.constant(0),
    ),
  })
  .map(
    ({ a, b, c }): ThermistorLaw => ({
      ...{ kind: 'steinhart-hart', a, b, c, lowest: -40, highest: 150 },
    }),
  )
  .filter((law) => {
    try {
      return resistanceAt(law, 150) > 1e-3 && resistanceAt(law, -40) < 1e9;
    } catch {
      return false;
    }
  });
const tableLaw = fc
  .record({
    falls: fc.array(fc.double({ min: 0.02, max: 1.2, noNaN: true }), {
      minLength: 1,
      maxLength: 12,
    }),
    steps: fc.array(fc.double({ min: 1, max: 40, noNaN: true }), { minLength: 12, maxLength: 12 }),
    ohms: fc.double({ min: 1e3, max: 1e6, noNaN: true }),
    limits: fc.boolean(),
  })
  .map(({ falls, steps, ohms, limits }): ThermistorLaw => {
    let [temperature, log] = [-40, Math.log(ohms)];
    const at = () => ({
      temperature,
      ohms: Math.exp(log),
      ...(limits && { low: 0.9 * Math.exp(log), high: 1.1 * Math.exp(log) }),
    });
    const rows = [at()];
    falls.forEach((fall, i) => {
      temperature += steps[i]!;
      log -= fall;
      rows.push(at());
    });
    return { kind: 'table', rows };
  });
const anyLaw = fc.oneof(bLaw, steinhartHart, tableLaw);
const part = fc.double({ min: 0, max: 1, noNaN: true });
const within = (law: ThermistorLaw, fraction: number): number => {
  const rows = law.kind === 'table' ? law.rows : [];
  const low = rows[0]?.temperature ?? -40;
  const high = rows.at(-1)?.temperature ?? 150;
  return Math.min(high, low + fraction * (high - low));
};
const divider = fc.record({
  supply: fc.double({ min: 1, max: 24, noNaN: true }),
  pullUp: fc.double({ min: 100, max: 1e5, noNaN: true }),
  meter: fc.double({ min: 1e4, max: 1e9, noNaN: true }),
});

describe('laws of thermistors', () => {
  test('R → T → R to 1e-12, T → R → T to 1e-10 K', () => {
    fc.assert(
      fc.property(anyLaw, part, (law, fraction) => {
        const temperature = within(law, fraction);
        const ohms = resistanceAt(law, temperature);
        const back = temperatureAt(law, ohms);
        expect(Math.abs(back - temperature)).toBeLessThan(1e-10);
        expect(Math.abs(resistanceAt(law, back) / ohms - 1)).toBeLessThan(1e-12);
      }),
      runs,
    );
  });

  test('fall with temperature, and by the slope told', () => {
    fc.assert(
      fc.property(anyLaw, part, part, (law, one, other) => {
        const [cold, hot] = [one, other].sort((a, b) => a - b).map((at) => within(law, at)) as [
          number,
          number,
        ];
        fc.pre(hot - cold > 1e-6);
        expect(resistanceAt(law, cold)).toBeGreaterThan(resistanceAt(law, hot));
        expect(relativeSlopeAt(law, cold)).toBeLessThan(0);
        if (law.kind === 'table') return;
        const step = 1e-4;
        fc.pre(cold + step < 150 && cold - step > -40);
        const slope =
          (Math.log(resistanceAt(law, cold + step)) - Math.log(resistanceAt(law, cold - step))) /
          (2 * step);
        expect(Math.abs(slope / relativeSlopeAt(law, cold) - 1)).toBeLessThan(1e-5);
      }),
      runs,
    );
  });

  test('of exact points is found again to 1e-9', () => {
    fc.assert(
      fc.property(
        fc.oneof(bLaw, steinhartHart),
        fc.uniqueArray(fc.integer({ min: 0, max: 30 }), { minLength: 3, maxLength: 8 }),
        (law, places) => {
          const at = [-40, 150, ...places.map((place) => -38 + 6 * place)];
          const points = at.map((temperature) => ({
            temperature,
            ohms: resistanceAt(law, temperature),
          }));
          const { law: fitted, residuals } = fitThermistor(points);
          for (const residual of residuals) expect(Math.abs(residual)).toBeLessThan(1e-9);
          for (const temperature of [-39, 0, 33, 149]) {
            const ratio = resistanceAt(fitted, temperature) / resistanceAt(law, temperature);
            expect(Math.abs(ratio - 1)).toBeLessThan(1e-9);
          }
        },
      ),
      runs,
    );
  });

  test('chi-square of the fit is as large as its degrees of freedom, and chance names few outliers', () => {
    const random = randomNumbers(11);
    const law: ThermistorLaw = {
      ...{
        kind: 'steinhart-hart',
        a: 1.336e-3,
        b: 2.559e-4,
        c: 1.512e-7,
        lowest: -60,
        highest: 200,
      },
    };
    let [sum, named] = [0, 0];
    const times = 2000 * soak;
    for (let i = 0; i < times; i++) {
      const points = [-20, 0, 20, 40, 60, 80, 100].map((temperature) => ({
        temperature: temperature + 0.2 * random.normal(),
        ohms: resistanceAt(law, temperature),
        uncertainty: 0.2,
      }));
      const fit = fitThermistor(points);
      sum += fit.chiSquare! / times;
      const unweighted = points.map(({ temperature, ohms }) => ({ temperature, ohms }));
      if (fitThermistor(unweighted).outlier) named++;
    }
    console.log(
      `chi-square ${sum.toFixed(2)} for 4, outliers named by chance ${((100 * named) / times).toFixed(2)} %`,
    );
    expect(Math.abs(sum - 4)).toBeLessThan(0.25);
    expect(named / times).toBeLessThan(0.02);
  });

  test('the band holds 100,000 draws of sensors, and their extremes come near its edges', () => {
    const random = randomNumbers(23);
    const between = (half: number) => half * (2 * random.uniform() - 1);
    const law: ThermistorLaw = {
      ...{ kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100, lowest: -40, highest: 150 },
    };
    const tolerances = { ohms: 0.05, b: 0.01, kelvins: 0.3 };
    const temperatures = [-40, 0, 25, 90, 150];
    const bands = temperatures.map((at) => resistanceBand(law, at, tolerances));
    const extremes = temperatures.map(() => [Infinity, 0] as [number, number]);
    for (let i = 0; i < 100_000; i++) {
      const [ohms, b, kelvins] = [
        2044 * (1 + between(0.05)),
        3640 * (1 + between(0.01)),
        between(0.3),
      ];
      temperatures.forEach((at, k) => {
        // The law itself, not the code under test: a sensor that is off by so many kelvins.
        const own = at - kelvins;
        const r = ohms * Math.exp(b * (1 / (own + 273.15) - 1 / 298.15));
        const extreme = extremes[k]!;
        extreme[0] = Math.min(extreme[0], r);
        extreme[1] = Math.max(extreme[1], r);
      });
    }
    extremes.forEach(([low, high], k) => {
      const band = bands[k]!;
      // A B that is off turns the slope of the kelvins by as much: a few parts in ten thousand.
      expect(low).toBeGreaterThan(band.low * 0.9995);
      expect(high).toBeLessThan(band.high * 1.0005);
      expect(high / low).toBeGreaterThan((band.high / band.low) ** 0.9);
    });
  });
});

describe('on a pull-up', () => {
  test('volts → ohms → volts to 1e-12', () => {
    fc.assert(
      fc.property(divider, fc.double({ min: 1, max: 1e6, noNaN: true }), (fed, ohms) => {
        const volts = dividerVolts(fed, ohms);
        expect(Math.abs(dividerVolts(fed, dividerOhms(fed, volts)) / volts - 1)).toBeLessThan(
          1e-12,
        );
      }),
      runs,
    );
  });

  test('as the network solver and nodal analysis at 64 digits have it', () => {
    fc.assert(
      fc.property(divider, fc.double({ min: 1, max: 1e6, noNaN: true }), (fed, ohms) => {
        const circuit = {
          source: { volts: 0 },
          limiter: 1000,
          sensor: { track: 5000 },
          load: {
            pullUp: { ohms: fed.pullUp, volts: fed.supply },
            pullDown: 1 / (1 / ohms + 1 / fed.meter),
          },
          faults: [{ kind: 'lifted-wiper' }],
        } as const;
        const volts = dividerVolts(fed, ohms);
        const { output } = operatingPoint(circuit, 0.5);
        expect(Math.abs(volts / (output as number) - 1)).toBeLessThan(1e-12);
        const exact = nodalAnalysis(circuit, 0.5).volts.get('signal')!;
        expect(Math.abs(volts / exact.toNumber() - 1)).toBeLessThan(1e-12);
      }),
      { numRuns: 100 * soak },
    );
  });

  test('the slope is the change of voltage, and the chosen pull-up is as good as any', () => {
    fc.assert(
      fc.property(fc.oneof(bLaw, steinhartHart), divider, part, (law, fed, fraction) => {
        const at = -39 + 188 * fraction;
        const volts = (t: number) => dividerVolts(fed, resistanceAt(law, t));
        const slope = (volts(at + 1e-3) - volts(at - 1e-3)) / 2e-3;
        const told = dividerSlope(fed, law, at);
        expect(Math.abs(slope - told)).toBeLessThan(1e-6 * Math.abs(told) + 1e-8);
        const { ohms, slope: least } = choosePullUp(law, 0, 100, 5);
        const worst = (pullUp: number) =>
          Math.min(
            ...[0, 25, 50, 75, 100].map((t) => -dividerSlope({ supply: 5, pullUp }, law, t)),
          );
        expect(Math.abs(worst(ohms) / least - 1)).toBeLessThan(1e-9);
        for (const factor of [0.5, 0.9, 1.1, 2]) {
          expect(worst(factor * ohms)).toBeLessThanOrEqual(least * (1 + 1e-9));
        }
      }),
      runs,
    );
  });

  test('self-heating is a fixed point, and grows as the medium carries less away', () => {
    fc.assert(
      fc.property(bLaw, divider, part, (law, fed, fraction) => {
        const surroundings = -40 + 120 * fraction;
        const rises = [0.05, 0.02, 0.01].map((dissipation) => {
          try {
            const { rise, temperature, ohms, volts, watts } = selfHeating(
              law,
              fed,
              surroundings,
              dissipation,
            );
            expect(Math.abs(surroundings + watts / dissipation - temperature)).toBeLessThan(1e-9);
            expect(Math.abs(resistanceAt(law, temperature) / ohms - 1)).toBeLessThan(1e-9);
            expect(Math.abs(dividerVolts(fed, ohms) - volts)).toBeLessThan(1e-9);
            return rise;
          } catch (error) {
            expect(error).toBeInstanceOf(InputError);
            return Infinity;
          }
        });
        expect(rises[0]).toBeLessThanOrEqual(rises[1]!);
        expect(rises[1]).toBeLessThanOrEqual(rises[2]!);
      }),
      runs,
    );
  });

  test('a pull-up is found again from its own pairs', () => {
    fc.assert(
      fc.property(
        divider,
        fc.array(fc.double({ min: 10, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 9 }),
        ({ supply, pullUp }, all) => {
          const pairs = all.map((ohms) => ({
            ohms,
            volts: dividerVolts({ supply, pullUp }, ohms),
          }));
          const { each } = pullUpFromPairs(pairs, supply);
          for (const one of each) expect(Math.abs(one / pullUp - 1)).toBeLessThan(1e-9);
        },
      ),
      runs,
    );
  });
});

describe('judging', () => {
  const law: ThermistorLaw = {
    ...{ kind: 'b', b: 3640, ohms: 2044, from: 25, to: 100, lowest: -40, highest: 150 },
  };
  const sensor = { law, tolerances: { ohms: 0.05, b: 0.01 } };
  const readOn = {
    ...{ supply: 5, pullUp: 1000, supplyUncertainty: 0.005, pullUpUncertainty: 2 },
  };
  const ohmsAt = (temperature: number, ohms: number) => ({
    ...{ temperature, temperatureUncertainty: 0.1, ohms, uncertainty: 0.002 * ohms },
  });
  const voltsAt = (temperature: number, volts: number) => ({
    ...{ temperature, temperatureUncertainty: 0.1, volts, uncertainty: 0.003 },
  });

  test('a break and a short fail, by ohms and by volts', () => {
    for (const ohms of [Infinity, 0]) {
      const judged = judgeThermistor(sensor, [
        { temperature: 20, temperatureUncertainty: 0.1, ohms, uncertainty: 1 },
      ]);
      expect(judged.verdict).toBe('fail');
    }
    for (const volts of [5, 0]) {
      for (const isProved of [true, false]) {
        const judged = judgeThermistor(sensor, [voltsAt(20, volts)], { ...readOn, isProved });
        expect(judged.verdict).toBe('fail');
      }
    }
  });

  test('voltages that another pull-up explains say nothing unless the pull-up was proved', () => {
    const readings = [0, 90].map((t) =>
      voltsAt(t, dividerVolts({ supply: 5, pullUp: 2740 }, resistanceAt(law, t))),
    );
    const unproved = judgeThermistor(sensor, readings, { ...readOn, isProved: false });
    expect(unproved).toMatchObject({ verdict: 'inconclusive' });
    expect(unproved.advice[0]).toBe('prove-pull-up');
    expect(judgeThermistor(sensor, readings, { ...readOn, isProved: true }).verdict).toBe('fail');
  });

  test('a sensor that is proved sound by ohms does not fail on a pull-up that was not proved', () => {
    const judged = judgeThermistor(
      sensor,
      [
        ohmsAt(0, resistanceAt(law, 0)),
        ohmsAt(60, resistanceAt(law, 60)),
        voltsAt(20, dividerVolts({ supply: 5, pullUp: 2200 }, resistanceAt(law, 20))),
      ],
      { ...readOn, isProved: false },
    );
    expect(judged.verdict).toBe('inconclusive');
    expect(judged.advice).toContain('prove-pull-up');
  });

  test('one that the current warms beyond its law is read by an ohmmeter, and fails by nothing', () => {
    const short = { ...law, highest: 100 } as ThermistorLaw;
    const hot = { law: short, tolerances: sensor.tolerances, dissipation: 0.004 };
    const feed = { ...readOn, pullUp: 330, isProved: true };
    const judged = judgeThermistor(hot, [voltsAt(99, 1.645)], feed);
    expect(judged.checks[0]?.outcome).toBe('cannot-tell');
    expect(judged.advice).toContain('read-by-ohmmeter');
  });

  test('where voltages conform, or none was read, no other pull-up is asked for', () => {
    const unproved = { ...readOn, isProved: false };
    const right = dividerVolts({ supply: 5, pullUp: 1000 }, resistanceAt(law, 20));
    for (const reading of [voltsAt(20, right), ohmsAt(20, resistanceAt(law, 20))]) {
      const { advice } = judgeThermistor(sensor, [reading], unproved);
      expect(advice).toEqual(['read-farther-apart']);
    }
  });

  test('tolerances of nothing are none', () => {
    const { verdict, advice } = judgeThermistor({ law, tolerances: {} }, [ohmsAt(0, 6300)]);
    expect([verdict, advice[0]]).toEqual(['inconclusive', 'state-tolerances']);
  });

  test('a wrong curve is no other pull-up', () => {
    const wrong: ThermistorLaw = { ...law, b: 4400 } as ThermistorLaw;
    const readings = [0, 90].map((t) =>
      voltsAt(t, dividerVolts({ supply: 5, pullUp: 1000 }, resistanceAt(wrong, t))),
    );
    expect(judgeThermistor(sensor, readings, { ...readOn, isProved: false }).verdict).toBe('fail');
  });

  test('without tolerances nothing is judged', () => {
    const { verdict, advice } = judgeThermistor({ law }, [ohmsAt(0, 6000), ohmsAt(90, 235)]);
    expect([verdict, advice[0]]).toEqual(['inconclusive', 'state-tolerances']);
  });

  test('an added reading never turns a fail into a pass', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(part, fc.double({ min: 0.8, max: 1.2, noNaN: true })), {
          minLength: 2,
          maxLength: 5,
        }),
        (all) => {
          const readings = all.map(([fraction, factor]) => {
            const t = -20 + 120 * fraction;
            return ohmsAt(t, resistanceAt(law, t) * factor);
          });
          const fails = judgeThermistor(sensor, readings.slice(0, -1)).verdict === 'fail';
          if (fails) expect(judgeThermistor(sensor, readings).verdict).toBe('fail');
        },
      ),
      runs,
    );
  });

  test('waiting longer brings a sensor nearer to its bath', () => {
    expect(timeInBath(10, 80, 80 * Math.exp(-5))).toBeCloseTo(50, 9);
    expect(timeInBath(10, 1, 2)).toBe(0);
  });
});
