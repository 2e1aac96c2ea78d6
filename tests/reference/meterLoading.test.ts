import { type Circuit, operatingPoint } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

function reading(circuit: Circuit, position: number): number {
  const { output } = operatingPoint(circuit, position);
  if (typeof output !== 'number') throw new Error('the output must be determined');
  return output;
}

/** A divider of two resistors is a track with the wiper between them; the meter is a pull-down. */
function divider(volts: number, upper: number, lower: number, meter?: number): number {
  const track = upper + lower;
  const load = meter === undefined ? {} : { pullDown: meter };
  return reading({ source: { volts }, limiter: 0, sensor: { track }, load }, lower / track);
}

describe('meter loading, textbook examples', () => {
  /** Source: T. R. Kuphaldt, Lessons in Electric Circuits, vol. I (DC), ch. 8, "Voltmeter impact on measured circuit". */
  test('24 V over two 250 MΩ, read with a 10 MΩ meter', () => {
    expect(divider(24, 250e6, 250e6)).toBeCloseTo(12, 12);
    expect(divider(24, 250e6, 250e6, 10e6)).toBeCloseTo(0.8889, 4);
    expect(24 - divider(24, 250e6, 250e6, 10e6)).toBeCloseTo(23.1111, 4);
  });

  /** Source: electronics tutorial "elect99" at edudirectory.50webs.com: 20 kΩ/V movement on its 20 V range. */
  test('30 V over two 400 kΩ, read with 20 kΩ/V on the 20 V range', () => {
    expect(divider(30, 400e3, 400e3)).toBeCloseTo(15, 12);
    expect(divider(30, 400e3, 400e3, 20 * 20e3)).toBeCloseTo(10, 12);
  });

  /** Source: a 2000 Ω/V meter on its 10 V range at a source of 10 kΩ reads two thirds (askfilo, exercise 3338383131393736). */
  test('2000 Ω/V on the 10 V range from 10 kΩ reads two thirds', () => {
    const circuit: Circuit = {
      source: { volts: 9 },
      limiter: 10e3,
      sensor: { track: 1e18 },
      load: { pullDown: 10 * 2000 },
    };
    expect(reading(circuit, 1)).toBeCloseTo(6, 9);
  });

  /**
   * Source: askfilo, exercise 3337333938393235: 8 V over 10 kΩ and 6 kΩ, a 20 kΩ/V meter across the 6 kΩ on four
   * ranges. Only the question and the true 3 V are published; the readings are computed here in exact rationals.
   */
  test.each([
    [1, 2.526316, -0.15789],
    [5, 2.891566, -0.03614],
    [10, 2.944785, -0.0184],
    [100, 2.994386, -0.00187],
  ])('8 V over 10 kΩ and 6 kΩ, 20 kΩ/V on the %d V range', (range, shown, error) => {
    const meter = range * 20e3;
    const loaded = divider(8, 10e3, 6e3, meter);
    expect(divider(8, 10e3, 6e3)).toBeCloseTo(3, 14);
    expect(loaded).toBeCloseTo(shown, 6);
    expect(loaded / 3 - 1).toBeCloseTo(error, 5);
    /** Source: sites.google.com/view/instrumentation-measurement, 2-5: V = VM + VM·R1·R2 / (RV·(R1 + R2)). */
    const corrected = loaded + (loaded * 10e3 * 6e3) / (meter * (10e3 + 6e3));
    expect(corrected).toBeCloseTo(3, 12);
  });

  /** Source: enotes, question 90467: a meter that errs by p at a source of R needs R(1 − p)/p. */
  test('99 kΩ errs by 1 % at a source of 1 kΩ', () => {
    const circuit: Circuit = {
      source: { volts: 1, ohms: 1000 },
      limiter: 0,
      sensor: { track: 1e18 },
      load: { pullDown: 99e3 },
    };
    expect(reading(circuit, 1)).toBeCloseTo(0.99, 12);
  });

  /** Source: Kuphaldt, as above, "Voltmeter design": a movement of 1 mA and 500 Ω behind its multiplier. */
  test.each([
    [1, 500],
    [10, 9500],
    [100, 99_500],
    [1000, 999_500],
  ])('the %d V range of a 1 mA movement needs %d Ω', (range, multiplier) => {
    const { parts } = operatingPoint(
      {
        source: { volts: range },
        limiter: multiplier,
        sensor: { track: 1e18 },
        load: { pullDown: 500 },
      },
      1,
    );
    expect(parts.pullDown?.amps).toBeCloseTo(1e-3, 12);
    expect((multiplier + 500) / range).toBe(1000);
  });
});
