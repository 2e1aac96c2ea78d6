import { describe, expect, test } from 'vitest';
import { InputError } from '../errors.js';
import { coilCurrent } from './coilCurrent.js';
import { conductorConstant } from './conductor.js';
import { judgeWinding, type WindingReading } from './judgeWinding.js';
import { resistanceAtTemperature } from './resistanceAtTemperature.js';
import { temperatureOfWinding } from './temperatureOfWinding.js';

const read = (ohms: number, more: Partial<WindingReading> = {}): WindingReading => ({
  ohms,
  uncertainty: 0.02,
  leads: 0.2,
  temperature: 20,
  temperatureUncertainty: 1,
  ...more,
});

describe('resistance and temperature', () => {
  test('k of a conductivity is where its straight line reaches 0 Ω', () => {
    const conductor = { kind: 'conductivity', conductivity: 0.93 } as const;
    const k = conductorConstant(conductor);
    expect(resistanceAtTemperature({ ohms: 1, conductor }, 21)).toBeCloseTo(1 + 0.93 * 0.00393, 12);
    expect(k).toBeCloseTo(1 / (0.93 * 0.00393) - 20, 12);
  });

  test('a stated constant is taken', () => {
    const conductor = { kind: 'constant', k: 235 } as const;
    expect(resistanceAtTemperature({ ohms: 255, conductor }, 21)).toBeCloseTo(256, 12);
  });

  test('the temperature that a winding cannot have is refused, with the resistances that it can', () => {
    let said: unknown;
    try {
      temperatureOfWinding({ ohms: 12 }, 40);
    } catch (error) {
      said = error;
    }
    expect(said).toBeInstanceOf(InputError);
    expect((said as InputError).path).toBe('ohms');
    expect((said as InputError).message).toMatch(
      /^ohms is 40; it must be a finite number from 8\.\d+ to 25\.\d+ Ω\.$/,
    );
  });

  test('the ends of the range come back as they are', () => {
    for (const at of [-60, 300]) {
      expect(temperatureOfWinding({ ohms: 7 }, resistanceAtTemperature({ ohms: 7 }, at))).toBe(at);
    }
  });
});

describe('coilCurrent', () => {
  test('says nothing of what is stored where the inductance isn’t known', () => {
    const coil = coilCurrent({ ohms: 12, volts: 12, temperature: 20 });
    expect(coil).toEqual({ ohms: 12, amps: 1, watts: 12 });
  });

  test('the kick grows with what cuts off faster', () => {
    const kick = (openedIn?: number) =>
      coilCurrent({
        ohms: 4,
        henries: 0.006,
        volts: 12,
        temperature: 20,
        ...(openedIn && { openedIn }),
      }).stored!.kick;
    expect(kick()).toBeCloseTo(18_000, 6);
    expect(kick(1e-3)).toBeCloseTo(18, 9);
  });
});

describe('judgeWinding', () => {
  const sensor = { low: 10.8, high: 13.2 };

  test('the limits go with the temperature', () => {
    const { checks, verdict } = judgeWinding(sensor, [read(15, { temperature: 80 })]);
    expect(verdict).toBe('pass');
    expect(checks[0]).toMatchObject({
      check: 'resistance',
      reading: 0,
      unit: 'Ω',
      outcome: 'conforms',
    });
    expect(checks[0]!.measured).toBeCloseTo(14.8, 12);
    expect(checks[0]!.highLimit).toBeCloseTo((13.2 * 314.5) / 254.5, 12);
    expect(checks[0]!.lowLimit).toBeCloseTo((10.8 * 314.5) / 254.5, 12);
    // The thermometer's kelvin: 15/314.5 Ω.
    expect(checks[0]!.uncertainty).toBeCloseTo(Math.hypot(0.02, 15 / 314.5), 12);
    expect(judgeWinding(sensor, [read(15, { temperature: 20 })]).verdict).toBe('fail');
  });

  test('what a coil that has just run reads is told', () => {
    const plain = ['read-again', 'replace-sensor'];
    expect(judgeWinding(sensor, [read(15)]).advice).toEqual(['let-it-cool', ...plain]);
    expect(judgeWinding(sensor, [read(25)]).advice).toEqual(plain);
    expect(judgeWinding(sensor, [read(9)]).advice).toEqual(plain);
    expect(judgeWinding(sensor, [read(30, { temperature: 125 })]).advice).toEqual(plain);
  });

  test('open and short fail at any temperature, the one with ∞ Ω', () => {
    const { verdict, checks } = judgeWinding(sensor, [read(Infinity), read(0.1)]);
    expect(verdict).toBe('fail');
    expect(checks.map(({ outcome, measured }) => [outcome, measured])).toEqual([
      ['fails', Infinity],
      ['fails', 0],
    ]);
    expect(judgeWinding({ low: 10 }, [read(Infinity)]).verdict).toBe('pass');
  });

  test('leads that nobody read decide in a winding of few ohms, and say so', () => {
    const primary = { low: 0.783, high: 0.957 };
    const { leads: _, ...unread } = read(0.95, { uncertainty: 0.002 });
    expect(judgeWinding(primary, [unread])).toMatchObject({
      verdict: 'inconclusive',
      advice: ['measure-leads'],
    });
    expect(judgeWinding(primary, [{ ...unread, leads: 0.1 }]).verdict).toBe('pass');
  });

  test('the thermometer decides, or the meter', () => {
    const unsure = (more: Partial<WindingReading>) => judgeWinding(sensor, [read(13, more)]);
    expect(unsure({ temperatureUncertainty: 10 })).toMatchObject({
      verdict: 'inconclusive',
      advice: ['know-temperature'],
    });
    expect(unsure({ uncertainty: 0.5 })).toMatchObject({
      verdict: 'inconclusive',
      advice: ['better-meter'],
    });
  });

  test('one reading outside outweighs others inside; what it doesn’t say stands beside', () => {
    const { verdict, unsaid } = judgeWinding(sensor, [read(12), read(20)]);
    expect(verdict).toBe('fail');
    expect(unsaid).toEqual(['magnet', 'gap', 'polarity', 'shorted-turn']);
  });

  test.each([
    [{}, [], 'sensor.low', 'missing'],
    [{ low: 2, high: 1 }, [], 'sensor.low', 'out-of-order'],
    [sensor, [], 'readings', 'out-of-range'],
    [sensor, [read(12), read(-1)], 'readings[1].ohms', 'negative'],
    [sensor, [read(12, { temperature: 400 })], 'readings[0].temperature', 'out-of-range'],
  ])('refuses %j with %j at %s', (wrong, readings, path, code) => {
    expect(() => judgeWinding(wrong, readings)).toThrow(expect.objectContaining({ path, code }));
  });
});
