import { renderToString } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import type { ThermistorDrawingProps } from './bandDrawingProps.js';
import { ThermistorDrawing } from './ThermistorDrawing.js';

const points = [
  { temperature: -40, low: 43_000, nominal: 48_805, high: 54_000 },
  { temperature: 20, low: 2300, nominal: 2502, high: 2700 },
  { temperature: 100, low: 165, nominal: 175.7, high: 186 },
];
const readings: ThermistorDrawingProps['readings'] = [
  { temperature: 20, temperatureUncertainty: 1, ohms: 2510, uncertainty: 20, outcome: 'conforms' },
  { temperature: 60, ohms: 900, outcome: 'fails' },
  { temperature: 80, ohms: Infinity, outcome: 'fails' },
];
const drawn = (more: Partial<ThermistorDrawingProps> = {}) =>
  renderToString(<ThermistorDrawing id="ntc" points={points} readings={readings} {...more} />);

/** The heights of the nominal line's points. */
const heights = (svg: string) =>
  [...svg.match(/class="curve" d="([^"]*)"/)![1]!.matchAll(/[ML][\d.]+,([\d.]+)/g)].map(([, y]) =>
    Number(y),
  );

describe('ThermistorDrawing', () => {
  test('axes with their units, the band, and what the signs mean', () => {
    const svg = drawn();
    expect(svg).toContain('>Temperature, °C</text>');
    for (const tick of ['200\u00a0Ω', '1\u00a0kΩ', '10\u00a0kΩ'])
      expect(svg).toContain(`>${tick}</text>`);
    for (const words of ['limits', 'nominal', 'conforms', 'fails'])
      expect(svg).toContain(`>${words}</text>`);
    expect(svg).not.toContain('>marginal</text>');
    expect(svg.match(/class="band"/g)).toHaveLength(1);
  });

  test('the axis is one of logarithms: equal ratios are equal heights', () => {
    const decades = [10_000, 1000, 100].map((nominal, i) => ({
      temperature: 40 * i,
      low: 0.9 * nominal,
      nominal,
      high: 1.1 * nominal,
    }));
    const [a = 0, b = 0, c = 0] = heights(drawn({ points: decades, readings: [] }));
    expect(b - a).toBeGreaterThan(20);
    expect(Math.abs(c - b - (b - a))).toBeLessThanOrEqual(0.2);
  });

  test('each outcome has its own sign, at its place, with bars where uncertainties are told', () => {
    const svg = drawn();
    expect(svg.match(/class="reading"/g)).toHaveLength(3);
    // One in the legend and one for each reading.
    expect(svg.match(/class="outcome fails"/g)).toHaveLength(3);
    expect(svg.match(/class="outcome conforms"/g)).toHaveLength(2);
    const bars = /class="reading"><path d="M[\d.]+,[\d.]+v6m0,-3H/g;
    expect(svg.match(bars)).toHaveLength(1);
  });

  test('what nothing connects stands at the upper edge with an arrow, and 0 Ω at the lower', () => {
    const open = drawn({ readings: [{ temperature: 20, ohms: Infinity, outcome: 'fails' }] });
    expect(open).toContain('no connection at 20\u00a0°C, fails.');
    expect(open).toMatch(/class="reading"><path d="M[\d.]+,[\d.]+V[\d.]+l-4,6m4,-6l4,6"/);
    const shorted = drawn({ readings: [{ temperature: 20, ohms: 0, outcome: 'fails' }] });
    expect(shorted).toMatch(/class="reading"><path d="M[\d.]+,[\d.]+V[\d.]+l-4,-6m4,6l4,-6"/);
    expect(open + shorted).not.toMatch(/NaN|Infinity/);
  });

  test('a far reading does not squeeze the band', () => {
    const far = drawn({ readings: [{ temperature: 20, ohms: 5e8, outcome: 'fails' }] });
    expect(heights(far)).toEqual(heights(drawn({ readings: [] })));
  });

  test('limits alone have no nominal line', () => {
    const bare = points.map(({ nominal: _, ...rest }) => rest);
    const svg = drawn({ points: bare });
    expect(svg).not.toContain('class="curve"');
    expect(svg).not.toContain('>nominal</text>');
  });

  test('it is told in words, with a name, and has no style of its own', () => {
    const svg = drawn();
    expect(svg).toContain('role="img"');
    expect(svg).toContain(
      '<title id="ntc-title">Resistance over temperature between its limits</title>',
    );
    expect(svg).toContain(
      '>From −40\u00a0°C to 100\u00a0°C it goes from 48.8\u00a0kΩ to 176\u00a0Ω. Reading 1: 2.51\u00a0kΩ at 20\u00a0°C, conforms.',
    );
    expect(svg).not.toMatch(/ style=|<style|NaN|undefined/);
  });

  test.each([
    [{ points: points.slice(0, 1) }, 'props.points', 'out-of-range'],
    [{ points: [...points].reverse() }, 'props.points[1].temperature', 'out-of-order'],
    [{ points: [points[0]!, { ...points[1]!, low: 3000 }] }, 'props.points[1].low', 'out-of-order'],
    [{ points: [points[0]!, { ...points[1]!, low: 0 }] }, 'props.points[1].low', 'out-of-range'],
    [
      { readings: [{ temperature: 20, ohms: -1, outcome: 'fails' }] },
      'props.readings[0].ohms',
      'out-of-range',
    ],
    [{ width: 100 }, 'props.width', 'out-of-range'],
  ] as const)('refuses %j at %s', (more, path, code) => {
    expect(() => drawn(more)).toThrow(expect.objectContaining({ path, code }));
  });
});
