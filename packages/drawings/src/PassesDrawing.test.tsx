import { expectedCurve, type Finding } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { PassesDrawing } from './PassesDrawing.js';

const curve = expectedCurve({
  source: { volts: 6 },
  limiter: 1000,
  sensor: { track: 5000 },
  load: {},
});
const pass = {
  direction: 'opening',
  travel: [0, 0.5, 1],
  low: [0, 0, 5],
  high: [0, 2.5, 5],
} as const;
const dropout: Finding = {
  kind: 'dropout',
  start: 1,
  end: 1.01,
  travel: 0.5,
  depth: -2,
  depthOfSpan: 0.6,
  depthOfSource: 0.4,
  went: 'to-rest-level',
  during: 'opening',
};

test('a dropout of one pass reaches the foot at its place, beside the expected curve', () => {
  const svg = renderToString(
    <PassesDrawing
      id="p"
      curve={curve}
      passes={[pass, { ...pass, direction: 'closing' }]}
      findings={[dropout, { ...dropout, unplaced: true }]}
    />,
  );
  expect(svg.match(/class="pass opening"/g)).toHaveLength(1);
  expect(svg.match(/class="pass closing"/g)).toHaveLength(1);
  // The middle of the axis at 376 across, the foot at 316.
  expect(svg).toContain('376,316');
  expect(svg).toContain('M376,48V316');
  expect(svg.match(/class="finding"/g)).toHaveLength(1);
  expect(svg).toContain('2 passes over the travel');
  expect(svg).not.toMatch(/NaN|undefined/);
});

test('refuses a pass whose lists differ in length', () => {
  expect(() =>
    PassesDrawing({ id: 'p', curve, passes: [{ ...pass, low: [] }], findings: [] }),
  ).toThrow(/props\.passes\[0\]\.low must hold as many numbers/);
});
