import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { PressureDrawingProps } from './bandDrawingProps.js';
import { PressureDrawing } from './PressureDrawing.js';

const points = [15e3, 60e3, 115e3].map((pressure) => {
  const nominal = 9e-6 * pressure - 0.095;
  return { pressure, low: nominal - 0.0135, nominal, high: nominal + 0.0135 };
});
const readings: PressureDrawingProps['readings'] = [
  {
    pressure: 96e3,
    pressureUncertainty: 100,
    signal: 0.769,
    uncertainty: 0.01,
    outcome: 'conforms',
  },
  { pressure: 50e3, signal: 0.2, outcome: 'cannot-tell' },
];
const drawn = (more: Partial<PressureDrawingProps> = {}) =>
  renderToString(
    <PressureDrawing
      id="port"
      unit="1"
      against="absolute"
      points={points}
      readings={readings}
      {...more}
    />,
  );

describe('PressureDrawing', () => {
  test('the axis says what the pressure is counted from, and the signal its unit', () => {
    expect(drawn()).toContain('>Pressure, kPa absolute</text>');
    expect(drawn()).toContain('>Ratio to the supply</text>');
    const volts = points.map((point) => ({
      ...point,
      low: 5 * point.low,
      nominal: 5 * point.nominal,
      high: 5 * point.high,
    }));
    const gauge = drawn({ unit: 'V', against: 'gauge', points: volts, readings: [] });
    expect(gauge).toContain('>Pressure, kPa gauge</text>');
    expect(gauge).toContain('>Reading, V</text>');
    expect(gauge).toContain('No reading is drawn.');
  });

  test('ticks of a ratio are no millivolts', () => {
    expect(drawn()).toContain('>0.8</text>');
    expect(drawn()).not.toContain('>800</text>');
    // Of readings below 0 alone the axis ends at 0: no tick stands above the plot.
    const below = points.map(({ pressure }) => ({ pressure, low: -0.9, high: -0.1 }));
    expect(drawn({ points: below, readings: [] })).not.toContain('>0.5</text>');
  });

  test('a straight line is straight, and a reading on it lies on it', () => {
    const svg = drawn({ readings: [{ pressure: 60e3, signal: 0.445, outcome: 'conforms' }] });
    const line = svg.match(
      /class="curve" d="M([\d.]+),([\d.]+)L([\d.]+),([\d.]+)L([\d.]+),([\d.]+)"/,
    )!;
    const [x1 = 0, y1 = 0, x2 = 0, y2 = 0, x3 = 0, y3 = 0] = line.slice(1).map(Number);
    expect((y2 - y1) / (x2 - x1)).toBeCloseTo((y3 - y1) / (x3 - x1), 2);
    const signs = [
      ...svg.matchAll(/class="outcome conforms" transform="translate\(([\d.]+),([\d.]+)\)"/g),
    ];
    const [, x, y] = signs.at(-1)!;
    expect(Math.abs(Number(x) - x2)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(Number(y) - y2)).toBeLessThanOrEqual(0.1);
  });

  test('bars are twice the standard uncertainty to either side', () => {
    const svg = drawn();
    const [, bottom, top] = svg.match(/M[\d.]+,([\d.]+)h6m-3,0V([\d.]+)m-3,0h6/)!.map(Number);
    // The level axis goes from 1 at the plot's top to 0 at its foot.
    const [, plotTop, foot] = svg.match(/d="M44,([\d.]+)V([\d.]+)"/)!.map(Number);
    expect((bottom! - top!) / (foot! - plotTop!)).toBeCloseTo(0.04, 3);
  });

  test('it is told in words, and has no style of its own', () => {
    expect(drawn()).toContain(
      '>From 15\u00a0kPa to 115\u00a0kPa it goes from 0.04 to 0.94. Reading 1: 0.769 at 96\u00a0kPa, conforms. Reading 2: 0.2 at 50\u00a0kPa, cannot tell.<',
    );
    expect(drawn()).not.toMatch(/ style=|<style|NaN|undefined/);
  });

  test('asks what the pressure is counted from', () => {
    const { against: _, ...rest } = {
      id: 'p',
      unit: 'V',
      points,
      readings,
      against: 'gauge',
    } as const;
    expect(() =>
      renderToString(<PressureDrawing {...(rest as unknown as PressureDrawingProps)} />),
    ).toThrow(expect.objectContaining({ path: 'props.against', code: 'missing' }));
  });
});
