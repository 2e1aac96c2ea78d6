import { describe, expect, test } from 'vitest';
import { judgePressure, type PressureReading } from './judgePressure.js';
import type { PressureSensor } from './pressureSensor.js';

const sensor: PressureSensor = {
  reference: 'absolute',
  response: { kind: 'line', gain: 9e-6, offset: -0.095, lowest: 15_000, highest: 115_000 },
  error: 1500,
  supply: { low: 4.85, high: 5.35 },
};
const bench = { station: 96_000, stationUncertainty: 100 };
/** What a sensor that is off by so many pascals, and by such a gain, reads at a depth. */
const read = (depth: number, off = 0, gain = 1, supply = 5): PressureReading => ({
  gauge: depth === 0 ? 0 : -depth,
  gaugeUncertainty: depth === 0 ? 0 : 200,
  volts: supply * (gain * 9e-6 * (96_000 - depth + off) - 0.095),
  supply,
  uncertainty: 0.003,
});
const judged = (...readings: PressureReading[]) => judgePressure(sensor, bench, readings);

describe('judgePressure', () => {
  test('a sound one passes by the open port and a pump', () => {
    const { verdict, checks, advice } = judged(read(0, 500), read(50_000, 500));
    expect([verdict, advice]).toEqual(['pass', ['refit']]);
    expect(checks.map(({ check }) => check)).toEqual([
      ...['supply', 'supply', 'open-port', 'pumped', 'gain', 'pumped-far-enough'],
    ]);
  });

  test.each([
    ['an offset', [read(0, 5000), read(50_000, 5000)], ['open-port', 'pumped']],
    ['a gain', [read(0, 0, 0.94), read(50_000, 0, 0.94)], ['open-port', 'pumped', 'gain']],
    ['stuck', [read(0), { ...read(50_000), volts: read(0).volts }], ['pumped', 'gain']],
  ])('%s fails where it shows', (_, readings, failing) => {
    const { verdict, checks } = judged(...readings);
    expect(verdict).toBe('fail');
    const shown = checks.filter(({ outcome }) => outcome === 'fails').map(({ check }) => check);
    for (const check of shown) expect(failing).toContain(check);
    expect(shown.length).toBeGreaterThan(0);
  });

  test('the open port alone shows no gain; the pump alone no offset', () => {
    expect(judged(read(0))).toMatchObject({ verdict: 'inconclusive', advice: ['pump-farther'] });
    const pumped = judged(read(30_000), read(60_000));
    expect(pumped).toMatchObject({ verdict: 'inconclusive', advice: ['read-open-port'] });
    expect(judged(read(0), read(10_000)).advice).toContain('pump-farther');
  });

  test('a supply that it is not made for tells nothing, whatever it reads', () => {
    const { verdict, advice, checks } = judged(read(0, 9000, 1, 4.2), read(50_000, 9000, 1, 4.2));
    expect([verdict, advice]).toEqual(['inconclusive', ['mend-supply']]);
    expect(checks.some(({ outcome }) => outcome === 'fails')).toBe(false);
  });

  test('without its error nothing is judged', () => {
    const { error: _, ...bare } = sensor;
    const { verdict, advice } = judgePressure(bare, bench, [read(0), read(50_000)]);
    expect([verdict, advice]).toEqual(['inconclusive', ['state-error']]);
  });

  test('an absolute pressure taken for a vacuum is refused', () => {
    expect(() => judged({ ...read(0), gauge: -100_000 })).toThrow(/may be meant as an absolute/);
    expect(() => judged({ ...read(0), gauge: 30_000 })).toThrow(/nothing is extrapolated/);
  });

  test('a port read in absolute pressure rests on no barometer, and the difference to the open port does', () => {
    // The air is known from the altitude alone, and is 2.8 kPa from what that says: the sensor itself is nominal.
    const unknown = { station: 101_600, stationUncertainty: 1500 };
    const volts = (pressure: number) => 5 * (9e-6 * pressure - 0.095);
    const shared = { supply: 5, uncertainty: 0.003 };
    const open = { ...shared, gauge: 0, gaugeUncertainty: 0, volts: volts(98_800) };
    const port = {
      ...shared,
      gauge: 60_000 - 101_600,
      readAs: 'absolute',
      gaugeUncertainty: 100,
      volts: volts(60_000),
    } as const;
    const { verdict, checks } = judgePressure(sensor, unknown, [open, port]);
    expect(verdict).not.toBe('fail');
    expect(checks.find(({ check }) => check === 'pumped')).toMatchObject({
      outcome: 'conforms',
      mostUncertain: 'pump-gauge',
    });
    expect(checks.find(({ check }) => check === 'gain')?.mostUncertain).toBe('barometer');
  });

  test('a gauge sensor read in absolute pressures rests on the barometer', () => {
    const gauge: PressureSensor = {
      reference: 'gauge',
      response: { kind: 'line', gain: 7.652e-6, offset: 0.92, lowest: -115_000, highest: 0 },
      error: 1500,
    };
    const read = {
      supply: 5,
      uncertainty: 0.003,
      readAs: 'absolute',
      gaugeUncertainty: 100,
    } as const;
    const { checks } = judgePressure(gauge, { station: 101_600, stationUncertainty: 1500 }, [
      // The air is 98.8 kPa, so that 50 kPa absolute are 48.8 kPa below it.
      { ...read, gauge: 50_000 - 101_600, volts: 5 * (7.652e-6 * -48_800 + 0.92) },
    ]);
    expect(checks[0]).toMatchObject({ outcome: 'cannot-tell', mostUncertain: 'barometer' });
  });

  test('a gauge sensor needs no barometer', () => {
    const gauge: PressureSensor = {
      reference: 'gauge',
      response: { kind: 'line', gain: 7.652e-6, offset: 0.92, lowest: -115_000, highest: 0 },
      error: 1500,
    };
    const at = (depth: number): PressureReading => ({
      gauge: 0 - depth,
      gaugeUncertainty: depth && 200,
      volts: 5 * (7.652e-6 * -depth + 0.92),
      supply: 5,
      uncertainty: 0.003,
    });
    const unknown = { station: 96_000, stationUncertainty: 1500 };
    expect(judgePressure(gauge, unknown, [at(0), at(50_000)]).verdict).toBe('pass');
  });
});
