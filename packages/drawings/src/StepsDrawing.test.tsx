import { sweepColumns } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { StepsDrawing } from './StepsDrawing.js';
import type { StepsDrawingProps } from './stepsDrawingProps.js';
import { traceColumns } from './tracePlot.js';

const time = Float64Array.from({ length: 400 }, (_, i) => i / 10);
const signal = time.map((at) => (at < 20 ? 4.08 : 2.56));
const stretches: StepsDrawingProps['stretches'] = [
  { start: 0.5, end: 19.5, mean: 4.08, low: 4, high: 4.15, outcome: 'conforms' },
  { start: 20.5, end: 39, mean: 2.56, low: 2.6, high: 2.7, outcome: 'fails' },
];
const drawn = (more: Partial<StepsDrawingProps> = {}) => {
  const columns = sweepColumns({ time, signal }, traceColumns(more.width));
  return renderToString(
    <StepsDrawing id="steps" unit="V" columns={columns} stretches={stretches} {...more} />,
  );
};

describe('StepsDrawing', () => {
  test('axes with their units; each stretch with its window, its mean and its number', () => {
    const svg = drawn();
    expect(svg).toContain('>Time, s</text>');
    expect(svg).toContain('>Reading, V</text>');
    expect(svg.match(/class="stretch"><rect /g)).toHaveLength(2);
    expect(svg.match(/stroke-width="3"/g)).toHaveLength(2);
    for (const number of ['1', '2']) expect(svg).toContain(`font-weight="bold">${number}</text>`);
  });

  test('samples that lie columns apart are joined: no gap is drawn where there is none', () => {
    const trace = drawn().match(/class="trace" d="([^"]*)"/)![1]!;
    expect(trace.match(/M/g)).toHaveLength(1);
  });

  test('a stretch without limits has no window, and one outside the recording is left out', () => {
    const { low: _, high: __, ...bare } = stretches[0]!;
    const svg = drawn({ stretches: [bare, { ...stretches[1]!, start: 100, end: 110 }] });
    expect(svg.match(/class="stretch"/g)).toHaveLength(1);
    expect(svg).not.toContain('class="stretch"><rect ');
  });

  test('a ratio is a plain number', () => {
    const ratio = drawn({ unit: '1' });
    expect(ratio).toContain('>Ratio to the supply</text>');
    expect(ratio).toContain('Stretch 1: 4.08, conforms.');
  });

  test('at a phone’s width the legend takes more lines, and the plot begins below it', () => {
    const all = (['conforms', 'marginal', 'fails', 'cannot-tell', 'not-judged'] as const).map(
      (outcome, i) => ({ start: i, end: i + 0.9, mean: 4, low: 3.9, high: 4.1, outcome }),
    );
    const top = (width: number) =>
      Number(drawn({ width, stretches: all }).match(/viewBox="0 0 \d+ (\d+)"/)![1]);
    expect(top(344) - 300).toBeGreaterThan(top(760) - 360);
  });

  test('it is told in words, and has no style of its own', () => {
    expect(drawn()).toContain(
      '39.9\u00a0s of signal between 2.56\u00a0V and 4.08\u00a0V. Stretch 1: 4.08\u00a0V, conforms. Stretch 2: 2.56\u00a0V, fails.',
    );
    expect(drawn()).not.toMatch(/ style=|<style|NaN|undefined/);
  });

  test.each([
    [{ ...stretches[0]!, end: 0.5 }, 'props.stretches[0].end'],
    [{ ...stretches[0]!, low: 5 }, 'props.stretches[0].high'],
  ])('refuses %j', (stretch, path) => {
    expect(() => drawn({ stretches: [stretch] })).toThrow(
      expect.objectContaining({ path, code: 'out-of-order' }),
    );
  });
});
