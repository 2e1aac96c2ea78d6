import {
  choosePullUp,
  compareSoaked,
  dividerOhms,
  dividerSlope,
  dividerVolts,
  fitThermistor,
  judgeThermistor,
  pullUpFromPairs,
  relativeSlopeAt,
  resistanceAt,
  resistanceBand,
  selfHeating,
  shownTemperature,
  type ThermistorLaw,
  temperatureAt,
} from '@truesweep/core';
import { describe, expect, test } from 'vitest';

const table = (rows: readonly (readonly [temperature: number, ohms: number])[]): ThermistorLaw => ({
  kind: 'table',
  rows: rows.map(([temperature, ohms]) => ({ temperature, ohms })),
});

/** Two 10 kΩ elements, from the R/T tables of the Linux kernel's hwmon thermistor driver. */
const first = [
  ...([
    [-40, 190_030],
    [0, 27_326],
    [20, 12_090],
    [25, 10_000],
  ] as const),
  ...([
    [60, 3_019],
    [85, 1_451],
    [100, 973],
    [125, 531],
  ] as const),
] as const;
const second = [
  ...([
    [-40, 247_565],
    [0, 28_674],
    [20, 12_169],
    [25, 10_000],
  ] as const),
  ...([
    [60, 2_985],
    [85, 1_454],
    [100, 990],
    [125, 556],
  ] as const),
] as const;
/** A coolant sensor's table, from a published service manual. */
const coolant = [
  ...([
    [-40, 48_805],
    [-20, 15_971],
    [0, 5_975],
    [20, 2_502],
    [25, 2_044],
  ] as const),
  ...([
    [40, 1_152],
    [60, 575.8],
    [80, 308.6],
    [100, 175.7],
    [120, 105.4],
    [140, 66.2],
  ] as const),
] as const;

const bOf = (points: readonly (readonly [number, number])[], from: number, to: number): number => {
  const at = (wanted: number) => points.find(([t]) => t === wanted)!;
  const { law } = fitThermistor(
    [at(from), at(to)].map(([temperature, ohms]) => ({ temperature, ohms })),
  );
  return law.kind === 'b' ? law.b : Number.NaN;
};
const bLaw = (
  points: readonly (readonly [number, number])[],
  from: number,
  to: number,
): ThermistorLaw => ({
  kind: 'b',
  b: bOf(points, from, to),
  ohms: points.find(([t]) => t === from)![1],
  from,
  to,
  lowest: -60,
  highest: 200,
});
const steinhartHart = (
  points: readonly (readonly [number, number])[],
  at: readonly number[],
): ThermistorLaw => {
  const chosen = points.filter(([t]) => at.includes(t));
  const { law } = fitThermistor(chosen.map(([temperature, ohms]) => ({ temperature, ohms })));
  return { ...law, lowest: -60, highest: 200 } as ThermistorLaw;
};

describe('one B', () => {
  test('of two elements with the same R25: B25/85, B25/50 and B25/100 of one part differ (computed from the tables)', () => {
    expect(bOf(first, 25, 85)).toBeCloseTo(3435, -1);
    expect(bOf(first, 25, 100)).toBeCloseTo(3456, -1);
    expect(bOf(second, 25, 85)).toBeCloseTo(3432, -1);
  });

  test.each([
    [-40, 4.3],
    [0, 1.1],
    [60, -0.4],
    [100, 0.6],
    [125, 1.9],
  ])('of the first element misreads %d °C by %d K (computed)', (temperature, error) => {
    const ohms = first.find(([t]) => t === temperature)![1];
    expect(temperatureAt(bLaw(first, 25, 85), ohms) - temperature).toBeCloseTo(error, 1);
  });

  test('of the second stays within 0.06 K, rounded: this element is a B law (computed)', () => {
    for (const [temperature, ohms] of second) {
      expect(Math.abs(temperatureAt(bLaw(second, 25, 85), ohms) - temperature)).toBeLessThan(0.065);
    }
  });

  test('of a fluid sensor (published data sheet: 145 880, 15 000 and 945 Ω at −20, 25 and 100 °C) misreads −20 °C by 2.7 K', () => {
    const points = [
      [-20, 145_880],
      [25, 15_000],
      [100, 945],
    ] as const;
    expect(Math.abs(temperatureAt(bLaw(points, 25, 100), 145_880) + 20)).toBeCloseTo(2.7, 1);
  });

  test('of the coolant sensor: B25/100 is 3640 K and misreads −40 °C by 3.5 K (computed)', () => {
    expect(bOf(coolant, 25, 100)).toBeCloseTo(3640, -1);
    expect(Math.abs(temperatureAt(bLaw(coolant, 25, 100), 48_805) + 40)).toBeCloseTo(3.5, 1);
  });

  test('two curves that meet at 25 °C part by −20 % at 100 °C and +22 % at −20 °C: one temperature shows nothing (computed)', () => {
    const of = (b: number): ThermistorLaw => ({
      ...{ kind: 'b', b, ohms: 2000, from: 25, to: 85, lowest: -40, highest: 120 },
    });
    const apart = (t: number) => resistanceAt(of(3980), t) / resistanceAt(of(3640), t) - 1;
    expect(apart(25)).toBeCloseTo(0, 12);
    expect(apart(100)).toBeCloseTo(-0.2, 2);
    expect(apart(-20)).toBeCloseTo(0.22, 2);
  });
});

describe("Steinhart and Hart's law", () => {
  test('through three points: the example of a public package (npm steinhart-hart, README): 7000 Ω is 307.9031 K', () => {
    const { law } = fitThermistor([
      { temperature: -25, ohms: 87_041 },
      { temperature: 0, ohms: 27_326 },
      { temperature: 25, ohms: 10_000 },
    ]);
    expect(temperatureAt({ ...law, highest: 50 } as ThermistorLaw, 7000) + 273.15).toBeCloseTo(
      307.9031,
      4,
    );
    // Computed.
    expect(law).toMatchObject({ kind: 'steinhart-hart' });
    if (law.kind !== 'steinhart-hart') return;
    expect(law.a).toBeCloseTo(8.97554e-4, 9);
    expect(law.b).toBeCloseTo(2.50179e-4, 9);
    expect(law.c).toBeCloseTo(1.94834e-7, 12);
  });

  test('through 0, 25 and 85 °C misses the first element by at most 0.17 K (computed)', () => {
    const law = steinhartHart(first, [0, 25, 85]);
    for (const [t, ohms] of first)
      expect(Math.abs(temperatureAt(law, ohms) - t)).toBeLessThan(0.175);
  });

  test('through 0, 25 and 100 °C misses the coolant sensor by at most 0.016 K, and has these coefficients (computed)', () => {
    const law = steinhartHart(coolant, [0, 25, 100]);
    for (const [t, ohms] of coolant)
      expect(Math.abs(temperatureAt(law, ohms) - t)).toBeLessThan(0.0165);
    if (law.kind !== 'steinhart-hart') throw new Error('another law');
    expect(law.a).toBeCloseTo(1.336138e-3, 9);
    expect(law.b).toBeCloseTo(2.559342e-4, 9);
    expect(law.c).toBeCloseTo(1.51221e-7, 12);
  });

  test('a c of nearly nothing is the law of one B', () => {
    const ohms = (t: number) => 10_000 * Math.exp(3432 * (1 / (t + 273.15) - 1 / 298.15));
    const { law } = fitThermistor(
      [-40, 0, 25, 60, 125].map((temperature) => ({ temperature, ohms: ohms(temperature) })),
    );
    for (const t of [-40, -13, 25, 99, 125]) {
      expect(resistanceAt(law, t) / ohms(t) - 1).toBeCloseTo(0, 9);
      expect(temperatureAt(law, resistanceAt(law, t))).toBeCloseTo(t, 9);
    }
  });

  test('a misprint that only residuals show: a published manual, table A.1, of which 40 °C is off by −0.47 K', () => {
    const printed = [
      ...[
        [0, 32_128],
        [10, 19_549],
        [20, 12_262],
        [25, 9_814],
        [30, 7_908],
        [40, 5_331],
        [50, 3_542],
      ],
    ].map(([temperature, ohms]) => ({ temperature: temperature!, ohms: ohms! }));
    const fit = fitThermistor(printed);
    expect(fit.outlier?.point).toBe(5);
    expect(fit.outlier?.chance).toBeLessThan(1e-3);
    const others = fitThermistor(printed.filter((_, i) => i !== 5));
    expect(others.outlier).toBeUndefined();
    for (const residual of others.residuals) expect(Math.abs(residual)).toBeLessThan(0.005);
    expect(temperatureAt(others.law, 5_331) - 40).toBeCloseTo(-0.47, 1);
    // Two digits exchanged: 5231 Ω would fit (computed).
    expect(resistanceAt(others.law, 40)).toBeCloseTo(5231, -1);
  });
});

describe('a table', () => {
  test('between its rows: ln R over 1/T errs least (computed on the first element)', () => {
    const law = table(first);
    const steps = table(first.filter(([t]) => [-40, 0, 25, 60, 100, 125].includes(t)));
    expect(Math.abs(temperatureAt(steps, 12_090) - 20)).toBeLessThan(0.12);
    expect(temperatureAt(law, 12_090)).toBeCloseTo(20, 9);
  });

  test('within one step of a standard curve: published example, 4.7 kΩ × 2.2739 = 10.6873 kΩ at 5 °C, α 4.4 %/K: 9.7932 kΩ at 7 °C', () => {
    const temperature = 5 + 273.15;
    const b = 0.044 * temperature ** 2;
    const law: ThermistorLaw = { kind: 'b', b, ohms: 4700 * 2.2739, from: 5, to: 10 };
    expect(resistanceAt(law, 7)).toBeCloseTo(9793.2, 1);
  });

  test('nothing is extrapolated', () => {
    expect(() => resistanceAt(table(coolant), 150)).toThrow(/nothing is extrapolated/);
    expect(() => temperatureAt(table(coolant), 50)).toThrow(/nothing is extrapolated/);
  });
});

describe('tolerances', () => {
  const law = bLaw(coolant, 25, 100);

  test.each([
    // Computed: R25 ±5 % and B ±1 % together.
    [-20, 7.3, 1.3],
    [0, 6.2, 1.3],
    [25, 5.0, 1.2],
    [60, 6.4, 1.9],
    [100, 7.6, 2.9],
  ])('at %d °C ±%d % are %d K', (temperature, percent, kelvins) => {
    const { high, nominal } = resistanceBand(law, temperature, { ohms: 0.05, b: 0.01 });
    const part = high / nominal - 1;
    expect(Math.abs(100 * part - percent)).toBeLessThan(0.06);
    expect(part / -relativeSlopeAt(law, temperature)).toBeCloseTo(kelvins, 1);
  });

  test('a data sheet’s rule Z = (1 + X)(1 + Y) − 1, 0 °C: 5 % and 0.89 % with 5.08 %/K are ±1.17 °C (published example)', () => {
    // A law of that slope: B = 5.08 %/K · T², 0.89 % from its own tolerance.
    const slope: ThermistorLaw = {
      ...{ kind: 'b', b: 0.0508 * 273.15 ** 2, ohms: 10_000, from: 25, to: 0 },
    };
    const b = Math.log(1.0089) / Math.log(resistanceAt(slope, 0) / 10_000);
    const { high, nominal } = resistanceBand(slope, 0, { ohms: 0.05, b });
    expect((high / nominal - 1) / 0.0508).toBeCloseTo(1.17, 2);
  });

  test('a fluid sensor, ±5 % at 25 °C: printed ±1.1 °C there (published data sheet; 5 % by 4.6 %/K)', () => {
    const points = [
      [0, 49_254],
      [25, 15_000],
      [50, 5_356],
    ] as const;
    const alpha = -relativeSlopeAt(steinhartHart(points, [0, 25, 50]), 25);
    expect(0.05 / alpha).toBeCloseTo(1.1, 1);
  });
});

describe('on a pull-up', () => {
  test('a service manual’s voltages on 1.0 kΩ at 5 V: 20, 80, 90 and 110 °C (published service manual)', () => {
    const volts = (ohms: number) => dividerVolts({ supply: 5, pullUp: 1000 }, ohms);
    // Printed “≈ 3.6, 1.2, 1.0, 0.65 V” for these windows of resistance.
    for (const [low, high, printed] of [
      [2100, 2900, 3.6],
      [295, 365, 1.2],
      [240, 260, 1.0],
      [140, 160, 0.65],
    ] as const) {
      expect(volts(low)).toBeLessThan(printed);
      expect(volts(high)).toBeGreaterThan(printed - 0.005);
    }
    expect([volts(2100), volts(2900)].map((v) => v.toFixed(2))).toEqual(['3.39', '3.72']);
  });

  test('the same thermistor on 2.74 kΩ: 2.4, 0.54 and 0.41 V at 20, 80 and 90 °C (another published service manual)', () => {
    const volts = (ohms: number) => dividerVolts({ supply: 5, pullUp: 2740 }, ohms);
    expect(volts(2500)).toBeCloseTo(2.4, 1);
    expect(volts(330)).toBeCloseTo(0.54, 2);
    expect(volts(250)).toBeCloseTo(0.41, 1);
  });

  test('the coolant sensor’s table on 1.0 kΩ at 5 V (computed)', () => {
    const volts = coolant.map(([, ohms]) => dividerVolts({ supply: 5, pullUp: 1000 }, ohms));
    expect(volts.map((one) => one.toFixed(3))).toEqual([
      ...['4.900', '4.705', '4.283', '3.572', '3.357', '2.677', '1.827', '1.179', '0.747', '0.477'],
      '0.310',
    ]);
  });

  test('the pull-up of a published service table: about 1 kΩ', () => {
    const found = pullUpFromPairs(
      [
        { ohms: 2370, volts: 3.48 },
        { ohms: 2630, volts: 3.58 },
        { ohms: 236, volts: 0.97 },
        { ohms: 260, volts: 1.04 },
      ],
      5,
    );
    expect(found.each.map(Math.round)).toEqual([1035, 1043, 980, 990]);
    expect([found.low, found.high].map(Math.round)).toEqual([980, 1043]);
    expect(found.ohms).toBeCloseTo(1012, 0);
  });

  test.each([
    [330, 21.7, 33.4],
    [1000, 43.1, 21.0],
    [2200, 52.7, 11.8],
    [4700, 48.1, 6.1],
  ])('slopes on %d Ω: %d mV/K at 20 °C, %d at 90 °C (computed)', (pullUp, cold, hot) => {
    const law = { ...bLaw(coolant, 25, 100), b: 3640 } as ThermistorLaw;
    const slope = (t: number) => -1000 * dividerSlope({ supply: 5, pullUp }, law, t);
    expect(Math.abs(slope(20) / cold - 1)).toBeLessThan(0.02);
    expect(Math.abs(slope(90) / hot - 1)).toBeLessThan(0.02);
  });

  test('a pull-up 5 % too high reads hotter by 0.9, 1.2 and 1.7 K at −20, 20 and 90 °C (computed)', () => {
    const law = bLaw(coolant, 25, 100);
    for (const [t, error] of [
      [-20, 0.9],
      [20, 1.2],
      [90, 1.7],
    ] as const) {
      // Fed through 5 % more and taken for the nominal pull-up the sensor seems to have 5 % less.
      const volts = dividerVolts({ supply: 5, pullUp: 1050 }, resistanceAt(law, t));
      const seen = temperatureAt(law, dividerOhms({ supply: 5, pullUp: 1000 }, volts));
      expect(Math.abs(seen - t - error)).toBeLessThan(0.1);
    }
  });

  test('a 10 MΩ meter takes 0.5, 1.4, 3.5 and 13 % of 48.8, 145.9, 366.7 kΩ and 1.49 MΩ; across 1 kΩ never 0.5 mV (computed)', () => {
    for (const [ohms, percent] of [
      [48.8e3, 0.5],
      [145.9e3, 1.4],
      [366.7e3, 3.5],
      [1.49e6, 13],
    ] as const) {
      // From a source of current, as an ohmmeter is: a pull-up that is endless beside it.
      const source = { supply: 1e6, pullUp: 1e12 };
      const alone = dividerVolts(source, ohms);
      const part = 1 - dividerVolts({ ...source, meter: 1e7 }, ohms) / alone;
      expect(Math.abs(100 * part - percent)).toBeLessThan(0.06 * percent + 0.02);
      const [bare, loaded] = [{}, { meter: 1e7 }].map((meter) =>
        dividerVolts({ supply: 5, pullUp: 1000, ...meter }, ohms),
      );
      expect(bare! - loaded!).toBeLessThan(0.5e-3 + 1e-9);
    }
  });

  test('−40 °C and a break are 0.1 V apart on 1 kΩ (computed; a published manual sets P0118 above 4.9 V)', () => {
    const at = (ohms: number) => dividerVolts({ supply: 5, pullUp: 1000 }, ohms);
    expect(at(Number.POSITIVE_INFINITY) - at(48_805)).toBeCloseTo(0.1, 2);
  });

  test.each([
    [0.024, 0.21],
    [0.007, 0.74],
    [0.004, 1.3],
    [0.001, 5.6],
  ])('self-heating at %d W/K: %d K (computed; 20 °C, 1.0 kΩ, 5 V)', (dissipation, rise) => {
    const heated = selfHeating(table(coolant), { supply: 5, pullUp: 1000 }, 20, dissipation);
    expect(Math.abs(heated.rise / rise - 1)).toBeLessThan(0.05);
    expect(heated.watts).toBeCloseTo(5.1e-3, 3);
  });

  test('the pull-up of most resolution lies between the resistances of the ends', () => {
    const law: ThermistorLaw = { kind: 'b', b: 4000, ohms: 25_000, from: 25, to: 85, lowest: 0 };
    const chosen = choosePullUp(law, 0, 50, 5);
    expect(chosen.ohms).toBeGreaterThan(resistanceAt(law, 50));
    expect(chosen.ohms).toBeLessThan(resistanceAt(law, 0));
  });
});

describe('scan tools (PIDs 05 and 0F by ISO 15031-5 and SAE J1979, as quoted publicly)', () => {
  test.each([
    [0, -40],
    [60, 20],
    [120, 80],
    [255, 215],
  ])('the byte %d is %d °C', (count, celsius) => {
    expect(shownTemperature(celsius)).toEqual({ count, celsius });
  });
  test('a break shows the end: −40 °C, as a published service manual says', () => {
    expect(shownTemperature(-60)).toEqual({ count: 0, celsius: -40 });
  });
});

describe('judging', () => {
  const rows = [
    { temperature: 20, ohms: 2450, low: 2100, high: 2900 },
    { temperature: 80, ohms: 328, low: 295, high: 365 },
    { temperature: 90, ohms: 250, low: 240, high: 260 },
    { temperature: 110, ohms: 150, low: 140, high: 160 },
  ];
  const law: ThermistorLaw = { kind: 'table', rows };
  const reading = (temperature: number, ohms: number, kelvins: number) => ({
    ...{ temperature, temperatureUncertainty: kelvins, ohms, uncertainty: 0.002 * ohms },
  });

  test('a thermometer of ±1 K can’t judge ±4 % at 90 °C: it, and not the sensor, decides (limits of a published service manual)', () => {
    const { checks, verdict, advice } = judgeThermistor({ law }, [
      reading(90, 258, 0.5),
      reading(20, 2500, 0.5),
    ]);
    expect(checks[0]).toMatchObject({ outcome: 'cannot-tell', mostUncertain: 'thermometer' });
    expect(verdict).toBe('inconclusive');
    expect(advice[0]).toBe('better-thermometer');
    // ±16 % at 20 °C it can.
    expect(checks[1]?.outcome).toBe('conforms');
    expect(judgeThermistor({ law }, [reading(90, 256, 0.1), reading(20, 2500, 0.5)]).verdict).toBe(
      'pass',
    );
  });

  test('one temperature can’t show a wrong curve', () => {
    const { verdict, advice } = judgeThermistor({ law }, [reading(20, 2500, 0.5)]);
    expect([verdict, advice]).toEqual(['inconclusive', ['read-farther-apart']]);
    expect(judgeThermistor({ law }, [reading(20, 3500, 0.5)]).verdict).toBe('fail');
  });

  test('altitude ignored at 1500 m makes a sound sensor look 14 % too high at “100 °C” (computed)', () => {
    const curve = bLaw(coolant, 25, 100);
    expect(resistanceAt(curve, 94.98) / resistanceAt(curve, 100) - 1).toBeCloseTo(0.14, 2);
  });

  test('a cold soak says that two differ, not which; a third thermometer decides', () => {
    const sensor = { law: table(coolant), tolerances: { kelvins: 1 } };
    const one = { ...sensor, ohms: resistanceAt(sensor.law, 18), uncertainty: 5 };
    const other = { ...sensor, ohms: resistanceAt(sensor.law, 13), uncertainty: 5 };
    expect(compareSoaked(one, other)).toMatchObject({
      verdict: 'inconclusive',
      advice: ['read-thermometer'],
    });
    const decided = compareSoaked(one, other, { temperature: 18.2, uncertainty: 0.1 });
    expect(decided).toMatchObject({ verdict: 'fail', advice: ['replace-other'] });
  });
});
