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

test('each finding stands in the row of its pass, at its travel', () => {
  const { rows, marks } = travelMapLayout({ strokes, findings, spots });
  expect(rows.map(({ direction, number }) => [direction, number])).toEqual([
    ['opening', 1],
    ['closing', 1],
    ['rest', 0],
  ]);
  expect(marks.map(({ y }) => rows.findIndex((row) => row.y === y))).toEqual([0, 1, 2]);
  expect(marks[0]!.x).toBeLessThan(marks[1]!.x);
});

test('places that several passes showed are named, and signs explained', () => {
  const svg = renderToString(<TravelMapDrawing id="map" score={{ strokes, findings, spots }} />);
  expect(svg).toContain(
    '2 passes; 3 findings are marked. Several passes showed the same place: 31',
  );
  expect(svg.match(/class="spot"/g)).toHaveLength(1);
  expect(svg).toContain('>dropout</text>');
  expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
});
