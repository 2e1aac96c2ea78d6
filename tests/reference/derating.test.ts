import { derated } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

describe('power over temperature, from data sheets', () => {
  /**
   * Source: data sheet of the TNPW e3 thin-film chip resistors: rated power at 70 °C, thermal resistance, film at 125 °C
   * in long-term service. A straight line to 0 W at the film's limit is what a constant thermal resistance gives.
   */
  test.each([
    ['0402', 0.063, 870],
    ['0603', 0.1, 550],
    ['0805', 0.125, 440],
    ['1206', 0.25, 220],
    ['1210', 0.33, 170],
    ['2010', 0.4, 140],
    ['2512', 0.5, 110],
  ])(
    'chip resistor %s: ambient + power × thermal resistance is the film limit',
    (_, watts, perWatt) => {
      const rating = { watts, fullTo: 70, zeroAt: 125 };
      for (const ambient of [70, 85, 97.5, 110, 125]) {
        const film = ambient + derated(rating, ambient) * perWatt;
        expect(film).toBeGreaterThan(124.7);
        expect(film).toBeLessThan(126.2);
      }
      expect(derated(rating, 25)).toBe(watts);
    },
  );

  /**
   * Source: data sheet of the MBB 0207 thin-film resistor: 0.4 W for long-term and 0.6 W for standard service at 70 °C, film
   * at 125 °C and 155 °C. The two lines are one thermal resistance: the standard line at 100 °C meets the long-term power.
   */
  test('a leaded resistor: long-term and standard service agree on the heat path to 3 %', () => {
    const standard = { watts: 0.6, fullTo: 70, zeroAt: 155 };
    const longTerm = { watts: 0.4, fullTo: 70, zeroAt: 125 };
    for (const ambient of [70, 85, 100, 115]) {
      const ratio = derated(standard, ambient + 30) / derated(longTerm, ambient);
      expect(Math.abs(ratio - 1)).toBeLessThan(0.03);
    }
  });

  /** Source: data sheet of a metal-film series (MF, 1 W): full to 70 °C, a straight line to 0 W at 155 °C. */
  test.each([
    [-55, 1],
    [70, 1],
    [112.5, 0.5],
    [155, 0],
    [200, 0],
  ])('metal film at %d °C bears %d of its power', (ambient, share) => {
    expect(derated({ watts: 1, fullTo: 70, zeroAt: 155 }, ambient)).toBeCloseTo(share, 14);
  });

  /** Source: data sheet of a rotary position sensor (no. 57002, 2007): 1 W at 40 °C, 0 W at 135 °C. */
  test.each([
    [40, 1],
    [87.5, 0.5],
    [116, 0.2],
    [135, 0],
  ])('position sensor at %d °C bears %d W', (ambient, watts) => {
    expect(derated({ watts: 1, fullTo: 40, zeroAt: 135 }, ambient)).toBeCloseTo(watts, 14);
  });
});
