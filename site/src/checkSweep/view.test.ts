import fc from 'fast-check';
import { expect, test } from 'vitest';
import { moveView, type View, type ViewBounds, viewOf, zoomTime, zoomVolts } from './view.js';

const bounds: ViewBounds = {
  whole: { start: 2, end: 12 },
  shortest: 0.01,
  volts: { low: 0, high: 5 },
};
const whole: View = { stretch: bounds.whole };

test('zooming about a place keeps what lies there', () => {
  const { stretch } = zoomTime(whole, 0.5, 0.25, bounds);
  expect(stretch).toEqual({ start: 3.25, end: 8.25 });
  const { volts } = zoomVolts(whole, 0.5, 0.2, bounds);
  expect(volts).toEqual({ low: 0.5, high: 3 });
});

test('the way back to all readings forgets their range', () => {
  const close = zoomVolts(whole, 0.5, 0.5, bounds);
  expect(zoomVolts(close, 4, 0.5, bounds)).toEqual(whole);
});

test('a finding is seen with its surroundings, never shorter than is worth a look', () => {
  const { stretch } = viewOf({ start: 11.99, end: 12 }, 6, bounds);
  expect(stretch.end).toBe(12);
  expect(stretch.end - stretch.start).toBeCloseTo(0.06, 9);
  const { stretch: point } = viewOf({ start: 5, end: 5 }, 6, bounds);
  expect(point.end - point.start).toBeCloseTo(0.05, 9);
});

test('whatever is done, what is seen lies within the recording and is neither too short nor too long', () => {
  const step = fc.tuple(
    fc.constantFrom('time', 'volts', 'move'),
    fc.double({ min: 0.01, max: 100, noNaN: true }),
    fc.double({ min: -3, max: 3, noNaN: true }),
  );
  fc.assert(
    fc.property(fc.array(step, { maxLength: 30 }), (steps) => {
      let view = whole;
      for (const [what, factor, part] of steps) {
        const inside = Math.min(1, Math.max(0, part));
        if (what === 'time') view = zoomTime(view, factor, inside, bounds);
        else if (what === 'volts') view = zoomVolts(view, factor, inside, bounds);
        else view = moveView(view, part, part, bounds);
        const { start, end } = view.stretch;
        expect(start).toBeGreaterThanOrEqual(2);
        expect(end).toBeLessThanOrEqual(12);
        expect(end - start).toBeGreaterThan(0.00999);
        if (!view.volts) continue;
        expect(view.volts.low).toBeGreaterThanOrEqual(0);
        expect(view.volts.high).toBeLessThanOrEqual(5 + 1e-9);
        expect(view.volts.high - view.volts.low).toBeGreaterThan(0.0249);
      }
    }),
  );
});
