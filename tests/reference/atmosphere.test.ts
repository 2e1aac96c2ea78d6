import { boilingTemperature, standardPressure, stationPressure } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

describe('the standard atmosphere', () => {
  test.each([
    // ISO 2533:1975, as quoted by an open library's test data: hPa at geopotential heights.
    [100, 1001.29],
    [500, 954.608],
    [1000, 898.746],
    [1500, 845.56],
    [2000, 794.952],
  ])('%d m: %d hPa', (altitude, hectopascals) => {
    expect(standardPressure(altitude) / 100).toBeCloseTo(hectopascals, 1);
  });

  test('falls by 1.2 kPa in the first 100 m, not by the 1 kPa of a published service manual', () => {
    expect(standardPressure(0) - standardPressure(100)).toBeCloseTo(1196, 0);
  });
});

describe('the altimeter setting', () => {
  test('is turned back into the pressure of the bench', () => {
    // Computed from the formula of the Smithsonian Meteorological Tables (1951), p. 269, as a public description of the altimeter setting quotes it.
    const { pressure } = stationPressure({
      kind: 'altimeter-setting',
      setting: 102_000,
      uncertainty: 0,
      altitude: 1000,
    });
    expect(pressure / 100).toBeCloseTo(904.9, 1);
    // So 1020 hPa at sea level are 11.5 kPa more than the air at the bench has.
    expect((102_000 - pressure) / 1000).toBeCloseTo(11.5, 1);
  });

  test('of a standard day is the standard atmosphere', () => {
    for (const altitude of [0, 250, 1000]) {
      const setting = 101_325;
      const source = { kind: 'altimeter-setting', setting, uncertainty: 0, altitude } as const;
      expect(stationPressure(source).pressure).toBeCloseTo(standardPressure(altitude), 4);
    }
  });

  test('a weather map is no altimeter setting', () => {
    // WMO archive of extremes: 846.5 hPa at 1725.8 m and −44.8 °C are published as 1089.1 hPa at sea level; the standard atmosphere says 1041.8.
    const source = {
      kind: 'altimeter-setting',
      setting: 104_180,
      uncertainty: 0,
      altitude: 1725.8,
    } as const;
    expect(stationPressure(source).pressure / 100).toBeCloseTo(846.5, 1);
    expect(stationPressure({ ...source, setting: 108_910 }).pressure / 100 - 846.5).toBeGreaterThan(
      40,
    );
  });

  test('from the height alone the weather leaves 3 kPa either way (common practice, no source)', () => {
    expect(2 * stationPressure({ kind: 'altitude', altitude: 0 }).uncertainty).toBe(3000);
  });
});

describe('boiling water', () => {
  test.each([
    // IAPWS R7-97(2012), table 36, as quoted by an open library's tests.
    [0.1e6, 372.755919],
    [1e6, 453.035632],
    [10e6, 584.149488],
  ])('%d Pa: %d K', (pressure, kelvins) => {
    expect(boilingTemperature(pressure) + 273.15).toBeCloseTo(kelvins, 6);
  });

  test.each([
    [0, 99.97],
    [250, 99.14],
    [500, 98.31],
    [1000, 96.65],
    [1500, 94.98],
    [2000, 93.32],
    [3000, 89.97],
  ])('at %d m it boils at %d °C: ISO 2533 and IF97 together', (altitude, celsius) => {
    const boiling = boilingTemperature(standardPressure(altitude));
    expect(boiling).toBeCloseTo(celsius, 2);
    // The trade's rule, 100 °C less 1 K for each 300 m (common practice, no source), holds within 0.05 K to 3000 m.
    expect(Math.abs(boiling - (100 - altitude / 300))).toBeLessThan(0.05);
  });

  test('rises by 0.277 K for each kPa', () => {
    expect(boilingTemperature(101_825) - boilingTemperature(100_825)).toBeCloseTo(0.277, 3);
  });
});
