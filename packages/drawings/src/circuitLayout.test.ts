import type { Circuit } from '@truesweep/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { circuitLayout } from './circuitLayout.js';

const bench: Circuit = {
  source: { volts: 5 },
  limiter: 1000,
  sensor: { track: 5000, closedPosition: 0.1, openPosition: 0.9 },
  load: { pullDown: 10e6 },
};

test('the open stop of a rising sensor lies above the closed one', () => {
  const [closed, open] = circuitLayout(bench).stops;
  expect(closed!.y).toBeGreaterThan(open!.y);
  const [falling] = circuitLayout({
    ...bench,
    sensor: { track: 5000, closedPosition: 0.9, openPosition: 0.1 },
  }).stops;
  expect(falling!.y).toBe(open!.y);
});

test('parts of 0 Ω are wire, and without a load only the instrument hangs on the signal', () => {
  const layout = circuitLayout({ ...bench, limiter: 0, load: {} });
  expect(layout.resistors.map(({ part }) => part)).toEqual(['track']);
  expect(layout.arrows.map(({ part }) => part)).toEqual(['limiter', 'trackBelow', 'contact']);
});

test('the source stands clear of the sensor, with or without a limiting resistor', () => {
  for (const limiter of [0, 1000]) {
    const { source, sensor } = circuitLayout({ ...bench, limiter });
    expect(source.y + 18).toBeLessThan(sensor.y);
  }
});

const ohms = fc.constantFrom(0, 0.5, 1000, Number.POSITIVE_INFINITY);
const circuits: fc.Arbitrary<Circuit> = fc.record({
  source: fc.constant({ volts: 5 }),
  limiter: ohms,
  leads: fc.record({ supply: ohms, ground: ohms, signal: ohms }),
  sensor: fc.record({
    track: fc.constant(5000),
    bottomResidual: ohms,
    topResidual: ohms,
    contact: ohms,
    closedPosition: fc.double({ min: 0, max: 1, noNaN: true }),
    openPosition: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  load: fc.record({ pullDown: ohms, pullUp: fc.record({ ohms, volts: fc.constant(5) }) }),
});

test('symbols never cover each other, and wires only touch their ends', () => {
  fc.assert(
    fc.property(circuits, (circuit) => {
      const { resistors, wires, width, height } = circuitLayout(circuit);
      const boxes = resistors.map(({ x, y, upright, length }) => {
        const [w, h] = upright ? [7, length / 2] : [length / 2, 7];
        return { left: x - w, right: x + w, top: y - h, bottom: y + h };
      });
      for (const [i, a] of boxes.entries()) {
        expect(Math.min(a.left, a.top)).toBeGreaterThan(0);
        expect(a.right).toBeLessThan(width);
        expect(a.bottom).toBeLessThanOrEqual(height);
        for (const b of boxes.slice(i + 1)) {
          const apart =
            a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
          expect(apart).toBe(true);
        }
        for (const wire of wires)
          for (const { x, y } of wire)
            expect(x > a.left && x < a.right && y > a.top && y < a.bottom).toBe(false);
      }
    }),
  );
});

test('the words of the stops keep clear of the wiper and of each other', () => {
  fc.assert(
    fc.property(circuits, (circuit) => {
      const { stops, wiper } = circuitLayout(circuit);
      const heights = stops.map(({ labelY }) => labelY);
      for (const y of heights) expect(Math.abs(y - wiper.y)).toBeGreaterThan(15.9);
      expect(Math.abs(heights[0]! - heights[1]!)).toBeGreaterThan(30);
    }),
  );
});
