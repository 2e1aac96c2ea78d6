import { expectedWindows, type Finding } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { TraceDrawing } from './TraceDrawing.js';
import { traceLayout } from './traceLayout.js';

const time = Float64Array.from({ length: 500_000 }, (_, i) => i / 10_000);
const signal = time.map((at) => (at === 20 ? 0 : 2 + Math.sin(at)));
const sweep = { time, signal };
const dropout: Finding = {
  kind: 'dropout',
  start: 20,
  end: 20.0001,
  travel: 0.4,
  depth: -2,
  depthOfSpan: 0.6,
  depthOfSource: 0.4,
  went: 'to-rest-level',
  during: 'opening',
};

test('a dropout of one sample in half a million reaches the foot of the drawing', () => {
  const { pieces, plot } = traceLayout(sweep, []);
  expect(pieces).toHaveLength(1);
  const deepest = Math.max(...pieces[0]!.map(({ y }) => y));
  expect(deepest).toBe(plot.bottom);
});

test('a gap parts the trace', () => {
  const kept = (_: number, i: number) => i < 100_000 || i > 150_000;
  const { pieces } = traceLayout({ time: time.filter(kept), signal: signal.filter(kept) }, []);
  expect(pieces).toHaveLength(2);
});

test('findings are marked wide enough to be seen, and numbered where there is room', () => {
  const findings = [dropout, { ...dropout, start: 20.01, end: 20.02 }, { ...dropout, start: 40 }];
  const { findings: marks } = traceLayout(sweep, findings);
  for (const { width } of marks) expect(width).toBeGreaterThanOrEqual(2);
  const svg = renderToString(<TraceDrawing id="trace" sweep={sweep} findings={findings} />);
  expect(svg.match(/class="finding"/g)).toHaveLength(3);
  expect(svg).toContain('font-weight="bold">1</text>');
  expect(svg).not.toContain('font-weight="bold">2</text>');
  expect(svg).toContain('font-weight="bold">3</text>');
});

test('it says what it shows, stays small, and has no style of its own', () => {
  const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
  const windows = expectedWindows(circuit, { track: 0.1 });
  const svg = renderToString(
    <TraceDrawing id="trace" sweep={sweep} findings={[dropout]} windows={windows} />,
  );
  expect(svg).toContain('50\u00a0s of signal between 0\u00a0V and 3\u00a0V; 1 finding is marked.');
  expect(svg).toContain('>Time, s</text>');
  expect(svg.length).toBeLessThan(50_000);
  expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
});

test('a recording whose stamps are all one is drawn all the same', () => {
  const still = { time: Float64Array.of(3, 3), signal: Float64Array.of(1, 1) };
  expect(renderToString(<TraceDrawing id="t" sweep={still} findings={[]} />)).not.toContain('NaN');
});
