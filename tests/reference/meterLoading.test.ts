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
});
