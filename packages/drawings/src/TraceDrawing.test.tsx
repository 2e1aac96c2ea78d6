import { expectedWindows, type Finding, type Sweep, sweepColumns } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { TraceDrawing } from './TraceDrawing.js';
import { traceLayout } from './traceLayout.js';
import { traceColumns } from './tracePlot.js';

const columnsOf = (sweep: Sweep) => sweepColumns(sweep, traceColumns());

const time = Float64Array.from({ length: 500_000 }, (_, i) => i / 10_000);
const signal = time.map((at) => (at === 20 ? 0 : 2 + Math.sin(at)));
const sweep = { time, signal };
const columns = columnsOf(sweep);
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
  const { pieces, plot } = traceLayout({ columns, findings: [] });
  expect(pieces).toHaveLength(1);
  const deepest = Math.max(...pieces[0]!.map(({ y }) => y));
  expect(deepest).toBe(plot.bottom);
});

test('a gap parts the trace', () => {
  const kept = (_: number, i: number) => i < 100_000 || i > 150_000;
  const { pieces } = traceLayout({
    columns: columnsOf({ time: time.filter(kept), signal: signal.filter(kept) }),
    findings: [],
  });
  expect(pieces).toHaveLength(2);
});

test('findings are marked wide enough to be seen, and numbered where there is room', () => {
  const findings = [dropout, { ...dropout, start: 20.01, end: 20.02 }, { ...dropout, start: 40 }];
  const { findings: marks } = traceLayout({ columns, findings });
  for (const { width } of marks) expect(width).toBeGreaterThanOrEqual(2);
  const svg = renderToString(<TraceDrawing id="trace" columns={columns} findings={findings} />);
  expect(svg.match(/class="finding"/g)).toHaveLength(3);
  expect(svg).toContain('font-weight="bold">1</text>');
  expect(svg).not.toContain('font-weight="bold">2</text>');
  expect(svg).toContain('font-weight="bold">3</text>');
});

test('it says what it shows, stays small, and has no style of its own', () => {
  const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
  const windows = expectedWindows(circuit, { track: 0.1 });
  const svg = renderToString(
    <TraceDrawing id="trace" columns={columns} findings={[dropout]} windows={windows} />,
  );
  expect(svg).toContain('50\u00a0s of signal between 0\u00a0V and 3\u00a0V; 1 finding is marked.');
  expect(svg).toContain('>Time, s</text>');
  expect(svg.length).toBeLessThan(50_000);
  expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
});

test('a recording whose stamps are all one is drawn all the same', () => {
  const still = { time: Float64Array.of(3, 3), signal: Float64Array.of(1, 1) };
  expect(
    renderToString(<TraceDrawing id="t" columns={columnsOf(still)} findings={[]} />),
  ).not.toContain('NaN');
});

test('a stretch keeps the axis of the whole sweep, its findings alone, and joins samples far apart', () => {
  const few = { time: Float64Array.of(10, 10.01, 10.02), signal: Float64Array.of(1, 1.1, 1.2) };
  const whole = { low: 0, high: 3, interval: 0.01 };
  const away = { ...dropout, start: 40, end: 41 };
  const near = { ...dropout, start: 10.005, end: 10.015 };
  const layout = traceLayout({ columns: columnsOf(few), findings: [away, near], whole });
  expect(layout.pieces).toHaveLength(1);
  expect(layout.findings.map(({ number }) => number)).toEqual([2]);
  expect(layout.voltTicks.at(-1)?.text).toBe('3');
});

test('on a phone it is as wide as it is told, with words of full size and the stops named inside', () => {
  const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
  const windows = expectedWindows(circuit, { track: 0.1 });
  const narrow = sweepColumns(sweep, traceColumns(320));
  const layout = traceLayout({ columns: narrow, findings: [dropout], windows, width: 320 });
  expect(layout.width).toBe(320);
  const across = layout.pieces.flat().map(({ x }) => x);
  expect(Math.max(...across)).toBeGreaterThan(310);
  expect(Math.max(...across)).toBeLessThanOrEqual(layout.plot.right);
  expect(layout.windows.map(({ name }) => name.isEnd)).toEqual([true, true]);
  expect(layout.timeTicks.length).toBeLessThan(8);
  const svg = renderToString(<TraceDrawing id="t" columns={narrow} findings={[]} width={320} />);
  expect(svg).toContain('viewBox="0 0 320 300"');
  expect(svg).toContain('font-size="13"');
});

test('a range of readings is drawn from foot to top; a window beyond it is left out, and what leaves it is cut off', () => {
  const circuit = { source: { volts: 5 }, limiter: 1000, sensor: { track: 5000 }, load: {} };
  const windows = expectedWindows(circuit, { track: 0.1 });
  const volts = { low: 1, high: 2 };
  const { windows: bands, voltTicks } = traceLayout({ columns, findings: [], windows, volts });
  expect(bands).toEqual([]);
  expect([voltTicks[0]?.text, voltTicks.at(-1)?.text]).toEqual(['1', '2']);
  const svg = renderToString(<TraceDrawing id="t" columns={columns} findings={[]} volts={volts} />);
  expect(svg).toContain('clip-path="url(#t-plot)"');
  expect(() =>
    TraceDrawing({ id: 't', columns, findings: [], volts: { low: 2, high: 2 } }),
  ).toThrow(/above props\.volts\.low/);
});

test('another sweep stands pale behind, on the same axes', () => {
  const sound = sweepColumns({ time, signal: signal.map((volts) => volts + 3) }, traceColumns());
  const svg = renderToString(
    <TraceDrawing id="t" columns={columns} findings={[]} behind={sound} />,
  );
  expect(svg.match(/class="behind"/g)).toHaveLength(1);
  expect(svg.indexOf('class="behind"')).toBeLessThan(svg.indexOf('class="trace"'));
  const layout = traceLayout({ columns, findings: [], behind: sound });
  expect(Math.min(...layout.behind.flat().map(({ y }) => y))).toBeGreaterThanOrEqual(
    layout.plot.top,
  );
});
