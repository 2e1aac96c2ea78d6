import {
  coilCurrent,
  conductorConstant,
  judgeWinding,
  resistanceAtTemperature,
  starvedSupply,
  temperatureOfWinding,
  type WindingReading,
} from '@truesweep/core';
import { describe, expect, test } from 'vitest';

const copper = { kind: 'copper' } as const;
const read = (ohms: number, temperature: number): WindingReading => ({
  ohms,
  temperature,
  uncertainty: 0,
  leads: 0,
  temperatureUncertainty: 0,
});

describe('resistance of a winding over temperature', () => {
  /** Source: UL text, clause 49.8: 234.5 for copper, 225.0 for electrical-grade aluminium. */
  test('k is 234.5 °C of copper and 225 °C of aluminium', () => {
    expect(conductorConstant(copper)).toBe(234.5);
    expect(conductorConstant({ kind: 'aluminium' })).toBe(225);
  });

  /** Source: an ohmmeter's manual, appendices 4 and 5: R = R₂₀(1 + 0.00393(t − 20)). It and 234.5 °C are the same line within 0.02 %. */
  test('copper grows by 0.393 % of its resistance at 20 °C per kelvin', () => {
    for (const t of [-40, 0, 50, 100, 150]) {
      const ratio = resistanceAtTemperature({ ohms: 1 }, t) / (1 + 0.00393 * (t - 20));
      expect(Math.abs(ratio - 1)).toBeLessThan(2e-4);
    }
  });

  /** Source: the same manual: tinned wire of 0.1 to 0.26 mm has 0.93 of copper's conductivity, and 0.00365 per kelvin. */
  test('tinned thin wire: 0.00365 per kelvin', () => {
    const conductor = { kind: 'conductivity', conductivity: 0.93 } as const;
    const grown = resistanceAtTemperature({ ohms: 1, conductor }, 21) - 1;
    expect(grown).toBeCloseTo(0.00365, 5);
  });

  /** Source: the same manual's example by IEC 60034, which takes k = 235 °C: 200 mΩ at 20 °C, then 210 mΩ in air of 25 °C. */
  test('200 mΩ that became 210 mΩ: the winding is at 32.75 °C, 7.75 K above the air', () => {
    const winding = { ohms: 0.2, conductor: { kind: 'constant', k: 235 } } as const;
    const celsius = temperatureOfWinding(winding, 0.21);
    expect(celsius).toBeCloseTo(32.75, 10);
    expect(celsius - 25).toBeCloseTo(7.75, 10);
  });

  /** Computed from the law, no source of its own. */
  test.each([
    [-10, 10.59],
    [40, 12.94],
    [80, 14.83],
    [100, 15.77],
  ])('12 Ω at 20 °C: at %d °C %d Ω', (t, ohms) => {
    expect(resistanceAtTemperature({ ohms: 12 }, t)).toBeCloseTo(ohms, 2);
  });

  /** Computed from the law, no source of its own. */
  test('13.4 Ω read on a coil of 12 Ω: 49.7 °C', () => {
    expect(temperatureOfWinding({ ohms: 12 }, 13.4)).toBeCloseTo(49.7, 1);
  });
});

describe('speed sensor: 850 Ω ± 10 %, 170 mH', () => {
  /** Source of the 850 Ω, ±10 % and 170 mH: a speed sensor's data sheet, E12A rev. 0. The rest is computed. */
  const sensor = { low: 765, high: 935 };

  test('783 Ω at 0 °C and 1084 Ω at 90 °C: hot, it leaves a window that knows no temperature', () => {
    const hot = resistanceAtTemperature({ ohms: 850 }, 90);
    expect(resistanceAtTemperature({ ohms: 850 }, 0)).toBeCloseTo(783, 0);
    expect(hot).toBeCloseTo(1084, 0);
    expect(judgeWinding(sensor, [read(hot, 90)]).verdict).toBe('pass');
    // Who takes the hot coil for one at 20 °C is told to let it cool.
    expect(judgeWinding(sensor, [read(hot, 20)])).toMatchObject({
      verdict: 'fail',
      advice: ['let-it-cool', 'read-again', 'replace-sensor'],
    });
    // One at the upper limit when it is cold leaves the window by itself when hot, though it is right.
    const high = resistanceAtTemperature({ ohms: 935 }, 90);
    expect(high).toBeGreaterThan(935);
    expect(judgeWinding(sensor, [read(high - 1e-9, 90)]).verdict).toBe('pass');
  });

  test('an ohmmeter of 1 mA stores 85 nJ; the time constant is 0.2 ms', () => {
    const { stored } = coilCurrent({ ohms: 850, henries: 0.17, volts: 0.85, temperature: 20 });
    expect(stored!.joules).toBeCloseTo(85e-9, 12);
    expect(stored!.timeConstant).toBeCloseTo(0.2e-3, 6);
  });

  test('of magnet, gap, polarity and one shorted turn it says nothing', () => {
    const { unsaid } = judgeWinding(sensor, [read(850, 20)]);
    expect(unsaid).toEqual(['magnet', 'gap', 'polarity', 'shorted-turn']);
    // One shorted turn of 2000 moves it by a two-thousandth: far inside ±10 %.
    expect(judgeWinding(sensor, [read(850 * (1 - 1 / 2000), 20)]).verdict).toBe('pass');
  });
});

describe('injectors and ignition coils', () => {
  /** Source: a published thesis on an injector driver: high-ohm injectors have 12 Ω or more. */
  test('a limit on one side: 12 Ω or more', () => {
    expect(judgeWinding({ low: 12 }, [read(14.5, 20)]).verdict).toBe('pass');
    expect(judgeWinding({ low: 12 }, [read(2.4, 20)]).verdict).toBe('fail');
  });

  /** Source: a published service manual: 1.425 to 1.575 Ω at 20 °C. */
  test('direct injection: 1.5 Ω, and 1.8 Ω when it is at 70 °C', () => {
    const sensor = { low: 1.425, high: 1.575 };
    expect(judgeWinding(sensor, [read(1.5, 20)]).verdict).toBe('pass');
    expect(judgeWinding(sensor, [read(1.8, 70)]).verdict).toBe('pass');
    expect(judgeWinding(sensor, [read(1.8, 20)]).verdict).toBe('fail');
  });

  /** Computed: 13.5 V on 12 Ω at 20 °C. */
  test.each([
    [-10, 1.275],
    [20, 1.125],
    [80, 0.91],
    [100, 0.856],
  ])('at %d °C %d A', (temperature, amps) => {
    expect(coilCurrent({ ohms: 12, volts: 13.5, temperature }).amps).toBeCloseTo(amps, 3);
  });

  /** Source: a published service manual: primary 0.87 Ω ± 10 %, secondary 13.0 kΩ ± 15 %; another 0.75 Ω and 5.9 kΩ, ±15 %, at 20 °C. */
  test.each([
    [0.87, 0.1],
    [13_000, 0.15],
    [0.75, 0.15],
    [5900, 0.15],
  ])('%d Ω ± %d: its limits conform, what is beyond fails', (ohms, tolerance) => {
    const [low, high] = [ohms * (1 - tolerance), ohms * (1 + tolerance)];
    for (const edge of [low, ohms, high])
      expect(judgeWinding({ low, high }, [read(edge, 20)]).verdict).toBe('pass');
    for (const beyond of [low * 0.99, high * 1.01])
      expect(judgeWinding({ low, high }, [read(beyond, 20)]).verdict).toBe('fail');
  });

  /** Source: a textbook's solution: a solenoid of 4 Ω and 6 mH on 12 V. */
  test('4 Ω, 6 mH, 12 V: 3 A, 27 mJ, and 18 kV were it opened within 1 µs', () => {
    const coil = coilCurrent({
      ohms: 4,
      henries: 0.006,
      volts: 12,
      temperature: 20,
      openedIn: 1e-6,
    });
    expect(coil.amps).toBeCloseTo(3, 12);
    expect(coil.stored!.joules).toBeCloseTo(0.027, 12);
    expect(coil.stored!.kick).toBeCloseTo(18_000, 6);
  });
});

describe('traps', () => {
  /** Coils read hot after a run (common practice, no source): 25 % of 12 Ω at 85 °C. */
  test('a coil that has just run is no faulty one', () => {
    const hot = resistanceAtTemperature({ ohms: 12 }, 85);
    const sensor = { low: 11.4, high: 12.6 };
    expect(judgeWinding(sensor, [read(hot, 20)]).advice).toEqual([
      'let-it-cool',
      'read-again',
      'replace-sensor',
    ]);
    expect(judgeWinding(sensor, [read(hot, 85)]).verdict).toBe('pass');
  });

  /** Sources differ: 225 °C (UL text) or 228 °C (an electrical engineering portal) for aluminium. */
  test('aluminium taken for copper: 1 % at 100 °C; its two constants differ by 0.4 %', () => {
    const at100 = (k: number) =>
      resistanceAtTemperature({ ohms: 100, conductor: { kind: 'constant', k } }, 100);
    expect(at100(225) - at100(234.5)).toBeCloseTo(1.22, 2);
    expect(at100(225) - at100(228)).toBeCloseTo(0.396, 2);
    // Tinned thin wire grows less than copper: 2 % at 100 °C.
    const tinned = { kind: 'conductivity', conductivity: 0.93 } as const;
    expect(
      at100(234.5) - resistanceAtTemperature({ ohms: 100, conductor: tinned }, 100),
    ).toBeCloseTo(2.19, 2);
  });
});

describe('what a limiting resistor leaves an active sensor', () => {
  /** Source of 4.5 V least: a Hall sensor's data sheet, which also has up to 15 mA; 10 mA and 1 kΩ are computed with. */
  test('1 kΩ at 10 mA would drop 10 V: it starves a Hall or pressure sensor', () => {
    const { drop, starved } = starvedSupply({
      supply: 5,
      limiter: 1000,
      current: 0.01,
      least: 4.5,
    });
    expect(drop).toBe(10);
    expect(starved).toBe(true);
  });

  /** Source of 10 mA at most and 4.85 V least: an absolute pressure sensor's data sheet. */
  test('a pressure sensor of 10 mA and 4.85 V on 5.1 V: 25 Ω at most', () => {
    const { largestLimiter } = starvedSupply({
      supply: 5.1,
      limiter: 0,
      current: 0.01,
      least: 4.85,
    });
    expect(largestLimiter).toBeCloseTo(25, 9);
  });
});
