import { straightLine } from '@truesweep/core';
import { describe, expect, test } from 'vitest';

/**
 * Source: JCGM 100:2008 (GUM), annex H.3, calibration of a thermometer: readings in °C and the corrections observed, a line
 * about 20 °C; printed results by way of the documentation of MSLNZ/GTC (second-hand). The figures with more places
 * are computed from the printed data in exact rationals.
 */
const readings = [
  21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511,
];
const corrections = [
  -0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16,
];

describe('GUM H.3, calibration of a thermometer', () => {
  const line = straightLine(
    readings.map((reading) => reading - 20),
    corrections,
  )!;

  test('the line, its uncertainties and their correlation', () => {
    expect(line.intercept).toBeCloseTo(-0.1712, 4);
    expect(line.intercept).toBeCloseTo(-0.171203790131, 12);
    expect(line.interceptUncertainty).toBeCloseTo(0.0029, 4);
    expect(line.interceptUncertainty).toBeCloseTo(0.0028775978, 10);
    expect(line.slope).toBeCloseTo(0.00218, 5);
    expect(line.slope).toBeCloseTo(0.00218269773989, 14);
    expect(line.slopeUncertainty).toBeCloseTo(0.00067, 5);
    expect(line.slopeUncertainty).toBeCloseTo(0.00066793877, 11);
    expect(line.correlation).toBeCloseTo(-0.93, 3);
    expect(line.correlation).toBeCloseTo(-0.9304296, 7);
    expect(line.deviation).toBeCloseTo(0.003497564, 9);
  });

  test('the correction predicted at 30 °C, far outside the readings: −0.1494 °C, u = 0.0041 °C', () => {
    const { interceptUncertainty: u1, slopeUncertainty: u2, correlation } = line;
    const predicted = line.intercept + 10 * line.slope;
    const uncertainty = Math.sqrt(u1 ** 2 + (10 * u2) ** 2 + 2 * 10 * correlation * u1 * u2);
    expect(predicted).toBeCloseTo(-0.1494, 4);
    expect(predicted).toBeCloseTo(-0.1493768127, 10);
    expect(uncertainty).toBeCloseTo(0.0041, 4);
    expect(uncertainty).toBeCloseTo(0.0041385958, 10);
  });
});
