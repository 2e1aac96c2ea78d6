import { fitTrend, forecast, forecastEnd } from '@truesweep/core';
import { sensorHistory } from '@truesweep/history';
import { expect, test } from 'vitest';
import { bandOf } from './bandOf.js';
import { dateTicks } from './dateTicks.js';
import { exampleRecords } from './exampleRecords.js';
import { thinnedPoints } from './thinnedPoints.js';
import { trendLayout } from './trendLayout.js';
import { trendPlot } from './trendPlot.js';
import { valueTicks } from './valueTicks.js';

const day = 86_400;

test('the band over the record is the one that core forecasts with, where it does', () => {
  const values = [0.512, 0.518, 0.524, 0.531, 0.536];
  const trend = fitTrend(values.map((value, i) => ({ at: i * 365 * day, value })))!;
  expect(trend.changed).toBe(true);
  for (const part of [0, 0.3, 1, 1.7, 2]) {
    const at = part * trend.to;
    const [here, there] = [bandOf(trend, at), forecast(trend, at)!];
    for (const edge of ['value', 'low', 'high'] as const)
      expect(here[edge]).toBeCloseTo(there[edge], 14);
  }
});

test('a forecast is drawn where a change is told, up to its end; nothing of a quantity without values', () => {
  const [port, starboard] = exampleRecords.map((records) => sensorHistory(records).quantities[0]!);
  const drifts = trendPlot(port!)!;
  expect(drifts.line).toHaveLength(11);
  expect(drifts.ahead.at(-1)?.at).toBe(forecastEnd(port!.trend!));
  expect(drifts.limits?.high).toBeCloseTo(0.05 / 3.98, 10);
  const rests = trendPlot(starboard!)!;
  expect(rests.line).toHaveLength(11);
  expect(rests.ahead).toEqual([]);
  expect(trendPlot({ quantity: 'open', points: [], otherRecorder: 0 })).toBeUndefined();
});

test('of very many values the lowest and the highest of each stretch are drawn, by time', () => {
  const points = Array.from({ length: 20_000 }, (_, i) => ({
    at: i * day,
    value: Math.sin(i * i),
  }));
  points[777] = { at: 777 * day, value: 9 };
  const drawn = thinnedPoints(points);
  expect(drawn.length).toBeLessThanOrEqual(602);
  expect(drawn).toContain(points[777]);
  expect(drawn.map(({ at }) => at)).toEqual(drawn.map(({ at }) => at).sort((a, b) => a - b));
  expect(thinnedPoints(points.slice(0, 600))).toHaveLength(600);
});

const at = (date: string) => Date.parse(date) / 1000;

test.each([
  ['2022-04-11', '2030-04-11', ['2024', '2026', '2028', '2030']],
  ['2025-11-20', '2026-07-02', ['2026-01', '2026-03', '2026-05', '2026-07']],
  ['2026-05-03', '2026-05-20', []],
  ['1970-01-01', '9999-12-31', ['2000', '4000', '6000', '8000']],
])('dates from %s to %s', (from, to, texts) => {
  const ticks = dateTicks(at(from), at(to), 5);
  expect(ticks.map(({ text }) => text)).toEqual(texts);
  for (const tick of ticks) expect(tick.at).toBe(at(tick.text.padEnd(10, '-01-01'.slice(-6))));
});

test('ticks of values are round and written with as many decimals as they need', () => {
  expect(valueTicks(-1.35, 1.35)).toEqual({ ticks: [-1, -0.5, 0, 0.5, 1], decimals: 1 });
  expect(valueTicks(0, 0.09).decimals).toBe(2);
  expect(valueTicks(0, 0.4).ticks.map((one) => one.toFixed(1))).toEqual([
    '0.0',
    '0.1',
    '0.2',
    '0.3',
    '0.4',
  ]);
});

test('a single value has a place in the middle; a limit far away is told and not drawn', () => {
  const point = { at: at('2026-05-03'), value: 0.001, uncertainty: 0.0002 };
  const alone = trendLayout({
    points: [point],
    from: point.at,
    to: point.at,
    values: 1,
    line: [],
    ahead: [],
    limits: { low: -0.2, high: 0.002 },
  });
  expect(alone.x(point.at)).toBeCloseTo((alone.frame.left + alone.frame.right) / 2, 6);
  expect(alone.y(point.value)).toBeGreaterThan(alone.frame.top);
  expect(alone.y(point.value)).toBeLessThan(alone.frame.bottom);
  expect(alone.limits.map((limit) => limit.at !== undefined)).toEqual([false, true]);
  expect(alone.dates.map(({ text }) => text)).toEqual(['2026-04-19', '2026-05-17']);
});
