import type { Finding, Score } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { TravelMapDrawing } from './TravelMapDrawing.js';
import { travelMapLayout } from './travelMapLayout.js';

const at = (start: number, during: Finding['during'], travel: number): Finding => ({
  kind: 'dropout',
  start,
  end: start + 0.01,
  travel,
  depth: -1,
  depthOfSpan: 0.3,
  depthOfSource: 0.2,
  went: 'to-rest-level',
  during,
});
const strokes: Score['strokes'] = [
  { direction: 'opening', start: 1, end: 2, from: 0, to: 1 },
  { direction: 'closing', start: 3, end: 4, from: 1, to: 0 },
];
const findings = [at(1.3, 'opening', 0.3), at(3.7, 'closing', 0.31), at(2.5, 'rest', 1)];
const spots = [{ travel: 0.305, findings: [0, 1], passes: 2, seen: 2 }];

const each = Array.from({ length: 10 }, () => 1);
const coverage = { opening: [2, ...each.slice(1)], closing: [...each.slice(1), 0] };

test('each finding stands in the row of its pass, at its travel', () => {
  const { rows, marks } = travelMapLayout({ strokes, findings, spots, coverage });
  expect(rows.map(({ direction, number }) => [direction, number])).toEqual([
    ['opening', 1],
    ['closing', 1],
    ['rest', 0],
  ]);
  expect(marks.map(({ y }) => rows.findIndex((row) => row.y === y))).toEqual([0, 1, 2]);
  expect(marks[0]!.x).toBeLessThan(marks[1]!.x);
});

test('places that several passes showed are named, and signs explained', () => {
  const svg = renderToString(
    <TravelMapDrawing id="map" score={{ strokes, findings, spots, coverage }} />,
  );
  expect(svg).toContain(
    '2 passes; 3 findings are marked. Several passes showed the same place: 31',
  );
  expect(svg.match(/class="spot"/g)).toHaveLength(1);
  expect(svg).toContain('>dropout</text>');
  expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
});

test('below the passes stands how often each tenth was seen; one never seen is shaded', () => {
  const { strips, rowsEnd, plot, marks } = travelMapLayout({ strokes, findings, spots, coverage });
  expect(
    strips.map(({ direction, cells }) => [direction, ...cells.map(({ looks }) => looks)]),
  ).toEqual([
    ['opening', ...coverage.opening],
    ['closing', ...coverage.closing],
  ]);
  for (const { y, height, cells } of strips) {
    expect(y).toBeGreaterThanOrEqual(rowsEnd);
    expect(y + height).toBeLessThanOrEqual(plot.bottom);
    expect(cells[0]!.x).toBe(plot.left);
    expect(cells[9]!.x + cells[9]!.width).toBeCloseTo(plot.right, 1);
  }
  expect(Math.max(...marks.map(({ y }) => y))).toBeLessThan(rowsEnd);
  const svg = renderToString(
    <TravelMapDrawing id="map" score={{ strokes, findings, spots, coverage }} />,
  );
  expect(svg).toContain('Of the travel, 10 tenths were seen opening and 9 closing.');
  expect(svg.match(/<rect/g)).toHaveLength(20);
  expect(svg.match(/<rect[^>]*fill-opacity/g)).toHaveLength(1);
});
