import {
  type Circuit,
  type Instrument,
  inputCorner,
  inputOhms,
  integratorRejection,
  noticedFaults,
  openWiper,
  openWiperReaches,
  operatingPoint,
  riseTime,
  settlingTime,
  sightOf,
  sourceResistance,
  withInstrument,
} from '@truesweep/core';
import { describe, expect, test } from 'vitest';

/**
 * Source: a bench multimeter's manual, table of integration times: 1, 10 and 100 power-line cycles have 60 dB normal-mode rejection, 0.02 and
 * 0.2 have none. The 60 dB are those of a line frequency that is off by 0.1 %.
 */
describe('rejection of the mains by an integrating meter', () => {
  test.each([
    [50, 1, 0.02],
    [60, 1, 1 / 60],
    [50, 10, 0.2],
    [50, 100, 2],
  ])(
    '%d Hz over %d power-line cycles: complete, and 60 dB or nearly so when the line is off by 0.1 %%',
    (hertz, _, aperture) => {
      expect(integratorRejection(hertz, aperture).decibels).toBeGreaterThan(250);
      const off = integratorRejection(hertz * 0.999, aperture).decibels;
      expect(off).toBeGreaterThan(59.9);
    },
  );

  test.each([
    [50, 0.003],
    [60, 0.003],
  ])('%d Hz over 0.2 power-line cycles or less: next to none', (hertz, aperture) => {
    expect(integratorRejection(hertz, aperture).decibels).toBeLessThan(0.6);
  });

  test.each([
    [50, 0.0004],
    [60, 0.0004],
  ])('%d Hz over 0.02 power-line cycles: none', (hertz, aperture) => {
    expect(integratorRejection(hertz, aperture).decibels).toBeLessThan(0.1);
  });

  // Computed from the sinc.
  test.each([
    [49.95, 59.9913],
    [49.5, 39.9141],
    [50.5, 40.0879],
    [60, 16.1422],
  ])('20 ms at %d Hz: %d dB', (hertz, decibels) => {
    expect(integratorRejection(hertz, 0.02).decibels).toBeCloseTo(decibels, 4);
  });
});

/** Source: T. R. Kuphaldt, Lessons in Electric Circuits, vol. I (DC), ch. 8, "Voltmeter design": 1 mA, 500 Ω movement. */
describe('multipliers', () => {
  test.each([
    [1, 500],
    [10, 9500],
    [100, 99_500],
    [1000, 999_500],
  ])('%d V: a multiplier of %d Ω before the movement', (range, multiplier) => {
    const needle = {
      kind: 'needle-meter',
      name: 'Movement',
      ohmsPerVolt: 1 / 1e-3,
      range,
    } as const;
    expect(inputOhms(needle) - 500).toBeCloseTo(multiplier, 6);
  });

  /** 50 µA at full scale are 20 kΩ/V; computed. */
  test('50 µA', () => expect(1 / 50e-6).toBeCloseTo(20e3, 9));
});

describe('loading by an instrument', () => {
  const reading = (circuit: Circuit, instrument: Instrument, position: number) => {
    const { output } = operatingPoint(
      { ...circuit, load: withInstrument(circuit.load, instrument) },
      position,
    );
    return output;
  };
  const needle = (ohmsPerVolt: number, range: number) =>
    ({ kind: 'needle-meter', name: 'Needle', ohmsPerVolt, range }) as const;

  /** Source: the same, "Voltmeter impact on measured circuit": 24 V over two 250 MΩ, a 10 MΩ meter shows 0.8889 V. */
  test('a 10 MΩ meter', () => {
    const circuit = { source: { volts: 24 }, limiter: 0, sensor: { track: 500e6 }, load: {} };
    const meter = {
      kind: 'digital-meter',
      name: 'Meter',
      inputOhms: 10e6,
      ranges: [19.99],
      counts: 1999,
      aperture: 0.1,
    } as const;
    expect(reading(circuit, meter, 0.5)).toBeCloseTo(0.8889, 4);
  });

  /** Source: electronics tutorial "elect99" at edudirectory.50webs.com: 30 V over two 400 kΩ, 20 kΩ/V on 20 V, shows 10 V. */
  test('20 kΩ/V', () => {
    const circuit = { source: { volts: 30 }, limiter: 0, sensor: { track: 800e3 }, load: {} };
    expect(reading(circuit, needle(20e3, 20), 0.5)).toBeCloseTo(10, 9);
  });

  /** Source: askfilo, exercise 3338383131393736: 2000 Ω/V on the 10 V range at a source of 10 kΩ shows two thirds. */
  test('2000 Ω/V', () => {
    const circuit = { source: { volts: 9 }, limiter: 10e3, sensor: { track: 1e15 }, load: {} };
    expect(reading(circuit, needle(2000, 10), 1)).toBeCloseTo(6, 6);
  });
});

/**
 * Source: a maker's service manual (jdmfsm.info, rm000000uii003x): P0122 at 0.2 V or less, P0123 at 4.8 V or more, each for 2 s. Check values only.
 */
describe('what a vehicle notices by published limits', () => {
  const unit = {
    kind: 'control-unit',
    name: 'Published limits',
    pullDown: 470e3,
    interval: 0.01,
    limits: { low: 0.2, high: 4.8 },
    debounce: 2,
  } as const;
  const time = Float64Array.from({ length: 1000 }, (_, i) => i / 100);
  const lasting = (seconds: number, volts: number) => ({
    time,
    signal: time.map((t) => (t > 3 && t < 3 + seconds ? volts : 2)),
  });

  test.each([
    [1.95, 0.1, []],
    [2.1, 0.1, ['low']],
    [2.1, 0.25, []],
    [2.1, 4.9, ['high']],
  ])('%d s at %d V', (seconds, volts, kinds) => {
    expect(noticedFaults(unit, lasting(seconds, volts)).map(({ kind }) => kind)).toEqual(kinds);
  });

  test('a dropout of 20 ms on every stroke sets nothing', () => {
    const dropout = { seconds: 0.02, from: 2, to: 0 };
    expect(sightOf(unit, dropout, 1000).chanceInPasses).toBe(0);
  });
});

describe('bandwidth', () => {
  /** Source: a recorder's manual (GEN7iB, p. 346): 1 MΩ source, 1 MΩ input, 150 pF of cable: "about 2 kHz". */
  test('source and cable', () => {
    expect(inputCorner(500e3, 150e-12)).toBeCloseTo(2122, 0);
  });

  /** Rule 0.35/B, from memory; exactly ln 9/(2π) for a single pole. */
  test('rise time', () => {
    expect(riseTime(1)).toBeCloseTo(0.3496991526, 10);
    expect(riseTime(20e6) * 20e6).toBeCloseTo(0.35, 3);
  });
});

test('settling: after the time that is told, what is missing is half a step', () => {
  for (const bits of [8, 10, 12, 16]) {
    const missing = Math.exp(-settlingTime(10e3, 14e-12, bits) / (10e3 * 14e-12));
    expect(missing * 2 ** bits).toBeCloseTo(0.5, 10);
  }
});

/** A divider's source resistance is that of its parts in parallel; the same textbook's Thévenin theorem. */
describe('source resistance of a hook-up', () => {
  const parallel = (one: number, other: number) => (one * other) / (one + other);

  test.each([0, 0.1, 0.5, 0.9, 1])(
    'wiper at %d: the track below in parallel with the track above and the limiter',
    (travel) => {
      const circuit = {
        source: { volts: 5 },
        limiter: 1000,
        sensor: { track: 4000, contact: 50 },
        load: {},
      };
      const below = 4000 * travel;
      const above = 4000 * (1 - travel) + 1000;
      const wanted = 50 + parallel(below, above);
      expect(sourceResistance(circuit, travel)).toBeCloseTo(wanted, 6);
      const down = { ...circuit, load: { pullDown: 10e3 } };
      expect(sourceResistance(down, travel)).toBeCloseTo(parallel(wanted, 10e3), 6);
      const up = { ...circuit, load: { pullUp: { ohms: 10e3, volts: 5 } } };
      expect(sourceResistance(up, travel)).toBeCloseTo(parallel(wanted, 10e3), 6);
    },
  );
});

/** The transient is integrated by itself, by the fourth-order Runge-Kutta rule, in steps of a thousandth of the time constant. */
test.each([
  ['a pull-down', { from: 2.5, rest: 0, ohms: 47e3, farads: 220e-12 }],
  ['a pull-up', { from: 0.5, rest: 5, ohms: 1e6, farads: 100e-12 }],
])('the wiper opens over %s: within 1e-6 of an integration', (_, wiper) => {
  const tau = wiper.ohms * wiper.farads;
  const slope = (v: number) => (wiper.rest - v) / tau;
  const h = tau / 1000;
  let v = wiper.from;
  for (let i = 1; i <= 5000; i++) {
    const k1 = slope(v);
    const k2 = slope(v + (h / 2) * k1);
    const k3 = slope(v + (h / 2) * k2);
    const k4 = slope(v + h * k3);
    v += (h / 6) * (k1 + 2 * k2 + 2 * k3 + k4);
    expect(Math.abs(openWiper(wiper, i * h) / v - 1)).toBeLessThan(1e-6);
  }
  const half = openWiper(wiper, openWiperReaches(wiper, 0.5));
  expect(half).toBeCloseTo((wiper.from + wiper.rest) / 2, 12);
});
