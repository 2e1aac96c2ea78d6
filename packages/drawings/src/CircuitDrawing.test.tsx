import { type Circuit, operatingPoint, positionAt } from '@truesweep/core';
import { renderToString } from 'preact-render-to-string';
import { expect, test } from 'vitest';
import { CircuitDrawing } from './CircuitDrawing.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};

/** A bench with every part that a circuit can have. */
const full: Circuit = {
  source: { volts: 5, ohms: 0.2, currentLimit: 0.02 },
  limiter: 1000,
  leads: { supply: 0.3, ground: 0.4, signal: 0.5 },
  sensor: {
    track: 5000,
    bottomResidual: 20,
    topResidual: 30,
    contact: 50,
    closedPosition: 0.1,
    openPosition: 0.9,
  },
  load: { pullDown: 1e6, pullUp: { ohms: 47e3, volts: 5 } },
};

function draw(circuit: Circuit): string {
  const at = (travel: number) => operatingPoint(circuit, positionAt(circuit.sensor, travel));
  return renderToString(
    <CircuitDrawing id="bench" circuit={circuit} closed={at(0)} open={at(1)} />,
  );
}

/** The words of a drawing, each text element one entry. */
function words(svg: string): string[] {
  return [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/g)].map(([, inner = '']) =>
    inner.replace(/<[^>]*>/g, '').replace(/\u00a0/g, ' '),
  );
}

/** The parts that are drawn with a symbol of their own. */
function parts(svg: string): string[] {
  return [...svg.matchAll(/<(?:rect|path) class="part ([A-Za-z]+)/g)].map(([, part = '']) => part);
}

test('the usual bench shows its parts with their values', () => {
  const svg = draw(bench);
  expect(parts(svg)).toEqual(['limiter', 'track', 'pullDown']);
  expect(words(svg)).toEqual(
    expect.arrayContaining(['5 V', '1 kΩ', '5 kΩ', '10 MΩ', 'closed 10 %', 'open 90 %']),
  );
});

test('reading and currents at both stops stand in the legend', () => {
  const text = words(draw(bench)).join(' | ');
  expect(text).toContain('Reading | 417 mV | 3.75 V');
  expect(text).toContain('I1 | Limiting resistor | 833 µA | 834 µA');
  expect(text).toContain('I2 | Track below the wiper | 833 µA | 833 µA');
  expect(text).toContain("I3 | Wiper's contact | 41.7 nA | 375 nA");
});

test('every part of a full bench has its symbol and its value', () => {
  const svg = draw(full);
  expect(parts(svg).sort()).toEqual([
    'bottomResidual',
    'contact',
    'groundLead',
    'limiter',
    'pullDown',
    'pullUp',
    'signalLead',
    'supplyLead',
    'topResidual',
    'track',
  ]);
  for (const value of [
    'inside 200 mΩ',
    'limit 20 mA',
    '300 mΩ',
    '400 mΩ',
    '500 mΩ',
    '20 Ω',
    '30 Ω',
  ])
    expect(words(svg)).toContain(value);
  expect(svg.match(/class="current"/g)).toHaveLength(5);
  expect(words(svg).join(' | ')).toMatch(/I4 \| Load \| .* \| I5 \| Pull-up \| /);
});

test('a broken lead is a gap, and what it leaves floating has no number', () => {
  const svg = draw({ ...bench, leads: { signal: Number.POSITIVE_INFINITY }, load: {} });
  expect(svg).toContain('class="part signalLead broken"');
  expect(words(svg)).toContain('∞ Ω');
  expect(words(svg)).toContain('no single value');
});

test('it has a name and a description for those who do not see it', () => {
  const svg = draw(bench);
  expect(svg).toContain('role="img"');
  expect(svg).toContain('aria-labelledby="bench-title"');
  expect(svg).toMatch(/<desc id="bench-description">.*reads 417\u00a0mV.*reads 3.75\u00a0V/);
});

test('no style attribute, no style element, no number that is none', () => {
  for (const circuit of [bench, full])
    expect(draw(circuit)).not.toMatch(/ style=|<style|NaN|undefined/);
});
