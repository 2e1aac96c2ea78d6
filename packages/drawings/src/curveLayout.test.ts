import { expectedCurve, expectedWindows } from '@truesweep/core';
import { expect, test } from 'vitest';
import { curveLayout } from './curveLayout.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const curve = expectedCurve(circuit);
const windows = expectedWindows(circuit, { source: 0.01, track: 0.2, closedPosition: 0.02 });

test('the axes begin at 0 and hold the curve and the windows', () => {
  const { plot, line, windows: bars, travelTicks, voltTicks } = curveLayout(curve, windows);
  expect(travelTicks.map(({ text }) => text)).toEqual(['0', '20', '40', '60', '80', '100']);
  expect(voltTicks.map(({ text }) => text)).toEqual(['0', '1', '2', '3', '4']);
  expect(voltTicks[0]!.at).toBe(plot.bottom);
  for (const { x, y } of line) {
    expect(x >= plot.left && x <= plot.right && y >= plot.top && y <= plot.bottom).toBe(true);
  }
  expect(bars.map(({ stop }) => stop)).toEqual(['closed', 'open']);
});

test('each bar holds the end of the curve at its stop', () => {
  const { line, windows: bars } = curveLayout(curve, windows);
  for (const [i, end] of [line[0]!, line.at(-1)!].entries()) {
    expect(bars[i]!.x).toBeCloseTo(end.x);
    expect(bars[i]!.top).toBeLessThan(end.y);
    expect(bars[i]!.bottom).toBeGreaterThan(end.y);
  }
});

test('an axis of small readings is in millivolts', () => {
  const { voltUnit, voltTicks } = curveLayout(
    expectedCurve({ ...circuit, source: { volts: 0.5 } }),
  );
  expect(voltUnit).toBe('mV');
  expect(voltTicks.map(({ text }) => text)).toEqual(['0', '100', '200', '300', '400']);
});

test('a sensor that gives nothing still has an axis', () => {
  const { voltTicks, line } = curveLayout(expectedCurve({ ...circuit, source: { volts: 0 } }));
  expect(voltTicks.length).toBeGreaterThan(1);
  expect(line.every(({ y }) => Number.isFinite(y))).toBe(true);
});

test('a marker writes to the side where there is room', () => {
  const markers = [
    { travel: 0.1, volts: 1, label: 'low' },
    { travel: 0.9, volts: 3, label: 'high' },
  ];
  expect(curveLayout(curve, undefined, markers).markers.map(({ onLeft }) => onLeft)).toEqual([
    false,
    true,
  ]);
});
