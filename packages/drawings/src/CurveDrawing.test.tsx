import { expectedCurve, expectedWindows } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { CurveDrawing } from './CurveDrawing.js';

const circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};
const curve = expectedCurve(circuit);
const windows = expectedWindows(circuit, { limiter: 0.05, closedPosition: 0.02 });

test('windows stand with their readings, and the axes with their units', () => {
  const svg = renderToString(<CurveDrawing id="line" curve={curve} windows={windows} />);
  expect(svg).toContain('>331\u00a0mV to 504\u00a0mV</text>');
  expect(svg).toContain('>3.72\u00a0V to 3.78\u00a0V</text>');
  expect(svg).toContain('>Reading, V</text>');
  expect(svg).toContain('>Travel, %</text>');
  expect(svg.match(/class="curve"/g)).toHaveLength(1);
});

test('without windows the curve stands alone', () => {
  const svg = renderToString(<CurveDrawing id="line" curve={curve} />);
  expect(svg).not.toContain('class="window');
  expect(svg).not.toContain('The window is');
});

test('a curve to compare with is dashed, and the difference stands below with its unit', () => {
  const unloaded = expectedCurve({ ...circuit, load: {} });
  const loaded = expectedCurve({ ...circuit, load: { pullDown: 5000 } });
  const svg = renderToString(<CurveDrawing id="line" curve={loaded} compared={unloaded} />);
  expect(svg.match(/class="compared"/g)).toHaveLength(1);
  expect(svg).toContain('>Lower by, mV</text>');
  const most = loaded.volts.reduce((sum, volts, i) => Math.max(sum, unloaded.volts[i]! - volts), 0);
  expect(svg).toContain(`at most ${Math.round(most * 1000)}\u00a0mV off the dashed line`);
  expect(svg).not.toMatch(/NaN|undefined/);
});

test('two curves in one have no difference, and curves of other points are refused', () => {
  const svg = renderToString(<CurveDrawing id="line" curve={curve} compared={curve} />);
  expect(svg).toContain('at most 0\u00a0V off');
  const fewer = expectedCurve(circuit, 5);
  expect(() => renderToString(<CurveDrawing id="line" curve={curve} compared={fewer} />)).toThrow(
    expect.objectContaining({ code: 'length-mismatch', path: 'props.compared.travel' }),
  );
});

test('markers are drawn with their words', () => {
  const markers = [{ travel: 0.3, volts: 1.4, label: '1.4 V at 30 %' }];
  const svg = renderToString(<CurveDrawing id="line" curve={curve} markers={markers} />);
  expect(svg).toContain('>1.4 V at 30 %</text>');
});

test('it has a name and a description, and no style of its own', () => {
  const svg = renderToString(<CurveDrawing id="line" curve={curve} windows={windows} />);
  expect(svg).toContain('role="img"');
  expect(svg).toContain('<title id="line-title">Expected reading over travel</title>');
  expect(svg).toMatch(/<desc id="line-description">The reading goes from 417\u00a0mV/);
  expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
});

test('what a framework hands on beside the properties is taken, a mistyped one is not', () => {
  const more = { children: undefined };
  expect(() => renderToString(<CurveDrawing id="line" curve={curve} {...more} />)).not.toThrow();
  const typed = { window: windows };
  expect(() => renderToString(<CurveDrawing id="line" curve={curve} {...typed} />)).toThrow(
    expect.objectContaining({ code: 'unknown-field', path: 'props.window' }),
  );
});
